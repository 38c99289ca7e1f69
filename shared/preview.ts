/**
 * What the side preview is told, section by section in the order of the page. Types only: the server makes it, the
 * client and the page check its shape. All texts are to be shown as they are; text of a journal is data and never
 * markup.
 */

/** Request, client to server: the figures of the journal that a document belongs to. */
export type PreviewMethod = "daystave/preview";

export interface PreviewParams {
  /** A document of the journal; one that is gone stands for what is left of the journal that it belonged to. */
  readonly uri: string;
  /** The journal's version that the page shows already, in the same choice; left out, the whole answer comes. */
  readonly version?: number;
  /** Unless said, every instrument over 26 weeks, or over all where nothing was practised in those. */
  readonly choice?: PreviewChoice;
  /** How many exercises at most; 200 unless said. */
  readonly most?: number;
  /** The hashes of the exercises that the page shows already: these come without what they show. */
  readonly known?: readonly string[];
  /** The line of the document that the cursor is on, from 0. */
  readonly cursor?: number;
}

/** What the player chose at the top of the page. */
export interface PreviewChoice {
  readonly span: PreviewSpan;
  /** One of the answer's `instruments`; null for all of them. */
  readonly instrument: string | null;
}

/** ISO weeks up to the present one. */
export type PreviewSpan = 4 | 12 | 26 | 52 | "all";

export type PreviewResult = PreviewUnchanged | PreviewFigures;

/** The figures of the version that was named are still right. */
export interface PreviewUnchanged {
  readonly unchanged: true;
  /** The key of the exercise under the cursor; null where there is none. */
  readonly underCursor: string | null;
  /** Of the entry under the cursor; null where it is not played on a recorder, or takes no step. */
  readonly fingers: PreviewFingers | null;
}

export interface PreviewFigures {
  /** Names the journal in `ChangedParams`; otherwise opaque. */
  readonly journal: string;
  readonly version: number;
  /** The player's name where it is declared, else the folder's or the file's. */
  readonly name: string;
  readonly choice: PreviewChoice;
  /** Those that something was practised on. */
  readonly instruments: readonly string[];
  readonly underCursor: string | null;
  readonly fingers: PreviewFingers | null;
  readonly week: PreviewWeek;
  /** Null where there is nothing for a lesson. */
  readonly lesson: PreviewLesson | null;
  readonly moving: PreviewMoving;
  readonly pieces: PreviewPieces;
  readonly keys: PreviewKeys;
  readonly aims: readonly PreviewAim[];
}

/** A line of a journal, from 0. The page may lead to those that it was given, and to no other. */
export interface PreviewPlace {
  readonly uri: string;
  readonly line: number;
}

/** A chart as SVG text, or a sentence that says what to write so that there is one. */
export type PreviewChart =
  | { readonly ok: true; readonly svg: string; readonly table: PreviewTable }
  | { readonly ok: false; readonly reason: string };

/** The figures of a chart in its order; the first cell of a row names it. */
export interface PreviewTable {
  readonly caption: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The steps of an entry that ask most of the fingers. */
export interface PreviewFingers {
  /** The entry's line. */
  readonly place: PreviewPlace;
  /** The hardest first, three at most. */
  readonly steps: readonly PreviewStep[];
  /** Why no steps are told; empty where they are. */
  readonly sentence: string;
  /** Whether each can be put into the journal by itself, by the command that isolates a step. */
  readonly canIsolate: boolean;
}

export interface PreviewStep {
  /** `E5 to F5`. */
  readonly name: string;
  /** `2 fingers, in contrary motion`. */
  readonly movement: string;
  /** Of both notes in turn. */
  readonly fingerings: readonly PreviewFingering[];
  /** Where charts do not agree, a sentence for each note. */
  readonly doubts: readonly string[];
}

export interface PreviewFingering {
  readonly note: string;
  /** `0 1-- ----`. */
  readonly chart: string;
  /** `thumb and 1`. */
  readonly words: string;
}

/** The minutes of this week by day and phase. */
export interface PreviewWeek {
  /** `Week 10`. */
  readonly title: string;
  /** `2026-03-02 to 2026-03-08`. */
  readonly dates: string;
  /** `95 minutes on 4 days; last week 80 on 3.` */
  readonly sentence: string;
  readonly chart: PreviewChart;
  /** The days of this week that are written, in their order. */
  readonly days: readonly PreviewLink[];
}

/** A few words that lead to a line. */
export interface PreviewLink {
  readonly text: string;
  /** What stands behind the words, such as a date; may be empty. */
  readonly note: string;
  readonly place: PreviewPlace;
}

/** What stands between the last lesson and the next. */
export interface PreviewLesson {
  /** `Since the lesson on 2026-03-02.` */
  readonly since: string;
  readonly set: readonly PreviewSetWork[];
  readonly questions: readonly PreviewLink[];
  readonly words: readonly PreviewLink[];
}

/** Work set by a teacher, and the days on which it was done. */
export interface PreviewSetWork {
  /** As it is written. */
  readonly text: string;
  readonly place: PreviewPlace;
  /** From the day that it was set on to the day that it is set for. */
  readonly days: readonly PreviewTick[];
  /** `3 of 5 days; by 2026-03-09, in 2 days`. */
  readonly sentence: string;
}

export interface PreviewTick {
  /** `Mon`. */
  readonly label: string;
  /** ISO 8601. */
  readonly date: string;
  readonly state: "done" | "not done" | "ahead";
}

export interface PreviewMoving {
  /** `Best tempos in the weeks 2025-W22 to 2025-W47.`; what its charts mean. */
  readonly sentence: string;
  /** Those that moved, those that rest, those too young to say; a group without exercises is left out. */
  readonly groups: readonly PreviewGroup[];
  /** How many exercises more there are than were asked for. */
  readonly left: number;
}

export interface PreviewGroup {
  readonly title: string;
  readonly exercises: readonly PreviewExercise[];
}

/** One exercise of the span: its strand with most weeks. */
export interface PreviewExercise {
  /** The same for the same exercise in every answer. */
  readonly key: string;
  /** Changes whenever what it shows does. */
  readonly hash: string;
  /** Where the exercise was last written. */
  readonly place: PreviewPlace;
  /** Left out where the hash was among those known. */
  readonly shows?: PreviewExerciseContent;
}

export interface PreviewExerciseContent {
  /** As the player writes it: `D melodic minor, thirds`. */
  readonly name: string;
  /** `octave, single, even; one of 3 ways of playing it; last on 2026-03-06`. */
  readonly strand: string;
  /** A sentence, in the player's note value. */
  readonly best: string;
  /** A sentence. */
  readonly trend: string;
  readonly chart: PreviewChart;
}

/** The pieces in hand; where none is, the one that was worked last and when, if there is one. */
export interface PreviewPieces {
  readonly inHand: readonly PreviewPiece[];
  readonly latest: PreviewLink | null;
}

/** A piece in hand, or one of its movements. */
export interface PreviewPiece {
  readonly name: string;
  readonly place: PreviewPlace;
  /** The latest tempo reached against the goal, and the days to its date: one sentence each. */
  readonly sentences: readonly string[];
  readonly chart: PreviewChart;
}

/** Days of practice by key signature and kind of scale or chord. */
export interface PreviewKeys {
  /** Seven flats to seven sharps. */
  readonly columns: readonly PreviewColumn[];
  readonly rows: readonly PreviewKind[];
  /** What belongs to no key, or lies beyond seven accidentals: `chromatic, 4 days`. */
  readonly others: readonly PreviewLink[];
  /** A sentence: what to write where there is nothing, else what the marks mean. */
  readonly sentence: string;
}

export interface PreviewColumn {
  /** `2♭`, `0`, `3♯`. */
  readonly label: string;
  /** `2 flats`, `no accidentals`, `3 sharps`. */
  readonly name: string;
  /** Nothing was practised in it and no key of a piece points to it. */
  readonly unused: boolean;
}

export interface PreviewKind {
  /** `harmonic minor`, `dorian`, `major arpeggio`. */
  readonly kind: string;
  /** One for each column. */
  readonly cells: readonly PreviewCell[];
}

export interface PreviewCell {
  /** The tonic, `Bb`. */
  readonly tonic: string;
  readonly days: number;
  /** 0 for none, 1 for few to 4 for most. */
  readonly shade: number;
  /** `key of Ground`, `next to the key of Ground`; empty for neither. */
  readonly mark: string;
  readonly isPieceKey: boolean;
  /** Where it was last practised; null where it was not. */
  readonly place: PreviewPlace | null;
}

/** An aim, and where it stands. */
export interface PreviewAim {
  /** As it is written, without its day. */
  readonly text: string;
  readonly place: PreviewPlace;
  /** One sentence each. */
  readonly sentences: readonly string[];
}

/** Notification, server to client, after a little quiet: a journal's figures may have changed. */
export type ChangedMethod = "daystave/changed";

export interface ChangedParams {
  readonly journal: string;
  readonly version: number;
}
