// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Diagnostic } from "./types.ts";

export function diagnosticsOf(_journal: Journal, _uri: string, _today: number): readonly Diagnostic[] {
  return NONE;
}

const NONE = [] as const;
