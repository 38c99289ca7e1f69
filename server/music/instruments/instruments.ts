import { BRASS } from "./brass.ts";
import type { Instrument } from "./instrument.ts";
import { KEYBOARDS } from "./keyboards.ts";
import { rangeTexts } from "./range-texts.ts";
import { RECORDERS } from "./recorders.ts";
import { STRINGS } from "./strings.ts";
import { VOICES } from "./voices.ts";
import { WOODWINDS } from "./woodwinds.ts";

/** The instruments that need no declaration, a table for each family; recorders are offered first. */
export const INSTRUMENTS: readonly Instrument[] = [
  ...RECORDERS,
  ...WOODWINDS,
  ...STRINGS,
  ...BRASS,
  ...KEYBOARDS,
  ...VOICES,
].map((each: Instrument) => (each.soft === undefined ? each : { ...each, soft: rangeTexts.soft(each.soft) }));

export function instrumentById(id: string): Instrument | undefined {
  return INSTRUMENTS.find((instrument) => instrument.id === id);
}

/** Words that several instruments share, beside those that are part of their names. */
const SHARED: Readonly<Record<string, readonly string[]>> = {
  contrabass: ["contrabass recorder", "double bass"],
  keyboard: ["piano", "harpsichord", "organ"],
};

/** A shorter word may be a key, as in `C trumpet`, and says nothing by itself. */
const SHORTEST = 3;

/**
 * The names that a word may be short for, one for each instrument: of `alto` they are `alto recorder`, `alto flute`,
 * `alto saxophone`, `alto voice` and others. None where the word is a name itself, or begins or ends no name.
 *
 * @param word in lower case
 */
export function namesShortenedTo(word: string): readonly string[] {
  const names = INSTRUMENTS.map((instrument) => instrument.names.map((name) => [name, name.toLowerCase()] as const));
  if (word.length < SHORTEST || names.flat().some(([, key]) => key === word)) return [];
  if (Object.hasOwn(SHARED, word)) return SHARED[word]!;
  return names.flatMap(
    (own) => own.find(([, key]) => key.startsWith(`${word} `) || key.endsWith(` ${word}`))?.[0] ?? [],
  );
}
