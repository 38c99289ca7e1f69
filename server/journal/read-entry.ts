import { patternById, type Variant } from "../music/pattern.ts";
import { nameKey } from "../syntax/fold.ts";
import type { EntryLine } from "../syntax/line.ts";
import type { Item, Meaning, MeaningOf } from "../syntax/meaning.ts";
import type { Vocabulary } from "../syntax/vocabulary.ts";
import { attemptsOf } from "./conditions.ts";
import type { Entry, PatternRef, PiecePlace, Subject } from "./model.ts";

/** Where an entry stands within its day. */
export interface EntryFrame {
  readonly line: number;
  readonly stretch: number;
  readonly phase?: string;
  readonly planned: boolean;
}

/** The entry that a line says; names are resolved by the vocabulary, figures come later. */
export function readEntry(source: EntryLine, frame: EntryFrame, vocabulary: Vocabulary): Entry {
  const { items } = source;
  const subject = standing(source.subject?.meaning);
  const attempts = attemptsOf(items, frame.line, source);
  const done = items.some((item) => item.meaning.type === "done") || subject?.type === "free";
  const counted = done || attempts.some((attempt) => attempt.outcomes.length > 0);
  const first = <T extends Meaning["type"]>(type: T): MeaningOf<T> | undefined => meaningOf(items, type);
  const minutes = first("amount");
  return {
    type: "entry",
    place: { line: frame.line, start: source.start, end: source.end },
    subject,
    pattern: patternOf(items, vocabulary),
    inversion: first("inversion")?.inversion,
    where: placeOf(items),
    instrument: first("instrument")?.id,
    focus: first("focus")?.words,
    sore: first("sore")?.words,
    minutes: minutes?.possible ? minutes.minutes : undefined,
    attempts,
    stretch: frame.stretch,
    done,
    remarks: source.remark?.kind === "remark" && source.remark.text ? [source.remark.text] : [],
    planned: frame.planned && !counted,
    phase: frame.phase,
    source,
  };
}

function standing(meaning: Subject | MeaningOf<"faulty subject"> | undefined): Subject | undefined {
  return meaning?.type === "faulty subject" ? undefined : meaning;
}

function meaningOf<T extends Meaning["type"]>(items: readonly Item[], type: T): MeaningOf<T> | undefined {
  return items.find((item) => item.meaning.type === type)?.meaning as MeaningOf<T> | undefined;
}

/** The first pattern that stands, known or declared, with its variant. */
export function patternOf(items: readonly Item[], vocabulary: Vocabulary): PatternRef | undefined {
  const variant = meaningOf(items, "variant")?.id as Variant | undefined;
  for (const { meaning } of items) {
    if (meaning.type === "pattern") {
      const has = variant && patternById(meaning.id)?.variants.includes(variant);
      return { type: "known", id: meaning.id, ...(has ? { variant } : {}) };
    }
    const name = meaning.type === "quoted" ? vocabulary.pattern(meaning.text) : undefined;
    if (name !== undefined) return { type: "declared", name };
  }
  return undefined;
}

function placeOf(items: readonly Item[]): PiecePlace | undefined {
  const places = items.flatMap((item) => (item.meaning.type === "place" ? [item.meaning] : []));
  if (!places.length) return undefined;
  const movement = places.find((place) => place.word === "mvt")?.text.slice("mvt ".length);
  const text = places.filter((place) => place.word !== "mvt").map((place) => nameKey(place.text));
  return { ...(movement === undefined ? {} : { movement }), text: text.join(", ") };
}
