import type { Declaration, Fault } from "../journal/declaration.ts";
import { type EntryFrame, readEntry } from "../journal/read-entry.ts";
import type { EntryLine } from "../syntax/line.ts";
import type { BlockContext, LineFinding } from "./context.ts";
import { onLine } from "./context.ts";
import { datesMeant } from "./day.ts";
import { termsOf } from "./entry-terms.ts";
import { type Finding, finding, quoted, replacement } from "./finding.ts";
import { subjectFindings } from "./subject.ts";

/** Declarations can be read, and stand where they may. */
export function checkDeclarations(context: BlockContext): readonly LineFinding[] {
  return context.model.declarations.flatMap(({ line, declaration }) => {
    const text = context.texts[line]!;
    const below =
      context.model.day !== undefined && isForTheHead(declaration, text)
        ? [belowDay(declaration, text, line, context.texts.length)]
        : [];
    return onLine(line, [
      ...below,
      ...declaration.faults.map((fault) => faultFinding(fault, text)),
      ...workFindings(declaration, text, line, context),
    ]);
  });
}

function faultFinding({ start, end, code, because, offers = [] }: Fault, text: string): Finding {
  const sentence = because[0]!.toUpperCase() + because.slice(1);
  if (code === "bad-date") {
    const meant = datesMeant(text.slice(start, end));
    return finding(
      code,
      { start, end },
      `${sentence}.`,
      meant.offers.map((offer) => replacement(`Change to ${offer}`, { start, end }, offer, meant.certain)),
    );
  }
  if (code === "unclosed-quote")
    return finding(code, { start, end }, `${sentence}: a second one belongs behind the name.`, [
      { title: "Close the quote", safe: false, edits: [{ start: end, end, text: '"' }] },
    ]);
  const instead = offers.length ? `: ${offers.map((offer) => `"${quoted(offer)}"`).join(" or ")}` : "";
  return finding(
    code,
    { start, end },
    `${sentence}${instead}.`,
    offers.map((offer) => replacement(`Change to "${quoted(offer)}"`, { start, end }, offer)),
  );
}

/** Below a day only aims, set work, and what has a quoted name. */
function isForTheHead({ line }: Declaration, text: string): boolean {
  return line.word !== "aim" && line.word !== "set" && !/^\s*["“”„«»]/.test(text.slice(line.wordEnd));
}

function belowDay({ line }: Declaration, text: string, at: number, lines: number): Finding {
  const words = text.slice(line.start, text.trimEnd().length);
  const gone =
    at + 1 < lines
      ? { line: at, endLine: at + 1, start: 0, end: 0, text: "" }
      : { line: at, start: 0, end: text.length, text: "" };
  return finding(
    "bad-declaration",
    line,
    `\`${line.word}\` holds for the whole journal, so it stands above the first day.`,
    [{ title: "Move it above the first day", safe: false, edits: [gone], head: words }],
  );
}

/** An aim or set work is checked as the entry it would be. */
function workFindings(
  { declared }: Declaration,
  text: string,
  line: number,
  context: BlockContext,
): readonly Finding[] {
  const source: EntryLine | undefined =
    declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
  if (!source) return [];
  const frame: EntryFrame = { line, stretch: 0, planned: true };
  return [
    ...subjectFindings(readEntry(source, frame, context.vocabulary), text, context),
    ...termsOf(source, text, context),
  ];
}
