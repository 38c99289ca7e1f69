import type { Sound } from "../../../shared/sound.ts";
import { rateBy } from "../../history/rate.ts";
import { highestTempo, notchAtOrBelow } from "../../history/start-tempo.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { soundOf } from "../../sound/passages.ts";
import { readSoundLine } from "../../sound/sound-line.ts";
import { heardAt } from "./heard-at.ts";
import { silentTexts } from "./silent-texts.ts";

export interface SoundAsked {
  /** As it was typed: `click at 52, 60`. */
  readonly text: string;
  readonly today: DayNumber;
}

/** Why nothing sounds on a day without the instrument. */
export const SILENT = silentTexts.silent;

/**
 * What a line of words sounds like beside an entry: in its key and note values, on its instrument, in the tuning of the
 * journal, and no faster than the day allows. Nothing sounds on a day without the instrument. Where no entry stands, a
 * click and named notes sound all the same.
 */
export function soundAt(journal: Journal, uri: string, line: number, { text, today }: SoundAsked): Sound {
  const read = readSoundLine(text, journal);
  if (!read.ok) return read;
  const { by, ceiling, standing } = heardAt(journal, uri, line, today);
  const { kind, share, said } = ceiling;
  if (kind === "without instrument") return { ok: false, reason: SILENT };
  const most = standing && highestTempo(ceiling, standing);
  return soundOf(read.line, by, ({ bpm, beat = by.beat }) => {
    if (most !== undefined) return notchAtOrBelow(most / rateBy({ beat, value: by.noteValue }, 1)!);
    // Of what nobody knows yet how fast it goes: slower than the player would, after pain.
    return share === undefined || !said ? undefined : notchAtOrBelow(share * bpm);
  });
}
