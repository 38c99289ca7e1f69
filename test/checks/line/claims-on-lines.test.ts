import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

// Claims on whole lines, as somebody types them. What belongs in the scales is common practice, no source.

const URI = "file:///j/journal.practice";

/** A line, and what is found on it: code and message, then the line after the first fix. */
function found(line: string, head = ""): readonly string[] {
  const journal = new Journal("file:///j", new Map([[URI, createDocument(`${head}2026-03-02\n${line}`)]]));
  return diagnosticsOf(journal, URI, parseIsoDate("2026-06-01")!).flatMap(({ code, message, severity, fixes }) => [
    `${severity} ${code}: ${message}`,
    ...fixes.slice(0, 1).flatMap(({ edits }) =>
      edits.map(({ range: { start, end }, newText }) => {
        return `=> ${line.slice(0, start.character)}${newText}${line.slice(end.character)}`;
      }),
    ),
  ]);
}

const check = (line: string, ...expected: readonly string[]): void => expect(found(line), line).toEqual(expected);

describe("`minor` leaves open which", () => {
  const other = (what: string, name: string, kind: string): string =>
    `information other-scale: These are the ${what} of ${name}. \`minor\` alone means the natural minor here: name the ${kind} if you played it.`;
  test("the notes of another minor are advice, and the subject is offered", () => {
    check(
      "E minor: E F# G A B C D# E",
      other("notes", "E harmonic minor", "harmonic minor"),
      "=> E harmonic minor: E F# G A B C D# E",
    );
    check(
      "D minor, slow: D E F G A B C# D C Bb A G F E D",
      other("notes", "D melodic minor", "melodic minor"),
      "=> D melodic minor, slow: D E F G A B C# D C Bb A G F E D",
    );
    check(
      "D minor: D E F G A B C# D C# B A G F E D",
      other("notes", "D jazz minor", "jazz minor"),
      "=> D jazz minor: D E F G A B C# D C# B A G F E D",
    );
  });
  test("also in a pattern, and by its steps", () => {
    check(
      "A minor, thirds: A C B D C E D F E G# F A",
      other("notes", "A harmonic minor", "harmonic minor"),
      "=> A harmonic minor, thirds: A C B D C E D F E G# F A",
    );
    check(
      "A minor: T S T T S 3 S",
      other("steps", "A harmonic minor", "harmonic minor"),
      "=> A harmonic minor: T S T T S 3 S",
    );
  });
  test("the natural minor is right, and what is no minor at all stays an error", () => {
    check("E minor: E F# G A B C D E");
    expect(found("E minor: E F# G A B C# D E")[0]).toMatch(/^error scale-note/u);
    expect(found("E natural minor: E F# G A B C D# E")[0]).toMatch(/^error scale-note/u);
    expect(found("E major: E F# G A B C D# E")[0]).toMatch(/^error scale-note/u);
  });
});

describe("steps as people write them", () => {
  test("small letters, together or apart, three semitones by any name", () => {
    check("C major: t t s t t t s");
    check("D major: wwhwwwh");
    check("A harmonic minor: T S T T S 3 S");
    check("A harmonic minor: T S T T S m3 S");
    check("A minor pentatonic: m3 T T m3 T");
    check("A harmonic minor, steps W H W W H m3 H, slow");
    check("C major, steps ttsttts at 60 clean");
  });
  test("what is wrong is answered in the same hand", () => {
    check(
      "C major: t t s t t s t",
      "error step-formula: The sixth step of C major, A to B, is a whole tone, not a semitone: t t s t t t s.",
      "=> C major: t t s t t t s",
    );
  });
  test("going down", () => {
    check("C major, down: S T T T S T T");
    check("D melodic minor, down, slow: T T S T T S T");
    expect(found("C major: S T T T S T T")[0]).toMatch(/^error step-formula/u);
  });
  test("in cents, where the scale is", () => {
    const head = 'scale "even": cents 0 150 300 500 700 850 1000\n\n';
    expect(found('"even" on D, steps cents 150 150 200 200 150 150 200', head)).toEqual([]);
    expect(found('"even" on D: T S T T S T T', head)[0]).toBe(
      'error step-formula: "even" on D has its steps in cents: 150 150 200 200 150 150 200.',
    );
  });
});

describe("dominant sevenths by their key", () => {
  test("may resolve on the tonic", () => {
    check("dominant seventh in C: G B D F");
    check("dominant seventh in C: G B D F G F D B G C");
    check("dominant seventh in C: G4 B4 D5 F5 G5 F5 D5 B4 G4 C5");
    check("dominant seventh in C, 2 octaves: G B D F G B D F G F D B G F D B G C");
    check("dominant seventh in D minor: A C# E G A G E C# A D");
    check("dominant seventh in the key of G: D F# A C D C A F# D G");
  });
  test("on no other note, and not where the chord stands by its root", () => {
    expect(found("dominant seventh in C: G B D F G F D B G D")[0]).toMatch(/^error extra-note/u);
    expect(found("G dominant seventh: G B D F G F D B G C")[0]).toMatch(/^error extra-note/u);
  });
  test("have the signature of that key", () => {
    check("dominant seventh in D minor, 1 flat, slow");
    check("dominant seventh in the key of D, 2 sharps, slow");
    expect(found("dominant seventh in D minor, 2 sharps, slow")[0]).toMatch(/^error key-signature/u);
  });
});

test("a triad has two inversions", () => {
  check("D minor arpeggio, 2nd inversion, slow");
  check("A dominant seventh, 3rd inversion, slow");
  check(
    "D minor arpeggio, 3rd inversion, slow",
    "error arpeggio-note: A triad has only two inversions: a third needs a chord of four notes.",
  );
});
