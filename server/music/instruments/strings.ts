import type { Instrument } from "./instrument.ts";
import { AT_PITCH, OCTAVE_LOWER } from "./transposition.ts";

/**
 * Bowed and plucked strings as written: `professional_written` in test/reference/instrument-ranges.json, and of those
 * that are not there in instrument-ranges-more.json. Top notes depend on player and instrument.
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
    id: "harp",
    names: ["harp"],
    family: "string",
    low: { letter: "C", alter: -1, octave: 1 },
    high: { letter: "G", alter: 1, octave: 7 },
    sounding: AT_PITCH,
  },
];
