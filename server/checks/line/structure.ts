import type { Line } from "../../syntax/line/line.ts";
import type { Item, Meaning } from "../../syntax/words/meaning.ts";
import type { LineContext } from "../context.ts";
import { type Finding, finding, quoted, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { misplaced, nearestTo, unknown, withCountedWords } from "./entry-terms.ts";
import { lineTexts } from "./line-texts.ts";

type FrameLine = Extract<
  Line,
  { readonly items: readonly Item[]; readonly type: "day" | "session" | "phase" | "break" | "plan" | "rest" }
>;

/** What each line that frames others may say, and how that is told. */
const MAY_SAY: Readonly<
  Record<FrameLine["type"], { readonly types: readonly Meaning["type"][]; readonly expected: string }>
> = {
  day: { types: ["weekday", "amount", "line word"], expected: lineTexts.takes.day },
  session: { types: ["line word", "clock", "number", "amount", "with", "focus"], expected: lineTexts.takes.session },
  phase: { types: ["phase", "amount", "line word", "with", "focus"], expected: lineTexts.takes.phase },
  break: { types: ["line word", "amount"], expected: lineTexts.takes.break },
  plan: { types: ["line word"], expected: lineTexts.takes.plan },
  rest: { types: [], expected: "" },
};

/** Day, session, phase and break lines say only what such lines say; their minutes and every other amount can be. */
export function checkFrame(line: Line, context: Pick<LineContext, "text" | "vocabulary">): readonly Finding[] {
  if (!("items" in line)) return [];
  const impossible = (line.items as readonly Item[]).flatMap((item) => badMinutes(item, context.text));
  return line.type === "entry" || line.type === "total"
    ? impossible
    : [...outOfPlace(line as FrameLine, context), ...impossible];
}

function outOfPlace(line: FrameLine, context: Pick<LineContext, "text" | "vocabulary">): readonly Finding[] {
  const rest = line.items.findIndex(({ meaning }) => meaning.type === "line word" && meaning.id === "rest");
  if (line.type === "rest") return [];
  const { types, expected } = MAY_SAY[line.type];
  const said = line.type === "day" && rest >= 0 ? line.items.slice(0, rest) : line.items;
  return withCountedWords(said, context.text).flatMap((item) => {
    if (types.includes(item.meaning.type) || (line.type === "day" && isLesson(item))) return [];
    const typed = context.text.slice(item.start, item.end);
    const withWords =
      line.type === "phase" && item.meaning.type === "unknown"
        ? [replacement(fixTexts.write(`with ${quoted(typed)}`), item, `with ${typed}`)]
        : [];
    if (!NOTHING_KNOWN.includes(item.meaning.type)) return misplaced(item, typed, expected);
    const found = unknown(item, typed, sentence(expected), nearestTo(typed, types, context));
    return { ...found, fixes: [...found.fixes, ...withWords] };
  });
}

function isLesson({ meaning }: Item): boolean {
  return meaning.type === "phase" && meaning.id === "lesson";
}

/** What a word is where nothing is made of it. */
const NOTHING_KNOWN: readonly Meaning["type"][] = ["unknown", "number", "range"];

function sentence(words: string): string {
  return words[0]!.toUpperCase() + words.slice(1);
}

function badMinutes(item: Item, text: string): readonly Finding[] {
  if (item.meaning.type !== "amount" || item.meaning.possible) return [];
  return [finding("bad-minutes", item, lineTexts.impossibleTime(quoted(text.slice(item.start, item.end))))];
}
