import { CODES, type Code, MEANINGS } from "../../server/checks/codes.ts";
import { EXPLAIN_COLUMNS } from "../../server/cli/check/explain-columns.ts";
import { anchorOf } from "../../server/cli/check/sarif-rules.ts";
import { COMMANDS } from "../../server/cli/commands.ts";
import { ALL_COLUMNS, EXPORT_COLUMNS } from "../../server/cli/export/export-columns.ts";
import { daystave } from "../cli/command-line.ts";
import { manifest } from "../support/manifest.ts";
import { ROOT } from "./source.ts";

/** The pages in which something is generated. */
export const GENERATED = [
  "README.md",
  "syntaxes/COMMAND-LINE.md",
  "syntaxes/COMMANDS.md",
  "syntaxes/DIAGNOSTICS.md",
  "syntaxes/SETTINGS.md",
];

/** Where the commands of the pages are run. */
const SAMPLE = `${ROOT}samples/quickstart`;

/** A page with everything that is generated in it made anew: tables between their marks, and what commands print. */
export async function generated(page: string): Promise<string> {
  let text = page;
  for (const [name, rows] of Object.entries(TABLES)) {
    const [open, close] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
    text = text.replace(
      new RegExp(`${open}\n[\\s\\S]*?${close}`),
      () => `${open}\n\n${markdownTable(rows())}\n\n${close}`,
    );
  }
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
        setting.enum?.map((value) => `\`${value}\``).join(", ") ?? valuesOf(setting),
        setting.default === "" || setting.default === null ? "empty" : `\`${setting.default}\``,
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
  "columns of attempts": () => fields({ ...EXPORT_COLUMNS, ...ALL_COLUMNS }),
  diagnostics: () => [
    ["code", "severity", "what it means"],
    ...Object.entries(CODES).map(([code, severity]) => {
      return [`[\`${code}\`](FORMAT.md#${anchorOf(code as Code)})`, severity, MEANINGS[code as Code]];
    }),
  ],
};

function fields(columns: Readonly<Record<string, string>>): Rows {
  return [["name", "holds"], ...Object.entries(columns).map(([name, holds]) => [`\`${name}\``, holds])];
}

interface Setting {
  readonly type: string | readonly string[];
  readonly default: unknown;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly description?: string;
  readonly markdownDescription?: string;
}

/** `string`, `number from 5 to 600`. */
function valuesOf({ type, minimum, maximum }: Setting): string {
  const name = [type].flat().find((each) => each !== "null")!;
  return minimum === undefined || maximum === undefined ? name : `${name} from ${minimum} to ${maximum}`;
}

/** The manifest has no place for more than a title. */
const DOES: Readonly<Record<string, string>> = {
  "daystave.newJournal": "begins a journal in a new file, with today's day line; also under _File > New File..._",
  "daystave.openSample":
    "opens a sample to try things on, as a text of its own that is saved nowhere unless you save it",
  "daystave.newDay": "starts today: its day line, with the cursor below it; if today is already there, goes to its end",
  "daystave.newDayWithPhases": "the same with the phases of the last session and their minutes, ready to fill in",
  "daystave.writePlan":
    "asks how many minutes you have, and writes a plan for today into the journal: in today's place if you have not begun, else below what you played; if planned lines are waiting there already, goes to the first",
  "daystave.repeatFaster":
    "copies the entry at the cursor below it, a notch faster than it was last reached, outcomes and remarks left off; an entry of an earlier day goes into today, which is begun if need be",
  "daystave.repeatSlower": "the same, a notch slower than its last tempo",
  "daystave.writeNotes":
    "writes the notes of the scale or arpeggio at the cursor after a colon, in the span, pattern and direction stated",
  "daystave.fingerChange":
    "puts an entry below the one at the cursor, or into today if that one is of an earlier day, that practises its hardest finger change by itself; for recorders with baroque fingering",
  "daystave.goToLastTime":
    "goes to the line, in whichever file, where the exercise at the cursor was last played before",
  "daystave.exportExercise": "writes the exercise at the cursor into a MIDI or MusicXML file, which you name",
  "daystave.printSheet":
    "saves a page with staves and room for a pencil, of what is planned today or of the exercises of this week",
  "daystave.keepBothSides":
    "settles the conflicts that a merge left in the file: days in order, a line that both sides have once; in a conflict, `Ctrl+.` also offers one side alone",
  "daystave.declareTitle":
    "declares the piece of the line at the cursor, which the journal knows by its title alone, in `journal.practice` or above the days; with the short name that you write",
  "daystave.respell":
    "spells the entry at the cursor otherwise, with its notes, signature and span: F# major as Gb major, D# major as Eb major; it sounds the same",
  "daystave.moveYear":
    "asks which year, and moves its days out of this file into `2025.practice` or the like beside it; for years that are over",
  "daystave.changeNames":
    "asks for a language, and names the notes and keys of the journal in it, in all its files, with `names` declared; every line is read as before",
  "daystave.showPreview": "shows the weeks of every exercise in the journal at the side",
  "daystave.showPupils":
    "shows a teacher, at the side, what each journal of the workspace has set, played and asked; for two journals or more",
  "daystave.stayWithJournal":
    "in the preview's own menu: it stays with its journal, whichever is looked at in the editor; _Show Preview_ then opens another for another journal",
  "daystave.followText": "in the preview's own menu: it follows the journal in the editor again",
};

/**
 * What a command line prints in the sample, errors after the rest; `echo "…" |` may stand before it, and `| grep …`
 * after it. Today is 2026-03-10.
 */
async function outputOf(line: string): Promise<string> {
  const [, stdin = "", command, sought] = /^(?:echo "([^"]*)" \| )?daystave (.*?)(?: \| grep (\S+))?$/.exec(line)!;
  const argv = [...command!.matchAll(/"([^"]*)"|(\S+)/g)].map(([, words, word]) => words ?? word!);
  const { stdout, stderr } = await daystave(argv, { cwd: SAMPLE, stdin: stdin && `${stdin}\n` });
  const lines = (stdout + stderr).replaceAll("\r\n", "\n"); // a table ends its lines in CR LF, a page does not
  return sought === undefined ? lines : lines.replace(/.*\n/g, (each) => (each.includes(sought) ? each : ""));
}

function markdownTable(rows: Rows): string {
  const [head, ...body] = rows.map((cells) => `| ${cells.join(" | ")} |`);
  return [head, `|${" --- |".repeat(rows[0]!.length)}`, ...body].join("\n");
}
