import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../../features/journal-text.ts";

/** What is found on a line, on which of its words. */
function check(line: string, ...found: readonly string[]): void {
  const text = `2026-03-02 Mon\n${line}\n`;
  const diagnostics = diagnosticsOf(journalOf(text), URI, parseIsoDate("2026-03-02")!);
  expect(
    diagnostics.map(({ code, message, range }) => {
      return `${code} on ${line.slice(range.start.character, range.end.character)}: ${message}`;
    }),
  ).toEqual(found);
}

// Letters with more than two accidentals are no notes of the language; wherever one stands, what is accepted is told.
test("as a tonic", () => {
  const noNote = (typed: string) =>
    `There is no note ${typed}. Notes are the letters A to G, with up to two sharps or flats.`;
  check("F### major, slow", `unknown-key on F### major: ${noNote("F###")}`);
  check("Fbbb minor arpeggio, slow", `unknown-key on Fbbb minor arpeggio: ${noNote("Fbbb")}`);
  check("Fxx major, slow", `unknown-key on Fxx major: ${noNote("Fxx")}`);
  check("C#b major, slow", `unknown-key on C#b major: ${noNote("C#b")}`);
});

test("among the notes of a claim", () => {
  check(
    "F major: F G A### Bb C D E F, slow",
    "scale-note on A###: A### is not a note name (a note has at most two sharps or flats): F major has A here.",
  );
});

test("in a figure", () => {
  for (const line of [
    "notes F### G4",
    "notes F4 F###4 G4, slurred",
    "notes F### | G4, at 60 clean",
    "trill F### with G4",
    "trill on E6 with F###, slow",
    "long tones on F###, slow",
    "long-tones F4 Bbbb",
  ]) {
    const [figure] = line.split(",") as [string];
    const beyond = /\w*(?:###|bbb)\w*/.exec(line)![0];
    check(
      line,
      `unknown-key on ${figure}: There is no note ${beyond}. Notes are the letters A to G, with up to two sharps or flats.`,
    );
  }
});

test("behind `from`", () => {
  check(
    "C major, from Fbbb to, slow",
    'unknown-term on from Fbbb to: I do not know "from Fbbb to". A note has at most two sharps or flats.',
  );
});

test("two accidentals are read wherever a note is", () => {
  check("Fx minor pentatonic, slow", expect.stringContaining("theoretical-key on ") as unknown as string);
  check(
    "Ebb major: Ebb Fb Gb Abb Bbb Cb Db Ebb, slow",
    expect.stringContaining("theoretical-key on ") as unknown as string,
  );
  check("long tones on Fx4 Ebb5, slow");
});
