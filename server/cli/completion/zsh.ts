import { type Completable, type CompletableOption, namesOf, type Offered, OPTIONS_ALONE } from "./completable.ts";

/** What completes `daystave` in zsh, by its own functions for that: read as a file of `$fpath`, or sourced. */
export function zshScript(commands: readonly Completable[]): string {
  return `#compdef daystave
# Completes daystave in zsh. Made by: daystave completion zsh

_daystave() {
  local curcontext=$curcontext state line
  local -A opt_args
  _arguments -C \\
${OPTIONS_ALONE.flatMap((option) => specsOf(option, true))
  .map((spec) => `    ${spec} \\`)
  .join("\n")}
    '1:command:->command' \\
    '*::argument:->argument'
  case $state in
    command)
      local -a commands
      commands=(
${commands.map(({ name, summary }) => `        ${quoted(`${name}:${summary}`)}`).join("\n")}
      )
      _describe command commands
      ;;
    argument)
      case $words[1] in
${commands.map(commandCase).join("\n")}
      esac
      ;;
  esac
}

if [[ $funcstack[1] == _daystave ]]; then
  _daystave "$@"
else
  compdef _daystave daystave
fi
`;
}

function commandCase({ name, options, most, offered }: Completable): string {
  const which = Number.isFinite(most) ? "1" : "*";
  const argument = most === 0 ? [] : [quoted(`${which}:argument:${action(offered)}`)];
  const specs = [...options.flatMap((option) => specsOf(option, isAlone(option))), ...argument];
  return `        ${name})
          _arguments -s ${specs.map((spec) => `\\\n            ${spec}`).join(" ")}
          ;;`;
}

/** What prints something else than the command does. */
function isAlone({ long }: CompletableOption): boolean {
  return OPTIONS_ALONE.some((option) => option.long === long);
}

/**
 * As `_arguments` has it: `--names=[help]:CONVENTION:(english german)`, one for each name, of which either is enough.
 */
function specsOf(option: CompletableOption, alone: boolean): readonly string[] {
  const { help, value } = option;
  const names = namesOf(option);
  const instead = alone ? "(- *)" : names.length > 1 ? `(${names.join(" ")})` : "";
  const more = value ? `:${escaped(value.called)}:${action(value.offered)}` : "";
  return names.map((name) => {
    const joined = value && name.startsWith("--") ? "=" : "";
    return quoted(`${instead}${name}${joined}[${escaped(help)}]${more}`);
  });
}

function action(offered: Offered): string {
  switch (offered.type) {
    case "words":
      return `(${offered.words.map((word) => word.replace(/[^\w.-]/g, "\\$&")).join(" ")})`;
    case "journals":
      return '_files -g "*.practice"';
    case "folders":
      return "_files -/";
    case "files":
      return "_files";
    case "nothing":
      return " ";
  }
}

/** What has a meaning of its own in a specification. */
function escaped(text: string): string {
  return text.replace(/[[\]:\\]/g, "\\$&");
}

function quoted(word: string): string {
  return `'${word.replaceAll("'", "'\\''")}'`;
}
