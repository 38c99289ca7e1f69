import { ceilingOn } from "../../history/ceiling.ts";
import { movementOfRecord } from "../../history/exercise-name.ts";
import { rateAsWritten, tempoAsWritten } from "../../history/exercise-row.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { historyAtHand } from "../../history/journal-history.ts";
import { highestTempo, type Standing, standingOf } from "../../history/start-tempo.ts";
import { placeKey } from "../../history/strand-key.ts";
import type { Strand } from "../../history/strands.ts";
import type { Notation } from "../../history/trend-words.ts";
import { dateInWords } from "../../journal/date-words.ts";
import { hasSeveral } from "../../journal/each-subject.ts";
import type { Entry, NoteValue } from "../../journal/model.ts";
import { type EntryInFile, historyOfEntry } from "../explain/exercise-history.ts";
import type { HintOnLine } from "./hint-on-line.ts";
import { inlayTexts } from "./inlay-texts.ts";

/**
 * Behind the subject of an entry of today that has no tempo and no outcome yet the best of the last day on which one
 * was reached: `last 72`. In the way that the line says; where it says none, in the one that was played last. Nothing
 * where the day allows less than that, nothing for several subjects, and nothing while the history is not at hand.
 *
 * @param readsAll makes the history where it is not
 */
export function lastReached(at: EntryInFile, readsAll: boolean): readonly HintOnLine[] {
  const { journal, entry, today } = at;
  const { subject } = entry.source;
  if (!subject || !entry.subject || hasSeveral(entry.subject) || !isOpen(entry)) return [];
  if (!readsAll && !historyAtHand(journal)) return [];
  const found = strandToTell(at);
  if (!found) return [];
  const { strand, standing } = found;
  const ceiling = ceilingOn(journal, today, strand.records.at(-1)!.instrument);
  const most = highestTempo(ceiling, standing);
  if (ceiling.kind === "without instrument" || (most !== undefined && standing.reached > most)) return [];
  const day = dateInWords(standing.reachedOn, today);
  return [
    {
      at: subject.end,
      label: inlayTexts.last(tempoInWords(at, strand, standing.reached)),
      tooltip: inlayTexts.reachedOn(day),
    },
  ];
}

/** Whether a tempo may still come. */
function isOpen({ attempts, done }: Entry): boolean {
  const isBare = ({ tempo, outcomes, conditions }: Entry["attempts"][number]): boolean =>
    tempo === undefined && outcomes.length === 0 && conditions.withoutClick === undefined;
  return !done && attempts.every(isBare);
}

interface Told {
  readonly strand: Strand;
  readonly standing: Standing & { readonly reached: number; readonly reachedOn: number };
}

function strandToTell(at: EntryInFile): Told | undefined {
  const found = historyOfEntry(at);
  if (!found) return undefined;
  const { strand, others, isOwn } = found;
  const saysWay = at.entry.source.items.some(({ meaning: { type } }) => WAYS.includes(type));
  const isMeant = strand.title ? isAtPlace(strand, at.entry) : isOwn;
  const meant = saysWay || strand.title ? (isMeant ? [strand] : []) : [strand, ...others];
  const told = meant.flatMap((each): Told[] => {
    const standing = standingOf(each.records, at.today, sinceLately(at.journal, each, at.today));
    const { reached, reachedOn } = standing;
    return reached === null || reachedOn === null
      ? []
      : [{ strand: each, standing: { ...standing, reached, reachedOn } }];
  });
  return told.sort((a, b) => b.standing.reachedOn - a.standing.reachedOn)[0];
}

/** Other places of a piece have tempos of their own. */
function isAtPlace({ movement, where }: Strand, entry: Entry): boolean {
  return movement === movementOfRecord(entry) && placeKey(where ?? "") === placeKey(entry.where?.text ?? "");
}

const WAYS: readonly string[] = ["articulation", "rhythm", "span"];

/** In the line's own note value: `72`; where it has none, with that of the strand: `8ths at 72`. */
function tempoInWords({ journal, uri, entry }: EntryInFile, { title, records }: Strand, rate: number): string {
  const { noteValue, beat } = records.findLast((record) => record.rate !== null)!;
  const own = entry.attempts[0]?.conditions.noteValue ?? journal.conventions(uri).noteValue;
  if (title) return tempoAsWritten(rate, { unit: "beats" }, notation(undefined, isQuarter(beat) ? undefined : beat));
  const counted = own ?? noteValue;
  const write = own || !counted ? tempoAsWritten : rateAsWritten;
  return write(rate, { unit: "notes" }, notation(counted, beat));
}

function isQuarter(beat: NoteValue | undefined): boolean {
  return beat?.numerator === 1 && beat.denominator === 4;
}

function notation(noteValue: NoteValue | undefined, beat: NoteValue | undefined): Notation {
  return { ...(noteValue ? { noteValue } : {}), ...(beat ? { beat } : {}) };
}
