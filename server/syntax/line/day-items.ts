import { WEEKDAY_WORDS } from "../lexicon/calendar-words.ts";
import { withoutAccents } from "../words/fold.ts";
import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { LineWords } from "./line-words.ts";

/**
 * What a day line says behind its date, with what only such a line reads so: a weekday in any language, short or in
 * capitals, and a word of the journal's language for a lesson.
 *
 * @param items what the table of words made of it
 */
export function dayItems(text: string, items: readonly Item[], vocabulary: Vocabulary): readonly Item[] {
  return items.flatMap((item, at) => {
    if (item.meaning.type !== "unknown") return [item];
    const [first, ...behind] = at === 0 ? withWeekday(text, item) : [item];
    if (first?.meaning.type === "weekday") return [first, ...behind.map((each) => asLesson(text, each, vocabulary))];
    return [asLesson(text, item, vocabulary)];
  });
}

/** In letters: shorter words may be others, as `so` and `do`, where more stands behind them. */
const LONG = 5;

function withWeekday(text: string, item: Item): readonly Item[] {
  const typed = text.slice(item.start, item.end);
  const word = /^\p{L}+\.?/u.exec(typed)?.[0] ?? "";
  const day = DAY_OF.get(withoutAccents(word.replace(/\.$/, "")));
  const behind = typed.slice(word.length);
  if (day === undefined || (behind !== "" && !/^\s/.test(behind))) return [item];
  const isCapital = word === word.toUpperCase() || /^\p{Lu}/u.test(word);
  if (behind.trim() !== "" && word.length < LONG && !isCapital) return [item];
  const end = item.start + word.length;
  const weekday: Item = { ...item, end, meaning: { type: "weekday", day } };
  const start = item.end - behind.trimStart().length;
  return behind.trim() === "" ? [weekday] : [weekday, { ...item, start }];
}

function asLesson(text: string, item: Item, vocabulary: Vocabulary): Item {
  const words = new LineWords(text, item.start, item.end, [], vocabulary);
  const isLesson = words.meaningOf(0, "heading") === "lesson" && words.lengthOf(0, "heading") === words.count;
  return isLesson ? { ...item, meaning: { type: "phase", id: "lesson" } } : item;
}

/** From 1, Monday. */
const DAY_OF: ReadonlyMap<string, number> = new Map(
  WEEKDAY_WORDS.flatMap((names, day) => names.split(" | ").map((name) => [withoutAccents(name), day + 1] as const)),
);
