import { UP_TO } from "../lexicon/note-leads.ts";
import { LEADS_TO_OUTCOME, NAMES_THE_LAST } from "../lexicon/outcomes/marks.ts";
import { LEAD_TO_TEMPO } from "../lexicon/tempo-marks.ts";
import { fold } from "../words/fold.ts";
import type { Item, Meaning, MeaningOf } from "../words/meaning.ts";
import { DASH } from "../words/outcome-words.ts";
import type { Vocabulary } from "../words/vocabulary.ts";

/**
 * What was said of how it went is known as a whole or not at all: `ok but sharp` is neither good nor bad, and kept as
 * words. Behind a tempo it goes on to the next comma, tempo or term, whatever is found in it: `flat on the long D`.
 */
export function asSaid(items: readonly Item[], text: string, vocabulary: Vocabulary): readonly Item[] {
  const said: Item[] = [];
  for (const [i, item] of items.entries()) {
    const before = said.at(-1);
    if (isThen(items, i)) continue;
    if (!before || !goesOn(said, item, text)) said.push(item);
    else {
      const words = text.slice(before.start, item.end);
      said[said.length - 1] = { start: before.start, end: item.end, meaning: { type: "unknown", words } };
    }
  }
  // Behind a number that only its line makes a tempo, how it went was not looked for yet.
  return said.map((item, i) => {
    if (item.meaning.type !== "unknown" || said[i - 1]?.meaning.type !== "tempo") return item;
    const isClose = said[i - 1]!.end === item.start;
    if (isClose && DASHES.includes(item.meaning.words)) return { ...item, meaning: DASH };
    return outcomeBehindLead(item as Item<MeaningOf<"unknown">>, vocabulary) ?? item;
  });
}

/** What words say of a tempo, with no more before it than a word that leads to it: `and steady`, `the last no good`. */
function outcomeBehindLead(item: Item<MeaningOf<"unknown">>, vocabulary: Vocabulary): Item | undefined {
  const { words } = item.meaning;
  const whole = vocabulary.outcomes.of(words);
  if (whole) return { ...item, meaning: whole };
  const key = words.toLowerCase();
  const isBefore = (lead: string): boolean => key.startsWith(`${lead} `);
  const name = NAMES_THE_LAST.find(isBefore);
  const lead = name ?? LEADS_TO_OUTCOME.find(isBefore);
  const rest = lead === undefined ? "" : words.slice(lead.length).trimStart();
  const outcome = vocabulary.outcomes.of(rest);
  return outcome && { ...item, start: name === undefined ? item.end - rest.length : item.start, meaning: outcome };
}

/** `at 60, then 72`: a word that leads from one tempo to the next says nothing of either. */
function isThen(items: readonly Item[], i: number): boolean {
  const { meaning } = items[i]!;
  const isLead = meaning.type === "unknown" && LEAD_TO_TEMPO.has(fold(meaning.words));
  return isLead && items[i + 1]?.meaning.type === "tempo" && i > 0;
}

/** `72+ 80- `: written close to its tempo a dash says that it was not reached. */
const DASHES = ["-", "–"];

/** Whether something is part of what was said right before it. */
function goesOn(said: readonly Item[], item: Item, text: string): boolean {
  const before = said.at(-1)!;
  if (!/^\s*$/.test(text.slice(before.end, item.start))) return false;
  const isWords = [before, item].some(({ meaning }) => meaning.type === "unknown" || meaning.type === "technique");
  if (isSaying(before) && isSaying(item)) return isWords;
  if (said.at(-2)?.meaning.type !== "tempo" && !BEHIND_SIGN.test(text.slice(0, before.start))) return false;
  return (
    (before.meaning.type === "unknown" && SAID_TOO.includes(item.meaning.type)) ||
    (before.meaning.type === "note" && isWords && !isUpTo(item))
  );
}

/** `F4 to G6`: how far, and no words. */
function isUpTo({ meaning }: Item): boolean {
  return meaning.type === "unknown" && UP_TO.has(meaning.words.toLowerCase());
}

const BEHIND_SIGN = /[,.;–—-]\s*$/;

/** Behind words that stand behind a tempo, a comma or a stop these are words as well. */
const SAID_TOO: readonly Meaning["type"][] = [
  "note",
  "manner",
  "without click",
  "line word",
  "number",
  "sore",
  "weekday",
  "kind",
  "part of a kind",
];

/** A technique that is no subject may be what went so: `string crossings hard`. */
function isSaying({ meaning }: Item): boolean {
  return meaning.type === "outcome" || meaning.type === "unknown" || meaning.type === "technique";
}
