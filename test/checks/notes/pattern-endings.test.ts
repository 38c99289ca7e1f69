import { describe, expect, test } from "vitest";
import { checkNoteList } from "../../../server/checks/notes/note-list.ts";
import { namesById } from "../../../server/music/notes/note-names.ts";
import { type Beside, beside, listed, mended } from "./claims.ts";

// How patterns are written out by hand. Common practice, no source: each list was worked out on paper, from the scale's
// notes and the figure's degrees, and says why it is right.

/** A list beside a subject in a pattern, with what is found: nothing, unless a code is expected. */
function check(
  subject: string,
  pattern: string,
  list: string,
  codes: readonly string[] = [],
  terms: Beside = {},
): void {
  const found = checkNoteList(listed(list), beside(subject, { pattern, patternText: pattern, ...terms }));
  expect(
    found.map(({ code }) => code),
    `${subject}, ${pattern}: ${list}\n${found.map(({ message }) => message).join("\n")}`,
  ).toEqual(codes);
}

describe("up: as far as the octave is reached, or on until a figure would start there", () => {
  test("thirds", () => {
    check("C major", "thirds", "C E D F E G F A G B A C"); // the last third reaches the octave
    check("C major", "thirds", "C E D F E G F A G B A C B D C"); // a third on each degree, closing on the tonic
    check("C major", "thirds", "C E D F E G F A G B A C B D"); // the same, the closing tonic left out
    check("G major", "thirds", "G B A C B D C E D F# E G F# A G"); // with the F sharp of the key in both figures
    check("A harmonic minor", "thirds", "A C B D C E D F E G# F A G# B A"); // the leading note raised, B above it
  });
  test("other intervals", () => {
    check("C major", "fourths", "C F D G E A F B G C A D B E C"); // a fourth on each degree, closing
    check("C major", "sixths", "C A D B E C F D G E A F B G C"); // likewise sixths, far beyond the octave
    check("D natural minor", "fifths", "D A E Bb F C G D A E Bb F C G D"); // and fifths
    check("C major", "octaves", "C C D D E E F F G G A A B B C"); // an octave on each degree
  });
  test("groups", () => {
    check("C major", "threes", "C D E D E F E F G F G A G A B A B C B C D C"); // three notes from each degree
    check("C major", "fours", "C D E F D E F G E F G A F G A B G A B C A B C D B C D E C"); // four from each
    check("F major", "fives", "F G A Bb C G A Bb C D A Bb C D E Bb C D E F C D E F G D E F G A E F G A Bb F"); // five
  });
  test("chords on every degree", () => {
    check("C major", "triads", "C E G D F A E G B F A C G B D A C E B D F C"); // up to the diminished one on B
    check("C major", "triads", "C E G D F A E G B F A C"); // only those that lie within the octave
    check("C major", "seventh chords", "C E G B D F A C E G B D F A C E G B D F A C E G B D F A C"); // on each degree
    const broken: Beside = { variant: "broken" };
    check("C major", "triads", "C G E G D A F A E B G B F C A C G D B D A E C E B F D F C", [], broken); // 1 5 3 5 on each
  });
  test("turned round by turns", () => {
    const alternating: Beside = { variant: "alternating" };
    check("C major", "thirds", "C E F D E G A F G B C A B D C", [], alternating); // the third on B goes up again
    check("C major", "triads", "C E G A F D E G B C A F G B D E C A B D F C", [], alternating); // every other one down
  });
  test("broken chords", () => {
    check("C major arpeggio", "threes", "C E G E G C G C E C"); // three from each note of the chord, closing on the root
    check("C major arpeggio", "fours", "C E G C E G C E G C E G C"); // four from each, over one octave
  });
});

describe("down: likewise, to the tonic below", () => {
  const down: Beside = { direction: "down" };
  test("thirds, threes, triads", () => {
    check("C major", "thirds", "C A B G A F G E F D E C", [], down); // the last third reaches the tonic
    check("C major", "thirds", "C A B G A F G E F D E C D B C", [], down); // a third below each degree, closing
    check("C major", "threes", "C B A B A G A G F G F E F E D E D C D C B C", [], down); // three downward from each
    check("C major", "triads", "C A F B G E A F D G E C F D B E C A D B G C", [], down); // triads from the fifth down
  });
});

describe("there and back", () => {
  test("the tonic at the top once or twice, and either ending below", () => {
    const up = "C E D F E G F A G B A C B D C";
    check("C major", "thirds", `${up} A B G A F G E F D E C D B C`); // the tonic is the last note and the first
    check("C major", "thirds", `${up} C A B G A F G E F D E C D B C`); // the tonic is played again
    check("C major", "thirds", `${up} A B G A F G E F D E C`); // carried on above, and not below
    check("C major", "thirds", "C E D F E G F A G B A C C A B G A F G E F D E C D B C"); // and the other way
    check(
      "C major",
      "fours",
      "C D E F D E F G E F G A F G A B G A B C A B C D B C D E C B A G B A G F A G F E G F E D F E D C E D C B D C B A C",
    ); // fours
  });
  test("the melodic minor falls by its natural notes, and its last turn may keep the leading note", () => {
    const up = "D F E G F A G B A C# B D C# E";
    check("D melodic minor", "thirds", `${up} D Bb C A Bb G A F G E F D E C D`); // natural to the end
    check("D melodic minor", "thirds", `${up} D Bb C A Bb G A F G E F D E C# D`); // the leading note leads to the tonic
    check("D melodic minor", "thirds", "D Bb C A Bb G A F G E F D E C# D", [], { direction: "down" }); // down alone
    check("D melodic minor", "threes", "D C Bb C Bb A Bb A G A G F G F E F E D E D C# D", [], { direction: "down" });
    check("D melodic minor", "thirds", `${up} D B C# A Bb G A F G E F D E C# D`, ["pattern-notes", "pattern-notes"]);
    // but not the sixth and seventh at the beginning of the way down
  });
  test("no other minor may", () => {
    check("D natural minor", "thirds", "D Bb C A Bb G A F G E F D E C# D", ["pattern-notes"], { direction: "down" });
    check("D harmonic minor", "thirds", "D Bb C# A Bb G A F G E F D E C D", ["pattern-notes"], { direction: "down" });
  });
});

describe("what is wrong stays wrong, and is told by its figure", () => {
  const message = (list: string, names?: string): string => {
    const claimed = beside("C major", { pattern: "thirds", patternText: "thirds" });
    const found = checkNoteList(listed(list), names ? { ...claimed, names: namesById(names)! } : claimed);
    expect(found).toHaveLength(1);
    expect(mended(list, found[0]!.fixes[0]!)).not.toBe(list);
    return found[0]!.message;
  };
  test("a note of a figure beyond the octave", () => {
    expect(message("C E D F E G F A G B A C B E C")).toBe("The seventh third going up is B D, not B E.");
  });
  test("a figure on the way back, where the tonic at the top is played once", () => {
    expect(message("C E D F E G F A G B A C B D C A B G A F G E F C E C D B C")).toBe(
      "The fifth third going down is F D, not F C.",
    );
  });
  test("a close on another note", () => {
    check("C major", "thirds", "C E D F E G F A G B A C B D G", ["pattern-notes"]);
    check("C major", "triads", "C E G D F A E G B F A C G B D A C E B D G C", ["pattern-notes"]);
  });
});
