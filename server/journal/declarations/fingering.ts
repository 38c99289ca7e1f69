import type { FingeringSystem, Instrument } from "../../music/instruments/instrument.ts";
import { instrumentById } from "../../music/instruments/instruments.ts";
import type { Note } from "../../music/notes/note.ts";
import type { Part } from "../../syntax/line/cut.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { noteOf } from "../../syntax/words/note-word.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, type Fault, fault } from "./declared.ts";

/** The words for a recorder's fingering; baroque and English are two names of one. */
export const FINGERINGS: ReadonlyMap<string, FingeringSystem> = new Map([
  ["baroque fingering", "baroque"],
  ["english fingering", "baroque"],
  ["german fingering", "german"],
]);

const ACCEPTED = [...FINGERINGS.keys()];

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What stands behind the name of an instrument that needs no range: of a recorder its fingering. */
export function readFingering(
  body: Body,
  id: string,
  [first, ...others]: readonly Part[],
): { readonly instrument?: Instrument; readonly faults: readonly Fault[] } {
  const known = instrumentById(id);
  const behind = first?.items[1];
  const stretches: readonly Stretch[] = [...(behind ? [{ start: behind.start, end: first.end }] : []), ...others];
  if (known?.family !== "recorder") return { faults: stretches.map((each) => fault(each, notOf(body, each))) };
  const systems = stretches.map(({ start, end }) => FINGERINGS.get(nameKey(body.text.slice(start, end))));
  const stated = systems.findIndex((each) => each !== undefined);
  const faults = stretches.flatMap((each, i) => (i === stated ? [] : [notAccepted(body, each, systems[i])]));
  return stated < 0 ? { faults } : { instrument: { ...known, fingering: systems[stated]! }, faults };
}

function notOf(body: Body, { start, end }: Stretch): string {
  return /fingering/i.test(body.text.slice(start, end))
    ? declarationTexts.fingeringOfRecorder
    : declarationTexts.onlyInstrument;
}

function notAccepted(body: Body, at: Stretch, system: FingeringSystem | undefined): Fault {
  if (system) return fault(at, declarationTexts.oneFingering);
  const near = body.vocabulary.nearest(body.text.slice(at.start, at.end), ACCEPTED);
  return fault(at, declarationTexts.fingering, near ? [near] : []);
}

/** `half holes D#4 F#4`, behind the range of an instrument of one's own, from a column on. */
export function readHalfHoles(
  body: Body,
  from: number,
): { readonly halfHoles?: readonly Note[]; readonly faults: readonly Fault[] } {
  const text = body.text.slice(from, body.end);
  const lead = /^[\s,]*/.exec(text)![0].length;
  const words = text.slice(lead).trimEnd();
  if (words === "") return { faults: [] };
  const [, listed] = /^half[ -]holes?[\s:]+(.+)$/is.exec(words) ?? [];
  const notes = listed?.split(/[\s,]+/).map((word) => noteOf(word, body.vocabulary.notes)?.note);
  const halfHoles = notes?.flatMap((note) => (note?.octave === undefined ? [] : [{ ...note, octave: note.octave }]));
  if (notes && halfHoles?.length === notes.length) return { halfHoles, faults: [] };
  const at = { start: from + lead, end: from + lead + words.length };
  return { faults: [fault(at, declarationTexts.halfHoles)] };
}
