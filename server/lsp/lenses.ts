import type { CodeLens, CodeLensParams, Command } from "vscode-languageserver";
import { trendLenses } from "../features/lens/trend-lenses.ts";
import { noteShown } from "./refresh-shown.ts";
import type { Place } from "./session.ts";

/** None unless the settings want them, and none while files are still being read: a part of a journal has no trend. */
export function lenses(place: Place, { textDocument }: CodeLensParams): CodeLens[] {
  const { session, journal, uri } = place;
  noteShown(place, "lenses");
  if (!session.settingsOf(uri).lens.trend || session.workspace.isReading) return [];
  const readsAll = !session.client.refreshesLenses;
  return trendLenses(journal, uri, { today: session.dayOf(uri), readsAll }).map(({ line, title }) => ({
    range: { start: { line, character: 0 }, end: { line, character: 0 } },
    command: commandAt(place, title, textDocument.uri, line),
  }));
}

/** Leads to the exercise in the preview; where the client has none, to the entry before this one. */
function commandAt({ session }: Place, title: string, uri: string, line: number): Command {
  const { showsPreview, appliesEdits } = session.client;
  if (showsPreview) return { title, command: "daystave.showPreview", arguments: [uri, line] };
  const at = { textDocument: { uri }, position: { line, character: 0 } };
  return appliesEdits ? { title, command: "daystave.server.goToLastTime", arguments: [at] } : { title, command: "" };
}
