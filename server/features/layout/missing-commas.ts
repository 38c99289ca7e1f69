import { swappedOutcomes } from "../../journal/conditions.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import type { DeclarationLine, EntryLine, Line } from "../../syntax/line/line.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import { partsOf } from "../../syntax/line/parts.ts";
import type { Item, Meaning } from "../../syntax/words/meaning.ts";
import { termType } from "../../syntax/words/term-types.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";

export interface ReadingContext {
  readonly vocabulary: Vocabulary;
  readonly memo: LineReader;
}

/**
 * Which two things side by side are said in one breath: no comma belongs between them. `straight 8ths` is the even
 * rhythm; with a comma it would be the pattern.
 */
const ONE_BREATH: ReadonlySet<string> = new Set([
  "tempo outcome",
  "outcome outcome",
  "outcome tries",
  "note value tempo",
  "articulation tempo",
  "even rhythm note value",
  "date word weekday",
  "session clock",
]);

/** A thing on a line, for the question what may stand beside it. */
interface Known {
  readonly start: number;
  readonly end: number;
  /** A type of meaning, the word of a frame, `subject`, `claim`, or `date word`; none for what is not known. */
  readonly sort: string | undefined;
  /** Where it stands among the items of its line. */
  readonly index: number;
}

/** The columns at which a comma was left out between two things that the language knows: the end of the first. */
export function missingCommas(text: string, line: Line, context: ReadingContext): ReadonlySet<number> {
  const { known, items } = thingsOn(text, line, context);
  const found = new Set<number>();
  for (let i = 1; i < known.length; i++) {
    const [a, b] = [known[i - 1]!, known[i]!];
    const apart = text.slice(a.end, b.start);
    if (a.sort && b.sort && apart !== "" && apart.trim() === "" && !belongTogether(a, b, items)) found.add(a.end);
  }
  return found;
}

function belongTogether(a: Known, b: Known, items: readonly Item[]): boolean {
  if (ONE_BREATH.has(`${a.sort} ${b.sort}`)) return true;
  if (a.sort === "outcome" && b.sort === "tempo") return swappedOutcomes(items).some(({ tempo }) => tempo === b.index);
  const date = items[b.index]?.meaning;
  return b.sort === "date" && date?.type === "date" && date.word !== "due" && date.word !== "from";
}

function thingsOn(
  text: string,
  line: Line,
  context: ReadingContext,
): { readonly known: readonly Known[]; readonly items: readonly Item[] } {
  switch (line.type) {
    case "entry":
      return { known: entryThings(line, context.vocabulary), items: line.items };
    case "day": {
      const date = { start: line.dateEnd - line.date.length, end: line.dateEnd, sort: "date word", index: -1 };
      return { known: [date, ...itemThings(line.items, frameSort)], items: line.items };
    }
    case "session":
    case "phase":
    case "break":
    case "plan":
    case "rest":
      return { known: itemThings(line.items, frameSort), items: line.items };
    case "declaration": {
      const items = declarationItems(text, line, context);
      return { known: itemThings(items, (meaning) => declarationSort(meaning, context.vocabulary)), items };
    }
    default:
      return { known: [], items: [] };
  }
}

function itemThings(items: readonly Item[], sortOf: (meaning: Meaning) => string | undefined): readonly Known[] {
  return items.map(({ start, end, meaning }, index) => ({ start, end, sort: sortOf(meaning), index }));
}

function entryThings({ subject, items, claims }: EntryLine, vocabulary: Vocabulary): readonly Known[] {
  const things: Known[] = [
    ...(subject ? [{ start: subject.start, end: subject.end, sort: "subject", index: -1 }] : []),
    ...itemThings(items, (meaning) => termSort(meaning, vocabulary)),
    ...claims.map(({ start, end }) => ({ start, end, sort: "claim", index: -1 })),
  ].sort((a, b) => a.start - b.start);
  // a signature among the terms is a claim too, and what fills a chain lies inside it
  let end = 0;
  return things.filter((thing) => {
    const apart = thing.start >= end;
    end = Math.max(end, thing.end);
    return apart;
  });
}

function termSort(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  if (meaning.type === "quoted") return vocabulary.pattern(meaning.text) === undefined ? undefined : "pattern";
  if (meaning.type === "rhythm" && meaning.even) return "even rhythm";
  return termType(meaning.type) ? meaning.type : undefined;
}

function frameSort(meaning: Meaning): string | undefined {
  if (meaning.type === "line word") return meaning.id;
  const known = ["phase", "weekday", "clock", "amount", "with", "sore", "focus", "manner"];
  return known.includes(meaning.type) ? meaning.type : undefined;
}

const SUBJECTS: ReadonlySet<Meaning["type"]> = new Set([
  "scale",
  "chord",
  "title",
  "figure",
  "activity",
  "technique",
  "free",
]);
const FACTS: ReadonlySet<Meaning["type"]> = new Set(["bars", "goal", "date", "days", "last note"]);

function declarationSort(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  if (SUBJECTS.has(meaning.type)) return "subject";
  return FACTS.has(meaning.type) ? meaning.type : termSort(meaning, vocabulary);
}

/** What an aim or set work consists of, and what is said of a piece behind its colon; other bodies have no terms. */
function declarationItems(text: string, line: DeclarationLine, context: ReadingContext): readonly Item[] {
  const body = text.slice(0, line.end);
  const work = line.word === "aim" || line.word === "set";
  if (!work && line.word !== "piece" && line.word !== "study" && line.word !== "movement") return [];
  const { cuts } = cutLine(body, line.wordEnd);
  const parts = partsOf(body, work ? cuts : cuts.slice(1), context);
  return parts.flatMap((part) => part.items);
}
