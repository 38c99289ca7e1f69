import type { SelectionRange, SelectionRangeParams } from "vscode-languageserver";
import { selectionRanges } from "../features/selection/selection-ranges.ts";
import type { Range } from "../features/types.ts";
import type { Place } from "./session.ts";

export function selections({ journal, uri }: Place, { positions }: SelectionRangeParams): SelectionRange[] {
  return selectionRanges(journal, uri, positions).map(nested);
}

/** The innermost, with all that it lies in. */
function nested([range, ...around]: readonly Range[]): SelectionRange {
  return around.length > 0 ? { range: range!, parent: nested(around) } : { range: range! };
}
