import fc from "fast-check";
import { expect, test } from "vitest";
import { playedEntry } from "../../server/history/played.ts";
import { PlayedLines } from "../../server/history/played-lines.ts";
import { Journal } from "../../server/journal/journal.ts";
import { readEntry } from "../../server/journal/read-entry.ts";
import { createDocument } from "../../server/syntax/document.ts";
import { parseLine } from "../../server/syntax/parse-line.ts";
import { PartMemo } from "../../server/syntax/parts.ts";
import { MANY } from "../support/random-runs.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// Lines are read for the history by what was read before. Here that is held against reading every line in full.

const URI = "file:///journal/journal.practice";
const HEAD = [
  "instrument alto recorder",
  'instrument "wooden flute": D4 to B5',
  'piece "Ground in G minor" as Ground: G minor, 96 bars, goal half=48',
  'study "Daily study" as Set: D minor',
  'pattern "zigzag": 1 3 2 4',
  "note value 8ths",
  "usual articulation slurred",
].join("\n");

/** What the line says, read by itself with a memo of its own. */
function inFull(journal: Journal, text: string): unknown {
  const { vocabulary } = journal;
  const line = parseLine(text, { vocabulary, memo: new PartMemo(), head: false });
  if (line.type === "entry")
    return { type: "entry", entry: playedEntry(readEntry(line, 0, vocabulary), journal.conventions(URI)) };
  return line.type;
}

/** As far as they can be compared: frames by their type alone. */
function shown(journal: Journal, played: PlayedLines, text: string): unknown {
  const read = played.read(text);
  if (read?.type === "entry") return read;
  const full = inFull(journal, text);
  const frame = ["day", "session", "break", "plan", "rest"].includes(full as string);
  if (full === "phase") return read === undefined || read.type === "phase" ? full : read;
  if (typeof full !== "string") return read;
  return (read === undefined) === frame ? full : { read, full };
}

const outcome = fc.constantFrom(
  "",
  " clean",
  " clean 4 of 5",
  " clean 5 in a row",
  " tense",
  " nearly",
  " 3 times",
  " 5x",
  " min",
  " clean tense",
  " slurred",
  " 20 min",
  " bars",
  " quarter",
  " cleen",
);
const figure = fc.constantFrom("60", "63", "19", "400", "120", "7", "60-72", "66.5", "060", "1000");
const tempo = fc.tuple(figure, outcome).map((parts) => parts.join(""));
const opening = fc.tuple(
  fc.constantFrom("", "  ", "\t", "- ", "-- "),
  fc.constantFrom(
    ...SCALE_SUBJECTS,
    ...CHORD_SUBJECTS,
    "Ground",
    '"Ground in G minor"',
    "Set",
    "long tones on F4",
    "stretching",
    "D mjor",
  ),
  fc.array(fc.constantFrom(...TERMS, "8ths", "sung", "20 min", "done", "clean", "bars 1-8", "mvt 2"), { maxLength: 3 }),
);
const line = fc
  .tuple(
    opening,
    fc.constantFrom(", ", " ", ": ", ", 8ths ", ", 16ths ", ", clean, ", ", half="),
    fc.constantFrom("at ", "at ", "at ", "at quarter=", ""),
    fc.array(tempo, { minLength: 1, maxLength: 4 }),
    fc.constantFrom(", ", ", ", "; ", " "),
    fc.constantFrom(
      "",
      "",
      ", focus ease",
      ", focus the left hand",
      ", slurred",
      ", 20 min",
      ", done",
      ", sore thumb",
      ",",
    ),
    fc.constantFrom("", "", " -- a remark at 60 clean", " --", " – at 72", ' "'),
  )
  .map(
    ([[indent, subject, terms], joint, at, tempos, between, ending, tail]) =>
      indent + [subject, ...terms].join(", ") + joint + at + tempos.join(between) + ending + tail,
  );

test.each([
  ["with names that are told by their words", HEAD],
  ["with a name that holds a number", `${HEAD}\nphase "round 60"\npiece "Study 60" as Sixty 60: G minor`],
])(
  "a line read by what was read before says what it says by itself: %s",
  (_, head) => {
    const journal = new Journal("file:///journal", new Map([[URI, createDocument(head)]]));
    const played = new PlayedLines(journal.partContext, journal.conventions(URI));
    const check = (text: string) => {
      const full = inFull(journal, text);
      expect(shown(journal, played, text), text).toEqual(full);
    };
    for (const text of WHOLE_LINES) check(text);
    fc.assert(fc.property(line, check), { seed: 21, numRuns: MANY });
  },
  30_000,
);

test("entries in their usual order are read by their figures alone", () => {
  const journal = new Journal("file:///journal", new Map([[URI, createDocument(HEAD)]]));
  const played = new PlayedLines(journal.partContext, journal.conventions(URI));
  const lines = [60, 63, 66].map(
    (bpm) => `  D minor, thirds, 8ths at ${bpm} clean 4 of 5, ${bpm + 4} tense, focus ease -- x`,
  );
  expect(lines.map((text) => played.read(text))).toMatchObject(
    [120, 126, 132].map((rate) => ({
      type: "entry",
      entry: {
        attempts: [
          { rate, reached: true, count: 5 },
          { rate: rate + 8, reached: false, count: 1 },
        ],
      },
    })),
  );
});
