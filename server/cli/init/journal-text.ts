import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { Journal, MARKER } from "../../journal/journal.ts";
import { createDocument } from "../../syntax/document/document.ts";

/** What a new journal declares, in the player's own words. */
export interface Declares {
  readonly player?: string;
  readonly instrument?: string;
  /** The language of note names. */
  readonly names?: string;
}

const HEAD = "-- What holds for the whole journal. Days go into other files beside this one, such as diary.practice.";

/** The text of a new `journal.practice`. */
export function journalText({ player, instrument, names }: Declares): string {
  const declared = { player, instrument, names };
  const lines = Object.entries(declared).flatMap(([word, value]) => (value === undefined ? [] : [`${word} ${value}`]));
  return `${[HEAD, ...lines].join("\n")}\n`;
}

const URI = `argument:/${MARKER}`;

/** A journal that has this file alone. */
export function journalOf(text: string): Journal {
  return new Journal("argument:/", new Map([[URI, createDocument(text)]]));
}

/** Whether what is declared is read as it was meant; a name with a line end in it is not. */
export function isReadAsMeant(text: string, { player }: Declares, today: DayNumber): boolean {
  const journal = journalOf(text);
  return journal.conventions(URI).player === player && diagnosticsOf(journal, URI, today).length === 0;
}
