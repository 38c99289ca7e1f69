import { describe, expect, test } from "vitest";
import { checkNoteList } from "../../../server/checks/notes/note-list.ts";
import { instrumentById } from "../../../server/music/instruments/instruments.ts";
import { namesById } from "../../../server/music/notes/note-names.ts";
import { type Beside, beside, listed, mended, underlined } from "./claims.ts";

// What belongs in each scale is common practice; note-list-reference.test.ts holds the check against references.

/** A subject, the list beside it, and what is found: carets, code and message, then `=>` a safe fix or `->` another. */
function check(subject: string, list: string, found: readonly string[] = [], terms: Beside = {}): void {
  const findings = checkNoteList(listed(list), beside(subject, terms));
  expect(underlined(list, findings)).toBe([list, ...found].join("\n"));
}

/** The list after the first fix of its first finding. */
function checkMend(subject: string, list: string, after: string, terms: Beside = {}): void {
  const [found] = checkNoteList(listed(list), beside(subject, terms));
  expect(found && mended(list, found.fixes[0]!)).toBe(after);
}

const fiveNotes: Beside = { reach: { type: "degrees", count: 5 } };
const twoOctaves: Beside = { reach: { type: "octaves", count: 2 } };
const thirds: Beside = { pattern: "thirds", patternText: "thirds" };

describe("right lists", () => {
  test("up, down, up and down, down and up; the closing tonic may be left out", () => {
    check("F# major", "F# G# A# B C# D# E# F#");
    check("F# major", "F# G# A# B C# D# E#");
    check("D harmonic minor", "D C# Bb A G F E D");
    check("D melodic minor", "D E F G A B C# D C Bb A G F E D");
    check("D melodic minor", "D C Bb A G F E D E F G A B C# D");
  });
  test("over as many octaves as the list has, or the span named", () => {
    check("C major", "C D E F G A B C D E F G A B C");
    check("D natural minor", "D E F G A", [], fiveNotes);
    check("D natural minor", "D E F G A G F E D", [], fiveNotes);
    check("D minor arpeggio", "D F A D F A D A F D A F D", [], twoOctaves);
    check("F major", "F G A Bb C D E F G A Bb C D E F G F E D C Bb A G F E D C Bb A G F", [], {
      reach: { type: "full range" },
      instrument: instrumentById("alto recorder"),
    });
  });
  test("any way of typing a note", () => {
    check("F# major", "f♯ | g♯ a♯ - b, c♯ d♯ e♯ f♯");
    check("F# major", "F sharp G sharp A sharp B C sharp D sharp E sharp F sharp");
    check("G# harmonic minor", "G# A# B C# D# E Fx G#");
  });
  test("octave numbers that go with the order, from any octave", () => {
    check("D major", "D4 E4 F#4 G4 A4 B4 C#5 D5");
    check("D major", "D5 E F# G A B C#6 D");
    check("C# major", "C#4 D#4 E#4 F#4 G#4 A#4 B#4 C#5");
  });
  test("whole-tone and octatonic scales in any spelling, the blues with raised fourth or lowered fifth", () => {
    check("C whole-tone", "C D E Gb Ab Bb C");
    check("C octatonic", "C D Eb F Gb Ab A B C");
    check("C octatonic", "C Db Eb E F# G A Bb C");
    check("C blues", "C Eb F Gb G Bb C Bb G F# F Eb C");
  });
  test("a declared scale; one in cents with either key beside a note", () => {
    check("D (1 b2 3 4 5 b6 7)", "D Eb F# G A Bb C# D");
    check("D (cents 0 150 300 500 700 850 1000)", "D E F G A Bb C D");
    check("D (cents 0 150 300 500 700 850 1000)", "D Eb F G A B C D");
  });
});

describe("a right key by another letter", () => {
  test("is a spelling, mended as the player writes", () => {
    check("F# major", "F# G# A# B C# D# F F#", [
      "                 ^ scale-spelling: F# major has E#, not F: its seventh degree takes the letter E.",
      "                 => Change F to E#",
    ]);
    checkMend("F# major", "F♯ G♯ A♯ B C♯ D♯ F F♯", "F♯ G♯ A♯ B C♯ D♯ E♯ F♯");
    checkMend("F# major", "f# g# a# b c# d# f f#", "f# g# a# b c# d# e# f#");
    checkMend(
      "F# major",
      "F sharp G sharp A sharp B C sharp D sharp F",
      "F sharp G sharp A sharp B C sharp D sharp E sharp",
    );
    checkMend("C# major", "C#4 D#4 E#4 F#4 G#4 A#4 C5 C#5", "C#4 D#4 E#4 F#4 G#4 A#4 B#4 C#5");
    checkMend("D# natural minor", "D♯ E♯ F♯ G♯ A♯ B C♯ E♭", "D♯ E♯ F♯ G♯ A♯ B C♯ D♯");
  });
  test("says the parent scale where letters are left out", () => {
    check("C major pentatonic", "C D Fb G A C", [
      "    ^^ scale-spelling: C major pentatonic has E, not Fb: its third note is the third of C major and takes the letter E.",
      "    => Change Fb to E",
    ]);
  });
  test("throughout, is told once", () => {
    check("F# major", "Gb Ab Bb Cb Db Eb F Gb", [
      "^^^^^^^^^^^^^^^^^^^^^^ scale-spelling: This spells Gb major: F# major is written F# G# A# B C# D# E# F#.",
      "-> Write the notes of F# major",
    ]);
    checkMend("C# major", "Db, Eb, F, Gb | Ab, Bb, C, Db", "C#, D#, E#, F# | G#, A#, B#, C#");
  });
});

describe("a wrong key", () => {
  test("with the reason: the step, the way, the raised degree", () => {
    check("D major", "D E F G A B C# D", [
      "    ^ scale-note: D major has F#, not F: its third degree lies a whole tone above E.",
      "    -> Change F to F#",
    ]);
    check("D melodic minor", "D E F G A B C# D C# Bb A G F E D", [
      "                 ^^ scale-note: D melodic minor has C going down, not C#: it falls as the natural minor does.",
      "                 -> Change C# to C",
    ]);
    check("D melodic minor", "D E F G A Bb C# D", [
      "          ^^ scale-note: D melodic minor has B going up, not Bb: its sixth and seventh degrees are raised on the way up.",
      "          -> Change Bb to B",
    ]);
    check("D harmonic minor", "D E F G A Bb C D", [
      "             ^ scale-note: D harmonic minor has C#, not C: its seventh degree is raised.",
      "             -> Change C to C#",
    ]);
  });
  test("a note of the scale in the wrong place", () => {
    check("D natural minor", "D E F G A A C D", [
      "          ^ scale-note: After A, D natural minor goes to Bb, not to A.",
      "          -> Change A to Bb",
    ]);
  });
  test("a word that is no note keeps its place", () => {
    check("D natural minor", "D E F G A H C D", [
      "          ^ scale-note: H is not a note name (H is German for B: declare `names german` to use it): D natural minor has Bb here.",
      "          -> Change H to Bb",
    ]);
    check("D natural minor", "D E F G A### Bb C D", [
      "        ^^^^ scale-note: A### is not a note name (a note has at most two sharps or flats): D natural minor has A here.",
      "        -> Change A### to A",
    ]);
  });
  test("the right name in the wrong octave says so", () => {
    check("D major", "D4 E4 F#4 G4 A4 B4 C#4 D5", [
      "                   ^^^ scale-note: C#4 is the right note in the wrong octave: write C#5. Octave numbers change from B to C.",
      "                   -> Change C#4 to C#5",
    ]);
    const between: Beside = {
      reach: { type: "between", from: { letter: "D", alter: 0, octave: 4 }, to: { letter: "D", alter: 0, octave: 5 } },
    };
    check(
      "D major",
      "D5 E5 F#5 G5 A5 B5 C#6 D6",
      [
        "^^^^^^^^^^^^^^^^^^^^^^^^^ scale-note: Only the octave numbers are wrong: D major goes D E F# G A B C# D.",
        "-> Write the notes of D major",
      ],
      between,
    );
  });
  test("of a chord", () => {
    check("D minor arpeggio", "D F# A D A F D", [
      "  ^^ arpeggio-note: D minor arpeggio has F, not F#: its third is a minor third above D.",
      "  -> Change F# to F",
    ]);
    check("A dominant seventh", "A C# E G# A", [
      "       ^^ arpeggio-note: A dominant seventh has G, not G#: its seventh is a minor seventh above A.",
      "       -> Change G# to G",
    ]);
  });
  test("over half of the list is one finding", () => {
    check("E major", "D E F G A B C D", [
      "^^^^^^^^^^^^^^^ scale-note: 5 of these 8 notes differ from E major, which goes E F# G# A B C# D# E.",
      "-> Write the notes of E major",
    ]);
    checkMend("D minor arpeggio", "C E G", "D F A");
  });
});

describe("missing and extra notes", () => {
  test("a gap is one finding, on the note after it, or the last", () => {
    check("D natural minor", "D E F A Bb C D", [
      "      ^ missing-note: G is missing between F and A: D natural minor goes F G A.",
      "      -> Put in G",
    ]);
    check("D natural minor", "D E F G", [
      "      ^ missing-note: A Bb C are missing after G: D natural minor goes G A Bb C D.",
      "      -> Put in the 3 missing notes",
    ]);
    check("D natural minor", "F A", [
      "^^^ missing-note: D natural minor goes D E F G A Bb C D: 8 notes, and 2 are given here.",
      "-> Write the notes of D natural minor",
    ]);
    checkMend("D natural minor", "D E F A Bb C D", "D E F G A Bb C D");
    checkMend("D natural minor", "D4 E4 F4 A4 Bb4 C5 D5", "D4 E4 F4 G4 A4 Bb4 C5 D5");
    checkMend("D natural minor", "D E F G", "D E F G A Bb C");
    checkMend("D minor arpeggio", "D F A D", "D F A D F A", twoOctaves);
  });
  test("a note too many: one of the scale's, or none of it", () => {
    check("D natural minor", "D E F G G A Bb C D", [
      "      ^ extra-note: G is one too many: here D natural minor goes from F to G.",
      "      -> Take out G",
    ]);
    check("D natural minor", "D E F G G# A Bb C D", [
      "        ^^ extra-note: D natural minor has no G#: here it goes from G to A.",
      "        -> Take out G#",
    ]);
    check("D major", "D E F# G A B C# D E", [
      "                  ^ extra-note: E is one too many: here D major ends on D.",
      "                  -> Take out E",
    ]);
    checkMend("D natural minor", "D E F G G# A Bb C D", "D E F G A Bb C D");
    checkMend("D natural minor", "C D E F G A Bb C D", "D E F G A Bb C D");
  });
});

describe("patterns", () => {
  test("rising, falling, both, with a turn through the neighbours; or the scale itself", () => {
    check("D natural minor", "D F E G F A G Bb A C Bb D", [], thirds);
    check("D natural minor", "D Bb C A Bb G A F G E F D", [], thirds);
    check("D natural minor", "D F E G F A G Bb A C Bb D D Bb C A Bb G A F G E F D", [], thirds);
    check("D natural minor", "D F E G F A G Bb A C Bb D C E D Bb C A Bb G A F G E F D E C D", [], thirds);
    check("D natural minor", "D E F G A Bb C D", [], thirds);
    check("D minor broken chord", "D F A F A D");
  });
  test("falling figures take the falling notes", () => {
    check("D melodic minor", "D F E G F A G B A C# B D D Bb C A Bb G A F G E F D", [], thirds);
    check(
      "D melodic minor",
      "D F E G F A G B A C# B D D B C A Bb G A F G E F D",
      [
        "                           ^ pattern-notes: The first third going down is D Bb, not D B.",
        "                           -> Change B to Bb",
      ],
      thirds,
    );
  });
  test("say the figure", () => {
    check(
      "D natural minor",
      "D F E G F G G Bb A C Bb D",
      ["          ^ pattern-notes: The third third going up is F A, not F G.", "          -> Change G to A"],
      thirds,
    );
    check(
      "D natural minor",
      "D F E G F G Bb A C Bb D",
      [
        "          ^ pattern-notes: The third third going up is F A: A is missing between F and G.",
        "          -> Put in A",
      ],
      thirds,
    );
    check("D minor broken chord", "D F A F G D", [
      "        ^ pattern-notes: Figure 2 of a broken chord in threes, going up, is F A D, not F G D.",
      "        -> Change G to A",
    ]);
  });
  test("a wrong letter is still a spelling", () => {
    check(
      "D natural minor",
      "D F E G F A G A# A C Bb D",
      [
        "              ^^ scale-spelling: D natural minor has Bb, not A#: its sixth degree takes the letter B.",
        "              => Change A# to Bb",
      ],
      thirds,
    );
  });
  test("where up and down is stated, half of it leaves the rest missing", () => {
    const found = checkNoteList(
      listed("D F E G F A G Bb A C Bb D"),
      beside("D natural minor", { ...thirds, direction: "up and down" }),
    );
    expect(found.map(({ code }) => code)).toEqual(["pattern-notes"]);
    expect(found[0]!.message).toContain("missing");
  });
  test("a declared cell", () => {
    const zigzag: Beside = { pattern: { degrees: [1, 3, 2, 4], step: 1 }, patternText: "zigzag" };
    check("C major", "C E D F D F E G E G F A F A G B G B A C", [], zigzag);
    check(
      "C major",
      "C E D F D F E A E G F A F A G B G B A C",
      [
        "              ^ pattern-notes: Figure 2 of zigzag, going up, is D F E G, not D F E A.",
        "              -> Change A to G",
      ],
      zigzag,
    );
  });
});

// The day's order is not known to who writes: each note is held against the scale by itself.
describe("leaps", () => {
  const leaps: Beside = { pattern: "leaps", patternText: "leaps" };
  test("in any order, as many as there are", () => {
    check("D natural minor", "D A F C E Bb G D", [], leaps);
    check("D natural minor", "D A9 F", [], leaps);
    check("D melodic minor", "D B Bb C# C F", [], leaps);
    check("C chromatic", "C Gb C# D# Eb A#", [], leaps);
    check("C octatonic", "C D Eb F Gb Ab A B", [], leaps);
    check("G minor arpeggio", "G D Bb G D Bb G", [], { ...leaps, ...twoOctaves });
  });
  test("a note that is not the scale's, or the chord's", () => {
    check(
      "D natural minor",
      "D A F C E B G D",
      [
        "          ^ scale-note: D natural minor has Bb, not B: its sixth degree lies a semitone above A.",
        "          -> Change B to Bb",
      ],
      leaps,
    );
    check(
      "G minor arpeggio",
      "G D A G",
      [
        "    ^ arpeggio-note: G minor arpeggio has Bb, not A: its third is a minor third above G.",
        "    -> Change A to Bb",
      ],
      leaps,
    );
    checkMend("F# major", "F#5 Bb5 C#5 E#6", "F#5 A#5 C#5 E#6", leaps);
    checkMend("C major", "C5 b#4 G4", "C5 c5 G4", leaps);
  });
  test("a word that is no note", () => {
    check(
      "D natural minor",
      "D A H",
      ["    ^ scale-note: H is not a note name (H is German for B: declare `names german` to use it)."],
      leaps,
    );
  });
  test("over half of the list is one finding, mended only where the letters alone are wrong", () => {
    check(
      "D natural minor",
      "C# F# G# E# B F#",
      ["^^^^^^^^^^^^^^^^ scale-note: 6 of these 6 notes are not in D natural minor, which has D E F G A Bb C."],
      leaps,
    );
    check(
      "Gb major",
      "F# A# C# E# G# B",
      [
        "^^^^^^^^^^^^^^^^ scale-spelling: This spells F# major: Gb major is written Gb Bb Db F Ab Cb.",
        "-> Write the notes of Gb major",
      ],
      leaps,
    );
  });
});

describe("the chromatic scale", () => {
  test("in either convention", () => {
    check("C chromatic", "C C# D D# E F F# G G# A A# B C B Bb A Ab G Gb F E Eb D Db C");
    check("C chromatic", "C Db D Eb E F F# G Ab A Bb B C");
  });
  // As method books for winds print it: common practice, no source.
  test("sharps up and flats down with white keys natural, on any tonic; the key's own E#, B#, Cb, Fb may stand", () => {
    check("F chromatic", "F F# G G# A A# B C C# D D# E F E Eb D Db C B Bb A Ab G Gb F");
    check("Bb chromatic", "Bb B C C# D D# E F F# G G# A Bb A Ab G Gb F E Eb D Db C B Bb");
    check("Eb chromatic", "Eb E F F# G G# A A# B C C# D Eb D Db C B Bb A Ab G Gb F E Eb");
    check("D chromatic", "D D# E F F# G G# A A# B C C# D Db C B Bb A Ab G Gb F E Eb D");
    check("F# chromatic", "F# G G# A A# B C C# D D# E F F#");
    check("F# chromatic", "F# G G# A A# B C C# D D# E E# F#");
    check("Gb chromatic", "Gb F E Eb D Db C Cb Bb A Ab G Gb");
    check("A chromatic", "A A# B C C# D D# E F F# G G# A");
  });
  test("the three customs, where they are three", () => {
    const message =
      "Every pitch is right. Chromatic scales are usually spelled in one of these ways. " +
      "Sharps going up and flats coming down: F F# G G# A A# B C C# D D# E F. " +
      "The key's own notes, and the others raised going up and lowered coming down: F F# G G# A Bb B C C# D D# E F. " +
      "As the key has them, the same both ways: F Gb G Ab A Bb B C Db D Eb E F.";
    check("F chromatic", "F Gb G G# A A# B C Db D D# E F", [
      `^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ chromatic-spelling: ${message}`,
      "-> Write sharps going up, flats coming down",
      "-> Keep the key's notes, raise the others going up, lower them coming down",
      "-> Name the notes as the key has them, the same both ways",
    ]);
  });
  test("in threes and thirds, in either convention; a wrong key says its figure", () => {
    const threes: Beside = { pattern: "threes", patternText: "threes" };
    check("C chromatic", "C C# D C# D D# D D# E", [], { ...threes, ...fiveNotes });
    check("C chromatic", "C Db D Db D Eb D Eb E", [], { ...threes, ...fiveNotes });
    check("C chromatic", "E Eb D Eb D Db D Db C", [], { ...threes, ...fiveNotes });
    check("C chromatic", "E Eb D Eb D Db D Db C", [], { ...threes, ...fiveNotes, direction: "down" });
    check("C chromatic", "C D C# D# D E E D Eb Db D C", [], { ...thirds, ...fiveNotes });
    check(
      "C chromatic",
      "C C# D C# D E D D# E",
      [
        "            ^ pattern-notes: Figure 2 of threes, going up, is C# D D#, not C# D E.",
        "            -> Change E to D#",
      ],
      { ...threes, ...fiveNotes },
    );
  });
  test("in none of them, tells which there are", () => {
    check("C chromatic", "C C# D D# E F F# G Ab A Bb B", [
      "^^^^^^^^^^^^^^^^^^^^^^^^^^^^ chromatic-spelling: Every pitch is right. Chromatic scales are usually spelled in one of these ways. " +
        "Sharps going up and flats coming down: C C# D D# E F F# G G# A A# B C. " +
        "As the key has them, the same both ways: C Db D Eb E F F# G Ab A Bb B C.",
      "-> Write sharps going up, flats coming down",
      "-> Name the notes as the key has them, the same both ways",
    ]);
    checkMend("C chromatic", "C C♯ D D♯ E F F♯ G A♭ A A♯ B", "C C♯ D D♯ E F F♯ G G♯ A A♯ B");
  });
  test("a wrong key is mended in the player's convention", () => {
    checkMend("C chromatic", "C Db D Eb E F F# G G A Bb B C", "C Db D Eb E F F# G Ab A Bb B C");
    checkMend("C chromatic", "C C# D D# E F F# G G A A# B C", "C C# D D# E F F# G G# A A# B C");
  });
});

describe("bounds", () => {
  test("names in another language are written in it", () => {
    checkMend("D natural minor", "D E F G A C D", "D E F G A B C D", { names: namesById("german")! });
  });
  test("no list has more than eight findings", () => {
    const up = "C D E F G A B".split(" ");
    const list = [...Array(40).keys()].map((index) => (index % 4 === 3 ? "C#" : up[index % 7]!)).join(" ");
    const found = checkNoteList(listed(list), beside("C major"));
    expect(found).toHaveLength(1);
    expect(found[0]!.message).toMatch(/^\d+ of these 40 notes differ from C major/u);
  });
  test("an empty list claims nothing", () => {
    expect(checkNoteList([], beside("C major"))).toEqual([]);
  });
});

describe("lists of two thousand notes take well under a second", () => {
  const timed = (list: string, subject: string, terms: Beside): number => {
    const notes = listed(list);
    expect(notes.length).toBeGreaterThanOrEqual(1900);
    const began = performance.now();
    checkNoteList(notes, beside(subject, terms));
    return performance.now() - began;
  };
  const letters = "C D E F G A B".split(" ");
  // A seeded walk over the letters (an invented list).
  const walk = [...Array(2000).keys()].map((index) => letters[(index * index * 31 + 7 * index) % 7]!).join(" ");
  test.each([
    ["the scale over and over", Array(285).fill(letters.join(" ")).join(" "), {}],
    ["a walk", walk, {}],
    ["a walk beside thirds", walk, { pattern: "thirds" }],
    ["a walk beside a growing pattern", walk, { pattern: "growing" }],
    ["a walk beside eight octaves", walk, { pattern: "five notes on each", reach: { type: "octaves", count: 8 } }],
    ["a walk beside the chromatic scale", walk, { subject: "C chromatic" }],
  ] as const)("%s", (_, list, terms) => {
    const { subject = "C major", ...rest } = { subject: undefined, ...terms };
    expect(timed(list, subject, rest as Beside)).toBeLessThan(1000);
  });
});
