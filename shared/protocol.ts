/**
 * Messages that Daystave adds to the Language Server Protocol. Types only: the client, the server and the preview page
 * share them, and each side checks what it receives for itself. URIs are strings as the protocol writes them, lines count from 0.
 */

/** Request, client to server: the weekly figures of the journal that a document belongs to. */
export type PreviewMethod = "daystave/preview";

export interface PreviewParams {
  /** A document of the journal. */
  readonly uri: string;
  /** The journal's version that the client shows already; left out, the whole answer comes. */
  readonly version?: number;
}

export type PreviewResult = PreviewUnchanged | PreviewFigures;

/** The figures of the version that was named are still right. */
export interface PreviewUnchanged {
  readonly unchanged: true;
}

export interface PreviewFigures {
  /** Names the journal in `ChangedParams`; otherwise opaque. */
  readonly journal: string;
  readonly version: number;
  /** In the order to show them. */
  readonly rows: readonly PreviewRow[];
}

/** One exercise: its strand with most weeks, as the preview shows it. */
export interface PreviewRow {
  /** The same for the same exercise in every answer. */
  readonly key: string;
  /** Changes whenever anything else in the row does. */
  readonly hash: string;
  /** As the player writes it: `D melodic minor`, `Ground in G minor`. */
  readonly subject: string;
  readonly pattern: string | null;
  readonly instrument: string | null;
  /** Reach, tonguing and evenness in words; for a piece its place. */
  readonly strand: string;
  readonly unit: RateUnit;
  /** ISO 8601 calendar date, `2026-03-06`. */
  readonly lastPractised: string;
  /** A sentence. */
  readonly trend: string;
  /** Oldest first. */
  readonly weeks: readonly PreviewWeek[];
  /** Where the exercise was last written. */
  readonly uri: string;
  readonly line: number;
}

export type RateUnit = "notes a minute" | "beats a minute";

export interface PreviewWeek {
  /** ISO 8601 week, `2026-W10`. */
  readonly week: string;
  /** The best reached rate, in the row's unit; null where none was reached. */
  readonly bestClean: number | null;
  /** That rate as the player wrote it, `8ths at 72`; empty where none was reached. */
  readonly shown: string;
  /** Whether the week enters the trend; otherwise it was worked below best. */
  readonly tested: boolean;
  readonly attempts: number;
  readonly minutes: number;
}

/** Notification, server to client, after a little quiet: a journal's figures may have changed. */
export type ChangedMethod = "daystave/changed";

export interface ChangedParams {
  readonly journal: string;
  readonly version: number;
}

/**
 * Request, server to client: files that the server cannot read itself (any scheme in a browser, any but `file:` in Node).
 * Changes to them come as `workspace/didChangeWatchedFiles`.
 */
export type FilesMethod = "daystave/files";

export type FilesParams =
  /** Every `.practice` file below a folder, without dot folders and `node_modules`. */
  | { readonly kind: "list"; readonly uri: string }
  /** One file's text. */
  | { readonly kind: "read"; readonly uri: string };

export type FilesResult = FileList | FileText;

export interface FileList {
  /** Sorted, so that the order is the same everywhere. */
  readonly uris: readonly string[];
}

export interface FileText {
  /** Null where there is no such file, or it is not UTF-8 text. No byte order mark. */
  readonly text: string | null;
}

/** `initializationOptions` of the `initialize` request; other editors may leave all of it out. */
export interface InitialisationOptions {
  /** Colours for pictures in hovers; without them a hover keeps to its table. */
  readonly palette?: Palette;
  /** Replaces the calendar's day, `2026-03-08`. */
  readonly today?: string;
  /** Whose calendar day is today, an IANA name such as `Europe/Oslo`. */
  readonly timeZone?: string;
  /** Whether the client answers `daystave/files`. */
  readonly canReadFiles?: boolean;
}

/** Notification, client to server: the colours of pictures from now on, as another theme was chosen. Its parameter is a `Palette`. */
export type PaletteMethod = "daystave/palette";

/** Colours as `#rrggbb`. */
export interface Palette {
  readonly foreground: string;
  readonly background: string;
  readonly amount: string;
}

/** The settings under `daystave`; null or left out means the default. */
export interface Settings {
  /** An IANA time zone; empty means the editor's own. */
  readonly timeZone?: string | null;
  readonly explain?: Explain | null;
}

/** Which theory stands below the figures in a hover, and in which order. */
export type Explain = "signature" | "steps" | "both" | "none";

/**
 * Commands of the server, for `workspace/executeCommand`. Each takes one argument, a `TextDocumentPositionParams`, and answers
 * null: the edit comes as `workspace/applyEdit`, the place of the cursor as `window/showDocument`, and where nothing can be
 * done a sentence as `window/showMessage`.
 */
export type ServerCommand =
  | "daystave.server.newDay"
  | "daystave.server.newDayWithPhases"
  | "daystave.server.repeatFaster"
  | "daystave.server.repeatSlower"
  | "daystave.server.writeNotes"
  | "daystave.server.goToLastTime";
