import { type NoteName, parseNote } from "../notes/note.ts";
import { TEMPERAMENTS, type Temperament } from "./temperament.ts";
import { temperamentTexts } from "./temperament-texts.ts";

export type ReadTemperament =
  | { readonly ok: true; readonly temperament: Temperament }
  | {
      readonly ok: false;
      /** What belongs there. */
      readonly reason: string;
      /** The word that cannot stand, as typed. */
      readonly word: string;
      /** Temperaments that the word begins or is part of, as they are shown. */
      readonly near: readonly string[];
    };

/** The names to choose from, as they are shown. */
export const TEMPERAMENT_NAMES: readonly string[] = [...TEMPERAMENTS.map(({ names }) => names[0]), "just on C"];

/** Every way to write a temperament in lower case, and the name to show: for whoever looks for the nearest. */
export const TEMPERAMENT_SPELLINGS: ReadonlyMap<string, string> = new Map(
  TEMPERAMENTS.flatMap(({ names }) => names.map((name) => [name.toLowerCase(), names[0]] as const)),
);

/** `just`, `just D`, `just on F#`, `just intonation in B flat`: `on` and the tonic. */
const JUST = /^just(?:[\s-]+intonation)?(?:\s+(?<on>on|in)(?=\s|$))?(?:\s+(?<tonic>\S.*))?$/is;

/** Reads the name of a temperament; `just` alone stands on C. */
export function readTemperament(typed: string): ReadTemperament {
  const text = typed.trim();
  const just = JUST.exec(text)?.groups;
  if (just) return readJust(text, just["on"], just["tonic"]);
  const key = keyOf(text);
  const known = TEMPERAMENTS.find(({ names }) => names.some((name) => keyOf(name) === key));
  if (known) return { ok: true, temperament: { id: known.id } };
  const alike = TEMPERAMENTS.filter(({ names }) => key.length > 2 && names.some((name) => wordsOf(name).includes(key)));
  return {
    ok: false,
    reason: temperamentTexts.choose(TEMPERAMENT_NAMES),
    word: text,
    near: alike.map(({ names }) => names[0]),
  };
}

/** NFKC makes `¼` one, a fraction slash and four, and `Ⅲ` three letters. */
function keyOf(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replaceAll("\u2044", "/")
    .replace(/[\s.'’‐‑-]+/g, "");
}

/** `meantone` alone may be either, and `Young` needs its number. */
function wordsOf(name: string): readonly string[] {
  return name.split(/[\s-]+/).map(keyOf);
}

function readJust(text: string, on: string | undefined, typed: string | undefined): ReadTemperament {
  const tonic = typed === undefined && on === undefined ? parseNote("C") : tonicOf(typed ?? "");
  if (tonic) return { ok: true, temperament: { id: "just", tonic } };
  return {
    ok: false,
    reason: temperamentTexts.justOnWhat,
    word: typed ?? text,
    near: [],
  };
}

/** `F#`, `F sharp`, `B-flat`; no octave. */
function tonicOf(typed: string): NoteName | undefined {
  const spelled = typed
    .normalize("NFC")
    .replace(/^([a-g])[\s-]+(double[\s-]*)?(sharp|flat)$/i, (_, letter, double, sign) =>
      letter.concat((/sharp/i.test(sign) ? "#" : "b").repeat(double ? 2 : 1)),
    );
  const note = parseNote(spelled);
  return note && note.octave === undefined ? { letter: note.letter, alter: note.alter } : undefined;
}
