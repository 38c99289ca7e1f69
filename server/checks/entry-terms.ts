import { patternById } from "../music/pattern.ts";
import { nameKey } from "../syntax/fold.ts";
import type { EntryLine } from "../syntax/line.ts";
import type { Item, Meaning } from "../syntax/meaning.ts";
import { isQuote } from "../syntax/token.ts";
import type { LineContext } from "./context.ts";
import { type Finding, type FindingFix, finding, quoted, replacement } from "./finding.ts";

/** Every word of an entry says something that has its place there. */
export function checkEntryTerms(
  line: EntryLine,
  { text, vocabulary }: Pick<LineContext, "text" | "vocabulary">,
): readonly Finding[] {
  const pattern = line.items.find((item) => item.meaning.type === "pattern");
  return line.items.flatMap((item) => termFinding(item, text, line, pattern, { vocabulary }) ?? []);
}

function termFinding(
  item: Item,
  text: string,
  line: EntryLine,
  pattern: Item | undefined,
  context: Pick<LineContext, "vocabulary">,
): Finding | undefined {
  const { meaning } = item;
  const typed = text.slice(item.start, item.end);
  switch (meaning.type) {
    case "unknown":
      return unknown(item, typed, "a term belongs here: a pattern, an articulation, a tempo, how it went", context);
    case "quoted":
      return quotedTerm(item, meaning.text, meaning.closed, context);
    case "variant":
      return variant(item, meaning.id, pattern);
    case "inversion":
      return line.subject?.meaning.type === "chord"
        ? undefined
        : unknown(item, typed, "inversions belong to arpeggios and chords", context, []);
    case "number":
    case "range":
      return finding(
        "unknown-term",
        item,
        `${typed}: nothing says what this counts. A tempo is written \`at ${typed}\`, minutes \`${typed} min\`, bars \`bars ${typed}\`.`,
        [replacement(`Write "at ${typed}"`, item, `at ${typed}`)],
      );
    case "note":
      return finding(
        "unknown-term",
        item,
        `${typed}: notes stand behind a colon, after the subject: \`D minor: D E F G A Bb C D\`.`,
      );
    default:
      return MISPLACED[meaning.type] === undefined
        ? undefined
        : finding(
            "unknown-term",
            item,
            `"${quoted(typed)}" has no place here: ${MISPLACED[meaning.type]}.`,
            misplacedFixes(item, typed, meaning),
          );
  }
}

/** What is known, but not as a term of an entry. */
const MISPLACED: Partial<Record<Meaning["type"], string>> = {
  scale: "one line is for one subject, and this is a second one",
  chord: "one line is for one subject, and this is a second one",
  title: "one line is for one subject, and this is a second one",
  figure: "one line is for one subject, and this is a second one",
  activity: "one line is for one subject, and this is a second one",
  free: "one line is for one subject, and this is a second one",
  chain: "one line is for one subject, and this is a second one",
  "faulty subject": "one line is for one subject, and this is a second one",
  kind: "a kind of scale stands right behind its tonic, as in `D minor`",
  "part of a kind": "a kind of scale stands right behind its tonic, as in `D harmonic minor`",
  "chord kind": "a chord stands right behind its root, as in `D minor arpeggio`",
  weekday: "a weekday stands on a day line",
  clock: "a time of day stands on a `session` line",
  phase: "a phase stands on a line of its own",
  "line word": "it stands on a line of its own",
  date: "a date opens a day, or belongs to a declaration",
  goal: "a goal belongs to a piece's declaration",
  bars: "bars are named as in `bars 17-32`",
  days: "days belong to work that is `set`",
  "last note": "it belongs to a piece's declaration",
};

function misplacedFixes(item: Item, typed: string, meaning: Meaning): readonly FindingFix[] {
  if (meaning.type !== "bars") return [];
  const bars = `bars ${typed.replace(/\D+/g, "")}`;
  return [replacement(`Write "${bars}"`, item, bars)];
}

/** Words that are not known, and the nearest that are. */
export function unknown(
  item: Item,
  typed: string,
  expected: string,
  { vocabulary }: Pick<LineContext, "vocabulary">,
  offers?: readonly string[],
): Finding {
  const near = offers ?? nearestTo(typed, vocabulary);
  const guess = near[0] === undefined ? "" : ` Did you mean "${near[0]}"?`;
  const fixes = near.map((each) => replacement(`Change to "${each}"`, item, each));
  return finding("unknown-term", item, `"${quoted(typed)}" is not known here: ${expected}.${guess}`, fixes);
}

/** The nearest phrase, or where each word is near one, those. */
function nearestTo(typed: string, vocabulary: LineContext["vocabulary"]): readonly string[] {
  const whole = vocabulary.nearest(typed);
  if (whole !== undefined) return [whole];
  const words = typed.split(/\s+/);
  if (words.length < 2 || words.length > 4) return [];
  const each = words.map((word) => vocabulary.nearest(word));
  return each.every((word) => word !== undefined) ? [each.join(", ")] : [];
}

function quotedTerm(
  item: Item,
  name: string,
  closed: boolean,
  { vocabulary }: Pick<LineContext, "vocabulary">,
): Finding | undefined {
  if (!closed) return unclosedQuote(item);
  if (vocabulary.pattern(name) !== undefined) return undefined;
  const near = vocabulary.nearest(nameKey(name), vocabulary.declared.patterns);
  const message = `No pattern called "${quoted(name)}" is declared.${near === undefined ? ` A declaration says its degrees: \`pattern "${quoted(name)}": 1 3 2 4\`.` : ` Did you mean "${near}"?`}`;
  return finding(
    "unknown-pattern",
    item,
    message,
    near === undefined ? [] : [replacement(`Change to "${near}"`, item, `"${near}"`)],
  );
}

export function unclosedQuote(item: { readonly start: number; readonly end: number }): Finding {
  return finding("unclosed-quote", item, "This quote does not close: a second one belongs behind the name.", [
    { title: "Close the quote", safe: false, edits: [{ start: item.end, end: item.end, text: '"' }] },
  ]);
}

/** Whether a stretch of a line begins with a quote that does not close. */
export function isUnclosed(text: string, { start, end }: { readonly start: number; readonly end: number }): boolean {
  if (!isQuote(text[start] ?? "")) return false;
  return end - start < 2 || ![...text.slice(start + 1, end)].some(isQuote);
}

/** A variant is one of its pattern's. */
function variant(item: Item, id: string, pattern: Item | undefined): Finding | undefined {
  if (pattern?.meaning.type !== "pattern") {
    return finding(
      "unknown-term",
      item,
      `"${id}" says how a pattern is played, and no pattern of the language stands on this line.`,
    );
  }
  const known = patternById(pattern.meaning.id);
  if ((known?.variants as readonly string[] | undefined)?.includes(id)) return undefined;
  const has = known?.variants.length ? `it has ${known.variants.join(" and ")}` : "it has no other form";
  return finding("unknown-pattern", item, `${pattern.meaning.id} has no ${id} form: ${has}.`);
}
