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
  /** The address of the folder in which a server in a web worker finds its bundles, with a slash at its end. */
  readonly bundles?: string;
  /** Replaces the calendar's day, `2026-03-08`. */
  readonly today?: string;
  /** Whose calendar day is today where the settings name no zone: an IANA name such as `Europe/Oslo`. */
  readonly timeZone?: string;
  /** Whether the client answers `daystave/files`. */
  readonly canReadFiles?: boolean;
  /** Whether the client has a command `daystave.showPreview`, which takes a URI and a line. */
  readonly canShowPreview?: boolean;
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
  readonly plan?: PlanSettings | null;
  readonly lens?: LensSettings | null;
  readonly hints?: HintSettings | null;
}

/** What is shown above lines. */
export interface LensSettings {
  /** The trend of each exercise, above its latest entry. */
  readonly trend?: boolean | null;
}

/** What is shown within lines. */
export interface HintSettings {
  /** How many notes a minute a tempo comes to. */
  readonly notesPerMinute?: boolean | null;
  /** The tempo that was reached last, on a line of today without one. */
  readonly lastTempo?: boolean | null;
}

/** What a plan for a day keeps to. */
export interface PlanSettings {
  /** Whole minutes from 5 to 600; null: as long as is usual. */
  readonly minutes?: number | null;
  readonly shares?: {
    /** The part of the time that goes to pieces, 0 to 1. */
    readonly pieces?: number | null;
    /** The part of what is left that is slow work, 0 to 1. */
    readonly groundwork?: number | null;
  } | null;
  /** Minutes, 5 to 60. */
  readonly longestLine?: number | null;
  /** Minutes, 10 to 60. */
  readonly playBeforePause?: number | null;
  readonly unhurriedDays?: UnhurriedDays | null;
  /** Whether reasons are written into the journal. */
  readonly reasons?: boolean | null;
}

/** Whether days come on which nothing goes beyond what is steady, after two on which something did. */
export type UnhurriedDays = "one in three" | "never";

/** Which theory stands below the figures in a hover, and in which order. */
export type Explain = "signature" | "steps" | "both" | "none";

/**
 * Request, client to server, with `TextDocumentParams`: where the cursor goes when a journal is opened: the end of
 * today, or of the file; null where that is the top, as in a file that has the newest day first.
 */
export type TodayMethod = "daystave/today";

export type TodayResult = { readonly line: number; readonly character: number } | null;

/**
 * Request, client to server, with `TextDocumentParams`: how many minutes a plan for today would be for if nobody said;
 * null where there is none to be written, as on a day of rest, or where one waits already.
 */
export type PlanMinutesMethod = "daystave/planMinutes";

export type PlanMinutesResult = number | null;

/**
 * Request, client to server: what there is to choose from before a command runs on a file: the years whose days can
 * move out of it, or the languages in which its notes could be named. None where there is nothing to choose; then the
 * command says why.
 */
export type ChoicesMethod = "daystave/choices";

export interface ChoicesParams {
  readonly textDocument: { readonly uri: string };
  readonly of: "years" | "names";
}

export type ChoicesResult = readonly Choice[];

export interface Choice {
  /** What the command takes. */
  readonly value: string;
  readonly label: string;
  readonly description?: string;
}

/**
 * Commands of the server, for `workspace/executeCommand`. Each takes one argument, a `TextDocumentPositionParams`, and
 * answers null: the edit comes as `workspace/applyEdit`, the place of the cursor as `window/showDocument`, and where
 * nothing can be done a sentence as `window/showMessage`. `fingerChange` takes a second argument, which of the hardest
 * finger changes is meant: the hardest, 0, unless said. `writePlan` takes the minutes as its second argument and an
 * instrument's id as its third, either of which may be null: then as the settings have it, else as usual. `writeTempo`
 * takes the beats a minute that were played, `moveYear` and `changeNames` one of the choices there are.
 */
export type ServerCommand =
  | "daystave.server.newDay"
  | "daystave.server.newDayWithPhases"
  | "daystave.server.writePlan"
  | "daystave.server.repeatFaster"
  | "daystave.server.repeatSlower"
  | "daystave.server.writeNotes"
  | "daystave.server.fingerChange"
  | "daystave.server.goToLastTime"
  | "daystave.server.keepBothSides"
  | "daystave.server.declareTitle"
  | "daystave.server.respell"
  | "daystave.server.moveYear"
  | "daystave.server.changeNames"
  | "daystave.server.writeTempo";
