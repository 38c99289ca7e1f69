import type { BlockCheck, BlockContext, LineFinding } from "./context.ts";
import { checkDay } from "./day.ts";
import { checkDeclarations } from "./declaration.ts";
import { checkEntryOrder } from "./entry-order.ts";
import { checkEntryTerms } from "./entry-terms.ts";
import { checkFrames } from "./frame.ts";
import { checkLineKinds } from "./line-kinds.ts";
import { checkSubjects } from "./subject.ts";

/** Every check that needs no more than one block: a day's own diagnostics do not depend on other days. */
export const BLOCK_CHECKS: readonly BlockCheck[] = [
  checkLineKinds,
  checkDay,
  checkFrames,
  checkSubjects,
  checkEntryTerms,
  checkEntryOrder,
  checkDeclarations,
];

const NONE: readonly LineFinding[] = [];

/** What the checks find on one block, by line and column. */
export function checkBlock(context: BlockContext): readonly LineFinding[] {
  const findings = BLOCK_CHECKS.flatMap((check) => check(context));
  return findings.length ? findings.sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end) : NONE;
}
