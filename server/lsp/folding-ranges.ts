import type { FoldingRange } from "vscode-languageserver";
import { foldingRanges } from "../features/outline/folding-ranges.ts";
import type { Place } from "./session.ts";

export function folding({ session, journal, uri }: Place): FoldingRange[] {
  return foldingRanges(journal, uri, session.client.mostFolds).map(({ startLine, endLine }) => ({
    startLine,
    endLine,
  }));
}
