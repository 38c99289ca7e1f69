/**
 * The columns of `export`, in their order, and what each holds. A row is one attempt, or several tries at one tempo.
 */
export const EXPORT_COLUMNS = {
  date: "the day, as 2026-03-02",
  week: "its ISO 8601 week, as 2026-W10",
  order: "which of the day's attempts it is, from 1",
  file: "the journal file, as you would write it",
  line: "the line there, from 1",
  phase: "the part of the day that it is in, as warm-up",
  instrument: "the instrument",
  subject:
    "the scale, arpeggio or figure, of several on a line the one of the row; a set such as all major scales by its name; for a piece or study its title",
  pattern: "the pattern, as thirds; straight where none is named; empty for titles",
  movement: "of a title: the movement",
  place: "of a title: where in it, as you typed it",
  reach: "how far it goes: short (up to 9 semitones), octave (to 14), twelfth (to 20) or wide; empty for titles",
  tonguing: "slurred, single, mixed or multiple; if the line does not say, the journal's usual one, or else single",
  evenness: "even, or uneven by a rhythm",
  manner: "by heart, by ear, sung …",
  note_value: "the notes played, as 8ths; empty for titles and where none is named",
  beat: "what the metronome counted, as quarter",
  tempo: "beats a minute, as written; the higher number of a range",
  tempo_low: "the lower number of a range",
  rate: "notes a minute, or beats a minute for titles, in the beat of their goal; these are what is compared",
  unit: "what rate counts: notes or beats",
  outcome: "how it went, as clean",
  reached:
    "yes where that was easy or clean, not tense, in at least half of the tries; no where it was not; empty where the line does not say",
  tries: "how many tries the row counts",
  tries_with_outcome: "how many of them went as outcome says",
  minutes: "its share of the practice time, equal for several subjects on a line; empty where none was written",
  about: "yes where the minutes were shared out, not written",
  journal: "the journal's folder, as seen from the current one, which is “.”",
  player: "who plays, where the journal says so",
} as const;

export type ExportColumn = keyof typeof EXPORT_COLUMNS;

export const EXPORT_COLUMN_NAMES = Object.keys(EXPORT_COLUMNS) as ExportColumn[];

/** What a row of `export --all` may be. */
export type RowType = "attempt" | "activity" | "day" | "rest" | "remark" | "set" | "said" | "question" | "pain" | "aim";

/** The columns that come with `--all`: the first before those of every export, the others after them. */
export const ALL_COLUMNS = {
  type: "with --all, before all other columns, what the row is: attempt, activity, day (with its minutes), rest, remark, set (work for the lesson), said (by the teacher), question, pain or aim",
  text: "with --all: as you wrote it, the remark, the question, what is set, said, aimed at, or hurts, the reason for a rest",
  due: "with --all: the day that set work or an aim is for",
  days: "with --all: on how many days set work is to be done",
} as const;

export type AllColumn = keyof typeof ALL_COLUMNS | ExportColumn;

export const ALL_COLUMN_NAMES: readonly AllColumn[] = ["type", ...EXPORT_COLUMN_NAMES, "text", "due", "days"];
