/**
 * Messages that Daystave adds to the Language Server Protocol. Types only: the client, the server and the preview page
 * share them, and each side checks what it receives for itself. URIs are strings as the protocol writes them, lines
 * count from 0.
 */

/**
 * Request, server to client: files that the server cannot read itself (any scheme in a browser, any but `file:` in
 * Node). Changes to them come as `workspace/didChangeWatchedFiles`.
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
  /** Whose calendar day is today where the settings name no zone: an IANA name such as `Europe/Oslo`. */
  readonly timeZone?: string;
  /** Whether the client answers `daystave/files`. */
  readonly canReadFiles?: boolean;
}

/**
 * Notification, client to server: the colours of pictures from now on, as another theme was chosen. Its parameter is a
 * `Palette`.
 */
export type PaletteMethod = "daystave/palette";

/** Colours as `#rrggbb`. */
export interface Palette {
  readonly foreground: string;
  readonly background: string;
  readonly amount: string;
}

/**
 * The settings under `daystave`, of which each workspace folder may have its own; null or left out means the default.
 */
export interface Settings {
  /** An IANA time zone; empty means the editor's own. */
  readonly timeZone?: string | null;
  readonly explain?: Explain | null;
}

/** Which theory stands below the figures in a hover, and in which order. */
export type Explain = "signature" | "steps" | "both" | "none";

/**
 * Commands of the server, for `workspace/executeCommand`. Each takes one argument, a `TextDocumentPositionParams`, and
 * answers null (`isolateStep` a second one: which of the hardest steps is meant, the hardest, 0, unless said): the edit
 * comes as `workspace/applyEdit`, the place of the cursor as `window/showDocument`, and where nothing can be done a
 * sentence as `window/showMessage`.
 */
export type ServerCommand =
  | "daystave.server.newDay"
  | "daystave.server.newDayWithPhases"
  | "daystave.server.repeatFaster"
  | "daystave.server.repeatSlower"
  | "daystave.server.writeNotes"
  | "daystave.server.isolateStep"
  | "daystave.server.goToLastTime";
