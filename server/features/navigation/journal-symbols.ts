import { isoDate } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { declaredIn } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { namesIn } from "../../journal/journal-name.ts";
import { readForTitles, titleIndex } from "../../journal/titles/journal-titles.ts";
import { phraseKey } from "../../syntax/words/fold.ts";
import { plainText } from "../../syntax/words/plain-text.ts";
import { closeness } from "./closeness.ts";
import { declaredMentions, locationOf } from "./declarations.ts";
import { type Location, rangeOn } from "./named.ts";
import { blocksOf, type PlacedBlock } from "./named-blocks.ts";

/** Something of a journal that one may want to go to. */
export interface JournalSymbol extends Location {
  readonly name: string;
  readonly kind: "title" | "declaration" | "aim" | "day";
  /** The file, by its name. */
  readonly container: string;
}

/** More are of no use in a list; whoever wants others types on. */
export const MOST_SYMBOLS = 100;

/**
 * Titles, what is declared by name, aims, and days by their date, of those the ones that fit a query: the best first,
 * then by kind, days with the latest first, all else by name. In steps, as all days may have to be read for titles.
 */
export function* journalSymbols(journals: Iterable<Journal>, query: string): Generator<void, readonly JournalSymbol[]> {
  const found: Found[] = [];
  for (const journal of journals) {
    yield* readForTitles(journal);
    for (const symbol of symbolsOf(journal)) {
      const close = closeness(symbol.name, query);
      if (close !== undefined) found.push({ symbol, close });
    }
    yield;
  }
  return found
    .sort(inOrder)
    .slice(0, MOST_SYMBOLS)
    .map(({ symbol }) => symbol);
}

interface Found {
  readonly symbol: JournalSymbol;
  readonly close: number;
}

const KINDS: readonly JournalSymbol["kind"][] = ["title", "declaration", "aim", "day"];

function inOrder({ symbol: a, close }: Found, { symbol: b, close: other }: Found): number {
  const kinds = KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind);
  const names = a.name < b.name ? -1 : a.name > b.name ? 1 : 0;
  return close - other || kinds || (a.kind === "day" ? -names : names);
}

function symbolsOf(journal: Journal): readonly JournalSymbol[] {
  const made = () => [...declared(journal), ...aimsAndDays(journal)];
  return journal.memo.from(journal.vocabulary, "journal symbols", [journal.files, titleIndex(journal)], made);
}

function declared(journal: Journal): readonly JournalSymbol[] {
  return declaredMentions(journal)
    .filter(({ mention }) => mention.form === "whole")
    .map((place) => {
      const { kind, name, key } = place.mention;
      const shown = kind === "movement" ? key : name;
      return symbol(kind === "title" ? "title" : "declaration", shown, locationOf(place));
    });
}

function aimsAndDays(journal: Journal): readonly JournalSymbol[] {
  const learnt = new Map<number, { readonly title: string; readonly line: number }[]>();
  for (const { day, title, line } of titleIndex(journal).learnt)
    learnt.set(day, [...(learnt.get(day) ?? []), { title, line }]);
  const found: JournalSymbol[] = [];
  for (const { uri, block, first } of blocksOf(journal)) {
    for (const { declared: aim, line, text } of declaredIn(journal, uri, block))
      if (aim.type === "aim")
        found.push(symbol("aim", text, { uri, range: wholeLine(block.lines[line]!, first + line) }));
    const day = dayOfBlock(block);
    if (day === undefined) continue;
    const date = block.date!;
    found.push(symbol("day", isoDate(day), { uri, range: rangeOn(first, date) }));
    const titles = learnt.get(day);
    const there = titles?.filter((each) => isOn({ block }, each)) ?? [];
    if (there.length > 0)
      learnt.set(
        day,
        titles!.filter((each) => !there.includes(each)),
      );
    for (const { title, line } of there)
      found.push(symbol("title", title, { uri, range: wholeLine(block.lines[line]!, first + line) }));
  }
  return found;
}

/** Of two days with one date the one that has the title. */
function isOn(
  { block }: Pick<PlacedBlock, "block">,
  { title, line }: { readonly title: string; readonly line: number },
) {
  return phraseKey(block.lines[line] ?? "").includes(phraseKey(title));
}

function wholeLine(text: string, line: number): Location["range"] {
  const start = Math.max(0, text.search(/[^\s\uFEFF]/));
  return rangeOn(line, { start, end: Math.max(start, text.trimEnd().length) });
}

function symbol(kind: JournalSymbol["kind"], name: string, { uri, range }: Location): JournalSymbol {
  const shown = plainText(name.replace(/\s+/g, " ")).trim() || "…";
  return { name: shown, kind, uri, range, container: plainText(namesIn(uri).at(-1) ?? "") };
}
