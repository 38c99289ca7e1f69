import type { Instrument } from "./instrument.ts";
import { AT_PITCH, OCTAVE_HIGHER, TWO_OCTAVES_HIGHER } from "./transposition.ts";

/**
 * The recorders, with the ranges of test/reference/instrument-ranges.json. There they stand with the notes that sound
 * (`full`); here they are lowered by `written_lower_by`, so that both ends are as written.
 */
export const RECORDERS: readonly Instrument[] = [
  {
    id: "garklein recorder",
    names: ["garklein recorder", "garklein", "garklein in C", "garklein recorder in C"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: TWO_OCTAVES_HIGHER,
    soft: "some reach D6 (from memory)",
    leeway: { above: 2 },
  },
  {
    id: "sopranino recorder",
    names: ["sopranino recorder", "sopranino", "sopranino in F", "sopranino recorder in F"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 4 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: OCTAVE_HIGHER,
  },
  {
    id: "soprano recorder",
    names: ["soprano recorder", "descant recorder", "soprano recorder in C", "descant recorder in C", "descant"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: OCTAVE_HIGHER,
  },
  {
    id: "alto recorder",
    names: [
      "alto recorder",
      "treble recorder",
      "alto recorder in F",
      "treble recorder in F",
      "F alto recorder",
      "treble",
    ],
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
    names: ["tenor recorder", "tenor recorder in C"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "bass recorder",
    names: ["bass recorder", "basset recorder", "bass recorder in F", "basset recorder in F"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: OCTAVE_HIGHER,
    soft: "some reach G4 (from memory)",
    leeway: { above: 2 },
  },
  {
    id: "great bass recorder",
    names: ["great bass recorder", "great bass", "great bass recorder in C", "great bass in C"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 4 },
    sounding: OCTAVE_HIGHER,
    soft: "read here as written an octave below its sound; some parts are at pitch",
  },
  {
    id: "contrabass recorder",
    names: ["contrabass recorder", "contrabass recorder in F"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: AT_PITCH,
    soft: "read here as written at pitch; some parts are written an octave lower",
  },
];
