import manifest from "../../package.json";
import { CODES, type Code, MEANINGS } from "../../server/checks/codes.ts";
import { EXPLAIN_COLUMNS } from "../../server/cli/check/explain-columns.ts";
import { COMMANDS } from "../../server/cli/commands.ts";
import { EXPORT_COLUMNS } from "../../server/cli/export/export-columns.ts";
import { daystave } from "../cli/command-line.ts";
import { ROOT, textOf } from "./source.ts";

/** The pages in which something is generated. */
export const GENERATED = ["README.md", "syntaxes/COMMAND-LINE.md", "syntaxes/DIAGNOSTICS.md"];

/** Where the commands of the pages are run. */
const SAMPLE = `${ROOT}samples/quickstart`;

/** A page with everything that is generated in it made anew: tables between their marks, what commands print, the hook. */
export async function generated(page: string): Promise<string> {
  let text = page;
  for (const [name, rows] of Object.entries(TABLES)) {
    const [open, close] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
    text = text.replace(
      new RegExp(`${open}\n[\\s\\S]*?${close}`),
      () => `${open}\n\n${markdownTable(rows())}\n\n${close}`,
    );
  }
  text = text.replace(/```sh\n[\s\S]*?```/, () => `\`\`\`sh\n${hook()}\`\`\``);
  for (const { 0: block, 1: line } of text.matchAll(CONSOLE)) {
    const fresh = `\`\`\`console\n$ ${line}\n${await outputOf(line!)}\`\`\``;
    text = text.replace(block, () => fresh);
  }
  return text;
}

export const CONSOLE = /```console\n\$ (.*)\n[\s\S]*?```/g;

type Rows = readonly (readonly string[])[];

export const TABLES: Readonly<Record<string, () => Rows>> = {
  "editor commands": () => [
    ["command", "identifier", "does"],
    ...manifest.contributes.commands.map(({ command, category, title }) => [
      `**${category}: ${title}**`,
      `\`${command}\``,
      DOES[command] ?? "",
    ]),
  ],
  settings: () => [
    ["setting", "values", "default", "what it says"],
    ...Object.entries(manifest.contributes.configuration.properties as Readonly<Record<string, Setting>>).map(
      ([name, setting]) => [
        `\`${name}\``,
        setting.enum?.map((value) => `\`${value}\``).join(", ") ?? setting.type,
        setting.default === "" ? "empty" : `\`${setting.default}\``,
        setting.markdownDescription ?? setting.description ?? "",
      ],
    ),
  ],
  "command line": () => [
    ["command", "does"],
    ...COMMANDS.map(({ usage, summary }) => [
      usage.map((each) => `\`daystave ${each.replaceAll("|", "\\|")}\``).join("<br>"),
      summary,
    ]),
  ],
  "fields of a line": () => fields(EXPLAIN_COLUMNS),
  "columns of attempts": () => fields(EXPORT_COLUMNS),
  diagnostics: () => [
    ["code", "severity", "what it means"],
    ...Object.entries(CODES).map(([code, severity]) => {
      return [`[\`${code}\`](FORMAT.md#${anchorOf(code)})`, severity, MEANINGS[code as Code]];
    }),
  ],
};

function fields(columns: Readonly<Record<string, string>>): Rows {
  return [["name", "holds"], ...Object.entries(columns).map(([name, holds]) => [`\`${name}\``, holds])];
}

interface Setting {
  readonly type: string;
  readonly default: unknown;
  readonly enum?: readonly string[];
  readonly description?: string;
  readonly markdownDescription?: string;
}

/** The manifest has no place for more than a title. */
const DOES: Readonly<Record<string, string>> = {
  "daystave.newDay": "starts today: its day line, and the cursor below it; where today stands already, goes to its end",
  "daystave.newDayWithPhases": "the same with the phases of the last session and their minutes, to be filled in",
  "daystave.repeatFaster":
    "copies the entry at the cursor below it, its last tempo one metronome step up, outcomes and remarks left off; an entry of an earlier day goes into today where there is one",
  "daystave.repeatSlower": "the same one metronome step down",
  "daystave.writeNotes":
    "writes the notes of the scale or arpeggio at the cursor behind a colon, in the span, pattern and direction stated",
  "daystave.isolateStep":
    "puts an entry below the one at the cursor that practises its hardest step by itself; for recorders with baroque fingering",
  "daystave.goToLastTime":
    "goes to the line, in whichever file, where the exercise at the cursor was last played before",
  "daystave.showPreview": "shows the weeks of every exercise of the journal at the side",
};

/** The heading of its section; `prose` is also the heading of a kind of line, further up. */
function anchorOf(code: string): string {
  return code === "prose" ? "prose-1" : code;
}

/** The hook that test/cli/bundle.test.ts runs. */
function hook(): string {
  return /const HOOK = `([^`]*)`;/.exec(textOf("test/cli/bundle.test.ts"))![1]!;
}

/**
 * What a command line prints in the sample, errors after the rest; `echo "…" |` may stand before it. Today is
 * 2026-03-10.
 */
async function outputOf(line: string): Promise<string> {
  const [, stdin = "", command] = /^(?:echo "([^"]*)" \| )?daystave (.*)$/.exec(line)!;
  const argv = [...command!.matchAll(/"([^"]*)"|(\S+)/g)].map(([, words, word]) => words ?? word!);
  const { stdout, stderr } = await daystave(argv, { cwd: SAMPLE, stdin: stdin && `${stdin}\n` });
  return (stdout + stderr).replaceAll("\r\n", "\n"); // a table ends its lines in CR LF, a page does not
}

function markdownTable(rows: Rows): string {
  const [head, ...body] = rows.map((cells) => `| ${cells.join(" | ")} |`);
  return [head, `|${" --- |".repeat(rows[0]!.length)}`, ...body].join("\n");
}
