import type { Instrument } from "./instrument.ts";
import { AT_PITCH, OCTAVE_LOWER } from "./transposition.ts";

/**
 * Bowed and plucked strings as written: `professional_written` in test/reference/instrument-ranges.json, and of those
 * that are not there in instrument-ranges-more.json. Top notes depend on player and instrument. C2 of the double bass
 * and A1 of the lute are the data set's own for `contrabass` and `lute`; where frets end follows from its strings; that
 * a bass viol may have six strings is from memory.
 */
export const STRINGS: readonly Instrument[] = [
  {
    id: "violin",
    names: ["violin"],
    family: "string",
    low: { letter: "G", alter: 0, octave: 3 },
    high: { letter: "G", alter: 0, octave: 7 },
    sounding: AT_PITCH,
  },
  {
    id: "viola",
    names: ["viola"],
    family: "string",
    low: { letter: "C", alter: 0, octave: 3 },
    high: { letter: "A", alter: 0, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "cello",
    names: ["cello", "violoncello"],
    family: "string",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "F", alter: 1, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "double bass",
    names: ["double bass", "string bass", "upright bass"],
    family: "string",
    low: { letter: "E", alter: 0, octave: 2 },
    high: { letter: "G", alter: 0, octave: 5 },
    sounding: OCTAVE_LOWER,
    soft: "some reach down to C2, by a fifth string or an extension",
    leeway: { below: 4 },
  },
  {
    id: "treble viol",
    names: ["treble viol", "treble viola da gamba"],
    family: "string",
    low: { letter: "D", alter: 0, octave: 3 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "notes far above the frets, which end at D6, are for few players",
  },
  {
    id: "tenor viol",
    names: ["tenor viol", "tenor viola da gamba"],
    family: "string",
    low: { letter: "G", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "notes far above the frets, which end at G5, are for few players",
  },
  {
    id: "bass viol",
    names: ["bass viol", "viola da gamba", "gamba"],
    family: "string",
    low: { letter: "A", alter: 0, octave: 1 },
    high: { letter: "G", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "with seven strings; with six it begins at D2",
  },
  {
    id: "guitar",
    names: ["guitar", "classical guitar", "acoustic guitar"],
    family: "string",
    low: { letter: "E", alter: 0, octave: 3 },
    high: { letter: "B", alter: 0, octave: 6 },
    sounding: OCTAVE_LOWER,
    soft: "as tuned in E, with 19 frets; others have more",
  },
  {
    id: "bass guitar",
    names: ["bass guitar", "electric bass"],
    family: "string",
    low: { letter: "E", alter: 0, octave: 2 },
    high: { letter: "G", alter: 0, octave: 5 },
    sounding: OCTAVE_LOWER,
    soft: "as tuned in E, with four strings",
  },
  {
    id: "lute",
    names: ["lute", "renaissance lute", "lute in G"],
    family: "string",
    low: { letter: "G", alter: 0, octave: 2 },
    high: { letter: "G", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "as tuned in G, with six courses; further ones go down to A1",
    leeway: { below: 10 },
  },
  {
    id: "mandolin",
    names: ["mandolin"],
    family: "string",
    low: { letter: "G", alter: 0, octave: 3 },
    high: { letter: "E", alter: 0, octave: 7 },
    sounding: AT_PITCH,
    soft: "many have fewer frets",
  },
  {
    id: "harp",
    names: ["harp"],
    family: "string",
    low: { letter: "C", alter: -1, octave: 1 },
    high: { letter: "G", alter: 1, octave: 7 },
    sounding: AT_PITCH,
  },
];
