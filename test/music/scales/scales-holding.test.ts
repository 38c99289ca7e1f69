import fc from "fast-check";
import { Chord, Note, Scale } from "tonal";
import { describe, expect, test } from "vitest";
import { chordsOf } from "../../../server/music/chords/chords-of-notes.ts";
import { type NoteName, parseNote, pitchClass, printName } from "../../../server/music/notes/note.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import type { ScaleKind } from "../../../server/music/scales/kind.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import {
  isExactly,
  nearMisses,
  type ScaleReading,
  scalesHolding,
} from "../../../server/music/scales/scales-holding.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };
import others from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };
import { FEW } from "../../support/random-runs.ts";

const names = (text: string): NoteName[] => text.split(" ").map((word) => parseNote(word)!);
const text = (notes: readonly NoteName[]): string => notes.map(printName).join(" ");
const pairs = ({ respelled }: Pick<ScaleReading, "respelled">): string =>
  respelled.map(({ given, written }) => `, ${printName(written)} for ${printName(given)}`).join("");

/** `D melodic minor + B C`, `F# major, E# for F`. */
function shown(reading: ScaleReading): string {
  const further = reading.notGiven.length === 0 ? "" : ` + ${text(reading.notGiven)}`;
  return `${printName(reading.tonic)} ${reading.kind.id}${further}${pairs(reading)}`;
}

/** The nearest readings of some notes, as many as are expected. */
function check(notes: string, ...expected: readonly string[]): void {
  expect(scalesHolding(names(notes)).slice(0, expected.length).map(shown), notes).toEqual(expected);
}

/** Kinds that have the very notes of another one are named beside it. */
const NAMED_BESIDE: Readonly<Record<string, string>> = { ionian: "major", aeolian: "natural minor" };

describe("a scale's own notes name it first", () => {
  // test/reference/scales.json: LilyPond 2.24.1.
  test("major, and the three forms of minor, on the tonics of the reference", () => {
    let seen = 0;
    for (const { tonic, scales: forms } of [...scales.major, ...scales.minor]) {
      for (const [form, { up }] of Object.entries(forms)) {
        const [first] = scalesHolding(names(up.join(" ")));
        const id = form === "major" ? form : `${form} minor`;
        expect(shown(first!), up.join(" ")).toBe(`${tonic} ${id}`);
        expect(isExactly(first!)).toBe(true);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(20);
  });

  // test/reference/modes.json: LilyPond 2.24.1.
  test("every mode of the reference", () => {
    for (const { mode, tonic, up } of modes.modes)
      check([...up, tonic].join(" "), `${tonic} ${NAMED_BESIDE[mode] ?? mode}`);
    expect(modes.modes.length).toBeGreaterThan(40);
  });

  // test/reference/scales-other-and-arpeggios.json: LilyPond 2.24.1.
  test.each([
    ["major pentatonic", "major pentatonic"],
    ["minor pentatonic", "minor pentatonic"],
    ["minor blues sharp4", "blues"],
    ["minor blues flat5", "blues"],
    ["major blues", "major blues"],
    ["whole tone", "whole-tone"],
    ["octatonic half-whole", "half-whole"],
    ["octatonic whole-half", "whole-half"],
    ["harmonic chromatic", "chromatic"],
    ["melodic chromatic up", "chromatic"],
  ] as const)("%s", (name, id) => {
    for (const [tonic, notes] of Object.entries(others.scales[name])) check(notes, `${tonic} ${id}`);
  });

  test("what has the same notes is named beside it", () => {
    const [first] = scalesHolding(names("C D E F G A B"));
    expect(first!.alsoCalled.map(({ id }) => id)).toEqual(["ionian"]);
  });
});

/** The names that npm `tonal` has for our kinds. */
const ORACLE: Readonly<Record<string, string>> = {
  major: "major",
  "natural minor": "minor",
  "harmonic minor": "harmonic minor",
  dorian: "dorian",
  phrygian: "phrygian",
  lydian: "lydian",
  mixolydian: "mixolydian",
  locrian: "locrian",
  "major pentatonic": "major pentatonic",
  "minor pentatonic": "minor pentatonic",
  blues: "blues",
  "major blues": "major blues",
  "whole-tone": "whole tone",
  "half-whole": "half-whole diminished",
  "whole-half": "diminished",
  "harmonic major": "harmonic major",
  "double harmonic": "double harmonic major",
  "lydian dominant": "lydian dominant",
  "phrygian dominant": "phrygian dominant",
  "hungarian minor": "hungarian minor",
  altered: "altered",
  "bebop dominant": "bebop",
  "bebop major": "bebop major",
};
const SHARPS = "C C# D D# E F F# G G# A A# B".split(" ");

// Against npm `tonal` (6.4.3): its pitch classes of each scale on each of the twelve keys.
test("exactly the scales are found whose pitches include all that are given, with the right number of further ones", () => {
  const known = Object.entries(ORACLE).flatMap(([id, name]) =>
    SHARPS.map((tonic, pitch) => ({
      key: `${pitch} ${id}`,
      chroma: Scale.get(`${tonic} ${name}`).notes.map(chromaOf),
    })),
  );
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 11 }), { minLength: 1, maxLength: 7 }), (pitches) => {
      const given = pitches.map((pitch) => parseNote(SHARPS[pitch]!)!);
      const found = scalesHolding(given).filter(({ kind }) => kind.id in ORACLE);
      const expected = known
        .filter(({ chroma }) => pitches.every((pitch) => chroma.includes(pitch)))
        .map(({ key, chroma }) => `${key} ${chroma.length - pitches.length}`);
      const ours = found.map(({ tonic, kind, notGiven }) => `${pitchClass(tonic)} ${kind.id} ${notGiven.length}`);
      expect(ours.sort()).toEqual(expected.sort());
    }),
    { seed: 7, numRuns: FEW },
  );
});

/** Of a name with any number of accidentals. */
function chromaOf(name: string): number {
  return Note.chroma(name)!;
}

describe("the order (common practice, no source: fewest further notes, your tonic, the usual kinds)", () => {
  test("fewest further notes first", () => {
    check("D E F G A Bb C#", "D harmonic minor", "A phrygian dominant", "F bebop major + C", "D melodic minor + B C");
    check("C D E G A", "C major pentatonic", "A minor pentatonic", "C major blues + Eb");
  });
  test("then the first note as tonic, then the last", () => {
    check("A D E", "A minor pentatonic + C G", "E minor pentatonic + G B", "C major pentatonic + C G");
    check("D E F G A B C", "D dorian", "C major");
  });
  test("then the usual kinds", () => {
    check("D F A E G Bb", "D natural minor + C", "D harmonic minor + C#");
  });
  test("octave, order and repetition do not matter", () => {
    check("D C Bb A G F E D", "D natural minor");
    check("D E F G A B C# D C Bb A G F E D", "D melodic minor");
  });
});

describe("right pitch, other letter", () => {
  test("is told, and the scale keeps as many letters as it can", () => {
    check("F# G# A# B C# D# F", "F# major, E# for F", "E# locrian, E# for F");
    check("G# B D F", "A harmonic minor + A C E", "A harmonic major + A C# E", "E phrygian dominant + E A C");
    expect(scalesHolding(names("G# B D F")).map(shown)).toContain("C harmonic minor + C Eb G, Ab for G#");
  });
  test("rather a key in use with other letters than a theoretical one", () => {
    const [first] = scalesHolding(names("G# A# C C# D# F G"));
    expect(first!.theoretical).toBe(false);
    expect(shown(first!)).toMatch(/^Ab major, Ab for G#/);
  });
  test("but a theoretical key that is spelled right throughout stays, and is called so", () => {
    const [first] = scalesHolding(names("G# A# B# C# D# E# F##"));
    expect([shown(first!), first!.theoretical]).toEqual(["G# major", true]);
  });
  test("whole-tone and octatonic scales take any letter, as claims do", () => {
    check("C D E F# Ab Bb", "C whole-tone");
  });
});

describe("near misses", () => {
  const misses = (notes: string): string[] =>
    nearMisses(names(notes)).map((miss) => {
      const { given, instead } = miss.differs;
      return `${shown(miss)}: ${instead ? printName(instead) : "no note"} for ${printName(given)}`;
    });
  test("one note differs, and which", () => {
    expect(scalesHolding(names("D Eb F# G# A Bb C#"))).toEqual([]);
    expect(misses("D Eb F# G# A Bb C#")[0]).toBe("D double harmonic: G for G#");
    expect(misses("F# G# A# B C# D# E F#")[0]).toBe("F# major: E# for E");
  });
  test("or is one too many", () => {
    expect(misses("C D E F F# G A B")[0]).toBe("C major: no note for F#");
  });
  test("each would hold the notes once that one is put right", () => {
    const notes = names("D Eb F# G# A Bb C#");
    for (const { differs, tonic, kind } of nearMisses(notes)) {
      const { given, instead } = differs;
      const mended = notes.flatMap((note) => (note === given ? (instead ?? []) : note));
      const found = scalesHolding(mended).map((each) => `${pitchClass(each.tonic)} ${each.kind.id}`);
      expect(found).toContain(`${pitchClass(tonic)} ${kind.id}`);
    }
  });
  test("fewer than four pitches are near to everything, so nothing is said", () => {
    expect(nearMisses(names("C C# D"))).toEqual([]);
  });
});

describe("declared scales", () => {
  const declared = (name: string, degrees: string): ScaleKind => {
    const reading = declaredKind(name, degrees);
    if (!reading.ok) throw new Error(reading.reason);
    return reading.kind;
  };
  const first = (notes: string, kind: ScaleKind): ScaleReading | undefined =>
    scalesHolding(names(notes), [...KINDS, kind])[0];
  test("are found like any other", () => {
    const found = first("D Eb F# G# A Bb C#", declared("purvi", "1 b2 3 #4 5 b6 7"));
    expect(shown(found!)).toBe("D purvi");
  });
  test("those that are a known scale by another name stand beside it", () => {
    const found = first("D E F G A B C", declared("my dorian", "1 2 b3 4 5 6 b7"));
    expect([shown(found!), found!.alsoCalled.map(({ id }) => id)]).toEqual(["D dorian", ["my dorian"]]);
  });
  test("those in cents between the keys have no names of notes, and are passed over", () => {
    const found = scalesHolding(names("A"), [declared("even seven", "cents 0 150 300 500 700 850 1000")]);
    expect(found).toEqual([]);
  });
});

describe("chords", () => {
  const shownChords = (notes: string): string[] =>
    chordsOf(names(notes)).map((each) => `${printName(each.root)} ${each.chord.id} ${each.inversion}${pairs(each)}`);
  // test/reference/scales-other-and-arpeggios.json: LilyPond 2.24.1.
  test.each([
    ["arp major", "major"],
    ["arp minor", "minor"],
    ["arp diminished", "diminished"],
    ["arp augmented", "augmented"],
    ["arp dominant 7th", "dominant seventh"],
    ["arp diminished 7th", "diminished seventh"],
    ["arp major 7th", "major seventh"],
    ["arp minor 7th", "minor seventh"],
    ["arp half-diminished 7th", "half-diminished seventh"],
  ] as const)("%s: its own notes name it first, in root position", (name, id) => {
    for (const [root, notes] of Object.entries(others.scales[name]))
      expect(shownChords(notes)[0], notes).toBe(`${root} ${id} 0`);
  });
  test("inversions by the note that stands first", () => {
    expect(shownChords("F A D")).toEqual(["D minor 1"]);
    expect(shownChords("G A C# E")).toEqual(["A dominant seventh 3"]);
  });
  test("those that divide the octave evenly have a reading on each note", () => {
    expect(shownChords("B D F Ab")).toEqual([
      "B diminished seventh 0",
      "G# diminished seventh 1, G# for Ab",
      "F diminished seventh 2, Cb for B, Ebb for D",
      "D diminished seventh 3, Cb for B",
    ]);
  });
  // Against npm `tonal` (6.4.3), `Chord.detect`.
  test("a note more or less is no chord, and tonal names the same root", () => {
    expect(shownChords("D F A B C")).toEqual([]);
    expect(shownChords("D F")).toEqual([]);
    for (const notes of ["D F# A", "D F A C", "B D F A", "G B D F"]) {
      const [chord] = chordsOf(names(notes));
      expect(Chord.detect(notes.split(" "))[0]).toMatch(new RegExp(`^${printName(chord!.root)}`));
    }
  });
});

test("nothing given, nothing found", () => {
  expect([scalesHolding([]), nearMisses([]), chordsOf([])]).toEqual([[], [], []]);
});
