import { type Completable, type CompletableOption, type Offered, OPTIONS_ALONE } from "./completable.ts";

/** fish offers other files after those with the ending: only folders and journals are kept. */
const JOURNALS = "(__fish_complete_suffix .practice | string match -e -r '(?:/|\\.practice)(?:\\t|$)')";
const NO_COMMAND = "-n __fish_use_subcommand";

/** What completes `daystave` in fish. */
export function fishScript(commands: readonly Completable[]): string {
  const lines = [
    "complete -c daystave -f",
    ...OPTIONS_ALONE.map((option) => `complete -c daystave ${NO_COMMAND}${optionArguments(option)}`),
    ...commands.map(({ name, summary }) => `complete -c daystave ${NO_COMMAND} -a ${name} -d ${quoted(summary)}`),
    ...commands.flatMap(commandLines),
  ];
  return `# Completes daystave in fish. Made by: daystave completion fish\n\n${lines.join("\n")}\n`;
}

function commandLines({ name, options, offered }: Completable): readonly string[] {
  const within = `complete -c daystave -n '__fish_seen_subcommand_from ${name}'`;
  return [
    ...options.map((option) => within + optionArguments(option)),
    ...(offered.type === "nothing" ? [] : [within + offering(offered)]),
  ];
}

function optionArguments({ long, short, help, value }: CompletableOption): string {
  const names = `${short ? ` -s ${short.slice(1)}` : ""} -l ${long.slice(2)}`;
  const taken = value === undefined ? "" : value.offered.type === "nothing" ? " -x" : ` -r${offering(value.offered)}`;
  return `${names}${taken} -d ${quoted(help)}`;
}

function offering(offered: Offered): string {
  switch (offered.type) {
    case "words":
      return ` -a ${quoted(`(printf '%s\\n' ${offered.words.map(quoted).join(" ")})`)}`;
    case "journals":
      return ` -a ${quoted(JOURNALS)}`;
    case "folders":
      return " -a '(__fish_complete_directories (commandline -ct))'";
    case "files":
      return " -F";
    case "nothing":
      return "";
  }
}

/** In single quotes fish reads only the backslash and the quote as signs. */
function quoted(word: string): string {
  return `'${word.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;
}
