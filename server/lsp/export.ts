import type { ExportFormat, ExportParams, ExportResult } from "../../shared/export.ts";
import { exerciseFileAt } from "../features/scores/exercise-file.ts";
import { fileNameFor } from "../features/scores/file-name.ts";
import type { Place } from "./session.ts";

/** An exercise for another program, of the line of a position. */
export function exportExercise({ session, journal, uri }: Place, params: ExportParams): ExportResult {
  const { position, format } = params;
  const wanted: ExportFormat = format === "midi" ? "midi" : "musicxml";
  const file = exerciseFileAt(journal, uri, position.line, { format: wanted, today: session.dayOf(uri) });
  return file.ok ? { ok: true, name: fileNameFor(file.title), base64: base64Of(file.bytes) } : file;
}

function base64Of(bytes: Uint8Array): string {
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
}
