import type { Instrument } from "../../music/instruments/instrument.ts";
import type { NamesId } from "../../music/notes/note-names.ts";
import type { NoteValue } from "../../music/notes/note-value.ts";
import type { Cell } from "../../music/patterns/cell.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import type { Temperament } from "../../music/tuning/temperament.ts";
import type { DeclarationLine, EntryLine } from "../../syntax/line/line.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import type { MeaningOf, ScaleMeaning, Verdict, WrittenNote } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { type DayNumber, parseIsoDate } from "../calendar.ts";
import { declarationTexts } from "./declaration-texts.ts";

/** Something in a declaration that cannot stand: what belongs there instead. */
export interface Fault {
  readonly start: number;
  readonly end: number;
  readonly code: "bad-declaration" | "bad-date" | "unclosed-quote";
  readonly because: string;
  /** Texts that may stand in its place. */
  readonly offers?: readonly string[];
}

export interface PieceFacts {
  readonly key?: ScaleMeaning;
  readonly bars?: number;
  readonly goal?: { readonly bpm: number; readonly beat?: NoteValue };
  readonly from?: DayNumber;
  readonly due?: DayNumber;
  readonly range?: { readonly from: WrittenNote; readonly to: WrittenNote };
  readonly lastNote?: WrittenNote;
  readonly signature?: number;
}

/** How long an instrument may be played on a day, as a new one or one just mended is broken in. */
export interface PlayingLimit {
  readonly minutes: number;
  /** The last day on which that holds; missing: from now on. */
  readonly until?: DayNumber;
}

/** What a declaration says. Names keep the form they were typed in. */
export type Declared =
  | { readonly type: "player"; readonly words: string }
  /** With the instrument itself where more is said of it than its name. */
  | {
      readonly type: "instrument";
      readonly id: string;
      readonly instrument?: Instrument;
      readonly limit?: PlayingLimit;
    }
  | { readonly type: "pitch"; readonly a: number; readonly temperament: Temperament }
  | { readonly type: "names"; readonly id: NamesId }
  | { readonly type: "hide notes" }
  | { readonly type: "shared" }
  | { readonly type: "share body" }
  | { readonly type: "note value"; readonly value: NoteValue }
  | { readonly type: "usual articulation"; readonly articulation: MeaningOf<"articulation"> }
  | ({
      readonly type: "piece";
      readonly word: "piece" | "study";
      readonly title: string;
      readonly short?: string;
    } & PieceFacts)
  | ({
      readonly type: "movement";
      readonly title: string;
      readonly movement: string;
      readonly name?: string;
    } & PieceFacts)
  | { readonly type: "concert"; readonly name: string; readonly on?: DayNumber; readonly titles: readonly string[] }
  | { readonly type: "aim"; readonly entry: EntryLine; readonly by?: DayNumber }
  | {
      readonly type: "set";
      readonly entry?: EntryLine;
      readonly words?: string;
      /** The words with their terms, as they would be an entry: of a piece that was never declared. */
      readonly asTitle?: EntryLine;
      readonly days?: number;
      readonly by?: DayNumber;
    }
  | { readonly type: "pattern"; readonly name: string; readonly cell?: Cell }
  | { readonly type: "scale"; readonly name: string; readonly kind?: ScaleKind }
  | { readonly type: "outcome"; readonly name: string; readonly says?: Verdict }
  | { readonly type: "articulation"; readonly name: string; readonly tonguing: MeaningOf<"articulation">["tonguing"] }
  | { readonly type: "focus" | "phase" | "activity"; readonly name: string };

/** A declaration line, read as far as it can be. */
export interface Declaration {
  readonly line: DeclarationLine;
  readonly declared?: Declared;
  readonly faults: readonly Fault[];
}

export interface DeclarationContext {
  readonly vocabulary: Vocabulary;
  readonly memo: LineReader;
}

/** What a reader of one kind of declaration is given: the whole line, and where its body stands. */
export interface Body extends DeclarationContext {
  readonly text: string;
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

export type Reading = { readonly declared?: Declared; readonly faults: readonly Fault[] };

/** A fault on a stretch of a body. */
export function fault(
  at: { readonly start: number; readonly end: number },
  because: string,
  offers?: readonly string[],
): Fault {
  return { start: at.start, end: at.end, code: "bad-declaration", because, ...(offers?.length ? { offers } : {}) };
}

/** The day of a `by`, `due`, `from` or `on`, or the fault of a date that is none. */
export function readDate(item: { readonly start: number; readonly end: number; readonly meaning: MeaningOf<"date"> }): {
  readonly day?: DayNumber;
  readonly faults: readonly Fault[];
} {
  const { text, word } = item.meaning;
  const day = parseIsoDate(text);
  if (day !== undefined) return { day, faults: [] };
  const start = item.end - text.length;
  return {
    faults: [
      {
        start,
        end: item.end,
        code: "bad-date",
        because: declarationTexts.dateAfter(word),
      },
    ],
  };
}
