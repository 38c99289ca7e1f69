import type { Instrument } from "./instrument.ts";
import { AT_PITCH, FIFTH_LOWER, MAJOR_NINTH_LOWER, MAJOR_SECOND_LOWER, MAJOR_SIXTH_LOWER } from "./transposition.ts";

/**
 * Brass as written: `professional_written` in test/reference/instrument-ranges.json, and of those that are not there in
 * instrument-ranges-more.json. Top notes depend on player and instrument. In which clef a euphonium or a baritone horn
 * is read depends on the band; what valves add to a trombone is common practice, no source.
 */
export const BRASS: readonly Instrument[] = [
  {
    id: "trumpet in Bb",
    names: ["trumpet in Bb", "Bb trumpet", "trumpet"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "E", alter: -1, octave: 6 },
    sounding: MAJOR_SECOND_LOWER,
  },
  {
    id: "trumpet in C",
    names: ["trumpet in C", "C trumpet"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "D", alter: -1, octave: 6 },
    sounding: AT_PITCH,
  },
  {
    id: "cornet in Bb",
    names: ["cornet in Bb", "Bb cornet", "cornet"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: MAJOR_SECOND_LOWER,
  },
  {
    id: "flugelhorn",
    names: ["flugelhorn", "flügelhorn"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: MAJOR_SECOND_LOWER,
  },
  {
    id: "horn in F",
    names: ["horn in F", "F horn", "French horn", "horn"],
    family: "brass",
    low: { letter: "D", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: FIFTH_LOWER,
  },
  {
    id: "tenor horn",
    names: ["tenor horn", "alto horn"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: MAJOR_SIXTH_LOWER,
  },
  {
    id: "baritone horn",
    names: ["baritone horn"],
    family: "brass",
    low: { letter: "E", alter: 0, octave: 2 },
    high: { letter: "B", alter: -1, octave: 4 },
    sounding: AT_PITCH,
    soft: "read here as written in bass clef, at pitch; brass bands write it in treble clef, a major ninth above its sound",
  },
  {
    id: "baritone horn in treble clef",
    names: ["baritone horn in treble clef"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: MAJOR_NINTH_LOWER,
  },
  {
    id: "euphonium",
    names: ["euphonium"],
    family: "brass",
    low: { letter: "E", alter: 0, octave: 2 },
    high: { letter: "D", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "read here as written in bass clef, at pitch; brass bands write it in treble clef, a major ninth above its sound",
  },
  {
    id: "euphonium in treble clef",
    names: ["euphonium in treble clef"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "E", alter: 0, octave: 6 },
    sounding: MAJOR_NINTH_LOWER,
  },
  {
    id: "trombone",
    names: ["trombone", "tenor trombone"],
    family: "brass",
    low: { letter: "E", alter: 0, octave: 2 },
    high: { letter: "D", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "a valve adds notes below E2 (from memory)",
  },
  {
    id: "bass trombone",
    names: ["bass trombone"],
    family: "brass",
    low: { letter: "E", alter: -1, octave: 1 },
    high: { letter: "C", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "the lowest notes depend on the valves",
  },
  {
    id: "tuba",
    names: ["tuba"],
    family: "brass",
    low: { letter: "B", alter: -1, octave: 0 },
    high: { letter: "C", alter: 0, octave: 5 },
    sounding: AT_PITCH,
    soft: "tubas in F, Eb, C and Bb differ in their lowest notes",
  },
];
