import type { Part } from "../../syntax/line/cut.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { parseEntry, withWordsBeside } from "../../syntax/line/parse-entry.ts";
import type { Item, MeaningOf } from "../../syntax/words/meaning.ts";
import { afterColon, bodyParts, trimmed, unclosed } from "./body.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, type Fault, fault, type Reading, readDate } from "./declared.ts";
import { declaredTitleIn } from "./declared-title.ts";

/** `aim SUBJECT, TERMS by DATE`. */
export function readAim(body: Body): Reading {
  const { entry, by, faults } = readWork(body);
  if (!entry.subject)
    return {
      faults: [...faults, noSubject(body, declarationTexts.aim)],
    };
  return { declared: { type: "aim", entry, by }, faults };
}

/** `set SUBJECT, TERMS, 5 days by DATE`, `set "any words"`. */
export function readSet(body: Body): Reading {
  const { entry, by, days, faults } = readWork(body);
  const subject = entry.subject?.meaning;
  if (!subject)
    return {
      faults: [...faults, noSubject(body, declarationTexts.set)],
    };
  if (subject.type === "title" && !subject.declared)
    return { declared: { type: "set", words: subject.title, asTitle: entry, days, by }, faults };
  return { declared: { type: "set", entry, days, by }, faults };
}

interface Work {
  readonly entry: EntryLine;
  readonly by?: number;
  readonly days?: number;
  readonly faults: readonly Fault[];
}

/** An entry whose dates and counts of days are taken out of its terms. */
function readWork(body: Body): Work {
  const from = afterColon(body, body.start);
  const rest = trimmed(body, from);
  const parsed = parseWork(body, rest, bodyParts(body, from));
  const faults: Fault[] = [];
  let by: number | undefined;
  let days: number | undefined;
  const items: Item[] = [];
  for (const item of parsed.items) {
    const { meaning } = item;
    if (meaning.type === "days") days = meaning.count;
    else if (meaning.type === "date" && (meaning.word === "by" || meaning.word === "due" || meaning.word === "until")) {
      const read = readDate({ ...item, meaning });
      faults.push(...read.faults);
      by = read.day ?? by;
    } else items.push(item);
  }
  const quote = bodyParts(body, from)[0]?.items[0] as Item<MeaningOf<"quoted">> | undefined;
  if (quote?.meaning.type === "quoted" && !quote.meaning.closed) faults.push(unclosed(quote));
  return { entry: { ...parsed, items }, by, days, faults };
}

/** What names no subject otherwise may be of a declared title without quotes. */
function parseWork(
  body: Body,
  { start, end }: { readonly start: number; readonly end: number },
  parts: readonly Part[],
): EntryLine {
  const text = body.text.slice(0, body.end);
  const parsed = parseEntry(text, start, end, parts, body);
  const title = parsed.subject ? undefined : declaredTitleIn(body, { start, end }, parts);
  return title ? withWordsBeside(parseEntry(text, start, end, parts, body, title), text, parts) : parsed;
}

function noSubject(body: Body, because: string): Fault {
  const rest = trimmed(body, body.start);
  return fault(rest.text ? rest : { start: body.start - body.word.length, end: body.start }, because);
}
