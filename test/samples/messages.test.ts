import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CODES, type Code } from "../../server/checks/codes.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../server/features/types.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// What is said of each of samples/errors on 2026-06-01, to be read aloud: what to do first, short, without blame.

const ERRORS = join(import.meta.dirname, "../../samples/errors");
const TODAY = parseIsoDate("2026-06-01")!;

const MESSAGES: Readonly<Record<Code, string>> = {
  "bad-date": "2026/03/02 is not in the form year-month-day, so the lines below have no date. Did you mean 2026-03-02?",
  "bad-minutes": '"1 h 75" is not a possible time: 1 to 1,440 minutes a day, 0 to 59 after hours.',
  "conflict-marker":
    "Keep the lines that are right and delete the markers: two versions of this journal were merged, and this marker was left behind.",
  "bad-declaration": "`instrument` applies to the whole journal: move it above the first day.",
  "line-too-long":
    "Break this line into several: it has 4098 characters and was not read. A line can have at most 4096.",
  "scale-note": "G harmonic minor has F#, not F: its seventh degree is raised.",
  "missing-note": "G is missing between F# and A: D major goes F# G A.",
  "extra-note": "D major has no G#: here it goes from G to A.",
  "arpeggio-note": "D minor arpeggio has F, not F#: its third is a minor third above D.",
  "pattern-notes": "The fourth third going up is F A, not F B.",
  "key-signature": "D major has 2 sharps (F# C#), not 3 sharps. 3 sharps belong to A major and F# minor.",
  "step-formula": "The sixth step of D major, B to C#, is a whole tone, not a semitone: T T S T T T S.",
  "scale-spelling": "F# major has E#, not F: its seventh degree takes the letter E.",
  "out-of-range": "The alto recorder has no E4 (F4 to G6 as written).",
  "wrong-weekday": "2026-03-02 is a Monday, not a Tuesday. Either the date or the weekday is wrong.",
  "day-order": "2026-03-05 comes after 2026-03-06, but this file runs oldest first. Is the date right?",
  "duplicate-day": "2026-03-02 is already above, in line 2. For a second sitting, write `session` under that day.",
  "future-day": "2062-03-02 is in the future. Add `plan`, or check the date.",
  "tempo-range": '"at 600" is outside 20 to 400 beats a minute. A digit too many, or too few?',
  "duplicate-declaration": "`pitch A=440`: this is declared already, and the first one counts. Delete one of them.",
  "ambiguous-subject": 'A small g could be major or minor. Did you mean "G major" or "G minor"?',
  "unknown-key": 'There is no note H in English names. Did you mean "B major"?',
  "no-day": "There is no date above this line. Write one, in the form year-month-day, as in `2026-03-02`.",
  "theoretical-key": "G# major would need 8 sharps (F double sharp). Its usual name is Ab major, 4 flats.",
  "chromatic-spelling":
    "Every pitch is right. Chromatic scales are usually spelled in one of these ways. Sharps going up and flats coming down: C C# D D# E F F# G G# A A# B C. As the key has them, the same both ways: C Db D Eb E F F# G Ab A Bb B C.",
  "minutes-sum": "The parts below add up to 45 minutes, more than the 30 here.",
  "tempo-leap":
    "100 is over one and a half times your best before, 60 on 2026-05-04. If that is right, leave it. Otherwise check the digits, beat and note value.",
  "long-stretch":
    "About 80 minutes with no break noted: were there pauses? `break, 10 min` notes one. If something hurts, stop and rest, and tell your teacher; see a doctor if it lasts or comes back.",
  "aim-past": "The date of this aim has passed. Set a new one, or delete the line.",
  "aim-far":
    "At the recent pace this would be near 69 by 2026-06-30. A later date or a nearer aim leaves room to play with ease.",
  "other-scale":
    "These are the notes of E harmonic minor. `minor` alone means the natural minor here: name the harmonic minor if you played it.",
  prose: "Kept as written, not counted. A remark begins with `--`.",
  "unknown-term": 'I do not know "claen". A pattern, articulation, tempo or outcome can go here. Did you mean "clean"?',
  "unknown-pattern": 'There is no pattern "zigzag" yet. Declare it with its degrees: `pattern "zigzag": 1 3 2 4`.',
  "no-subject": "Say what you played first: a scale (`D minor`), notes (`notes E5 F5`), or a title in quotes.",
  "outcome-order": 'How it went comes after the tempo: "at 60 clean".',
  "repeated-term": '"thirds" is already on this line. Put "fourths" on a line of its own, or take one out.',
  "unknown-declaration": '"instrumnet" is not a declaration. Did you mean `instrument`?',
  "unclosed-quote": "The closing quote is missing after the name.",
  "unknown-title": '"Evening song" is not declared yet, so its key and goal are not known.',
};

test.each(Object.keys(CODES) as Code[])("%s", (code) => {
  const files = readdirSync(join(ERRORS, code)).map((name) => [name, readFileSync(join(ERRORS, code, name), "utf8")]);
  const own = diagnosticsIn(Object.fromEntries(files)).filter((each) => each.code === code);
  expect(own.map(({ message }) => message)).toContain(MESSAGES[code]);
});

describe("a subject and a pattern are called as the line calls them", () => {
  test.each([
    [
      "D mel minor: D E F G A Bb C# D",
      "D mel minor has B going up, not Bb: its sixth and seventh degrees are raised on the way up.",
    ],
    ["d minor harmonic: D E F G A Bb C D", "d minor harmonic has C#, not C: its seventh degree is raised."],
    ["C major, 3rds: C E D F E G F B G B A C", "Figure 4 of 3rds, going up, is F A, not F B."],
    ["G# maj, slow", "G# maj would need 8 sharps (F double sharp). Its usual name is Ab major, 4 flats."],
    ["G dorian: G A B C D E F G", "G dorian has Bb, not B: its third degree lies a semitone above A."],
    ["D minor: D E F G A B C D", "D natural minor has Bb, not B: its sixth degree lies a semitone above A."],
  ])("%s", (line, message) => {
    expect(diagnosticsIn({ "week.practice": `2026-03-02 Mon\n${line}\n` })[0]?.message).toBe(message);
  });
});

describe("a fix keeps the words that it need not change", () => {
  test.each([
    ["G# maj, slow", "Ab maj, slow"],
    ["g♯ maj, slow", "ab maj, slow"],
    ["G# major, slow", "Ab major, slow"],
    ["E minor: E F# G A B C D# E", "E harmonic minor: E F# G A B C D# E"],
    ["Em: E F# G A B C D# E", "Em harmonic: E F# G A B C D# E"],
    ["E min, slow: E F# G A B C D# E", "E min harmonic, slow: E F# G A B C D# E"],
  ])("%s", (line, fixed) => {
    const found = diagnosticsIn({ "week.practice": `2026-03-02 Mon\n${line}\n` })[0]!;
    const [edit] = found.fixes[0]!.edits;
    const { start, end } = edit!.range;
    expect(line.slice(0, start.character) + edit!.newText + line.slice(end.character)).toBe(fixed);
  });
});

function diagnosticsIn(files: Readonly<Record<string, string>>): readonly Diagnostic[] {
  const documents = Object.entries(files).map(([name, text]) => [`file:///j/${name}`, createDocument(text)] as const);
  const journal = new Journal("file:///j", new Map(documents));
  return journal.addresses.flatMap((uri) => diagnosticsOf(journal, uri, TODAY));
}
