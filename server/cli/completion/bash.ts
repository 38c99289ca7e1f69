import { type Completable, namesOf, type Offered, OPTIONS_ALONE } from "./completable.ts";

/** What completes `daystave` in bash 3.2 and newer. */
export function bashScript(commands: readonly Completable[]): string {
  return `# Completes daystave in bash. Made by: daystave completion bash

# Offers those of some words that begin as what was typed, in or without quotes.
_daystave_words() {
  local word
  for word in "$@"; do
    [[ $word == "$typed"* ]] || continue
    if [[ $quote ]]; then COMPREPLY+=("$word"); else COMPREPLY+=("$(printf %q "$word")"); fi
  done
}

# Offers files: what compgen finds.
_daystave_files() {
  local name
  compopt -o filenames 2>/dev/null
  while IFS= read -r name; do COMPREPLY+=("$name"); done < <("$@")
}

_daystave_journals() {
  compgen -d -- "$typed"
  compgen -f -X '!*.practice' -- "$typed"
}

_daystave() {
  local typed=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} quote=
  COMPREPLY=()
  # --names=german is three words here.
  if [[ $typed == = ]]; then typed=; elif [[ $before == = ]]; then before=\${COMP_WORDS[COMP_CWORD-2]}; fi
  case $typed in
    [\\'\\"]*) quote=\${typed:0:1} typed=\${typed:1} ;;
    *) typed=\${typed//\\\\/} ;;
  esac
  if [[ $COMP_CWORD -eq 1 ]]; then
    case $typed in
      -*) _daystave_words ${quotedAll(OPTIONS_ALONE.flatMap(namesOf))} ;;
      *) _daystave_words ${quotedAll(commands.map(({ name }) => name))} ;;
    esac
    return
  fi
  case \${COMP_WORDS[1]} in
${commands.map(commandCase).join("\n")}
  esac
}

complete -F _daystave daystave
`;
}

function commandCase({ name, options, offered }: Completable): string {
  const values = options.flatMap((option) =>
    option.value === undefined ? [] : [`        ${namesOf(option).join("|")}) ${offering(option.value.offered)} ;;`],
  );
  const names = quotedAll(options.flatMap(namesOf));
  return `    ${name})
      case $before in
${[...values, "        *)"].join("\n")}
          case $typed in
            -*) ${names === "" ? ":" : `_daystave_words ${names}`} ;;
            *) ${offering(offered)} ;;
          esac
          ;;
      esac
      ;;`;
}

function offering(offered: Offered): string {
  switch (offered.type) {
    case "words":
      return `_daystave_words ${quotedAll(offered.words)}`;
    case "journals":
      return "_daystave_files _daystave_journals";
    case "folders":
      return '_daystave_files compgen -d -- "$typed"';
    case "files":
      return '_daystave_files compgen -f -- "$typed"';
    case "nothing":
      return ":";
  }
}

function quotedAll(words: readonly string[]): string {
  return words.map(quoted).join(" ");
}

/** A word as POSIX shells read it; in quotes where it is not plain. */
function quoted(word: string): string {
  return /^[\w.-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
}
