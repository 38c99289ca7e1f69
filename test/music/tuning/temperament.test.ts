import { readFileSync } from "node:fs";
import fc from "fast-check";
import { Midi } from "tonal";
import { describe, expect, test } from "vitest";
import {
  fifthsOf,
  type NoteName,
  nameAtFifths,
  parseNote,
  pitchClass,
  printName,
} from "../../../server/music/notes/note.ts";
import { readTemperament } from "../../../server/music/tuning/read-temperament.ts";
import {
  centsFromEqual,
  centsOf,
  EQUAL,
  type FromPure,
  fifthsFromPure,
  frequencyOf,
  hertz,
  majorThirdsFromPure,
  PURE,
  PYTHAGOREAN_COMMA,
  SYNTONIC_COMMA,
  TEMPERAMENTS,
  type Temperament,
  temperamentSentence,
  temperamentText,
  wolves,
} from "../../../server/music/tuning/temperament.ts";
import reference from "../../reference/temperaments.json" with { type: "json" };
import more from "../../reference/temperaments-more.json" with { type: "json" };
import archive from "../../reference/temperaments-scala.json" with { type: "json" };

// Of the libraries on npm, tonal has equal temperament at any pitch and is the judge of that below. One that has the
// old temperaments and is kept up was not found; test/reference/temperaments-scala.json comes from one that is not.

const A = 9;

function named(name: string): Temperament {
  const read = readTemperament(name);
  if (!read.ok) throw new Error(read.reason);
  return read.temperament;
}

/** Cents of the keys above C, to three decimals. */
function aboveC(temperament: Temperament): number[] {
  const keys = centsFromEqual(temperament);
  return keys.map((cents, key) => rounded(100 * key + cents - keys[0]!, 3));
}

function rounded(figure: number, decimals: number): number {
  return Math.round(figure * 10 ** decimals) / 10 ** decimals + 0;
}

/** `G#–Eb +35.7`. */
function told({ lower, upper, cents }: FromPure): string {
  const size = rounded(cents, 1);
  return `${printName(lower)}–${printName(upper)} ${size > 0 ? "+" : ""}${size}`;
}

const ALL: readonly Temperament[] = [
  ...TEMPERAMENTS.map(({ id }) => ({ id })),
  named("just on C"),
  named("just on F#"),
];
const anyTemperament = fc.oneof(
  fc.constantFrom(...ALL),
  fc.integer({ min: -15, max: 19 }).map((place): Temperament => ({ id: "just", tonic: nameAtFifths(place) })),
);
const anyPitch = fc.double({ min: 380, max: 480, noNaN: true });

describe("the cents of the twelve keys", () => {
  // test/reference/temperaments.json, three decimals of cents above C and two of cents from equal temperament with A =
  // 0.
  test.each([
    ["quarter-comma meantone", reference.temperaments["quarter-comma meantone"]],
    ["Vallotti", reference.temperaments.Vallotti],
    ["Werckmeister III", reference.temperaments["Werckmeister III"]],
    ["just on C", reference.temperaments["just (5-limit on C)"]],
  ])("%s", (name, { cents, offset_from_12TET_A0 }) => {
    expect(aboveC(named(name))).toEqual(cents);
    // The offsets are differences of two figures to three decimals, rounded once more to two: within 0.006 of the
    // exact.
    for (const [key, offset] of centsFromEqual(named(name)).entries())
      expect(Math.abs(offset - offset_from_12TET_A0[key]!), `${name}, key ${key}`).toBeLessThanOrEqual(0.006);
  });

  // test/reference/temperaments-scala.json: the Scala archive, three decimals.
  test.each(archive.temperaments.map((row) => [row.temperament, row.cents] as const))(
    "%s, as in the Scala archive",
    (name, cents) => {
      expect(aboveC(named(name))).toEqual(cents);
    },
  );

  // test/reference/temperaments-more.json: three decimals added up from rounded fifths, or two, rounded or cut off.
  test.each(more.temperaments)(
    "$temperament, as in what an organ ships and in an older edition of the archive",
    (row) => {
      const keys = centsFromEqual(named(row.temperament));
      for (const [key, offset] of (row.from_equal ?? []).entries())
        expect(Math.abs(keys[key]! - offset), `key ${key}`).toBeLessThan(0.011);
      for (const [key, cents] of (row.cents ?? []).entries())
        expect(Math.abs(100 * key + keys[key]! - keys[0]! - cents), `key ${key}`).toBeLessThan(0.002);
      expect((row.from_equal ?? row.cents)!).toHaveLength(12);
    },
  );

  test("every temperament has a source, but for the equal one, which is its own", () => {
    const sourced = [...archive.temperaments, ...more.temperaments].map(({ temperament }) => temperament);
    const ours = TEMPERAMENTS.map(({ names }) => names[0]);
    expect(["equal", ...sourced].sort()).toEqual([...ours, "just on C"].sort());
    expect(aboveC(EQUAL)).toEqual([0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100]);
  });

  test("the commas are those of test/reference/temperaments.json", () => {
    expect(PYTHAGOREAN_COMMA).toBeCloseTo(reference.commas.pythagorean, 10);
    expect(SYNTONIC_COMMA).toBeCloseTo(reference.commas.syntonic, 10);
    expect(PYTHAGOREAN_COMMA - SYNTONIC_COMMA).toBeCloseTo(reference.commas.schisma, 10);
  });
});

describe("frequencies in equal temperament", () => {
  const [head, ...rows] = readFileSync(new URL("../../reference/frequencies-12tet.tsv", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .map((line) => line.split("\t"));

  /** Two columns are a semitone from 440, and their headings are rounded. */
  const SEMITONE_AWAY: Readonly<Record<string, number>> = {
    "415.3047": 440 / 2 ** (1 / 12),
    "466.1638": 440 * 2 ** (1 / 12),
  };

  test.each(head!.slice(2))("A = %s: the column of test/reference/frequencies-12tet.tsv", (pitch) => {
    const column = head!.indexOf(pitch);
    const a = SEMITONE_AWAY[pitch] ?? Number(pitch);
    for (const row of rows) {
      const { octave, ...name } = parseNote(row[1]!)!;
      const found = frequencyOf({ ...name, octave: octave! }, { a, temperament: EQUAL });
      expect(found.toFixed(4), row[1]).toBe(row[column]);
    }
  });

  test("at any pitch they are those of tonal", () => {
    fc.assert(
      fc.property(anyPitch, fc.integer({ min: 0, max: 83 }), (a, above) => {
        const note = { ...nameAtFifths((above * 7) % 12), octave: 2 + Math.floor(above / 12) };
        const midi = 12 * (note.octave + 1) + pitchClass({ letter: note.letter, alter: 0 }) + note.alter;
        expect(frequencyOf(note, { a, temperament: EQUAL })).toBeCloseTo(Midi.midiToFreq(midi, a), 8);
      }),
      { seed: 415 },
    );
  });
});

describe("what holds in every temperament", () => {
  test("A is the anchor: it sounds the pitch that is named, whatever the temperament", () => {
    for (const temperament of ALL) {
      expect(centsFromEqual(temperament)[A], temperament.id).toBe(0);
      for (const a of [392, 415, 430, 440, 442, 466])
        expect(frequencyOf({ letter: "A", alter: 0, octave: 4 }, { a, temperament })).toBe(a);
    }
  });

  test("an octave is exactly double", () => {
    fc.assert(
      fc.property(anyTemperament, anyPitch, fc.integer({ min: -15, max: 19 }), (temperament, a, place) => {
        const note = { ...nameAtFifths(place), octave: 4 };
        const octave = frequencyOf({ ...note, octave: 5 }, { a, temperament });
        expect(octave / frequencyOf(note, { a, temperament })).toBeCloseTo(2, 12);
      }),
      { seed: 392 },
    );
  });

  test("cents and frequency agree", () => {
    fc.assert(
      fc.property(anyTemperament, anyPitch, fc.integer({ min: -15, max: 19 }), (temperament, a, place) => {
        const note = { ...nameAtFifths(place), octave: 4 };
        const found = frequencyOf(note, { a, temperament });
        const equal = frequencyOf(note, { a, temperament: EQUAL });
        expect(1200 * Math.log2(found / equal)).toBeCloseTo(centsFromEqual(temperament)[pitchClass(note)]!, 8);
        expect(hertz(note, centsFromEqual(temperament)[pitchClass(note)]!, a)).toBe(found);
      }),
      { seed: 430 },
    );
  });

  test("there are twelve keys: D flat sounds the C sharp key, and F flat the E key", () => {
    for (const temperament of ALL)
      for (const [flat, sharp] of [
        ["Db4", "C#4"],
        ["Eb4", "D#4"],
        ["Ab4", "G#4"],
        ["Fb4", "E4"],
        ["B#3", "C4"],
      ] as const) {
        const sounds = [flat, sharp].map((text) => {
          const { octave, ...name } = parseNote(text)!;
          return frequencyOf({ ...name, octave: octave! }, { a: 415, temperament });
        });
        expect(sounds[0]).toBe(sounds[1]);
      }
  });
});

describe("fifths", () => {
  const circular = ["equal", "vallotti", "young ii", "werckmeister iii", "kellner"].concat(
    ["neidhardt i", "neidhardt ii"],
    ["kirnberger ii", "kirnberger iii"],
  );

  /** By how much the twelve fifths, as they are defined, fall short of seven octaves, in cents. */
  function short(id: string): number {
    const { narrowed } = TEMPERAMENTS.find((kind) => kind.id === id)!;
    return PYTHAGOREAN_COMMA - narrowed.reduce((sum, { cents, fifths }) => sum + cents * fifths.length, 0);
  }

  test("those of a circular temperament close: twelve of them are seven octaves", () => {
    for (const id of circular) expect(short(id), id).toBeCloseTo(0, 9);
    const open = TEMPERAMENTS.map(({ id }) => id).filter((id) => !circular.includes(id));
    expect(open).toHaveLength(4);
    for (const id of open) expect(Math.abs(short(id)), id).toBeGreaterThan(10);
  });

  test("no fifth is tempered twice", () => {
    for (const { id, narrowed } of TEMPERAMENTS) {
      const fifths = narrowed.flatMap((each) => each.fifths);
      expect(new Set(fifths).size, id).toBe(fifths.length);
    }
  });

  // The definitions of test/reference/temperaments.json, in cents from pure: 1/6 and 1/4 of the Pythagorean comma.
  test.each([
    ["Vallotti", "F C G D A E", 3.9],
    ["Young II", "C G D A E B", 3.9],
    ["Werckmeister III", "C G D B", 5.9],
  ])("%s: those on %s are narrow by %s cents, the others are pure", (name, lower, cents) => {
    for (const fifth of fifthsFromPure(named(name)))
      expect([printName(fifth.lower), rounded(fifth.cents, 1)]).toEqual([
        printName(fifth.lower),
        lower.split(" ").includes(printName(fifth.lower)) ? -cents : 0,
      ]);
  });

  // The sizes follow from the definitions: eleven fifths, and what is left. In just intonation from the ratios:
  // 40/27 from D to A and from Eb to Bb, 1024/675 from F# to Db.
  test.each([
    ["equal", []],
    ["Vallotti", []],
    ["Young II", []],
    ["Werckmeister III", []],
    ["Kellner", []],
    ["Neidhardt I", []],
    ["Neidhardt II", []],
    ["Kirnberger II", []],
    ["Kirnberger III", []],
    ["fifth-comma meantone", [["G#", "Eb", (11 / 5) * SYNTONIC_COMMA - PYTHAGOREAN_COMMA]]],
    ["Pythagorean", [["G#", "Eb", -PYTHAGOREAN_COMMA]]],
    ["sixth-comma meantone", [["G#", "Eb", (11 / 6) * SYNTONIC_COMMA - PYTHAGOREAN_COMMA]]],
    ["quarter-comma meantone", [["G#", "Eb", (11 / 4) * SYNTONIC_COMMA - PYTHAGOREAN_COMMA]]],
    [
      "just on C",
      [
        ["Eb", "Bb", centsOf(40 / 27) - PURE.fifth],
        ["D", "A", centsOf(40 / 27) - PURE.fifth],
        ["F#", "Db", centsOf(1024 / 675) - PURE.fifth],
      ],
    ],
  ] as const)("the wolves of %s", (name, expected) => {
    const found = wolves(named(name));
    expect(found.map(({ lower, upper }) => [printName(lower), printName(upper)])).toEqual(
      expected.map(([lower, upper]) => [lower, upper]),
    );
    for (const [i, { cents }] of found.entries()) expect(cents).toBeCloseTo(expected[i]![2], 9);
  });
});

describe("major thirds", () => {
  // Worked out from the cents of test/reference/temperaments.json, which are to three decimals.
  test.each(["Vallotti", "Werckmeister III", "quarter-comma meantone"] as const)("%s", (name) => {
    const { cents } = reference.temperaments[name];
    for (const { lower, upper, cents: found } of majorThirdsFromPure(named(name))) {
      const third = (cents[pitchClass(upper)]! - cents[pitchClass(lower)]! + 1200) % 1200;
      expect(found, printName(lower)).toBeCloseTo(third - centsOf(5 / 4), 2);
    }
  });

  // "Eight pure thirds": common practice, no source.
  test("quarter-comma meantone has eight pure ones; the other four are diminished fourths", () => {
    const thirds = majorThirdsFromPure(named("quarter-comma meantone"));
    expect(thirds.map(told)).toEqual([
      "Eb–G 0",
      "Bb–D 0",
      "F–A 0",
      "C–E 0",
      "G–B 0",
      "D–F# 0",
      "A–C# 0",
      "E–G# 0",
      "B–Eb +41.1",
      "F#–Bb +41.1",
      "C#–F +41.1",
      "G#–C +41.1",
    ]);
  });
});

describe("just intonation", () => {
  test("moves with its tonic: the same distances from any note", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -15, max: 19 }),
        fc.integer({ min: -11, max: 11 }),
        fc.integer({ min: 0, max: 11 }),
        (place, by, above) => {
          const from = (tonic: NoteName, key: number): number => {
            const keys = centsFromEqual({ id: "just", tonic });
            return keys[(pitchClass(tonic) + key) % 12]! - keys[pitchClass(tonic)]!;
          };
          const tonic = nameAtFifths(place);
          const moved = nameAtFifths(place + by);
          expect(from(moved, above)).toBeCloseTo(from(tonic, above), 9);
        },
      ),
      { seed: 442 },
    );
  });

  test("moves its wolves along, spelled from the tonic", () => {
    for (const tonic of ["D", "F#", "Bb"]) {
      const by = fifthsOf(parseNote(tonic)!);
      const moved = wolves(named("just on C")).map(
        ({ lower, upper }) =>
          `${printName(nameAtFifths(fifthsOf(lower) + by))}–${printName(nameAtFifths(fifthsOf(upper) + by))}`,
      );
      expect(
        wolves(named(`just on ${tonic}`)).map(({ lower, upper }) => `${printName(lower)}–${printName(upper)}`),
      ).toEqual(moved);
    }
  });

  test("is the same on a note by either name", () => {
    expect(centsFromEqual(named("just on C#"))).toEqual(centsFromEqual(named("just on Db")));
  });
});

test("each is told by its name and a sentence", () => {
  expect(ALL.map((each) => temperamentText(each, printName))).toEqual([
    "equal",
    "Vallotti",
    "Young II",
    "Werckmeister III",
    "Kellner",
    "Neidhardt I",
    "Neidhardt II",
    "Kirnberger II",
    "Kirnberger III",
    "sixth-comma meantone",
    "fifth-comma meantone",
    "quarter-comma meantone",
    "Pythagorean",
    "just on C",
    "just on F#",
  ]);
  for (const each of ALL) expect(temperamentSentence(each)).toMatch(/^[A-Z].*\.$/);
});
