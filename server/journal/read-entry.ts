import { patternById, type Variant } from "../music/patterns/pattern.ts";
import type { EntryLine } from "../syntax/line/line.ts";
import type { Item, Meaning, MeaningOf } from "../syntax/words/meaning.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import { attemptsOf } from "./conditions.ts";
import type { EntryCount } from "./day-skeleton.ts";
import type { Entry, PatternRef, PiecePlace, Subject } from "./model.ts";
import { isPlanRemark } from "./plan-remark.ts";

/** The entry that a line says, as if it stood in a day by itself; names are resolved, figures come later. */
export function readEntry(source: EntryLine, line: number, vocabulary: Vocabulary): Entry {
  const items = source.above ? [...source.above, ...source.items] : source.items;
  const subject = standing(source.subject?.meaning);
  const attempts = attemptsOf(items, line, source);
  const done = items.some((item) => item.meaning.type === "done") || subject?.type === "free";
  const first = <T extends Meaning["type"]>(type: T): MeaningOf<T> | undefined => meaningOf(items, type);
  return {
    type: "entry",
    place: { line, start: source.start, end: source.end },
    subject,
    pattern: patternOf(items, vocabulary),
    inversion: first("inversion")?.inversion,
    where: placeOf(items),
    instrument: first("instrument")?.id,
    focus: first("focus")?.words,
    sore: first("sore")?.words,
    minutes: entryCount(source).minutes,
    attempts,
    stretch: 0,
    done,
    remarks: ownRemarks(source),
    planned: false,
    source,
  };
}

/** The remark at the end of its line, where it is one and says something of what was played. */
export function ownRemarks({ remark }: EntryLine): readonly string[] {
  return remark?.text && !isPlanRemark(remark.text) ? [remark.text] : [];
}

/** What of an entry counts for its day: planned or not, it counts once it says how it went, or that it was done. */
export function entryCount({ items, subject }: Pick<EntryLine, "items" | "subject">): EntryCount {
  const amount = meaningOf(items, "amount");
  const counted =
    subject?.meaning.type === "free" ||
    items.some(({ meaning }) => meaning.type === "outcome" || meaning.type === "done");
  return { counted, ...(amount?.possible ? { minutes: amount.minutes } : {}) };
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
  const text = places.filter((place) => place.word !== "mvt").map((place) => place.text);
  return { ...(movement === undefined ? {} : { movement }), text: text.join(", ") };
}
