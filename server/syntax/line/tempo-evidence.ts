import { THEN } from "../lexicon/note-leads.ts";
import type { Item, Meaning } from "../words/meaning.ts";
import { type Evidence, hasBareTempo, NAMED, OTHER_LINES, type Signs, saysMore, WAYS } from "./evidence.ts";
import type { LineWords } from "./line-words.ts";
import { countsElse, isNumber } from "./numbers.ts";
import { firstWord } from "./title.ts";

/** Words in front of a tempo that stands apart name what is practised when they are at most so many. */
const LONGEST_NAME = 5;

/**
 * `gde gracenotes, 50, the last one late`, `grips @48`: words that nothing is known of, in front of a tempo that is
 * marked or stands apart, or of a numbered place and how it went there. With a place they are a piece, else an exercise
 * by its own words.
 */
export function byTempo(words: LineWords, { sign, intends }: Signs): Evidence | undefined {
  const row = tempoRow(words);
  if (intends || (sign >= 0 && sign < Math.min(words.firstStop, row ? wordAt(words, row) : words.count)))
    return undefined;
  const isTold = words.has("outcome", "tries");
  const isCounted =
    hasTempo(words) ||
    hasNamedTempo(words) ||
    hasTempoAtLast(words) ||
    ((isTold || words.has("tempo")) && words.hasNumberedPlace) ||
    (hasBareTempo(words) && words.has(...WAYS, ...(isTold ? (["place"] as const) : [])));
  if (!isCounted) return undefined;
  const from = firstWord(words);
  let to = from;
  while (to < words.count && !endsName(words, from, to)) to++;
  while (to > from && !/[\p{L}\p{N}]/u.test(words.typed(to - 1))) to--;
  const isOther = words.first(0, to, ...(row ? OTHER_LINES.filter((each) => each !== "body-part") : OTHER_LINES)) >= 0;
  if (to <= from || strangeWords(words, from, to) > LONGEST_NAME || isOther || words.first(0, to, "same-as-above") >= 0)
    return undefined;
  if (!saysMore(words, { from, to })) return undefined;
  const [start, end] = [words.words[from]!.start, words.words[to - 1]!.end];
  const name = words.text.slice(start, end);
  if ((name.match(/\p{L}/gu) ?? []).length < 3 || (words.is(from, "heading") && to - from === 1)) return undefined;
  const declared = words.titleOf(name);
  if (declared !== undefined || words.has("place"))
    return {
      subject: { start, end, meaning: { type: "title", title: declared ?? name, declared: declared !== undefined } },
    };
  return { subject: { start, end, meaning: { type: "technique", name } } };
}

function strangeWords(words: LineWords, from: number, to: number): number {
  let count = 0;
  for (let i = from; i < to; i++) if (!words.found(i)) count++;
  return count;
}

/** A number is a tempo by its mark, by where it stands, or beside others. */
export function hasTempo(words: LineWords): boolean {
  return hasTempoApart(words) || hasMarkedTempo(words) || tempoRow(words) !== undefined;
}

function endsName(words: LineWords, from: number, i: number): boolean {
  if (i > from && /[,;:|(!→>]|(?:^|\s)[–—-]+(?:\s|$)/.test(words.before(i))) return true;
  const type = words.found(i)?.meaning.type;
  // `8 on a hand`
  if (i === from && type === "number" && words.before(i + 1) === "" && /^\p{L}/u.test(words.typed(i + 1))) return false;
  return type !== undefined && ENDS_NAME.includes(type);
}

const ENDS_NAME: readonly Meaning["type"][] = [
  "tempo",
  "number",
  "range",
  "place",
  "amount",
  "tries",
  "times",
  "outcome",
  "without click",
];

/** A number that may be a tempo and stands between commas, or in a row of such: `grips, 48, clean`. */
export function hasTempoApart({ items, text }: LineWords): boolean {
  return items.some((item) => {
    if (!isNumber(item) || countsElse(item, text)) return false;
    const { meaning } = item;
    const [low, high] =
      meaning.type === "range" ? [meaning.range.low, meaning.range.high] : [meaning.value, meaning.value];
    if (low < SLOWEST_APART || high > FASTEST_APART) return false;
    return (
      /(?:[,;|]\s+|[^\d][,;|]|\s\/\s+)$/.test(text.slice(0, item.start)) &&
      /^[.!]*\s*(?:$|[,;|!–—-]|\/\s|then\b)/.test(text.slice(item.end))
    );
  });
}

/** `100 120 140`, `100 then 108`, `/ 80 / 90`: numbers that may be tempos, one after the other and rising. */
function tempoRow({ items, text }: LineWords): Item | undefined {
  const numbers = items.filter((item) => isNumber(item) || item.meaning.type === "tempo");
  return numbers.find((item, i) => {
    const next = numbers[i + 1];
    if (!next || countsElse(item, text) || countsElse(next, text)) return false;
    const [low, high] = [lowestOf(item), lowestOf(next)];
    const isLikely = low >= SLOWEST_APART && high <= FASTEST_APART && low < high;
    return isLikely && IN_ROW.test(text.slice(item.end, next.start));
  });
}

function wordAt(words: LineWords, item: Item): number {
  return words.words.findIndex(({ start }) => start >= item.start);
}

/** `slow then 84`: at last with the metronome. */
function hasTempoAtLast({ items, text }: LineWords): boolean {
  return items.some((item, i) => {
    const lead = items[i - 1]?.meaning;
    const isLed = lead?.type === "unknown" && IN_ROW.test(lead.words) && items[i - 2]?.meaning.type === "without click";
    return isLed && isNumber(item) && lowestOf(item) >= SLOWEST_APART && !countsElse(item, text);
  });
}

/** `five str rolls 90 RRLLR`: right behind what is practised by its name. */
function hasNamedTempo({ items, text }: LineWords): boolean {
  return items.some((item, i) => {
    const before = items[i - 1]?.meaning.type ?? "unknown";
    const isLikely = isNumber(item) && lowestOf(item) >= SLOWEST_APART && lowestOf(item) <= FASTEST_APART;
    return isLikely && NAMED.includes(before) && before !== "activity" && !countsElse(item, text);
  });
}

const IN_ROW = new RegExp(`^\\s*(?:[/→>,–-]|->|${THEN.join("|")})?\\s*$`);

function lowestOf({ meaning }: Item): number {
  if (meaning.type === "number") return meaning.value;
  return meaning.type === "tempo" ? meaning.bpm : meaning.type === "range" ? meaning.range.low : 0;
}

/** Beats a minute: what stands apart and is less, or more, is likelier to count something else. */
const SLOWEST_APART = 40;
const FASTEST_APART = 220;

/** `@72`, `♩=72`, `72 bpm`; `at 72` goes on with sentences, too. */
function hasMarkedTempo({ items, text }: LineWords): boolean {
  return items.some(
    ({ meaning, start, end }) => meaning.type === "tempo" && /[@=♩♪]|bpm/i.test(text.slice(start, end)),
  );
}
