import type { Instrument } from "./instrument.ts";
import { AT_PITCH } from "./transposition.ts";

/** Registers differ from singer to singer (common practice, no source): a tone beyond either end nothing is said. */
const VOICE = { below: 2, above: 2 } as const;

/**
 * Voices: `professional_written` in test/reference/instrument-ranges-more.json. Their notes are named as they sound,
 * the tenor's too, whose clef stands for an octave lower.
 */
export const VOICES: readonly Instrument[] = [
  {
    id: "soprano voice",
    names: ["soprano voice"],
    family: "voice",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
  {
    id: "mezzo-soprano voice",
    names: ["mezzo-soprano voice", "mezzo-soprano"],
    family: "voice",
    low: { letter: "A", alter: 0, octave: 3 },
    high: { letter: "A", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
  {
    id: "alto voice",
    names: ["alto voice", "contralto voice", "contralto"],
    family: "voice",
    low: { letter: "E", alter: 0, octave: 3 },
    high: { letter: "F", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
  {
    id: "countertenor voice",
    names: ["countertenor voice", "countertenor"],
    family: "voice",
    low: { letter: "G", alter: 0, octave: 3 },
    high: { letter: "G", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
  {
    id: "tenor voice",
    names: ["tenor voice"],
    family: "voice",
    low: { letter: "C", alter: 0, octave: 3 },
    high: { letter: "C", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own; notes are read here as they sound, in whichever clef",
    leeway: VOICE,
  },
  {
    id: "baritone voice",
    names: ["baritone voice"],
    family: "voice",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
  {
    id: "bass voice",
    names: ["bass voice"],
    family: "voice",
    low: { letter: "D", alter: 0, octave: 2 },
    high: { letter: "D", alter: 0, octave: 4 },
    sounding: AT_PITCH,
    soft: "voices differ: you can declare a range of your own",
    leeway: VOICE,
  },
];
