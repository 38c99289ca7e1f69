import type { PlaceNoun } from "../lexicon/places/place-table.ts";

/** The letter, accidentals in semitones, and the scientific octave where one is written. */
export interface WrittenNote {
  readonly letter: "C" | "D" | "E" | "F" | "G" | "A" | "B";
  readonly alter: number;
  readonly octave?: number;
}

/** A fraction of a whole note. */
export interface Fraction {
  readonly numerator: number;
  readonly denominator: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** A subject as it is written; ids are those of the vocabulary's tables. */
export type SubjectMeaning =
  | ScaleMeaning
  | {
      readonly type: "chord";
      readonly root: WrittenNote;
      readonly chord: string;
      readonly broken: boolean;
      readonly key?: WrittenNote;
      /** Of `key`, where it is no major one. */
      readonly keyMode?: "minor";
    }
  /** `of` the title that it is short for, or another spelling of, where that is no declared one. */
  | { readonly type: "title"; readonly title: string; readonly declared: boolean; readonly of?: string }
  | {
      readonly type: "figure";
      readonly figure: "notes" | "long tones" | "trill" | "five-note scale" | "nine-note scale";
      readonly notes: readonly WrittenNote[];
      readonly scale?: ScaleMeaning;
    }
  | { readonly type: "chain"; readonly scales: readonly ScaleMeaning[] }
  | {
      /** Practised one after another on one line; `called` where they have a name together, as `all major scales`. */
      readonly type: "several";
      readonly subjects: readonly SingleSubject[];
      readonly called?: string;
      /** Where each stands, in columns from the first one's first; missing where the words do not name them singly. */
      readonly at?: readonly Columns[];
    }
  | { readonly type: "activity"; readonly name: string; readonly scale?: ScaleMeaning }
  /** What is practised by the name of its technique: `lip slurs`, `harmonics on C`. */
  | { readonly type: "technique"; readonly name: string; readonly notes?: readonly WrittenNote[] }
  | { readonly type: "free"; readonly words: string };

/** The end excluded. */
export interface Columns {
  readonly start: number;
  readonly end: number;
}

export type SingleSubject = Extract<SubjectMeaning, { readonly type: "scale" | "chord" | "figure" | "technique" }>;

export interface ScaleMeaning {
  readonly type: "scale";
  readonly tonic: WrittenNote;
  readonly kind: string;
  readonly declared: boolean;
  /** `minor` with no word beside it, or a lone upper-case letter: what was left unsaid. */
  readonly unsaid?: "natural" | "major" | "octatonic";
  /** `chromatic from G4 to G6`: its own reach. */
  readonly to?: WrittenNote;
  /** `chromatic` alone: from the lowest note of the instrument. */
  readonly fromLowest?: boolean;
}

/** A subject that cannot stand, and what may be written in its place. */
export interface FaultySubject {
  readonly type: "faulty subject";
  readonly code: "unknown-key" | "ambiguous-subject" | "no-subject" | "unknown-declaration" | "unknown-term";
  /** What is wrong, as a phrase for the message. */
  readonly because: string;
  readonly offers: readonly string[];
  /** Only one thing can be meant, so the mend loses nothing. */
  readonly certain: boolean;
}

/** What an outcome says of its tempo. */
export type Verdict = "reached" | "nearly" | "not";

export type Tries = { readonly got: number; readonly count: number };

/** What one phrase of an entry or a declaration means. */
export type Meaning =
  | SubjectMeaning
  | FaultySubject
  | { readonly type: "kind"; readonly id: string; readonly unsaid?: "natural" | "octatonic" }
  | { readonly type: "part of a kind"; readonly offers: readonly string[] }
  | { readonly type: "chord kind"; readonly id: string; readonly broken: boolean }
  | { readonly type: "figure word"; readonly figure: MeaningOf<"figure">["figure"] }
  | { readonly type: "note"; readonly note: WrittenNote; readonly lower: boolean }
  | { readonly type: "quoted"; readonly text: string; readonly closed: boolean }
  | { readonly type: "pattern"; readonly id: string }
  | { readonly type: "variant"; readonly id: string }
  | { readonly type: "inversion"; readonly inversion: number }
  | { readonly type: "direction"; readonly id: "up" | "down" | "up and down" | "down and up" | "back and forth" }
  | {
      readonly type: "span";
      readonly reach:
        | { readonly type: "degrees"; readonly count: number }
        | { readonly type: "octaves"; readonly count: number }
        | { readonly type: "twelfth" }
        | { readonly type: "full range" }
        | { readonly type: "between"; readonly from: WrittenNote; readonly to: WrittenNote };
    }
  | {
      readonly type: "articulation";
      readonly id: string;
      readonly tonguing: "slurred" | "single" | "mixed" | "multiple";
      readonly half?: "up" | "down";
      /** By the journal, in its own words. */
      readonly declared?: true;
    }
  | { readonly type: "rhythm"; readonly id: string; readonly even: boolean }
  | { readonly type: "note value"; readonly value: Fraction }
  | {
      readonly type: "tempo";
      readonly bpm: number;
      readonly low?: number;
      readonly beat?: Fraction;
      /** One of the tempos before, named again for what is said of it: no further one. */
      readonly again?: true;
    }
  | { readonly type: "without click"; readonly id: "slow" | "free" | "no click" }
  | {
      readonly type: "outcome";
      readonly id: string;
      readonly says: Verdict;
      /** One of several that are written as a row (`✓✓✗`, `ok/ok/no`): dealt out over as many tempos. */
      readonly inRow?: true;
    }
  | { readonly type: "tries"; readonly tries: Tries }
  | { readonly type: "times"; readonly count: number }
  | {
      readonly type: "amount";
      readonly minutes: number;
      readonly possible: boolean;
      /** Of each of what was played. */
      readonly each?: true;
      /** `about 10 min`, `ca. 20 min`. */
      readonly about?: true;
    }
  | { readonly type: "manner"; readonly id: string }
  | { readonly type: "with"; readonly words: string }
  | { readonly type: "focus"; readonly words: string }
  | { readonly type: "sore"; readonly words: string }
  /**
   * Where in a piece. The word is what the text counts (`bars`, `lines`, `page`, `mvt`, `var`, `letter` …), or `named`
   * for a place without a number, as the coda.
   */
  | { readonly type: "place"; readonly word: string; readonly text: string }
  /** What a word may be within a place. */
  | {
      readonly type: "place word";
      readonly numbered?: PlaceNoun;
      readonly short?: PlaceNoun;
      readonly ordinal?: number;
      readonly likeOrdinal?: true;
      readonly part?: true;
      readonly article?: true;
      readonly from?: true;
      readonly to?: true;
      readonly onwards?: true;
      readonly end?: true;
      readonly beside?: "before" | "after";
    }
  | {
      readonly type: "instrument";
      readonly id: string;
      readonly declared: boolean;
      /** The name alone means something else in music, as `piano` does: as a term it stands behind `on`. */
      readonly behindOn?: true;
    }
  | { readonly type: "signature"; readonly fifths: number }
  | { readonly type: "steps"; readonly words: string }
  | { readonly type: "done" }
  | { readonly type: "number"; readonly value: number }
  | { readonly type: "range"; readonly range: Interval }
  | { readonly type: "phase"; readonly id: string }
  | { readonly type: "line word"; readonly id: "session" | "break" | "plan" | "rest" }
  | { readonly type: "clock"; readonly hour: number; readonly minute: number }
  | { readonly type: "weekday"; readonly day: number }
  | { readonly type: "date"; readonly word: "by" | "due" | "from" | "on" | "until"; readonly text: string }
  | { readonly type: "goal"; readonly bpm: number; readonly beat?: Fraction }
  | { readonly type: "bars"; readonly count: number }
  | { readonly type: "days"; readonly count: number }
  | { readonly type: "last note"; readonly note: WrittenNote }
  | {
      readonly type: "unknown";
      readonly words: string;
      /** Of a row of outcomes the words that are not known. */
      readonly inRow?: true;
    };

/** A meaning and where its words stand: UTF-16 columns, the end excluded. */
export interface Item<M extends Meaning = Meaning> {
  readonly start: number;
  readonly end: number;
  readonly meaning: M;
}

export type MeaningOf<T extends Meaning["type"]> = Extract<Meaning, { readonly type: T }>;
