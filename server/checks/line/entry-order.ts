import { swappedOutcomes } from "../../journal/conditions.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { FASTEST, SLOWEST } from "../../syntax/words/tempo-words.ts";
import { MEANING_TRAITS, onceKey } from "../../syntax/words/term-types.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { LineContext } from "../context.ts";
import { type Finding, finding, quoted, type Stretch } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { termTexts } from "./term-texts.ts";

/** Terms that say one thing twice, outcomes in front of their tempo, and tempos that no metronome has. */
export function checkEntryOrder(
  line: EntryLine,
  { text, vocabulary }: Pick<LineContext, "text" | "vocabulary">,
): readonly Finding[] {
  return [
    ...repeatedTerms(line, text, vocabulary),
    ...outcomesBeforeTempo(line.items, text),
    ...triesWithoutOutcome(line.items, text),
    ...temposOutOfRange(line.items, text),
  ];
}

/** A second word for the same thing. What may change from tempo to tempo may be said again for each. */
function repeatedTerms(line: EntryLine, text: string, vocabulary: Vocabulary): readonly Finding[] {
  const lastTempo = line.items.findLastIndex((item) => item.meaning.type === "tempo");
  const said = new Map<string, Item>();
  const findings: Finding[] = [];
  let tempos = 0;
  for (const [i, item] of line.items.entries()) {
    if (item.meaning.type === "tempo") tempos++;
    const isPattern = item.meaning.type === "quoted" && vocabulary.pattern(item.meaning.text) !== undefined;
    const type = isPattern ? "pattern" : item.meaning.type;
    const { once } = MEANING_TRAITS[type];
    if (once === undefined) continue;
    const key = once === "line" ? type : `${onceKey(item.meaning)} ${i > lastTempo ? 0 : tempos}`;
    const earlier = said.get(key);
    if (earlier) findings.push(repeated(item, earlier, text));
    else said.set(key, item);
  }
  return findings;
}

function repeated(item: Item, earlier: Item, text: string): Finding {
  const first = quoted(text.slice(earlier.start, earlier.end));
  const second = quoted(text.slice(item.start, item.end));
  const start = text.slice(0, item.start).replace(/[\s,]+$/, "").length;
  return finding("repeated-term", item, termTexts.twice(first, second), [
    { title: fixTexts.takeOut(second), safe: false, edits: [{ start, end: item.end, text: "" }] },
  ]);
}

/** An outcome comes after the tempo it belongs to. */
function outcomesBeforeTempo(items: readonly Item[], text: string): readonly Finding[] {
  return swappedOutcomes(items).map(({ from, to, tempo }) => {
    const first = items[from]!;
    const last = items[to - 1]!;
    const outcome = text.slice(first.start, last.end);
    const rate = text.slice(items[tempo]!.start, items[tempo]!.end);
    const stretch = { start: first.start, end: items[tempo]!.end };
    const right = quoted(`${rate} ${outcome}`);
    return finding("outcome-order", stretch, termTexts.outcomeAfterTempo(right), [
      {
        title: fixTexts.write(right),
        safe: !goesOn(items[tempo + 1], items[tempo]!, text),
        edits: [
          {
            ...withComma(stretch, text),
            text: `${comma(stretch, text)}${rate} ${outcome}${parted(items, tempo, text)}`,
          },
        ],
      },
    ]);
  });
}

/** Beside further words an outcome is none: `at 60 clean wobble`. */
function goesOn(next: Item | undefined, tempo: Item, text: string): boolean {
  return next?.meaning.type === "unknown" && text.slice(tempo.end, next.start).trim() === "";
}

/** Only an aim has tries without an outcome. */
function triesWithoutOutcome(items: readonly Item[], text: string): readonly Finding[] {
  return items.flatMap((item, i) => {
    if (item.meaning.type !== "tries" || items[i - 1]?.meaning.type === "outcome") return [];
    return finding("unknown-term", item, termTexts.sayHowItWent(quoted(text.slice(item.start, item.end))));
  });
}

/**
 * A comma within the stretch stood between two parts: it goes in front of it, where none stands yet, as the words
 * before it may make a line an entry only by themselves.
 */
function comma({ start, end }: Stretch, text: string): string {
  const before = text.slice(0, start).trimEnd();
  return before !== "" && !/[,:>→]$/.test(before) && text.slice(start, end).includes(",") ? ", " : "";
}

/** `clean at 60 5x`: the amount behind the tempo would become tries right behind the outcome. */
function parted(items: readonly Item[], tempo: number, text: string): string {
  const next = items[tempo + 1];
  return next?.meaning.type === "times" && text.slice(items[tempo]!.end, next.start).trim() === "" ? "," : "";
}

function withComma(stretch: Stretch, text: string): Stretch {
  return comma(stretch, text) === "" ? stretch : { ...stretch, start: text.slice(0, stretch.start).trimEnd().length };
}

function temposOutOfRange(items: readonly Item[], text: string): readonly Finding[] {
  return items.flatMap((item) => {
    if (item.meaning.type !== "tempo") return [];
    const { bpm, low = bpm } = item.meaning;
    if (low >= SLOWEST && bpm <= FASTEST) return [];
    const tempo = quoted(text.slice(item.start, item.end));
    return finding("tempo-range", item, termTexts.tempoOutside(tempo, SLOWEST, FASTEST));
  });
}
