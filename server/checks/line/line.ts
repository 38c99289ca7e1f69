import type { Line } from "../../syntax/line/line.ts";
import type { LineContext } from "../context.ts";
import type { Finding } from "../finding.ts";
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
  return findings.length > 1 ? findings.sort((a, b) => a.start - b.start || a.end - b.end) : findings;
}

function checksOfType(line: Line, context: LineContext): readonly Finding[] {
  if (line.type === "day") return checkDayLine(line, context.text);
  if (line.type === "declaration") return checkDeclaration(line, context);
  if (line.type !== "entry") return [];
  return [...checkSubject(line, context), ...checkEntryTerms(line, context), ...checkEntryOrder(line, context)];
}
