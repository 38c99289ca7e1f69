/** Files that the server makes and the client writes where it is told to. Types only. */

/** Request, client to server, with `ExportParams`: the exercise on a line as a file for another program. */
export type ExportMethod = "daystave/export";

/** A Standard MIDI File, or MusicXML 4.0. */
export type ExportFormat = "midi" | "musicxml";

export interface ExportParams {
  readonly textDocument: { readonly uri: string };
  readonly position: { readonly line: number; readonly character: number };
  readonly format: ExportFormat;
}

/** The file, or why there is none, as a sentence; null where nobody knows the document. */
export type ExportResult =
  | {
      readonly ok: true;
      /** What it is called, without an ending: letters, digits, spaces and some signs, fit for every file system. */
      readonly name: string;
      /** Its bytes, in Base64 (RFC 4648). */
      readonly base64: string;
    }
  | { readonly ok: false; readonly reason: string }
  | null;

/** Request, client to server, with `SheetParams`: a page of HTML to print. */
export type SheetMethod = "daystave/sheet";

export interface SheetParams {
  readonly textDocument: { readonly uri: string };
  /** What is planned for today, or the exercises of this week. */
  readonly of: "plan" | "week";
}

/** Null where nobody knows the document. */
export type SheetResult = {
  /** As in `ExportResult`. */
  readonly name: string;
  readonly html: string;
} | null;
