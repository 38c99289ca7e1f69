import type { Line } from "../../syntax/line/line.ts";
import type { LineContext } from "../context.ts";
import type { Finding, FindingFix } from "../finding.ts";
import { checkDayLine } from "./day-line.ts";
import { checkDeclaration } from "./declaration.ts";
import { checkEntryOrder } from "./entry-order.ts";
import { checkEntryTerms } from "./entry-terms.ts";
import { checkLineKind } from "./line-kinds.ts";
import { checkFrame } from "./structure.ts";
import { checkSubject } from "./subject.ts";

/** Everything that one line shows by itself, by its columns. */
export function checkLine(line: Line, context: LineContext): readonly Finding[] {
  const findings = [...checkLineKind(line, context), ...checkFrame(line, context), ...checksOfType(line, context)];
  const changing = findings.map((each) => withoutIdle(each, context.text));
  return changing.length > 1 ? changing.sort((a, b) => a.start - b.start || a.end - b.end) : changing;
}

/** Without fixes that would leave the line as it is: a word may be near itself where it has no place. */
function withoutIdle(finding: Finding, text: string): Finding {
  const isIdle = ({ edits, head }: FindingFix): boolean =>
    head === undefined && edits.every((edit) => !edit.further && text.slice(edit.start, edit.end) === edit.text);
  return finding.fixes.some(isIdle) ? { ...finding, fixes: finding.fixes.filter((fix) => !isIdle(fix)) } : finding;
}

function checksOfType(line: Line, context: LineContext): readonly Finding[] {
  if (line.type === "day") return checkDayLine(line, context.text);
  if (line.type === "declaration") return checkDeclaration(line, context);
  if (line.type !== "entry") return [];
  return [...checkSubject(line, context), ...checkEntryTerms(line, context), ...checkEntryOrder(line, context)];
}
