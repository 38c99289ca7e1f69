import { unknownFingering } from "../../features/explain/finger-words.ts";
import { type FingerChange, fingerChanges } from "../../music/fingering/finger-change.ts";
import {
  type Confidence,
  type FingeredNote,
  fingeringOf,
  hasHalfHole,
  printFingering,
  whyUnfingered,
} from "../../music/fingering/fingering.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import { midi, type Note, samePitch } from "../../music/notes/note.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import type { NotesToPlay } from "../../music/patterns/notes-to-play.ts";

/**
 * What `notes --json` prints of fingerings: for recorders, but for half holes that are declared. Notes are as written.
 */
export interface FingerReport {
  /** Notes for which the bell is closed, each once, in the order of playing. */
  readonly needsBell: readonly string[];
  /** Notes with a hole that a finger closes by half, likewise. The pinched thumb does not count. */
  readonly halfHoles: readonly string[];
  /** Each note once, in the order of playing; empty where fingerings are not known. */
  readonly fingerings: readonly FingeringReport[];
  /** Each step from one of the notes to the next, where both have a fingering. */
  readonly changes: readonly ChangeReport[];
  /** Why no fingering and no change is known; null where they are. */
  readonly fingersUnknown: string | null;
}

export interface FingeringReport {
  readonly note: string;
  /** As `printFingering` writes it. */
  readonly fingering: string;
  readonly confidence: Confidence;
  readonly alternatives: readonly string[];
}

export type ChangeReport = Omit<FingerChange, "from" | "to"> & { readonly from: string; readonly to: string };

type Played = Pick<NotesToPlay, "notes">;

export function fingerReport(played: Played, instrument: Instrument | undefined, names: NoteNames): FingerReport {
  if (!instrument) return { needsBell: [], halfHoles: [], fingerings: [], changes: [], fingersUnknown: NO_INSTRUMENT };
  const text = (note: Note): string => noteText(note, names);
  const fingered = fingeredNotes(played, instrument);
  const declared = instrument.halfHoles ?? [];
  return {
    needsBell: fingered.filter(({ fingering }) => fingering.bell).map(({ note }) => text(note)),
    halfHoles: [
      ...fingered.filter(({ fingering }) => hasHalfHole(fingering)).map(({ note }) => note),
      ...distinct(played.notes).filter((note) => declared.some((each) => samePitch(each, note))),
    ].map(text),
    fingerings: fingered.map(({ note, fingering, confidence, alternatives }) => ({
      note: text(note),
      fingering: printFingering(fingering),
      confidence,
      alternatives: alternatives.map(printFingering),
    })),
    changes: fingerChanges(played, instrument).map(({ from, to, ...moves }) => ({
      from: text(from),
      to: text(to),
      ...moves,
    })),
    fingersUnknown: whyUntold(instrument) ?? null,
  };
}

const NO_INSTRUMENT = "not shown: no instrument is named";

/** Undefined where fingerings are known. */
function whyUntold(instrument: Instrument): string | undefined {
  if (!whyUnfingered(instrument)) return undefined;
  return unknownFingering(instrument) ?? "not shown: fingerings are known only for recorders";
}

function fingeredNotes({ notes }: Played, instrument: Instrument): readonly (FingeredNote & { readonly note: Note })[] {
  return distinct(notes).flatMap((note) => {
    const found = fingeringOf(instrument, note);
    return found.known ? [{ ...found, note }] : [];
  });
}

/** Each pitch once, under the name that comes first. */
function distinct(notes: readonly Note[]): readonly Note[] {
  const first = new Map<number, Note>();
  for (const note of notes) if (!first.has(midi(note))) first.set(midi(note), note);
  return [...first.values()];
}
