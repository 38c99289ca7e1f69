/**
 * What the side preview is told, part by part in the order of the page. Types only: the server makes it, the
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
  /** The key of the exercise that is unfolded in the page. */
  readonly open?: string;
  /** Unless said, a plan is for as long as the settings say, or as is usual, and is shown where it may be unasked. */
  readonly plan?: PreviewPlanAsked;
}

/** What the player wants of a plan. */
export interface PreviewPlanAsked {
  /** Whole minutes from 5 to 600; null for as long as is usual. */
  readonly minutes: number | null;
  /** The `day` of the plan that a button was pressed for; null where none was. */
  readonly shownOn: string | null;
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
  /**
   * By which line the page shows what stands on that of the cursor: an exercise or a piece by the one that it was last
   * played on, whatever else by its own. Null where there is no cursor.
   */
  readonly shownBy: PreviewPlace | null;
  /** Of the entry under the cursor; null where it is not played on a recorder, or has no finger change. */
  readonly fingers: PreviewFingers | null;
  readonly hear: PreviewHear;
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
  /** What each of them is called, to be read. */
  readonly instrumentNames: readonly string[];
  readonly underCursor: string | null;
  readonly shownBy: PreviewPlace | null;
  readonly fingers: PreviewFingers | null;
  readonly hear: PreviewHear;
  /** Whether files are still being read: then no trend is told, as what there is may be a part. */
  readonly reading: boolean;
  /** `25 May to 22 November 2026`: the days that are shown. */
  readonly dates: string;
  /** `This week: 230 minutes.` */
  readonly week: string;
  readonly today: PreviewToday;
  /** Each null where there is nothing to show. */
  readonly exercises: PreviewExercises | null;
  readonly pieces: PreviewPieces | null;
  readonly keys: PreviewKeys | null;
  readonly lesson: PreviewLesson | null;
  readonly weeks: PreviewWeeks | null;
  readonly aims: readonly PreviewLine[];
}

/** A line of a journal, from 0. The page may lead to those that it was given, and to no other. */
export interface PreviewPlace {
  readonly uri: string;
  readonly line: number;
}

/** One line of a part: what it is, at the right its day, which leads to it. Texts that are not there are empty. */
export interface PreviewLine {
  readonly text: string;
  /** Behind the text, quietly: `, bars 65–90`. */
  readonly behind: string;
  /** Between the text and the day: `start at 46`, or `28 days` and `162 minutes`. */
  readonly facts: readonly string[];
  /** Below: `played Mon 2, Sun 8; set for four days`. */
  readonly below: string;
  /** `Thu 12 Nov`, `no date set`. */
  readonly day: string;
  readonly place: PreviewPlace;
}

/** A chart as SVG text, and the same as a table. */
export interface PreviewChart {
  readonly svg: string;
  readonly table: PreviewTable;
}

export interface PreviewTable {
  /** Names it to who cannot see what it stands below. */
  readonly caption: string;
  readonly headings: readonly string[];
  readonly rows: readonly PreviewTableRow[];
  /** A sentence or two below; may be empty. */
  readonly foot: string;
}

export interface PreviewTableRow {
  /** One for each heading; the first names the row and leads to its line. */
  readonly cells: readonly string[];
  readonly place: PreviewPlace | null;
}

export interface PreviewToday {
  /** `Sunday 22 November`; empty where nothing is written yet. */
  readonly date: string;
  /** On a day of rest nothing is offered to be played. */
  readonly isRest: boolean;
  /** What there is to say: a day of rest, a word of care, the first evening. An example stands between backquotes. */
  readonly sentences: readonly string[];
  /** So many of them, from the first on, are of care: they can be put away for the day. */
  readonly care: number;
  readonly set: readonly PreviewLine[];
  /** What was worked last, with where to start: not beside a plan, which says it too. */
  readonly last: readonly PreviewLine[];
  /** Null where there is none to be had, as on a day of rest. */
  readonly plan: PreviewPlan | null;
}

/** A plan for today: shown, or to be asked for, or in the journal already. */
export interface PreviewPlan {
  /** ISO 8601: names the day in `PreviewPlanAsked`. */
  readonly day: string;
  /** What the button says that shows it; empty where there is no such button. */
  readonly offer: string;
  /** The first line of it to be played, where the journal has it; else null. */
  readonly place: PreviewPlace | null;
  /** How long it was asked for. */
  readonly minutes: number;
  /** Why the time is shorter, what kind of day it is, why there is nothing in it. */
  readonly sentences: readonly string[];
  /** In the order of the day; empty where it is not shown. */
  readonly stretches: readonly PreviewStretch[];
}

/** What is played in one phase without a pause; or a pause, without lines. */
export interface PreviewStretch {
  /** `warm-up`, `break`. */
  readonly phase: string;
  /** `10 min`. */
  readonly minutes: string;
  readonly lines: readonly PreviewPlanLine[];
}

export interface PreviewPlanLine {
  /** As it would be in the journal, without its minutes. */
  readonly text: string;
  readonly minutes: string;
  /** Sentences. */
  readonly reasons: readonly string[];
}

export interface PreviewExercises {
  /** `played in the last four weeks, latest first`, `nothing was played in these 4 weeks`; may be empty. */
  readonly note: string;
  /** The months over the weeks that all rows share, as SVG text; empty where no row has a chart. */
  readonly axis: string;
  /** Played in the last four weeks, and before that; the latest first. */
  readonly recent: readonly PreviewExercise[];
  readonly earlier: readonly PreviewExercise[];
  /** What has no tempo, in the last four weeks and before that. */
  readonly plain: readonly PreviewLine[];
  readonly earlierPlain: readonly PreviewLine[];
  /** How many exercises more there are than were asked for. */
  readonly left: number;
  /** The one that is unfolded; null where none is, or is not there any more. */
  readonly opened: PreviewOpened | null;
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
  /** As it is called: `D melodic minor, thirds`. */
  readonly name: string;
  /** `slurred, one octave, 8ths`. */
  readonly way: string;
  /** `up a notch in four weeks`; empty while it cannot be told. */
  readonly trend: string;
  /** The latest tempo that was reached, and the fastest; empty where none was. */
  readonly latest: string;
  readonly fastest: string;
  /** `Tue 17 Nov`. */
  readonly day: string;
  /** SVG text. */
  readonly chart: string;
}

/** What an exercise shows when it is unfolded. */
export interface PreviewOpened {
  readonly key: string;
  readonly chart: PreviewChart;
}

/** What may be heard beside the line of the cursor. */
export interface PreviewHear {
  /** Null where no entry stands there. */
  readonly place: PreviewPlace | null;
  /** As a player could write them, the likeliest first: `click at 52, 60`. */
  readonly lines: readonly string[];
  /** Why nothing sounds today; empty where it may. */
  readonly silent: string;
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

/** A few words that lead to a line. */
export interface PreviewLink {
  readonly text: string;
  /** What comes behind the words, such as a number; may be empty. */
  readonly note: string;
  readonly place: PreviewPlace;
}

/** The pieces in hand, and what else has a title. */
export interface PreviewPieces {
  readonly inHand: readonly PreviewPiece[];
  /** In hand, without bars to draw. */
  readonly plain: readonly PreviewLine[];
  readonly earlier: readonly PreviewLine[];
}

/** A piece in hand, or one of its movements. */
export interface PreviewPiece {
  /** The same for the same piece in every answer. */
  readonly key: string;
  readonly name: string;
  /** `C major, 90 bars`. */
  readonly facts: string;
  /** `was for 21 Nov`, `for Sat 5 Dec, in 13 days`; empty for a piece without a date. */
  readonly due: string;
  /** Tempos; empty where there is none. */
  readonly latest: string;
  readonly wanted: string;
  /** `Fri 20 Nov`; where it was never worked, `not yet`. */
  readonly day: string;
  readonly place: PreviewPlace;
  readonly chart: PreviewChart;
}

/** Days of practice by key signature and kind of scale or chord. */
export interface PreviewKeys {
  /** `days in 26 weeks`. */
  readonly note: string;
  /** Seven flats to seven sharps. */
  readonly columns: readonly PreviewColumn[];
  readonly rows: readonly PreviewKind[];
  /** What the borders mean; empty where there are none. */
  readonly sentence: string;
  /** What belongs to no key, or lies beyond seven accidentals: `chromatic` with its days. */
  readonly others: readonly PreviewLink[];
  /** What the current pieces want and was not played lately: a sentence each, three at most. */
  readonly wanted: readonly string[];
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

/** What is between a lesson and the next: the last one, and the one before. */
export interface PreviewLesson {
  /** `since Thu 12 Nov`. */
  readonly note: string;
  readonly now: PreviewPeriod;
  /** With its words, `Before that, from Thu 29 Oct`; null where there is nothing of it. */
  readonly before: (PreviewPeriod & { readonly title: string }) | null;
}

export interface PreviewPeriod {
  readonly set: readonly PreviewLine[];
  readonly said: readonly PreviewLine[];
  readonly ask: readonly PreviewLine[];
}

/** The minutes of each week by phase. */
export interface PreviewWeeks {
  readonly chart: PreviewChart;
  /** What the tones mean, the lowest first; `tone` is 0 to 4, the fullest first. */
  readonly tones: readonly { readonly name: string; readonly tone: number }[];
}

/** Notification, server to client, after a little quiet: a journal's figures may have changed. */
export type ChangedMethod = "daystave/changed";

export interface ChangedParams {
  readonly journal: string;
  readonly version: number;
}
