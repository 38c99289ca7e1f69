import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

/** Whether a shell is on this machine. */
export function isThere(shell: string): boolean {
  return spawnSync(shell, ["-c", "exit 0"]).status === 0;
}

/** The folder in which completions are asked for, with the script of a shell beside it. */
export async function folderWith(shell: string): Promise<{ readonly cwd: string; readonly script: string }> {
  const cwd = temporaryFolder({
    "week.practice": "",
    "notes.txt": "",
    "my folder/a b.practice": "",
    "sub/deep.practice": "",
  });
  const script = join(temporaryFolder(), `daystave.${shell}`);
  writeFileSync(script, (await daystave(["completion", shell])).stdout);
  return { cwd, script };
}

/**
 * What bash would put in place of the last word, by its own rules for words: its function is called as bash calls it,
 * with the line cut at spaces and `=` as by COMP_WORDBREAKS.
 */
export function inBash(words: readonly string[], { cwd, script }: { readonly cwd: string; readonly script: string }) {
  const asked = `source "$0"; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _daystave; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync("bash", ["--norc", "-c", asked, script, ...words], { cwd, encoding: "utf8" });
  return { offered: stdout.split("\n").filter((line) => line !== ""), stderr };
}

/** What fish offers at the end of a line, without what it says of each. */
export function inFish(line: string, { cwd, script }: { readonly cwd: string; readonly script: string }) {
  const asked = `source $argv[1]; complete -C $argv[2]`;
  const { stdout, stderr } = spawnSync("fish", ["--no-config", "-c", asked, script, line], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, HOME: temporaryFolder() },
  });
  const offered = stdout.split("\n").flatMap((each) => (each === "" ? [] : [each.split("\t")[0]!]));
  return { offered, stderr };
}

/** A line in zsh after the tab key: typed into a terminal of zsh's own making, and written down by a widget. */
export function inZsh(line: string, { cwd, script }: { readonly cwd: string; readonly script: string }): string {
  const out = join(temporaryFolder(), "line");
  const setup = [
    "autoload -U compinit; compinit -u -D",
    'source "$DAYSTAVE_SCRIPT"',
    'written() { zle complete-word; print -rn -- "$BUFFER" > "$DAYSTAVE_OUT.part"; mv "$DAYSTAVE_OUT.part" "$DAYSTAVE_OUT" }',
    "zle -N written; bindkey '^X' written",
    'print READY > "$DAYSTAVE_OUT.ready"',
  ].join("; ");
  const driver = `
    zmodload zsh/zpty
    zpty typed zsh -f -i
    zpty -w typed ${quoted(setup)}
    repeat 200; do [[ -e $DAYSTAVE_OUT.ready ]] && break; sleep 0.05; done
    sleep 0.2
    zpty -n -w typed "$DAYSTAVE_LINE"$'\\C-x'
    repeat 200; do [[ -e $DAYSTAVE_OUT ]] && break; sleep 0.05; done
    zpty -d typed`;
  spawnSync("zsh", ["-f", "-c", driver], {
    cwd,
    timeout: 30_000,
    env: { ...process.env, DAYSTAVE_SCRIPT: script, DAYSTAVE_OUT: out, DAYSTAVE_LINE: line, TERM: "dumb" },
  });
  return existsSync(out) ? readFileSync(out, "utf8") : "";
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
