import type { TextDocumentIdentifier } from "vscode-languageserver";
import type { TodayResult } from "../../shared/protocol.ts";
import { whereToday } from "../features/commands/where-today.ts";
import type { Place } from "./session.ts";

export interface TodayParams {
  readonly textDocument: TextDocumentIdentifier;
}

export function today({ session, journal, uri }: Place, _: TodayParams): TodayResult {
  return whereToday(journal, uri, session.dayOf(uri)) ?? null;
}
