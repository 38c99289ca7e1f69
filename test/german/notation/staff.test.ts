import { expect, test } from "vitest";
import { stavesOfClaim } from "../../../server/features/explain/claimed-entry.ts";
import { entryStaff } from "../../../server/features/explain/entry-staff.ts";
import { journalOf, URI } from "../../features/journal-text.ts";

// What a staff shows, in words for those who do not see it. Names of clefs: from memory.

function entryOf(line: string, declared = "") {
  const journal = journalOf(`${declared}2026-04-01 Wed\n${line}`);
  const block = journal.files.get(URI)!.blocks.at(-1)!;
  return { entry: journal.model(block).entries[0]!, conventions: journal.conventions(URI) };
}

function staff(line: string, declared = "") {
  const { entry, conventions } = entryOf(line, declared);
  return entryStaff({ entry, text: line, title: "Übung", conventions, day: undefined })!;
}

test.each([
  ["d-Moll, Viertel, gebunden, up", "", "Violinschlüssel, 1 b, Viertel, gebunden. D E F G A B C D."],
  [
    "C-Dur, up",
    "instrument soprano recorder\n",
    "Violinschlüssel mit einer 8 darüber, keine Vorzeichen. C D E F G A H C.",
  ],
  ["D-Dur, up", "instrument cello\n", "Bassschlüssel, 2 Kreuze. D E Fis G A H Cis D."],
])("%s: %s%s", (line, instrument, words) => {
  const reading = staff(line, `names german\n${instrument}`);
  expect(reading.ok && reading.staff.text).toBe(words);
});

test("each note has its degree, of a chord its place", () => {
  const degrees = (line: string) => {
    const reading = staff(line);
    return reading.ok ? reading.staff.notes.map(({ degree }) => degree) : [];
  };
  expect(degrees("C major, up").slice(0, 3)).toEqual(["1. Stufe", "2. Stufe", "3. Stufe"]);
  expect(degrees("C major arpeggio, up").slice(0, 2)).toEqual(["1. Ton", "2. Ton"]);
});

test("why there is no staff", () => {
  const long = staff("C major, five notes on each, 6 octaves", "instrument piano\n");
  expect(long).toEqual({ ok: false, reason: "Es sind mehr als 256 Töne. Nenn einen kleineren Umfang." });
  const cents = staff('"Wald" on C', 'scale "Wald": cents 0 150 300 500 700\n');
  expect(cents).toMatchObject({ ok: false, reason: expect.stringMatching(/^Eine Tonleiter in Cent/) });
});

test("what is written stands above what it should be, and both say where they differ", () => {
  const { entry, conventions } = entryOf("D major: D E F G A B C#");
  const [claim] = entry.source.claims;
  const staves = stavesOfClaim(entry, conventions, claim!.type === "notes" ? claim!.notes : [])!;
  expect(staves.map(({ title, label }) => [title, label])).toEqual([
    ["D major, wie geschrieben", "wie geschrieben"],
    ["D major, wie es sein sollte", "wie es sein sollte"],
  ]);
  expect(staves.map(({ notes }) => notes.flatMap(({ mark }) => mark ?? []))).toEqual([["geschrieben F"], ["hier F#"]]);
});
