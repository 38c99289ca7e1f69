import { readFileSync } from "node:fs";
import { Note } from "tonal";
import { describe, expect, test } from "vitest";
import type { NotesReport } from "../../../server/cli/notes/notes-report.ts";
import patterns from "../../reference/patterns.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

async function report(exercise: string, options: string[] = [], files: Files = {}): Promise<NotesReport> {
  const { status, stdout, stderr } = await daystave(["notes", exercise, "--json", ...options], { files });
  expect([status, stderr], exercise).toEqual([0, ""]);
  return JSON.parse(stdout);
}

/** The exercise as it is told, as far as the expectation goes. */
async function check(exercise: string, expected: Partial<NotesReport>, options: string[] = [], files: Files = {}) {
  expect(await report(exercise, options, files), exercise).toMatchObject(expected);
}

/** Words that are no exercise: what is said. */
async function refuse(argv: string[], says: string, files: Files = {}) {
  const { status, stdout, stderr } = await daystave(["notes", ...argv], { files });
  expect({ status, stdout, stderr }).toEqual({ status: 2, stdout: "", stderr: `daystave: ${says}\n` });
}

test("all that is told, in the contract's keys", async () => {
  expect(await report("G major, five notes, up")).toEqual({
    subject: "G major",
    tonic: "G",
    kind: "major",
    signature: { fifths: 1, accidentals: ["F#"] },
    parallelSignature: null,
    relative: "E natural minor",
    parallel: "G natural minor",
    collection: null,
    steps: [2, 2, 1, 2, 2, 2, 1],
    up: ["G4", "A4", "B4", "C5", "D5"],
    down: ["D5", "C5", "B4", "A4", "G4"],
    notes: ["G4", "A4", "B4", "C5", "D5"],
    sounding: ["G4", "A4", "B4", "C5", "D5"],
    degrees: [1, 2, 3, 4, 5],
    range: { low: "G4", high: "D5" },
    outOfRange: [],
    needsBell: [],
    halfHoles: [],
    fingerings: [],
    changes: [],
    fingersUnknown: "not shown: no instrument is named",
    frequencies: [391.9954, 440, 493.8833, 523.2511, 587.3295],
    cents: [0, 0, 0, 0, 0],
    pitch: 440,
    temperament: "equal",
  });
});

test("every key of test/reference/scales.json (LilyPond): notes up and down, signature", async () => {
  const keys = [...scales.major, ...scales.minor];
  expect(keys).toHaveLength(16);
  for (const { tonic, fifths, signature, scales: forms } of keys) {
    for (const [form, { up, down }] of Object.entries(forms)) {
      const kind = form === "major" ? "major" : `${form} minor`;
      await check(`${tonic} ${kind}`, { tonic, kind, up, down, signature: { fifths, accidentals: signature } });
    }
  }
});

test.each([
  ["straight", "straight_up"],
  ["thirds", "intervals:2"],
  ["fourths", "intervals:3"],
  ["triads", "triads"],
  ["growing", "growing"],
  ["pedal", "pedal"],
])("degrees of %s are those of %s in test/reference/patterns.json (common practice, no source)", async (words, id) => {
  const { T8 } = patterns.patterns.find((pattern) => pattern.id === id)!;
  await check(`C major, ${words}, up`, { degrees: T8 });
});

describe("frequencies in equal temperament", () => {
  test("A=440: the frequencies of tonal", async () => {
    const { sounding, frequencies } = await report("chromatic from C3 to C6, up");
    expect(sounding).toHaveLength(37);
    expect(frequencies).toEqual(sounding.map((note) => Math.round(Note.freq(note)! * 1e4) / 1e4));
  });

  test.each(["392", "415", "430", "442", "465"])(
    "A=%s: the column of test/reference/frequencies-12tet.tsv",
    async (pitch) => {
      const [head, ...rows] = readFileSync(new URL("../../reference/frequencies-12tet.tsv", import.meta.url), "utf8")
        .trim()
        .split("\n")
        .map((line) => line.split("\t"));
      const column = head!.indexOf(pitch);
      const { sounding, frequencies } = await report("C major, 2 octaves, up", ["--pitch", `A=${pitch}`]);
      expect(sounding).toHaveLength(15);
      for (const [i, note] of sounding.entries()) {
        const row = rows.find(([, name]) => name === note)!;
        expect(frequencies[i], note).toBeCloseTo(Number(row[column]), 3);
      }
    },
  );

  test("a declared scale in cents lies between the keys, and says by how much", async () => {
    const files = { "journal.practice": 'scale "even seven": cents 0 150 300 500 700 850 1000\n' };
    const { cents, frequencies } = await report('"even seven" on A, up', [], files);
    expect(cents[1]! % 100 === 50 || cents[1]! % 100 === -50).toBe(true);
    // 150 cents above A4 = 440 Hz: 440 · 2^(150/1200)
    expect(frequencies[1]).toBeCloseTo(440 * 2 ** (150 / 1200), 3);
  });
});

describe("arpeggios and chords", () => {
  test("an arpeggio's degrees count its chord's notes", () =>
    check("D minor arpeggio", {
      tonic: "D",
      kind: "minor arpeggio",
      steps: [3, 4, 5],
      notes: ["D4", "F4", "A4", "D5", "A4", "F4", "D4"],
      degrees: [1, 2, 3, 4, 3, 2, 1],
    }));

  test("the dominant seventh in a key starts on its fifth degree", () =>
    check("dominant seventh in D", {
      tonic: "A",
      kind: "dominant seventh",
      signature: { fifths: 2, accidentals: ["F#", "C#"] },
    }));
});

// The fingerings are those of test/reference/recorder-fingerings.json.
describe("on a recorder", () => {
  const ALTO = ["--instrument", "alto recorder"];

  test("each step tells what moves, in the names of the notes as written", async () => {
    const { notes, changes } = await report("F major, five notes", ALTO);
    expect(changes.map(({ from, to }) => [from, to])).toEqual(notes.slice(1).map((note, i) => [notes[i], note]));
    const still = { contrary: false, thumb: false, halfHoles: 0, register: false, thirdRegister: false, bell: false };
    expect(changes.slice(0, 4)).toEqual([
      { from: "F4", to: "G4", fingers: 1, ...still, cost: 1 },
      { from: "G4", to: "A4", fingers: 1, ...still, cost: 1 },
      { from: "A4", to: "Bb4", fingers: 3, ...still, contrary: true, cost: 6 },
      { from: "Bb4", to: "C5", fingers: 3, ...still, cost: 3 },
    ]);
  });

  test("half holes and the bell, each note once; how far charts agree", async () => {
    const { halfHoles, needsBell, fingerings } = await report("F# major, full range", ALTO);
    expect([halfHoles, needsBell]).toEqual([["F#4", "G#4"], ["F#6"]]);
    expect(fingerings.filter(({ confidence }) => confidence !== "high")).toEqual([
      { note: "C#5", fingering: "0 12- 45--", confidence: "medium", alternatives: ["0 12- 456/-"] },
      { note: "D#6", fingering: "Ø 12- -56-", confidence: "medium", alternatives: ["Ø 12- -567", "Ø 12- 456-"] },
    ]);
    expect(fingerings.map(({ note }) => note).slice(0, 3)).toEqual(["F#4", "G#4", "A#4"]);
  });

  test("as text: the hardest step with both fingerings, and where charts vary", async () => {
    const { stdout } = await daystave(["notes", "F# major, full range", ...ALTO]);
    expect(stdout).toContain("  hardest change E#6 to F#6, Ø 1-- 45-- to Ø 1-3 4-6- bell: 3 fingers and the\n");
    expect(stdout).toContain(
      "  half holes     F#4 G#4\n  bell closed    F#6\n  charts vary    C#5 0 12- 45-- or 0 12- 456/-; D#6",
    );
  });

  test("above its range, where only one chart says anything, it is called uncertain and is not the hardest", async () => {
    const { stdout } = await daystave(["notes", "D melodic minor, thirds, twelfth", ...ALTO]);
    expect(stdout).toContain("  hardest change D6 to F6,");
    expect(stdout).toContain("  charts vary    A6 Ø -23 -56- bell (uncertain)\n");
  });

  const unknown = { needsBell: [], halfHoles: [], fingerings: [], changes: [] };

  test("with German fingering nothing is guessed, and that is said", async () => {
    const files = { "journal.practice": "instrument soprano recorder, german fingering\n" };
    const fingersUnknown = "not available for German fingering yet";
    await check("C major", { range: { low: "C4", high: "C5" }, ...unknown, fingersUnknown }, [], files);
    await check("C major", { fingersUnknown: null }, ["--instrument", "soprano recorder"]);
    const { stdout } = await daystave(["notes", "C major"], { files });
    expect(stdout).toContain("  hardest change not available for German fingering yet\n");
  });

  test("with baroque or English fingering, two names of one, it is as if nothing was said", async () => {
    const { changes } = await report("C major", ["--instrument", "soprano recorder"]);
    expect(changes).toHaveLength(14);
    for (const name of ["baroque", "english"])
      await check("C major", { changes }, [], {
        "journal.practice": `instrument soprano recorder, ${name} fingering\n`,
      });
  });

  test("no other instrument has fingerings here, but half holes may be declared", async () => {
    const fingersUnknown = "not shown: fingerings are known only for recorders";
    await check("C major", { ...unknown, fingersUnknown }, ["--instrument", "oboe"]);
    const files = { "journal.practice": 'instrument "my flute": D4 to B5, half holes D#4 G#4\n' };
    await check("E major", { ...unknown, halfHoles: ["G#4"] }, [], files);
    const { stdout } = await daystave(["notes", "E major"], { files });
    expect(stdout).toContain(
      "  hardest change not shown: fingerings are known only for recorders\n  half holes     G#4\n",
    );
    expect((await daystave(["notes", "C major", "--instrument", "alto voice"])).stdout).not.toContain("hardest step");
  });
});

describe("the journal around", () => {
  const files = {
    "journal.practice": 'instrument soprano recorder\npitch A=415\npattern "zigzag": 1 3 2 4\n',
    "march.practice": "2026-03-01\n  instrument bassoon\n",
  };

  test("settles instrument and pitch", async () => {
    const { notes, sounding, frequencies } = await report("D major, up", [], files);
    expect([notes[0], sounding[0]]).toEqual(["D4", "D5"]);
    expect(frequencies[4]).toBe(830); // A5 where A4 is 415
  });

  test("and declares patterns", () =>
    check(
      'C major, "zigzag", up',
      { degrees: [1, 3, 2, 4, 2, 4, 3, 5, 3, 5, 4, 6, 4, 6, 5, 7, 5, 7, 6, 8] },
      [],
      files,
    ));

  test("options go before it", async () => {
    const options = ["--instrument", "treble recorder", "--pitch", "A=440"];
    const { notes, frequencies } = await report("A major, 2 octaves", options, files);
    expect([notes[0], frequencies[0]]).toEqual(["A4", 440]);
    await check("A major, 2 octaves", { outOfRange: ["G#6", "A6"] }, options, files);
  });

  test("and before the instrument that the line names", () =>
    check("C major on tenor recorder", { range: { low: "C5", high: "C6" } }, ["--instrument", "alto recorder"]));

  test("chromatic alone starts from the lowest note of the instrument that plays it", () =>
    check("chromatic, on alto recorder", { tonic: "F", range: { low: "F4", high: "F5" } }, [], files));
});

describe("what cannot be read is told in the words of check", () => {
  test.each(["H major", "g, thirds", "D pentatonic", 'D minor, "zigzag"', "D minor, thrdis"])(
    "%s",
    async (exercise) => {
      const { stdout } = await daystave(["check", "--json", "-"], { stdin: `2026-03-10\n${exercise}` });
      const messages = JSON.parse(stdout).files[0].diagnostics.map(({ message }: { message: string }) => message);
      expect(messages.length).toBeGreaterThan(0);
      await refuse([exercise], messages.join("\ndaystave: "));
    },
  );
});

test("a claim that is not true is told, and the exercise as well; the status is 1", async () => {
  const { status, stdout, stderr } = await daystave(["notes", "F# major: F# G# A# B C# D# F F#"]);
  expect(status).toBe(1);
  expect(stderr).toBe("daystave: F# major has E#, not F: its seventh degree takes the letter E.\n");
  expect(stdout).toContain("F#4 G#4 A#4 B4 C#5 D#5 E#5 F#5\n");
});

describe("what has no notes", () => {
  const example = 'Name a scale or an arpeggio, as "D minor, thirds" or "G minor arpeggio, 2 octaves".';
  test("prose", () => refuse(["felt tense today"], `I do not know this exercise. ${example}`));
  test("nothing", () => refuse([""], `I do not know this exercise. ${example}`));
  test("a day", () => refuse(["2026-03-02"], `I do not know this exercise. ${example}`));
  test("a title", () => refuse(['"Evening song"'], `The notes of a piece or study are not known here. ${example}`));
  test("a chain", () =>
    refuse(["C major > F major"], `Only scales, arpeggios and chords can be written out. ${example}`));
  test("two lines", () => refuse(["D minor\nE minor"], "One exercise at a time: the line has a line break in it."));
});

describe("names of notes in another language", () => {
  // Names: test/reference/note-names.json; the scales: test/reference/scales.json
  test("asked for, in reading and in everything that is told", () =>
    check(
      "h-Moll melodic, five notes, up",
      {
        subject: "h-Moll melodisch",
        tonic: "H",
        kind: "melodic minor",
        signature: { fifths: 2, accidentals: ["Fis", "Cis"] },
        relative: "D-Dur",
        parallel: "H-Dur",
        notes: ["H4", "Cis5", "D5", "E5", "Fis5"],
        sounding: ["H4", "Cis5", "D5", "E5", "Fis5"],
        range: { low: "H4", high: "Fis5" },
      },
      ["--names", "german"],
    ));

  test("declared in the journal, and the option goes before it", async () => {
    const files = { "journal.practice": "names french\ninstrument alto recorder" };
    await check("si bémol majeur, five notes, up", { notes: ["sib4", "do5", "ré5", "mib5", "fa5"] }, [], files);
    await check("Bes groot, five notes, up", { notes: ["Bes4", "C5", "D5", "Es5", "F5"] }, ["--names", "Dutch"], files);
    const { changes, fingerings } = await report("fa majeur, five notes, up", [], files);
    expect(changes.map(({ from, to }) => `${from} ${to}`)).toEqual(["fa4 sol4", "sol4 la4", "la4 sib4", "sib4 do5"]);
    expect(fingerings[3]!.note).toBe("sib4");
  });

  test("as text for a person", async () => {
    const { stdout } = await daystave(["notes", "re bemol mayor", "--names", "spanish", "--pitch", "A=415, Vallotti"]);
    for (const words of ["re bemol mayor\n", "5 flats: sib mib lab reb solb", "relative: si bemol menor natural"])
      expect(stdout).toContain(words);
  });
});

describe("what the text tells", () => {
  const text = async (exercise: string, options: string[] = [], files: Files = {}) =>
    (await daystave(["notes", exercise, ...options], { files })).stdout;
  const rowsOf = (told: string) =>
    told.split("\n").flatMap((line) => /^ {2}(\w[\w ]*?)(?: {2,}|$)/.exec(line)?.[1] ?? []);

  test("the signature, the steps, or both", async () => {
    expect(rowsOf(await text("D minor"))).toEqual(expect.arrayContaining(["signature", "keys", "steps", "up"]));
    expect(rowsOf(await text("D minor", ["--explain", "signature"]))).not.toContain("steps");
    const steps = rowsOf(await text("D minor", ["--explain", "Steps"]));
    expect([steps.includes("steps"), steps.includes("signature"), steps.includes("keys")]).toEqual([
      true,
      false,
      false,
    ]);
  });

  test("no note where notes are hidden, until they are asked for; JSON has them always", async () => {
    const files = { "journal.practice": "instrument alto recorder\nhide notes" };
    const hidden = await text("Bb major, thirds", [], files);
    expect(rowsOf(hidden)).toEqual(["signature", "keys", "steps", "notes", "degrees"]);
    expect(hidden).toContain("2 flats\n");
    expect(hidden).not.toMatch(/[A-G][#b]?\d/);
    expect(await text("Bb major, thirds, hide notes")).toBe(hidden.replace(", alto recorder", ""));
    expect(await text("Bb major, thirds", ["--show-notes"], files)).toContain("Bb4");
    expect((await report("Bb major, thirds", [], files)).notes[0]).toBe("Bb4");
  });
});

describe("options that cannot be followed", () => {
  test("an instrument", () =>
    refuse(
      ["D minor", "--instrument", "alto recoder"],
      "I do not know the instrument “alto recoder”. Did you mean “alto recorder”?",
    ));
  test("a word that several instruments share", () =>
    refuse(
      ["D minor", "--instrument", "soprano"],
      "Which instrument is “soprano”: soprano recorder, soprano saxophone, soprano crumhorn or soprano voice?",
    ));
  test("an instrument that is like none", () =>
    refuse(["D minor", "--instrument", "kazoo"], "I do not know the instrument “kazoo”."));
  test("a pitch out of reach", () =>
    refuse(["D minor", "--pitch", "A=44"], "“--pitch A=44”: A can be 380 to 480 hertz."));
  test("a temperament", () =>
    refuse(
      ["D minor", "--pitch", "A=415,vallotty"],
      "“--pitch A=415,vallotty”: choose a temperament: equal, Vallotti, Young II, Werckmeister III, Kellner, Neidhardt I, Neidhardt II, Kirnberger II, Kirnberger III, sixth-comma meantone, fifth-comma meantone, quarter-comma meantone, Pythagorean, just on C. Did you mean “Vallotti”?",
    ));
  test("a tonic", () =>
    refuse(
      ["D minor", "--pitch", "A=415, just on H#"],
      "“--pitch A=415, just on H#”: just intonation needs a note: just on C, just on F#, just on Bb.",
    ));
  test("names in no language", async () => {
    const known = "choose one of english, german, dutch, french, italian, spanish.";
    await refuse(["D minor", "--names", "germn"], `“--names germn”: ${known} Did you mean “german”?`);
  });
  test("an explanation by something else", () =>
    refuse(
      ["D minor", "--explain", "step"],
      "“--explain step”: choose one of signature, steps, both. Did you mean “steps”?",
    ));
  test("no exercise", async () => {
    expect((await daystave(["notes"])).status).toBe(2);
  });
});

test("the keys beside it, both signatures of a mode, and the collection of a symmetrical scale or chord", async () => {
  await check("D dorian", {
    signature: { fifths: 0, accidentals: [] },
    parallelSignature: { fifths: -1, accidentals: ["Bb"] },
    relative: "C major",
    parallel: "D natural minor",
  });
  const collection = { name: "octatonic", number: 2, of: 3, pitchClasses: [1, 2, 4, 5, 7, 8, 10, 11] } as const;
  await check("D whole-half", {
    relative: null,
    parallel: null,
    collection: { ...collection, sameFrom: ["F", "Ab", "B"] },
  });
  await check("D minor arpeggio", { relative: null, parallel: null, parallelSignature: null, collection: null });
  const { stdout } = await daystave(["notes", "D dorian"]);
  expect(stdout.replace(/\s+/g, " ")).toContain(
    "signature no accidentals; also written with 1 flat: Bb, as D minor is keys relative: C major; parallel: D natural minor steps",
  );
  expect((await daystave(["notes", "C half-whole"])).stdout).toContain(
    "  collection     octatonic 1 of 3, with C and Db; the same notes from Eb F# A\n",
  );
});

test("as text: one row a fact, within 80 columns", async () => {
  const { stdout } = await daystave(["notes", "D minor melodic, thirds, twelfth", "--instrument", "alto recorder"]);
  expect(stdout.split("\n")[0]).toBe("D melodic minor, alto recorder");
  expect(stdout).toContain("  signature      1 flat: Bb\n");
  expect(stdout).toContain("  steps          T S T T T T S (2 1 2 2 2 2 1 semitones)\n");
  expect(stdout).toContain("  out of range   A6\n");
  expect(stdout.split("\n").every((line) => line.length <= 80)).toBe(true);
});
