import type { Block } from "../../syntax/document/document.ts";
import type { LineSort } from "../../syntax/line/line.ts";

/** A line that frames those below it, up to the last that holds anything. Lines are those of the block. */
export interface Section {
  readonly kind: "day" | "session" | "phase";
  readonly line: number;
  readonly lastLine: number;
}

const DEPTH = { day: 0, session: 1, phase: 2 } as const;

/**
 * The days, sessions and phases among the lines of a block, in the order of their first ones; what lies in another
 * comes after it.
 */
export function sectionsOf(lines: readonly LineSort[]): readonly Section[] {
  const sections: { kind: Section["kind"]; line: number; lastLine: number }[] = [];
  let open: typeof sections = [];
  for (const [i, sort] of lines.entries()) {
    if (sort === "blank") continue;
    if (sort === "day" || sort === "session" || sort === "phase") {
      const section = { kind: sort, line: i, lastLine: i };
      open = [...open.filter((each) => DEPTH[each.kind] < DEPTH[section.kind]), section];
      sections.push(section);
    }
    for (const section of open) section.lastLine = i;
  }
  return sections;
}

/** The column behind the last character of a line that is no white space. */
export function endOfLine(block: Block, line: number): number {
  return block.lines[line]!.trimEnd().length;
}
