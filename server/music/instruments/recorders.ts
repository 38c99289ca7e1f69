import type { Instrument } from "./instrument.ts";
import { AT_PITCH, OCTAVE_HIGHER, TWO_OCTAVES_HIGHER } from "./transposition.ts";

/**
 * The recorders, with the ranges of test/reference/instrument-ranges.json. There they stand with the notes that sound
 * (`full`); here they are lowered by `written_lower_by`, so that both ends are as written.
 */
export const RECORDERS: readonly Instrument[] = [
  {
    id: "garklein recorder",
    names: ["garklein recorder", "garklein"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: TWO_OCTAVES_HIGHER,
  },
  {
    id: "sopranino recorder",
    names: ["sopranino recorder", "sopranino"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 4 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: OCTAVE_HIGHER,
  },
  {
    id: "soprano recorder",
    names: ["soprano recorder", "descant recorder"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: OCTAVE_HIGHER,
  },
  {
    id: "alto recorder",
    names: ["alto recorder", "treble recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 4 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "alto recorder in G",
    names: ["alto recorder in G", "treble recorder in G", "G alto recorder", "G alto"],
    family: "recorder",
    low: { letter: "G", alter: 0, octave: 4 },
    high: { letter: "A", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "worked out from the alto recorder, a tone up",
  },
  {
    id: "voice flute",
    names: ["voice flute", "tenor recorder in D"],
    family: "recorder",
    low: { letter: "D", alter: 0, octave: 4 },
    high: { letter: "E", alter: 0, octave: 6 },
    sounding: AT_PITCH,
    soft: "the top note is from memory",
  },
  {
    id: "tenor recorder",
    names: ["tenor recorder"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "bass recorder",
    names: ["bass recorder", "basset recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: OCTAVE_HIGHER,
  },
  {
    id: "great bass recorder",
    names: ["great bass recorder", "great bass"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 4 },
    sounding: OCTAVE_HIGHER,
    soft: "read here as written an octave below its sound; some parts are at pitch",
  },
  {
    id: "contrabass recorder",
    names: ["contrabass recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: AT_PITCH,
    soft: "read here as written at pitch; some parts are written an octave lower",
  },
];
