import type { BlockModel } from "../../journal/model.ts";
import type { Block } from "../../syntax/document/document.ts";
import { indentBelowPhase, indentOf } from "../explain/phases-before.ts";

/**
 * What an entry below a line of a day is indented by: as the entry before it has it, in the same phase; the usual step
 * where there is none, and none where there is no phase.
 */
export function indentAt(block: Block, model: BlockModel, line: number): string {
  const stretch = model.phases.findLast((phase) => phase.line <= line);
  const entry = model.entries.findLast(({ place }) => place.line <= line && place.line > (stretch?.line ?? 0));
  if (entry) return indentOf(block.lines[entry.place.line]!);
  return stretch?.phase === undefined ? "" : indentBelowPhase(block, model);
}
