import type { Instrument } from "./instrument.ts";
import { AT_PITCH } from "./transposition.ts";

/**
 * Keyboards at pitch: `professional_written` in test/reference/instrument-ranges-more.json; the organ's is from memory.
 */
export const KEYBOARDS: readonly Instrument[] = [
  {
    id: "piano",
    names: ["piano", "pianoforte"],
    family: "keyboard",
    low: { letter: "A", alter: 0, octave: 0 },
    high: { letter: "C", alter: 0, octave: 8 },
    sounding: AT_PITCH,
  },
  {
    id: "harpsichord",
    names: ["harpsichord", "cembalo"],
    family: "keyboard",
    low: { letter: "F", alter: 0, octave: 1 },
    high: { letter: "F", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "smaller ones have fewer keys",
  },
  {
    id: "organ",
    names: ["organ"],
    family: "keyboard",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "the manuals of many organs, from memory; others end at F6 or C7",
    leeway: { above: 5 },
  },
  {
    id: "accordion",
    names: ["accordion", "piano accordion"],
    family: "keyboard",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "A", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "sizes differ",
  },
  {
    id: "marimba",
    names: ["marimba"],
    family: "percussion",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: AT_PITCH,
    soft: "smaller ones begin at A2 or F2 (F2 from memory)",
  },
];
