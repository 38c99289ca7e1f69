import { readFileSync } from "node:fs";
import fc from "fast-check";
import { parse, validate } from "musicxml-io";
import { Note as TonalNote } from "tonal";
import { describe, expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { PATTERNS } from "../../server/music/patterns/pattern.ts";
import { FEW } from "../support/random-runs.ts";
import { bytesOf, fileOf, playedBy } from "./exported.ts";

// Files are checked by libxml2 (the package `xmllint-wasm`) against an excerpt of the published schema, and their notes are
// read back with the package `musicxml-io`; pitches are told by `tonal`.

const SCHEMA = { fileName: "musicxml.xsd", contents: readFileSync("test/reference/musicxml-4.0-excerpt.xsd", "utf8") };

function xmlOf(line: string, head = ""): string {
  return new TextDecoder().decode(bytesOf(line, "musicxml", head));
}

/** What libxml2 has to say of texts, by their order; empty where they are valid. */
async function faultsOf(texts: readonly string[]): Promise<readonly string[]> {
  const xml = texts.map((contents, i) => ({ fileName: `score-${i}.xml`, contents }));
  const { errors } = await validateXML({ xml, schema: SCHEMA });
  return errors.map(({ rawMessage }) => rawMessage);
}

type Measures = ReturnType<typeof parse>["parts"][number]["measures"];

function measuresOf(xml: string): Measures {
  return parse(xml).parts[0]!.measures;
}

function notesOf(measures: Measures) {
  return measures.flatMap(({ entries }) => entries.flatMap((entry) => (entry.type === "note" ? [entry] : [])));
}

function attributesOf(xml: string) {
  return measuresOf(xml)[0]!.attributes!;
}

/** MIDI numbers of the notes as written, and as they sound by the part's transposition. */
function pitchesOf(xml: string): { readonly written: readonly number[]; readonly sounding: readonly number[] } {
  const { transpose } = attributesOf(xml);
  const by = (transpose?.chromatic ?? 0) + 12 * (transpose?.octaveChange ?? 0);
  const written = notesOf(measuresOf(xml)).map(({ pitch }) => {
    const { step, alter = 0, octave } = pitch!;
    return TonalNote.midi(`${step}${octave}`)! + alter;
  });
  return { written, sounding: written.map((each) => each + by) };
}

/** That a file has the notes of a line, spelled as the journal spells them, with their length, and that it validates. */
function holds(line: string, head: string, quarters: number): string {
  const xml = xmlOf(line, head);
  const played = playedBy(line, head);
  const notes = notesOf(measuresOf(xml));
  const names = (name: string) => TonalNote.pitchClass(name);
  expect(
    notes.map(({ pitch }) => names(`${pitch!.step}${accidentals(pitch!.alter)}4`)),
    `${head}: ${line}`,
  ).toEqual(played.written.map(names));
  expect(pitchesOf(xml).sounding, `${head}: ${line}`).toEqual(
    played.written.map((name) => TonalNote.midi(name)! + played.sounding),
  );
  const { divisions } = attributesOf(xml);
  for (const { duration } of notes) expect(duration / Number(divisions), line).toBeCloseTo(quarters, 9);
  return xml;
}

function accidentals(alter = 0): string {
  return alter < 0 ? "b".repeat(-alter) : "#".repeat(alter);
}

describe("the schema", () => {
  test("holds for every pattern, instrument and note value", async () => {
    const texts = [
      ...PATTERNS.map(({ id }) => xmlOf(`D melodic minor, ${id}, 16ths, slur 2+2 at 60`)),
      ...INSTRUMENTS.map(({ id }) => xmlOf("F major, staccato, quarters at 80", `instrument ${id}`)),
      ...["wholes", "halves", "quarters", "8ths", "triplets", "16ths", "sextuplets", "32nds"].map((value) =>
        xmlOf(`B major, 2 octaves, ${value}, marcato at dotted quarter=50`),
      ),
    ];
    expect(await faultsOf(texts)).toEqual([]);
  });

  test("is a check that can fail", async () => {
    const xml = xmlOf("C major, 8ths at 60");
    const wrong = [
      xml.replace("<duration>24</duration><voice>1</voice>", "<voice>1</voice><duration>24</duration>"),
      xml.replace("<type>eighth</type>", "<type>8th</type>"),
      xml.replace("</part-list>", ""),
    ];
    for (const text of wrong) expect((await faultsOf([text])).length).toBeGreaterThan(0);
  });
});

describe("notes", () => {
  test.each(PATTERNS.map(({ id }) => id))("in %s", (pattern) => {
    holds(`G harmonic minor, ${pattern}, 8ths`, "", 0.5);
  });

  test.each(INSTRUMENTS.map(({ id }) => id))("for %s sound as they do on it", (id) => {
    holds("G major, quarters", `instrument ${id}`, 1);
  });

  test.each(["C#", "Cb", "F#", "Gb", "G#", "D#", "A#"])("in %s, with double accidentals", (tonic) => {
    for (const kind of ["major", "harmonic minor", "melodic minor"]) holds(`${tonic} ${kind}, triplets`, "", 1 / 3);
  });

  test("in any exercise that has a staff, and the schema holds for all of them", async () => {
    const line = fc.record({
      tonic: fc.constantFrom("C", "C#", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"),
      kind: fc.constantFrom("major", "harmonic minor", "dorian", "chromatic", "arpeggio", "dominant seventh"),
      pattern: fc.constantFrom("", ...PATTERNS.map(({ id }) => id)),
      direction: fc.constantFrom("", "up", "down", "down and up"),
      articulation: fc.constantFrom("slurred", "slur 2+1+1", "slur 3", "staccato", "portato", "tongued", "marcato"),
      instrument: fc.constantFrom(...INSTRUMENTS.map(({ id }) => id)),
    });
    const made: string[] = [];
    fc.assert(
      fc.property(line, ({ tonic, kind, pattern, direction, articulation, instrument }) => {
        const words = [`${tonic} ${kind}`, pattern, direction, "16ths", articulation];
        const text = words.filter((each) => each !== "").join(", ");
        const head = `instrument ${instrument}`;
        if (fileOf(text, "musicxml", head).ok) made.push(holds(text, head, 0.25));
      }),
      { seed: 19, numRuns: FEW },
    );
    expect(made.length).toBeGreaterThan(FEW / 2);
    expect(await faultsOf(made)).toEqual([]);
    for (const xml of made) expect(validate(parse(xml)).errors).toEqual([]);
  });
});

describe("clefs", () => {
  // Common practice, no source: an octave recorder's part has an 8 above its clef, a guitar's and a tenor's one below.
  test.each([
    ["alto recorder", "G", 2, undefined, 0],
    ["soprano recorder", "G", 2, 1, 0],
    ["bass recorder", "F", 4, 1, 0],
    ["guitar", "G", 2, -1, 0],
    ["tenor voice", "G", 2, -1, 0],
    ["viola", "C", 3, undefined, 0],
    ["clarinet in Bb", "G", 2, undefined, -2],
    ["horn in F", "G", 2, undefined, -7],
    ["baritone saxophone", "G", 2, undefined, -21],
    ["double bass", "F", 4, undefined, -12],
  ])("%s: %s on line %d, octave %s, %d semitones to what sounds", (id, sign, line, octave, semitones) => {
    const { clef, transpose } = attributesOf(xmlOf("C major", `instrument ${id}`));
    expect(clef).toMatchObject([{ sign, line, ...(octave === undefined ? {} : { clefOctaveChange: octave }) }]);
    expect((transpose?.chromatic ?? 0) + 12 * (transpose?.octaveChange ?? 0)).toBe(semitones);
  });

  test("a note under an 8 above the clef is written where it sounds: C5 of a soprano recorder's lowest C", () => {
    const { written } = pitchesOf(xmlOf("C major", "instrument soprano recorder"));
    expect(Math.min(...written)).toBe(72);
  });
});

describe("what is on the staff", () => {
  test("signature, accidentals, beams, slurs and signs", () => {
    const xml = xmlOf("D melodic minor, 8ths, slur 2+2");
    expect(attributesOf(xml).key).toMatchObject({ fifths: -1 });
    const notes = notesOf(measuresOf(xml));
    const shown = notes.map(({ pitch, accidental }) => `${pitch!.step}${accidental ? ` ${accidental.value}` : ""}`);
    expect(shown.join(", ")).toBe("D, E, F, G, A, B natural, C sharp, D, C natural, B flat, A, G, F, E, D");
    expect(notes.slice(0, 4).map(({ beam }) => beam![0]!.type)).toEqual(["begin", "continue", "continue", "end"]);
    const slurs = notes.map(({ notations }) => notations?.flatMap((each) => ("slurType" in each ? each.slurType : [])));
    expect(slurs.slice(0, 4)).toEqual([["start"], ["stop"], ["start"], ["stop"]]);
  });

  test("tempo and way are above it", () => {
    const xml = xmlOf("D minor, 8ths, staccato at dotted quarter=60");
    expect(xml).toContain("<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>60</per-minute>");
    expect(xml).toContain('<sound tempo="90"/>');
    expect(xml).toContain("<words>8ths, staccato</words>");
    expect(xml.match(/<staccato\/>/g)).toHaveLength(15);
    expect(xmlOf("D minor")).not.toContain("<direction");
  });

  test("a long exercise is broken between beams, and into measures that no bar line ends", () => {
    const measures = measuresOf(xmlOf("C major, thirds, 2 octaves, triplets"));
    const counts = measures.map(({ entries }) => entries.filter(({ type }) => type === "note").length);
    expect(counts.slice(0, -1).every((count) => count === 15)).toBe(true);
    expect(xmlOf("C major").match(/<bar-style>none<\/bar-style>/g)).toHaveLength(measuresOf(xmlOf("C major")).length);
  });
});

describe("words", () => {
  test("of a journal are text in it, whatever they are", async () => {
    const head = 'scale "</work><script>&amp;": 1 b2 3 4 5 b6 7';
    const xml = xmlOf('D "</work><script>&amp;"', head);
    expect(await faultsOf([xml])).toEqual([]);
    expect(xml).not.toContain("<script>");
    expect(parse(xml).metadata.workTitle).toContain("</work><script>&amp;");
  });
});

describe("there is none", () => {
  test.each([
    ['C "thirteen"', "A scale in cents has no staff: its notes lie between the keys."],
    [
      "C major, crotchet 60 in 5s",
      "MusicXML is written with halves, triplets and dots of note values alone; as MIDI it can be exported.",
    ],
    ["C chromatic, thirds, 8 octaves", "It has more than 256 notes. Name a shorter span."],
  ])("of %s", (line, reason) => {
    const head = 'scale "thirteen": cents 0 150 300 450 600 750 900 1050';
    expect(fileOf(line, "musicxml", head)).toEqual({ ok: false, reason });
  });
});

// What each rhythm is, and how it is beamed: common practice, no source. `8.` is a dotted eighth, and a beam is told by
// the first letters of what it does.
test.each([
  ["dotted", "8ths", "8. b|16 c,bh|8. c|16 e,bh|8. b|16 c,bh|8. c|16 e,bh"],
  ["reverse dotted", "8ths", "16 b,fh|8. c|16 c,fh|8. e|16 b,fh|8. c|16 c,fh|8. e"],
  ["LSS", "16ths", "8 b|16 c,b|16 e,e|8 b|16 c,b|16 e,e|8 b|16 e,bh"],
  ["SLS", "16ths", "16 b,fh|8 c|16 e,bh|16 b,fh|8 c|16 e,bh|16 b,fh|8 e"],
  ["swung", "8ths", "8 b|8 c|8 c|8 e|8 b|8 c|8 c|8 e"],
])("in its rhythm: %s", async (rhythm, value, wanted) => {
  const xml = xmlOf(`C major, up, ${rhythm}, ${value}`);
  expect(await faultsOf([xml])).toEqual([]);
  const notes = notesOf(measuresOf(xml)).map((note) => {
    const beams = (note.beam ?? []).map(({ type }) =>
      type
        .split(" ")
        .map(([first]) => first)
        .join(""),
    );
    return `${parseInt(note.noteType!, 10) || 8}${note.dots ? "." : ""} ${beams}`;
  });
  expect(notes.join("|")).toBe(wanted);
});
