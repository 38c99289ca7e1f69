import fc from "fast-check";
import type { Location } from "../../../server/features/navigation/named.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { titleLine } from "../title-lines.ts";

// Invented journals of three files in several hands, in which things have names.

export const ROOT = "file:///journal";
export const FILES = ["journal.practice", "a.practice", "b.practice"].map((name) => `${ROOT}/${name}`);

const HEAD = [
  'piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84',
  'study "Evening study no. 2": D minor',
  'piece "Für den Regen 🌧" as Regen: F major',
  'pattern "zigzag": 1 3 2 4, step 2',
  'scale "ragged": 1 2 b3 4 5 b6 7',
  'articulation "ghosted": mixed',
  'outcome "on its way": reached',
  'phase "dance band"',
  'activity "copying parts"',
  'focus "left thumb"',
  'instrument "my flute": D4 to B5',
  'aim "Ground in G minor", bars 1-8, at 96 by 2026-12-31',
  "aim D minor, thirds, 8ths at 96",
  'set "clap line 4, then say it" by 2026-03-09',
  'movement "Ground in G minor" 2 "Air": C major',
  'concert "Harvest evening" on 2026-09-12: "Ground in G minor"',
];

const NAMED = [
  "Ground, bars 1-8, at 60 clean",
  "ground, mvt 2, slow",
  "GROUND, at 60",
  '"Ground in G minor", at 66',
  "“Ground in G minor”, bars 5-8, 10 min",
  "Ground in G minor, at 72 clean",
  "Evening study no. 2, page 4, at 50",
  "Regen, at 60 🌧 clean",
  '"Für den Regen 🌧", slow',
  'C major, "zigzag", slurred, 8ths at 60 clean',
  "C major, “Zigzag”, at 66",
  '"ragged" on D, thirds, slow',
  "D minor, ghosted, at 60 on its way, 66 clean",
  "same, 72 on its way",
  "dance band: 40 min, with the neighbours",
  "Dance band",
  "copying parts, 10 min",
  "F major, on my flute, focus left thumb, at 60",
  'done "clap line 4, then say it"',
  "D minor, thirds, 8ths at 60 clean, 66",
  "Curtsey, bars 1-8, at 60 clean",
  "CURTSEY, at 60",
  "curtsey, bars 1-8, at 60",
];

const line = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...NAMED) },
  { weight: 3, arbitrary: titleLine },
  { weight: 1, arbitrary: fc.constantFrom("-- Ground is hard", "", "plan", "warm-up, 5 min", "Lovely tone today.") },
);
const day = fc
  .tuple(
    fc.constantFrom("2026-03-02", "2026-03-02", "2026-03-03", "2026-03-09 Mon", "2025-12-31"),
    fc.array(line, { minLength: 1, maxLength: 5 }),
  )
  .map(([date, lines]) => [date, ...lines.map((each) => `  ${each}`), ""]);

/** The texts of a journal, each file with its own line end. */
export const journalTexts: fc.Arbitrary<readonly string[]> = fc
  .tuple(
    fc.subarray(HEAD),
    fc.array(day, { maxLength: 3 }),
    fc.array(day, { maxLength: 3 }),
    fc.array(fc.constantFrom("\n", "\r\n", "\r"), { minLength: 3, maxLength: 3 }),
  )
  .map(([head, a, b, ends]) =>
    [head, a.flat(), b.flat()].map((lines, i) => lines.map((each) => each + ends[i]).join("")),
  );

export function journalOf(texts: readonly string[]): Journal {
  return new Journal(ROOT, new Map(texts.map((text, i) => [FILES[i]!, createDocument(text)])));
}

/** What stands at a place of one line. */
export function textAt(journal: Journal, { uri, range }: Location): string {
  const { blocks } = journal.files.get(uri)!;
  const lines = blocks.flatMap((block) => block.lines);
  return lines[range.start.line]!.slice(range.start.character, range.end.character);
}
