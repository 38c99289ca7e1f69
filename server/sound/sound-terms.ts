import type { Journal } from "../journal/journal.ts";
import type { NoteValue, Tempo } from "../journal/model.ts";
import { createDocument } from "../syntax/document/document.ts";
import { soundTexts } from "./sound-texts.ts";

/** Bars, from 1, both ends included. */
export interface Bars {
  readonly from: number;
  readonly to: number;
}

/** `3/4` as it is written. */
export interface Metre {
  readonly beats: number;
  readonly value: number;
}

/** What a line says of the time that is to be heard. */
export interface SoundTerms {
  /** At least one; those of the line where it says none. */
  readonly tempos: readonly Tempo[];
  readonly noteValue?: NoteValue;
  readonly minutes?: number;
  readonly bars?: Bars;
  readonly times?: number;
  readonly metre?: Metre;
}

export type SoundTermsRead =
  | { readonly ok: true; readonly terms: SoundTerms }
  | { readonly ok: false; readonly reason: string };

const MOST_TEMPOS = 8;
/** Beats in a bar. */
const MOST_BEATS = 16;

/**
 * Reads `at 52, 60, in 8ths, bars 1-2, 3 times`, as the journal would read it of a piece, in its language. A metre
 * stands beside: `in 3/4`.
 */
export function readTerms(typed: string, journal: Journal): SoundTermsRead {
  const { text, metre } = withoutMetre(typed);
  const block = createDocument(`2000-01-01\n  "x", ${text}\n`).blocks.at(-1)!;
  const { entries } = journal.ownModelOnce(block);
  const [entry] = entries;
  if (!entry || entries.length > 1) return { ok: false, reason: soundTexts.temposMissing };
  const unknown = entry.source.items.find(({ meaning }) => NOT_HEARD.has(meaning.type));
  if (unknown) {
    const words = block.lines[1]!.slice(unknown.start, unknown.end);
    return { ok: false, reason: soundTexts.notHeard(words) };
  }
  const tempos = entry.attempts.flatMap(({ tempo }) => tempo ?? []);
  if (tempos.length === 0 || tempos.length > MOST_TEMPOS) return { ok: false, reason: soundTexts.temposMissing };
  const noteValue = entry.attempts.at(-1)!.conditions.noteValue;
  const times = entry.source.items.flatMap(({ meaning }) => (meaning.type === "times" ? [meaning.count] : []))[0];
  const bars = barsIn(entry.where?.text);
  const { minutes } = entry;
  return { ok: true, terms: { tempos, noteValue, minutes, bars, times, metre } };
}

/** What would be dropped without a word. */
const NOT_HEARD: ReadonlySet<string> = new Set(["unknown", "outcome", "tries", "without click", "quoted"]);

function withoutMetre(typed: string): { readonly text: string; readonly metre?: Metre } {
  const found = /,? ?\bin (\d{1,2})\/(1|2|4|8|16)\b/i.exec(typed);
  if (!found) return { text: typed };
  const [beats, value] = [Number(found[1]), Number(found[2])];
  const text = typed.slice(0, found.index) + typed.slice(found.index + found[0].length);
  return beats >= 1 && beats <= MOST_BEATS ? { text, metre: { beats, value } } : { text: typed };
}

function barsIn(where: string | undefined): Bars | undefined {
  const [, from, to = from] = /^(?:bars?|mm?\.?) (\d+)(?:\s*[-–]\s*(\d+))?$/.exec(where ?? "") ?? [];
  if (from === undefined) return undefined;
  return { from: Math.min(Number(from), Number(to)), to: Math.max(Number(from), Number(to)) };
}
