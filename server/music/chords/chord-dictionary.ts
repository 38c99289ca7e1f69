import { all } from "@tonaljs/chord-type";
import { type Degree, MAJOR_SEMITONES } from "../notes/degree.ts";
import { CHORDS, type ChordKind } from "./chord-kinds.ts";
import { chordTexts } from "./chord-texts.ts";

/** A chord, and every symbol that is written for it behind its root: `m7b5`, `ø`. */
export interface ChordSymbols {
  readonly chord: ChordKind;
  readonly symbols: readonly string[];
}

/** Names in words where the dictionary has none that a player would say, or one that means something else here. */
const NAMES: Readonly<Record<string, string>> = {
  "5": "power chord",
  "6": "major sixth",
  "4": "quartal chord",
  "11": "dominant eleventh",
  alt7: "altered seventh",
  "7#5": "augmented dominant seventh",
  "7b5": "dominant seventh flat five",
  "m/ma7": "minor major seventh",
  mM9: "minor major ninth",
  "maj9#11": "major ninth sharp eleven",
  Madd9: "major added ninth",
  madd9: "minor added ninth",
};

function dictionary(): readonly ChordSymbols[] {
  const own = new Map<string, ChordSymbols & { symbols: string[] }>();
  for (const chord of CHORDS) own.set(semitonesOf(chord.degrees), { chord, symbols: [] });
  const others: ChordSymbols[] = [];
  for (const { name, aliases, intervals } of all()) {
    const known = intervals.some(isCompound) ? undefined : own.get(semitonesOf(degreesOf(intervals)));
    if (known) known.symbols.push(...aliases);
    else others.push({ chord: chordOf(name, aliases, intervals), symbols: aliases });
  }
  return [...own.values(), ...others];
}

function semitonesOf(degrees: readonly Degree[]): string {
  return degrees.map(({ step, semitones }) => `${step}:${semitones}`).join(" ");
}

/** `13M`: its number, and by how much it is perfect, major, minor, augmented or diminished. */
const INTERVAL = /^(\d+)([PMmAd])$/;

function isCompound(interval: string): boolean {
  return Number.parseInt(interval, 10) > 7;
}

function degreesOf(intervals: readonly string[]): readonly Degree[] {
  return intervals.map(degreeOf).sort((a, b) => a.step - b.step || a.semitones - b.semitones);
}

function degreeOf(interval: string): Degree {
  const [, number, quality] = INTERVAL.exec(interval)!;
  const step = (Number(number) - 1) % 7;
  const isPerfect = step === 0 || step === 3 || step === 4;
  const altered = { P: 0, M: 0, m: -1, A: 1, d: isPerfect ? -1 : -2 }[quality as "P" | "M" | "m" | "A" | "d"];
  return { step, semitones: MAJOR_SEMITONES[step]! + altered };
}

function chordOf(name: string, aliases: readonly string[], intervals: readonly string[]): ChordKind {
  const symbol = aliases[0]!;
  const id = NAMES[symbol] ?? (/^[a-z ]+$/.test(name) ? name : symbol.replace(/^M/, "maj"));
  const degrees = degreesOf(intervals);
  return { id, names: [id], degrees, signature: signatureOf(degrees), sentence: sentenceOf(id, symbol, intervals) };
}

/** Where the major scale's degrees lie on the line of fifths above its tonic. */
const MAJOR_FIFTHS = [0, 2, 4, -1, 1, 3, 5];

/** Of the major key on the root, that of which it is the dominant, or the minor key on the root: the first it fits. */
function signatureOf(degrees: readonly Degree[]): number | null {
  const fifths = degrees.map(({ step, semitones }) => MAJOR_FIFTHS[step]! + 7 * (semitones - MAJOR_SEMITONES[step]!));
  const fits = (key: number): boolean => fifths.every((place) => place >= key - 1 && place <= key + 5);
  return [0, -1, -3].find(fits) ?? null;
}

const QUALITIES = { P: "perfect", M: "major", m: "minor", A: "augmented", d: "diminished" } as const;

function sentenceOf(id: string, symbol: string, intervals: readonly string[]): string {
  const above = intervals.slice(1).map((interval) => {
    const [, number, quality] = INTERVAL.exec(interval)!;
    return { number: Number(number), quality: QUALITIES[quality as keyof typeof QUALITIES] };
  });
  return chordTexts.sentence(id, symbol, above);
}

/**
 * Every chord that the dictionary of `tonal` (`@tonaljs/chord-type`) knows by a symbol, those of `CHORDS` first. Its
 * intervals are the dictionary's; ninths, elevenths and thirteenths lie within the octave, as seconds, fourths, sixths.
 */
export const CHORD_SYMBOLS: readonly ChordSymbols[] = dictionary();
