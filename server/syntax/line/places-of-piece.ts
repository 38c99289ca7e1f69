import { END_OF_PIECE } from "../lexicon/places/bars.ts";
import { BESIDE_TITLE, JOINTS_OF_SECTIONS } from "../lexicon/places/beside-title.ts";
import type { Item, MeaningOf } from "../words/meaning.ts";
import { SLOWEST } from "../words/tempo-words.ts";
import { SLOWEST_BARE } from "./numbers.ts";

type Place = Item<MeaningOf<"place">>;

/** What begins a place behind a title, and what it counts: the first that fits. */
const SHAPES: readonly (readonly [shape: RegExp, word: MeaningOf<"place">["word"]])[] = [
  [/^[[(]?(\d{1,3})\s?[-–]\s?(\d{1,3})[\])]?/, "bars"],
  [/^(?:top of |end of |bottom of )?pp?\.?\s?\d{1,2}(?: (?:top|bottom|end))?/i, "page"],
  [/^[ivx]{1,4}/, "mvt"],
  [new RegExp(`^(?:from )?[A-Z]\\s?(?:${JOINTS_OF_SECTIONS})\\s?(?:the )?(?:${END_OF_PIECE})`, "i"), "section"],
  [new RegExp(`^(?:from )?[A-H](?:\\s?(?:${JOINTS_OF_SECTIONS})\\s?[A-H])*(?: only)?`), "section"],
  [new RegExp(`^(?:${BESIDE_TITLE})`, "i"), "named"],
];
/** Behind it something else begins: the next part, or a tempo. */
const ENDS = /^\s*(?:$|[,;:]|\s(?:[–/-]\s|\s\s|@|at\s|\d{2,3}(?:\D|$)|[^\s=]{1,12}\s?=))/;

/**
 * Behind the title of a piece letters, ranges of numbers and the like are places, which mean other things behind a
 * scale: `17-24`, `[17-24]`, `B`, `A + B`, `G to end`, `from C to D`, `p2`, `iii`, `last 8`. One that is a part of the
 * line by itself, or stands before a tempo at the beginning of one.
 */
export function placesOfPiece(items: readonly Item[], from: number, text: string): readonly Item[] {
  let placed = items;
  for (const start of partStarts(text, from, items)) {
    const found = placeFrom(text, start, items);
    if (found) placed = replaced(placed, found);
  }
  return placed;
}

/** Where parts begin behind a column: behind commas and other signs, and right behind another place. */
function partStarts(text: string, from: number, items: readonly Item[]): readonly number[] {
  const starts = [from + (/^\s*/.exec(text.slice(from))?.[0].length ?? 0)];
  for (const { index, 0: sign } of text.slice(from).matchAll(/[,;:]\s*|\s[–/-]\s+|\s{3,}/g))
    starts.push(from + index + sign.length);
  for (const { end, meaning } of items)
    if (meaning.type === "place" && SECTIONS.test(text.slice(end))) starts.push(end + 1);
  return starts;
}

/** `mvt 1 A-C`: letters alone go on without a sign. */
const SECTIONS = new RegExp(`^ [A-H]\\s?(?:${JOINTS_OF_SECTIONS})\\s?[A-H]\\b`);

function placeFrom(text: string, start: number, items: readonly Item[]): Place | undefined {
  const rest = text.slice(start);
  for (const [shape, word] of SHAPES) {
    const match = shape.exec(rest);
    if (!match || !ENDS.test(rest.slice(match[0].length))) continue;
    const end = start + match[0].length;
    if (isRead(items, start, end)) continue;
    if (word === "bars" && isBehindBars(items, start)) continue;
    if (word !== "bars") return { start, end, meaning: { type: "place", word, text: match[0] } };
    const [low, high] = [Number(match[1]), Number(match[2])];
    if (low < high && !isTempo(items, start, low))
      return { start, end, meaning: { type: "place", word, text: `bars ${low}-${high}` } };
  }
  return undefined;
}

/** `60, 66-72`: behind a tempo numbers go on with it; before one they are bars. */
function isTempo(items: readonly Item[], start: number, low: number): boolean {
  const counting = items.filter(({ meaning }) => meaning.type === "tempo" || meaning.type === "number");
  return counting.some((item) => item.end <= start) ? low >= SLOWEST : low >= SLOWEST_BARE && counting.length === 0;
}

/** Numbers go on with the bars before them: `bars 1-8, 17-24`. */
function isBehindBars(items: readonly Item[], start: number): boolean {
  const before = items.findLast((item) => item.end <= start)?.meaning;
  return before?.type === "place" && before.word === "bars";
}

/** Something else was found there that no letter or number makes. */
function isRead(items: readonly Item[], start: number, end: number): boolean {
  const within = items.filter((item) => item.start < end && item.end > start);
  const isEnd = (item: Item) => item.meaning.type === "place" && item.start > start && item.end === end;
  const isOpen = (item: Item) => OPEN.includes(item.meaning.type) || isEnd(item);
  return within.length === 0 || within.some((item) => item.start < start || !isOpen(item));
}

const OPEN: readonly Item["meaning"]["type"][] = ["unknown", "note", "number", "range", "place word"];

function replaced(items: readonly Item[], place: Place): readonly Item[] {
  const before = items.filter((item) => item.end <= place.start);
  const behind = items.flatMap((item) => (item.start >= place.end ? [item] : []));
  return [...before, place, ...behind];
}
