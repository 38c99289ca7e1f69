import { element, escapeXml } from "../charts/svg.ts";
import type { Interval } from "../music/notes/note.ts";
import type { NoteValue } from "../music/notes/note-value.ts";
import { hookSide } from "../notation/beams.ts";
import { BOTTOM_LINE, type Clef, type ClefName } from "../notation/clef.ts";
import type { NoteSign, Staff, StaffNote, StaffValue, Stretch } from "../notation/staff.ts";
import { tupletsOf } from "../notation/tuplets.ts";
import type { ExerciseScore, ScoreFile, ScoreTempo } from "./exercise-score.ts";
import { measuresOf } from "./measures.ts";
import { scoreTexts } from "./score-texts.ts";

/** Parts of a quarter: dotted 32nds, and 32nds in triplets, are whole numbers of them. */
const DIVISIONS = 48;

/**
 * An exercise as MusicXML: its staff, note by note, in measures without bar lines, as the journal names no metre.
 *
 * Source: MusicXML 4.0, W3C Music Notation Community Group, whose schema says in which order elements come.
 */
export function musicXml(score: ExerciseScore): ScoreFile<string> {
  if (!score.staff.ok) return score.staff;
  const { staff } = score.staff;
  if (!isSameLength(staff.value, score.value)) return { ok: false, reason: scoreTexts.noNoteType };
  const octaves = octavesAbove(staff.clef);
  const written = staff.notes.map(({ note }) => note.octave + octaves);
  if (written.some((octave) => octave < 0 || octave > 9)) return { ok: false, reason: scoreTexts.beyondOctaves };
  const measures = measuresOf(staff).map((stretch, i) => {
    const notes = staff.notes.slice(stretch.from, stretch.to + 1).map((_, at) => noteXml(staff, stretch.from + at));
    const begins = i === 0 ? [attributes(staff, score), ...directions(score)] : [];
    return lines("measure", { number: i + 1, implicit: "yes" }, [...begins, ...notes, BAR_LINE]);
  });
  const parts = [...header(score), lines("part", { id: "P1" }, measures)];
  return { ok: true, content: `${DECLARATION}\n${lines("score-partwise", { version: "4.0" }, parts)}\n` };
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>';
const BAR_LINE = element("barline", { location: "right" }, value("bar-style", "none"));

function header({ title, instrument }: ExerciseScore): readonly string[] {
  return [
    element("work", {}, value("work-title", title)),
    element("identification", {}, element("encoding", {}, value("software", "Daystave"))),
    element(
      "part-list",
      {},
      element("score-part", { id: "P1" }, value("part-name", instrument?.names[0] ?? "Exercise")),
    ),
  ];
}

function attributes({ clef, fifths }: Staff, { instrument }: ExerciseScore): string {
  return element(
    "attributes",
    {},
    value("divisions", DIVISIONS),
    element("key", {}, value("fifths", fifths)),
    element("time", { "print-object": "no" }, element("senza-misura", {})),
    clefXml(clef),
    instrument ? transposition(instrument.sounding, octavesAbove(clef)) : "",
  );
}

/** The sign of each clef, and the line that it is on, from the lowest. */
const CLEFS: Readonly<Record<ClefName, readonly [sign: string, line: number]>> = {
  treble: ["G", 2],
  bass: ["F", 4],
  alto: ["C", 3],
  tenor: ["C", 4],
};

function clefXml(clef: Clef): string {
  const [sign, line] = CLEFS[clef.name];
  const change = clef.mark ? [value("clef-octave-change", octaveChange(clef))] : [];
  return element("clef", {}, value("sign", sign), value("line", line), ...change);
}

function octaveChange({ mark }: Clef): number {
  return mark === undefined ? 0 : { "8va": 1, "8vb": -1 }[mark];
}

/**
 * By how many octaves pitches stand above the engine's notes here: MusicXML counts the figure at a clef as a part of
 * the pitch, the engine does not.
 */
function octavesAbove(clef: Clef): number {
  return (BOTTOM_LINE[clef.name] - clef.bottomLine) / 7 + octaveChange(clef);
}

/** From the pitches written here to those that sound; empty where they are the same. */
function transposition({ steps, semitones }: Interval, octaves: number): string {
  const sounding = { steps: steps - 7 * octaves, semitones: semitones - 12 * octaves };
  if (sounding.steps === 0 && sounding.semitones === 0) return "";
  const whole = Math.trunc(sounding.semitones / 12);
  return element(
    "transpose",
    {},
    value("diatonic", sounding.steps - 7 * whole),
    value("chromatic", sounding.semitones - 12 * whole),
    whole === 0 ? "" : value("octave-change", whole),
  );
}

/** How it is played, in words, and its tempo. */
function directions({ way, tempo }: ExerciseScore): readonly string[] {
  const words = way ? [direction(value("words", way))] : [];
  return tempo ? [...words, tempoXml(tempo)] : words;
}

function tempoXml({ bpm, beat }: ScoreTempo): string {
  const quarters = (4 * bpm * beat.numerator) / beat.denominator;
  const unit = unitOf(beat);
  const mark = unit
    ? element(
        "metronome",
        {},
        value("beat-unit", TYPES[unit.base]),
        dots("beat-unit-dot", unit),
        value("per-minute", bpm),
      )
    : value("words", `${bpm}`);
  return direction(mark, element("sound", { tempo: quarters }));
}

function direction(shown: string, sound = ""): string {
  return element("direction", { placement: "above" }, element("direction-type", {}, shown), sound);
}

/** A note value without tuplets: what a metronome mark can show. */
function unitOf(beat: NoteValue): StaffValue | undefined {
  const units = BASES.flatMap((base): StaffValue[] => [
    { base, dots: 0 },
    { base, dots: 1 },
  ]);
  return units.find((unit) => isSameLength(unit, beat));
}

const BASES: readonly StaffValue["base"][] = [1, 2, 4, 8, 16, 32];

const TYPES: Readonly<Record<StaffValue["base"], string>> = {
  1: "whole",
  2: "half",
  4: "quarter",
  8: "eighth",
  16: "16th",
  32: "32nd",
};

const ACCIDENTALS: Readonly<Record<number, string>> = {
  [-2]: "flat-flat",
  [-1]: "flat",
  0: "natural",
  1: "sharp",
  2: "double-sharp",
};

function noteXml(staff: Staff, index: number): string {
  const { clef } = staff;
  const { note, accidental, value: length }: StaffNote = staff.notes[index]!;
  return element(
    "note",
    {},
    element(
      "pitch",
      {},
      value("step", note.letter),
      note.alter === 0 ? "" : value("alter", note.alter),
      value("octave", note.octave + octavesAbove(clef)),
    ),
    value("duration", durationOf(length)),
    value("voice", 1),
    value("type", TYPES[length.base]),
    dots("dot", length),
    accidental === null ? "" : value("accidental", ACCIDENTALS[accidental]!),
    timeModification(length),
    ...beams(staff, index),
    notations(staff, index),
  );
}

/** In divisions. */
function durationOf({ base, dots, tuplet }: StaffValue): number {
  return (4 * DIVISIONS * (dots ? 3 : 2) * (tuplet ? 2 : 3)) / (6 * base);
}

function isSameLength(shown: StaffValue, { numerator, denominator }: NoteValue): boolean {
  return durationOf(shown) * denominator === 4 * DIVISIONS * numerator;
}

/** Three in the time of two, six in the time of four. */
function timeModification({ tuplet }: StaffValue): string {
  if (!tuplet) return "";
  return element("time-modification", {}, value("actual-notes", tuplet), value("normal-notes", (tuplet * 2) / 3));
}

/** Each of a note's beams: a shorter note between longer ones has a hook. */
function beams({ beams: stretches, notes }: Staff, index: number): readonly string[] {
  const stretch = stretches.find(({ from, to }) => from <= index && index <= to);
  if (!stretch) return [];
  const has = (i: number, level: number): boolean =>
    i >= stretch.from && i <= stretch.to && beamsAt(notes[i]!) >= level;
  return Array.from({ length: beamsAt(notes[index]!) }, (_, i) => {
    const [before, after] = [has(index - 1, i + 1), has(index + 1, i + 1)];
    const hook = hookSide(stretch, index) === "right" ? "forward hook" : "backward hook";
    const place = before && after ? "continue" : before ? "end" : after ? "begin" : hook;
    return element("beam", { number: i + 1 }, place);
  });
}

function beamsAt({ value: { base } }: StaffNote): number {
  return Math.max(0, Math.log2(base) - 2);
}

const SIGNS: Readonly<Record<NoteSign, string>> = {
  dot: "staccato",
  line: "tenuto",
  accent: "accent",
  wedge: "staccatissimo",
};

function notations(staff: Staff, index: number): string {
  const signs = staff.signs.map((sign) => element(SIGNS[sign], {}));
  const all = [
    ...ends("slur", staff.slurs, index),
    ...ends("tuplet", tupletsOf(staff), index),
    ...(signs.length > 0 ? [element("articulations", {}, ...signs)] : []),
  ];
  return all.length === 0 ? "" : element("notations", {}, ...all);
}

/** That something ends, or begins, on a note. */
function ends(name: "slur" | "tuplet", stretches: readonly Stretch[], index: number): readonly string[] {
  return [
    ...(stretches.some(({ to }) => to === index) ? [element(name, { type: "stop" })] : []),
    ...(stretches.some(({ from }) => from === index) ? [element(name, { type: "start" })] : []),
  ];
}

function dots(name: "dot" | "beat-unit-dot", { dots: count }: StaffValue): string {
  return count === 0 ? "" : element(name, {});
}

function value(name: string, content: string | number): string {
  return element(name, {}, escapeXml(`${content}`));
}

function lines(name: string, attributesOf: Parameters<typeof element>[1], children: readonly string[]): string {
  return element(name, attributesOf, "\n", ...children.map((child) => `${child}\n`));
}
