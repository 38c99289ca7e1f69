import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

// Instruments that are not known, where one is expected: the words, and what is said of them.

const URI = "file:///j/journal.practice";

/** Lines of a journal, the one thing that is found, under its text, and the titles of its mends. */
function check(lines: string, expected: string, mends: readonly string[]): void {
  const journal = new Journal("file:///j", new Map([[URI, createDocument(lines)]]));
  const found = diagnosticsOf(journal, URI, parseIsoDate("2026-06-01")!);
  const told = found.map(({ range: { start, end }, code, message }) => {
    const carets = " ".repeat(start.character) + "^".repeat(end.character - start.character);
    return `${carets} ${code}: ${message}`;
  });
  expect(told).toEqual([expected]);
  expect(found.flatMap(({ fixes }) => fixes.map(({ title }) => title))).toEqual(mends);
}

const DAY = "2026-03-02\n";

test("behind `on`", () => {
  check(
    `${DAY}D minor, on kazoo`,
    '         ^^^^^^^^ unknown-term: I do not know "on kazoo". After `on` comes an instrument.',
    [],
  );
  check(
    `${DAY}D minor, on basoon`,
    '         ^^^^^^^^^ unknown-term: I do not know "on basoon". After `on` comes an instrument. Did you mean "on bassoon"?',
    ['Change to "on bassoon"'],
  );
  check(
    `${DAY}D minor, on soprano`,
    '         ^^^^^^^^^^ unknown-term: Which instrument is "soprano": soprano recorder, soprano saxophone, soprano crumhorn or soprano voice?',
    [
      'Change to "on soprano recorder"',
      'Change to "on soprano saxophone"',
      'Change to "on soprano crumhorn"',
      'Change to "on soprano voice"',
    ],
  );
});

test("in quotes behind `on`", () => {
  check(
    `instrument "my flute": D4 to B5\n${DAY}D minor, on "my fute", slow`,
    '         ^^^^^^^^^^^^ unknown-term: I do not know "my fute". After `on` comes an instrument. Did you mean "on my flute"?',
    ['Change to "on my flute"'],
  );
  check(
    `${DAY}D minor, on “Tenor Recorder”`,
    '         ^^^^^^^^^^^^^^^^^^^ unknown-term: I do not know "Tenor Recorder". After `on` comes an instrument. Did you mean "on tenor recorder"?',
    ['Change to "on tenor recorder"'],
  );
});

test("in a declaration", () => {
  check(
    "instrument keyboard",
    '           ^^^^^^^^ bad-declaration: Say which instrument: this name could be any of several. Did you mean "piano" or "harpsichord" or "organ"?',
    ['Change to "piano"', 'Change to "harpsichord"', 'Change to "organ"'],
  );
  check(
    "instrument basoon",
    '           ^^^^^^ bad-declaration: This instrument is not known: to declare it, put its name in quotes and give its range, `instrument "my flute": D4 to B5`. Did you mean "bassoon"?',
    ['Change to "bassoon"'],
  );
});

test("a word that the journal declares is that instrument, whatever else it is short for", () =>
  expect(
    diagnosticsOf(
      new Journal(
        "file:///j",
        new Map([[URI, createDocument('instrument "soprano": C4 to D6\n2026-03-02\nD minor, on soprano\n')]]),
      ),
      URI,
      parseIsoDate("2026-06-01")!,
    ),
  ).toEqual([]));

test("a voice beyond its usual range: the finding says that voices differ, and how to declare one's own", () =>
  check(
    `${DAY}notes G3 E6, on alto voice`,
    "^^^^^^^^^^^ out-of-range: Beyond the usual range of the alto voice: E6 (E3 to F5 as written). Its range varies: voices differ: you can declare a range of your own.",
    [],
  ));

// F4 to G6: test/reference/instrument-ranges.json.
test("notes behind a colon that name their octave are held against the range, the scale itself being right", () => {
  check(
    `instrument alto recorder in F\n${DAY}D major: D4 E4 F#4 G4 A4 B4 C#5 D5`,
    "         ^^^^^ out-of-range: The alto recorder has no D4 or E4 (F4 to G6 as written).",
    [],
  );
  check(
    `names german\ninstrument treble\n${DAY}D-Dur: d' e' fis' g' a' h' cis'' d''`,
    "       ^^^^^ out-of-range: The alto recorder has no d' or e' (f' to g''' as written).",
    [],
  );
});

test("an octave that is wrong is told in the player's own way: it changes at C", () =>
  check(
    `names german\n${DAY}C-Dur: c' d' e' f' g' a' h'' c''`,
    "                         ^^^ scale-note: h'' is the right note in the wrong octave: write h'. Octaves change from H to C.",
    ["Change h'' to h'"],
  ));
