import { readDeclaration } from "../../journal/declarations/declaration.ts";
import type { Declaration, Fault } from "../../journal/declarations/declared.ts";
import type { DeclarationLine } from "../../syntax/line/line.ts";
import type { LineContext } from "../context.ts";
import { type Finding, finding, offered, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { datesMeant } from "./day-line.ts";
import { checkEntryTerms } from "./entry-terms.ts";
import { lineTexts } from "./line-texts.ts";
import { checkSubject } from "./subject.ts";

/** A declaration can be read, and stands where it may. */
export function checkDeclaration(line: DeclarationLine, context: LineContext): readonly Finding[] {
  const { text, head } = context;
  const declaration = readDeclaration(text, line, context);
  const below = !head && isForTheHead(declaration, text) ? [belowDay(declaration, text)] : [];
  return [
    ...below,
    ...declaration.faults.map((fault) => faultFinding(fault, text)),
    ...workFindings(declaration, context),
  ];
}

function faultFinding({ start, end, code, because, offers = [] }: Fault, text: string): Finding {
  const sentence = lineTexts.faultyDeclaration(because);
  if (code === "bad-date") {
    const meant = datesMeant(text.slice(start, end));
    return finding(
      code,
      { start, end },
      sentence,
      meant.offers.map((offer) => replacement(fixTexts.changeTo(offer), { start, end }, offer, meant.certain)),
    );
  }
  if (code === "unclosed-quote")
    return finding(code, { start, end }, sentence, [
      { title: fixTexts.closeQuote, safe: false, edits: [{ start: end, end, text: '"' }] },
    ]);
  const isNamed = offers.every((offer) => because.includes(offer));
  const guess = isNamed ? "" : fixTexts.didYouMean(offers.map(offered));
  return finding(
    code,
    { start, end },
    sentence + guess,
    offers.map((offer) => replacement(fixTexts.changeTo(offered(offer)), { start, end }, offer)),
  );
}

/** Below a day only aims, set work, and what has a quoted name. */
function isForTheHead({ line }: Declaration, text: string): boolean {
  return line.word !== "aim" && line.word !== "set" && !/^\s*["“”„«»]/.test(text.slice(line.wordEnd));
}

function belowDay({ line }: Declaration, text: string): Finding {
  const words = text.slice(line.start, text.trimEnd().length);
  const gone = { start: 0, end: 0, further: 1, text: "" };
  return finding("bad-declaration", line, lineTexts.belowDay(line.word), [
    { title: lineTexts.moveAbove, safe: false, edits: [gone], head: words },
  ]);
}

/** An aim or set work is checked as the entry it would be. */
function workFindings({ declared }: Declaration, context: LineContext): readonly Finding[] {
  const entry = declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
  return entry ? [...checkSubject(entry, context), ...checkEntryTerms(entry, context)] : [];
}
