import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { completionsAt, explainCompletion } from "../../../server/features/completion/completion.ts";
import type { CompletionItem } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { INSTRUMENTS } from "../../../server/music/instruments/instruments.ts";
import { createDocument, lineAt, type Position } from "../../../server/syntax/document/document.ts";
import scales from "../../reference/scales.json" with { type: "json" };
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-03-09")!;

/** Invented. */
const MARKER = `player Noor
instrument alto recorder
instrument tenor recorder
piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09
movement "Ground in G minor" 2 "Air": C major
study "Daily thirds no. 3": D minor
aim E minor melodic, thirds, 8ths at 96 by 2026-04-30
pattern "zigzag": 1 3 2 4
scale "double harmonic": 1 b2 3 4 5 b6 7
focus "left thumb"
phase "market band"
`;
const LAST_DAYS = `2026-03-02 Mon, 50 min
groundwork, 15 min
  D minor melodic, thirds, top down, tongued, 8ths at 60 clean, 66 clean 5 in a row, 72 uneven, focus finger changes
  Ground, bars 17-32, at 70 clean

2026-03-05 Thu
  G minor arpeggio, slurred, at 54 clean

`;

interface Typed {
  readonly journal: Journal;
  readonly uri: string;
  readonly text: string;
  readonly position: Position;
}

/** The line at the cursor mark, in a day of its own behind two others. */
function typing(marked: string, before = `${LAST_DAYS}2026-03-06 Fri\n`, uri = "file:///journal/week.practice"): Typed {
  const text = before + marked.replace("‸", "");
  const lines = (before + marked.split("‸")[0]!).split("\n");
  const files = new Map([
    ["file:///journal/journal.practice", createDocument(MARKER)],
    [uri, createDocument(text)],
  ]);
  const position = { line: lines.length - 1, character: lines.at(-1)!.length };
  return { journal: new Journal("file:///journal", files), uri, text, position };
}

function offered({ journal, uri, position }: Typed): readonly CompletionItem[] {
  return completionsAt(journal, uri, position, TODAY);
}

function labels(marked: string, before?: string, uri?: string): string[] {
  return offered(typing(marked, before, uri)).map(({ label }) => label);
}

/** What is offered first, in its order; with `…` at the end there may be more. */
function check(marked: string, expected: readonly string[], before?: string, uri?: string): void {
  const found = labels(marked, before, uri);
  const open = expected.at(-1) === "…";
  const wanted = open ? expected.slice(0, -1) : expected;
  expect(open ? found.slice(0, wanted.length) : found).toEqual(wanted);
}

/** The line after the item with a label was taken. */
function checkTaken(marked: string, label: string, expected: string): void {
  const typed = typing(marked);
  const item = offered(typed).find((each) => each.label === label);
  expect(item, `${label} is offered at ${marked}`).toBeDefined();
  const after = edited(typed.text, [item!.edit]);
  expect(after.split("\n")[typed.position.line]).toBe(expected);
}

function checkOffered(marked: string, expected: readonly string[], absent: readonly string[] = []): void {
  const found = labels(marked);
  expect(found).toEqual(expect.arrayContaining([...expected]));
  for (const label of absent) expect(found).not.toContain(label);
}

test("a tonic is followed by kinds, and both are replaced together", () => {
  check("  D harm‸", ["D harmonic minor", "D harmonic major"]);
  check("  D ‸", [
    "D minor melodic",
    "D minor arpeggio",
    "D major",
    "D natural minor",
    "D minor",
    "D harmonic minor",
    "…",
  ]);
  check("  G min‸", ["G minor arpeggio", "G minor melodic", "G minor natural", "G minor", "G minor harmonic", "…"]);
  checkOffered("  A ‸", ["A major", "A dorian", "A whole-tone", "A dominant seventh", '"double harmonic" on A']);
  checkTaken("  D harm‸", "D harmonic minor", "  D harmonic minor");
  checkTaken("  D harm‸, slurred", "D harmonic minor", "  D harmonic minor, slurred");
  checkTaken("  D har‸monic minor, slurred", "D harmonic minor", "  D harmonic minor, slurred");
  checkTaken("  - D harm‸", "D harmonic minor", "  - D harmonic minor");
});

test("a letter alone also stands for its flat and its sharp in the usual keys, below its own; a space says that it is none of them", () => {
  const found = labels("  E‸");
  expect(found.indexOf("Eb major")).toBeGreaterThan(found.indexOf("E diminished seventh"));
  // Eleven sharps, eight: theoretical keys.
  checkOffered("  E‸", ["Eb natural minor"], ["E# major", "E# natural minor"]);
  checkOffered("  E ‸", ["E major"], ["Eb major"]);
  checkOffered("  Eb‸", ["Eb major"], ["E major"]);
});

test("what is typed of the tonic stays as it is typed", () => {
  checkTaken("  F♯ mel‸", "F♯ melodic minor", "  F♯ melodic minor");
  checkTaken("  B♭ ma‸", "B♭ major", "  B♭ major");
  checkTaken("  f sharp dor‸", "f sharp dorian", "  f sharp dorian");
  checkTaken("  Ebb ly‸", "Ebb lydian", "  Ebb lydian");
  expect(labels("  C4 ‸")).toEqual([]);
});

test("a subject comes as the journal wrote it last, and with the tonic that stands", () => {
  const before = `2026-03-05 Thu\n  F# minor melodic, slow\n\n2026-03-06 Fri\n`;
  check("  F♯ m‸", ["F♯ minor melodic", "…"], before);
});

test("in an empty line of a day that indents its entries, what was practised lately comes first", () => {
  check("  ‸", ["G minor arpeggio", "D minor melodic", "Ground", "…"]);
  checkOffered("  ‸", ["E melodic minor", '"Daily thirds no. 3"', "groundwork", "long tones on", "sight-reading"]);
});

test("subjects of aims are offered with their date", () => {
  const item = offered(typing("  E mel‸"))[0];
  expect(item).toMatchObject({ label: "E melodic minor", detail: "aim, by 2026-04-30" });
});

test("at the beginning of a line in a day stand phases too, those that it has not last", () => {
  check("gr‸", [
    "Ground",
    "groundwork",
    "graces",
    "grace notes",
    "grips",
    "gruppetti",
    "grooves",
    "grip exercise",
    "growl",
    "group practice",
    "grade exam",
  ]);
  check("ma‸", ["market band", "martelé exercise", "manual changes", "mallet permutations", "mallet rolls", "…"]);
  check("warmu‸", ["warm-up"]);
  const inDay = `${LAST_DAYS}2026-03-06 Fri\nwarm-up, 5 min\n`;
  const phases = labels("‸", inDay).filter((label) => ["warm-up", "groundwork", "pieces"].includes(label));
  expect(phases).toEqual(["groundwork", "pieces", "warm-up"]);
});

test("titles by their short names, in quotes where they have none", () => {
  check("  Gr‸", [
    "Ground",
    "groundwork",
    "graces",
    "grace notes",
    "grips",
    "gruppetti",
    "grooves",
    "grip exercise",
    "growl",
    "group practice",
    "grade exam",
  ]);
  check("  Dai‸", ['"Daily thirds no. 3"']);
  checkTaken('  "Gr‸"', "Ground", "  Ground");
  checkTaken("  “Dai‸”, slow", '"Daily thirds no. 3"', "  “Daily thirds no. 3”, slow");
  checkTaken('  "Dai‸', '"Daily thirds no. 3"', '  "Daily thirds no. 3"');
});

test("behind a comma: first what this exercise had, then what the journal used, then the rest", () => {
  check("  D minor melodic, ‸", ["top down", "8ths", "tongued", "thirds", "focus finger changes", "slurred", "…"]);
  checkOffered("  D minor, ‸", ["thirds", '"zigzag"', "2 octaves", "slurred", "t-k", "dotted", "16ths", "by heart"]);
  check("  D minor, thi‸", ["thirds", "thirty seconds"]);
  checkTaken("  D minor, in thi‸", "in thirds", "  D minor, in thirds");
  checkTaken("  D minor, cro‸", "crotchets", "  D minor, crotchets");
  checkTaken("  D minor thi‸ slurred", "thirds", "  D minor thirds slurred");
});

test("a term that the line has already is not offered again", () => {
  checkOffered(
    "  D minor, thirds, slurred, 8ths, ‸",
    ["top down"],
    ["thirds", "fourths", '"zigzag"', "slurred", "tongued", "16ths"],
  );
  checkOffered("  D minor, ‸, thirds, focus tuning", ["slurred"], ["fourths", "focus tuning", "focus ease"]);
  checkOffered("  D minor, slurred at 60 clean, ‸", ["tongued"], ["slurred"]);
  checkOffered("  D minor, slurred up, ‸", ["tongued"], ["slurred"]);
});

test("a tempo starts where this exercise was reached last, in the note value of the line", () => {
  check("  D minor melodic, thirds, 8ths ‸", ["at 66", "…"]);
  check("  D minor melodic, thirds, 16ths at ‸", ["at 33", "at sight"]);
  check("  D minor melodic, thirds, 8ths 6‸", ["at 66"]);
  check("  G minor arpeggio, at ‸", ["at 54", "at sight"]);
  check("  Ground, bars 17-32, at ‸", ["at 70", "at sight"]);
  check("  Ground, bars 1-8, 8ths at ‸", ["at 60", "at sight"]);
  const item = offered(typing("  D minor melodic, thirds, 8ths at ‸"))[0];
  expect(item).toMatchObject({ label: "at 66", detail: "last reached 2026-03-02" });
});

test("a tempo is answered by an outcome, an outcome by tries or the next notch; what failed by none above it", () => {
  check("  D minor at 60 ‸", ["clean", "uneven", "easy", "nearly", "rushed", "slips", "tense", "broke down", "…"]);
  check("  D minor at 60 clean ‸", ["5 in a row", "3 in a row", "4 of 5", "…"]);
  check("  D minor at 60 clean, ‸", ["63", "58", "…"]);
  check("  D minor at 60, 63 slips, ‸", ["60", "…"]);
  checkOffered("  D minor at 60 slips, ‸", ["58"], ["63", "at 63"]);
  checkTaken("  D minor at 60 clean, at 6‸", "at 63", "  D minor at 60 clean, at 63");
  checkOffered("  D minor at 60, ‸", ["clean"], ["4 of 5"]);
});

test("what fits comes first: variants of the pattern, places of a title, halves of an articulation", () => {
  check("  D minor, thirds ‸", ["alternating", "…"]);
  checkOffered("  D minor, pedal, ‸", [], ["alternating", "linked"]);
  check("  D minor, growing ‸", ["returning", "…"]);
  check("  D minor, fours, ‸", ["linked", "…"]);
  checkOffered("  D minor, triads, ‸", ["alternating", "broken"], ["returning", "linked"]);
  checkOffered("  D minor, triads, broken, ‸", [], ["alternating", "broken"]);
  checkOffered("  D minor, ‸", [], ["alternating", "returning", "linked", "broken"]);
  checkOffered('  D minor, "zigzag", ‸', [], ["alternating", "returning", "linked", "broken"]);
  check("  Ground, ‸", ["bars 17-32", "mvt 2", "from the top", "…"]);
  checkOffered("  Ground, ‸", ["by heart"], ["thirds", "2 octaves", "1st inversion"]);
  checkOffered("  D minor arpeggio, ‸", ["1st inversion"], ["from the top"]);
  expect(labels("  D minor, slurred ‸").slice(0, 2)).toEqual(["up", "down"]);
  check("  notes E5 F5, back‸", ["back and forth"]);
});

test("leaps are a pattern without a direction or a variant; behind a colon stands the day's order", () => {
  checkOffered("  D minor, lea‸", ["leaps"]);
  checkOffered("  D minor, leaps, ‸", ["2 octaves", "slurred"], ["up", "top down", "alternating", "thirds"]);
  checkOffered("  D minor, leaps, slurred ‸", [], ["up", "down"]);
  const items = offered(typing("  C major, leaps: ‸", "2026-03-02 Mon\n"));
  // The order is this project's own: test/music/patterns/leaps.test.ts.
  expect(items.slice(0, 2).map(({ label, detail }) => [label, detail])).toEqual([
    ["C A F D B G C E C", "in the order of 2026-03-02"],
    ["no accidentals", "signature"],
  ]);
});

test("instruments behind `on`, the journal's own first; what to listen for behind `focus`", () => {
  check("  D minor, on ‸", ["on tenor recorder", "…"]);
  check("  D minor, on des‸", ["on descant recorder"]);
  check("  D minor, on Eng‸", ["on English horn"]);
  expect(labels("  D minor, on ‸")).not.toContain("on alto recorder");
  check("  D minor, focus ‸", [
    "focus finger changes",
    "focus ease",
    "focus sound",
    "focus tuning",
    "focus evenness",
    "focus tonguing",
    "focus breath",
    "focus rhythm",
    "focus right notes",
    "focus high notes",
    "focus half holes",
    "focus phrasing",
    "focus left thumb",
  ]);
  checkTaken("  D minor, focus finger ch‸", "focus finger changes", "  D minor, focus finger changes");
});

test("long tones, activities and chains go on with scales", () => {
  check("  long tones on D har‸", ["D harmonic minor", "D harmonic major"]);
  check("  improvising on D har‸", ["D harmonic minor", "D harmonic major"]);
  check("  C major > D har‸", ["D harmonic minor", "D harmonic major"]);
});

test("behind a colon stand the notes over the span and the pattern, the signature and the steps", () => {
  check("  F# major: ‸", [
    "F# G# A# B C# D# E# F#",
    "F# G# A# B C# D# E# F# E# D# C# B A# G# F#",
    "6 sharps",
    "steps T T S T T T S",
  ]);
  checkTaken("  F♯ major:‸", "6 sharps", "  F♯ major:6 sharps");
  checkTaken("  F♯ major: F♯ G♯‸", "F♯ G♯ A♯ B C♯ D♯ E♯ F♯", "  F♯ major: F♯ G♯ A♯ B C♯ D♯ E♯ F♯");
  check("  D minor melodic, top down: ‸", ["D C Bb A G F E D E F G A B C# D", "1 flat", "steps T S T T T T S"]);
  check("  C major, thirds, five notes: ‸", ["C E D F E G", "C E D F E G G E F D E C", "…"]);
  check("  G minor arpeggio: ‸", ["G Bb D G", "G Bb D G D Bb G", "2 flats"]);
  check("  D major, notes: F‸", []);
});

// test/reference/scales.json: GNU LilyPond 2.24.1's scales, transposed by it.
test("every scale that is offered behind a colon is LilyPond's", () => {
  for (const [mode, kind] of [
    ["major", "major"],
    ["minor", "natural minor"],
  ] as const) {
    for (const { tonic, scales: written } of scales[mode].filter(({ standard }) => standard)) {
      const { up, down } = Object.values(written)[0]!;
      const plain = (notes: readonly string[]): string => notes.map((note) => note.replace(/\d$/, "")).join(" ");
      check(`  ${tonic} ${kind}: ‸`, [plain(up), `${plain(up)} ${plain(down.slice(1))}`, "…"]);
    }
  }
});

test("remarks and prose get nothing", () => {
  for (const marked of ["-- D harm‸", "  D minor -- fo‸", "  -- ? D ‸", "‸-- D minor", "-‸- D"]) check(marked, []);
  for (const marked of ["Felt ‸", "Felt tense to‸", "Slow day, t‸", "Sound freer ‸", "Fe‸lt tense today", "T‸ired"])
    check(marked, []);
});

test("a day line takes its own weekday, minutes, a plan or a rest", () => {
  check("2026-03-07 ‸", ["Sat", "50 min", "5 min", "…"], LAST_DAYS);
  check("2026-03-07 s‸", ["Sat"], LAST_DAYS);
  check("2026-03-07 Sat, 30 min, ‸", ["rest", "plan"], LAST_DAYS);
  check("2026-03-07 Sat, rest, ‸", [], LAST_DAYS);
});

test("a phase takes minutes and a plan", () => {
  check("groundwork, ‸", ["15 min", "5 min", "10 min", "20 min", "30 min", "45 min", "plan"]);
  check("groundwork, 15 min, ‸", ["plan"]);
});

test("behind the last day a new one is offered: today and tomorrow", () => {
  check("‸", ["2026-03-09 Mon", "2026-03-10 Tue", "…"], LAST_DAYS);
  check("2026‸", ["2026-03-09 Mon", "2026-03-10 Tue", "2026-03-09 Mon, groundwork"], LAST_DAYS);
  check("2026-03-1‸", ["2026-03-10 Tue"], LAST_DAYS);
  check("2‸", ["2026-03-10 Tue", "…"], `${LAST_DAYS}2026-03-09 Mon\n  D minor, slow\n\n`);
  expect(labels("‸", `${LAST_DAYS}2026-03-09 Mon\n  D minor, slow\n\n`).at(-1)).toBe("2026-03-10 Tue");
  expect(labels("‸\n2026-03-07 Sat", LAST_DAYS)).not.toContain("2026-03-09 Mon");
});

test("where the newest day stands first, a new one goes above it", () => {
  const newestFirst = "‸\n2026-03-08 Sun\n  D minor, slow\n\n2026-03-07 Sat\n  D minor, slow\n";
  check(newestFirst, ["2026-03-09 Mon", "2026-03-10 Tue", "…"], "-- newest first\n\n");
});

test("instruments that entries name come first, then those of the recorder family, then the others", () => {
  const used = "2026-03-08\nD minor, on harp, slow\n2026-03-09\n";
  const found = labels("  D minor, on ‸", used);
  const instruments = found.filter((label) => label.startsWith("on "));
  expect(instruments.slice(0, 4)).toEqual([
    "on harp",
    "on tenor recorder",
    "on garklein recorder",
    "on sopranino recorder",
  ]);
  const others = instruments.slice(2).map((label) => INSTRUMENTS.find(({ id }) => `on ${id}` === label)!.family);
  expect(others.lastIndexOf("recorder")).toBe(8 - 1); // ten, without the two that are declared
  check(`instrument ‸\n${used}`, ["harp", "garklein recorder", "sopranino recorder", "…"], "");
});

test("an instrument is explained by its range and how it sounds", () => {
  const typed = typing("  D minor, on soprano rec‸");
  const [item] = offered(typed);
  expect(explainCompletion(typed.journal, item!.resolve!)).toBe(
    "Soprano recorder: C4 to D6 as written; it sounds an octave higher.",
  );
});

test("articulations and outcomes that the journal declares are offered where others are", () => {
  const head = 'articulation "ghosted": mixed\noutcome "in the zone": reached\n2026-03-06 Fri\n';
  check("  D minor, gh‸", ["ghosted"], head);
  check("  D minor, at 60 in the z‸", ["in the zone"], head);
  check("  D minor, at 60 in the z‸", [], "2026-03-06 Fri\n");
});

test("in the head stand declarations", () => {
  const head = "player Noor\n";
  check("in‸", ["instrument"], head);
  check("note v‸", ["note value"], head);
  check("instrument ‸", ["garklein recorder", "sopranino recorder", "soprano recorder", "descant", "…"], head);
  const tenors = ["tenor recorder in D", "tenor recorder", "tenor saxophone", "tenor crumhorn", "tenor viol"];
  tenors.push("tenor horn", "tenor trombone");
  check("instrument ten‸", [...tenors, "tenor voice"], head);
  check("instrument tenor s‸", ["tenor saxophone"], head);
  check("instrument descant recorder, ‸", ["baroque fingering", "english fingering", "german fingering"], head);
  check("instrument alto recorder, g‸", ["german fingering"], head);
  check("instrument bassoon, ‸", [], head);
  check("note value 1‸", ["1/4", "1/8", "16ths", "16th triplets", "1/32"], head);
  check("usual articulation sl‸", ["slurred"], head);
  check("names g‸", ["german"], head);
  check("arti‸", ["articulation"], head);
  check("outc‸", ["outcome"], head);
  check('articulation "ghosted": ‸', ["single", "slurred", "mixed", "multiple"], head);
  check('outcome "in the zone": ‸', ["reached", "nearly", "not"], head);
  check('outcome "in the zone": n‸', ["nearly", "not"], head);
  check('outcome "in the zone" ‸', [], head);
  check("pitch ‸", ["A=415", "A=440", "A=442", "A=392", "A=430", "A=466"], head);
  check(
    "pitch A=415, ‸",
    [
      "equal",
      "Vallotti",
      "Young II",
      "Werckmeister III",
      "Kellner",
      "Neidhardt I",
      "Neidhardt II",
      "Kirnberger II",
      "Kirnberger III",
      "sixth-comma meantone",
      "fifth-comma meantone",
      "quarter-comma meantone",
      "Pythagorean",
      "just on C",
    ],
    head,
  );
  check("pitch A=415, v‸", ["Vallotti"], head);
  check("pitch A=415, 1/4‸", ["quarter-comma meantone"], head);
  check("pitch A=415, quarter comma m‸", ["quarter-comma meantone"], head);
  check("pitch A=415, just on B‸", ["just on Bb"], head);
  check("pitch A=415, Vallotti, ‸", [], head);
  check('piece "Air": D har‸', ["D harmonic minor", "D harmonic major"], head);
  check('piece "Air": D minor, ‸', ["goal quarter=", "due 2026-05-04", "from 2026-03-09"], head);
  check('movement "‸', ['"Ground in G minor"', '"Daily thirds no. 3"'], head);
  check('concert "Recital" on 2026-05-09: "Ground in G minor", "D‸"', ['"Daily thirds no. 3"'], head);
});

test("aims and set work go on as entries do", () => {
  check("aim D har‸", ["D harmonic minor", "D harmonic major"], "player Noor\n");
  check("aim D minor melodic, thirds, 8ths at ‸", ["at 60", "at sight"], "player Noor\n");
  check("aim D minor, by ‸", ["by heart", "by ear", "by 2026-04-06"], "player Noor\n");
  check("set D har‸", ["D harmonic minor", "D harmonic major"]);
});

test("an item tells what it is when asked", () => {
  const explain = (marked: string, label: string): string | undefined => {
    const typed = typing(marked);
    const item = offered(typed).find((each) => each.label === label)!;
    return item.resolve && explainCompletion(typed.journal, item.resolve);
  };
  expect(explain("  D har‸", "D harmonic minor")).toBe(
    "The harmonic minor scale: natural minor with the seventh raised, so that three semitones lie below the leading note.\n\n" +
      "Notes: D E F G A Bb C# D  \nSignature: 1 flat (Bb)  \nRelative: F major; parallel: D major  \nSteps: T S T T S A S",
  );
  expect(explain("  D ‸", "D minor")).toContain("`minor` alone means natural minor.");
  expect(explain("  D minor, thi‸", "thirds")).toBe("Thirds: each note and the third above it, 1 3 2 4.");
  expect(explain("  D minor at 60 clean ‸", "4 of 5")).toBe(
    "5 attempts, 4 of them with this outcome; a tempo counts as reached from half of them on.",
  );
  expect(explain("  D minor melodic, thirds, 8ths at ‸", "at 66")).toBe("Metronome: 63 below, 69 above.");
  expect(explain("  Gr‸", "Ground")).toBe(
    "**Ground in G minor**, G natural minor, 96 bars, goal quarter=84, due 2026-05-09",
  );
  expect(explainCompletion(journalOf(""), { topic: "nothing", key: "x" })).toBeUndefined();
  expect(explainCompletion(journalOf(""), { topic: "term", key: "" })).toBeUndefined();
});

/** The columns where prose and remarks stand, by the reading of the whole line. */
function isSilentAt(journal: Journal, uri: string, { line, character }: Position): boolean {
  const document = journal.files.get(uri)!;
  const block = document.starts.findLastIndex((start) => start <= line);
  const read = journal.model(document.blocks[block]!).lines[line - document.starts[block]!]!;
  return read.type === "prose" || (read.remark !== undefined && character >= read.remark.start);
}

function everyPosition(journal: Journal, uri: string, visit: (position: Position, text: string) => void): void {
  const document = journal.files.get(uri)!;
  for (let line = 0; line < document.lineCount; line++) {
    const text = lineAt(document, line);
    for (let character = 0; character <= text.length; character++) visit({ line, character }, text);
  }
}

// test/reference/journals: three invented journals in three ways of typing.
const FOLDERS = readdirSync("test/reference/journals").filter((name) => !name.includes("."));

test.each(FOLDERS)(
  "at every position of the journal %s the items are sound, and remarks and prose are silent",
  (name) => {
    const folder = `test/reference/journals/${name}`;
    const files = new Map(
      readdirSync(folder).map((file) => [
        `file:///j/${file}`,
        createDocument(readFileSync(`${folder}/${file}`, "utf8")),
      ]),
    );
    const journal = new Journal("file:///j", files);
    for (const uri of files.keys()) {
      everyPosition(journal, uri, (position, text) => {
        const items = completionsAt(journal, uri, position, TODAY);
        if (isSilentAt(journal, uri, position)) expect(items).toEqual([]);
        const isSound = ({ edit, label, sortText }: (typeof items)[number]) => {
          const { start, end } = edit.range;
          return (
            [start.line, end.line].every((line) => line === position.line) &&
            !label.includes("\n") &&
            start.character <= position.character &&
            position.character <= end.character &&
            end.character <= text.length &&
            /^\d{9}$/.test(sortText)
          );
        };
        expect(items.filter((item) => !isSound(item))).toEqual([]);
        expect(new Set(items.map(({ label }) => label)).size).toBe(items.length);
      });
    }
  },
);

test("nothing is ever thrown, whatever the text and wherever the cursor", () => {
  const text = fc.oneof(journalText, anyText);
  fc.assert(
    fc.property(text, fc.nat(20), fc.nat(60), (journalled, line, character) => {
      const journal = journalOf(journalled);
      for (const item of completionsAt(journal, URI, { line, character }, TODAY)) {
        if (item.resolve) explainCompletion(journal, item.resolve);
      }
    }),
    { seed: 20260309 },
  );
});

test("a line that a completion was taken in is read as before it, and what stood beside it is untouched", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(
        "  D minor, ‸",
        "  D minor, thirds ‸",
        "  F♯ major, ‸, focus tuning",
        "  Ground, ‸ -- a remark",
        "  ‸",
      ),
      fc.nat(),
      (marked, pick) => {
        const typed = typing(marked);
        const items = offered(typed);
        const item = items[pick % items.length]!;
        const { line } = typed.position;
        const count = item.edit.newText.split("\n").length; // a day with its first phase is two
        const after = edited(typed.text, [item.edit])
          .split("\n")
          .slice(line, line + count)
          .join("\n");
        const [before, behind] = marked.split("‸") as [string, string];
        expect(after.startsWith(before) || item.edit.range.start.character < before.length).toBe(true);
        expect(after.endsWith(behind)).toBe(true);
        expect(after).toContain(item.edit.newText);
      },
    ),
    { seed: 7 },
  );
});
