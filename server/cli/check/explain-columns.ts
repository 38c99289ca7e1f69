/** The fields of `check --explain-lines`, in their order, and what each holds. */
export const EXPLAIN_COLUMNS = {
  path: "the journal file, as you would write it",
  line: "the line there, from 1; blank lines are left out",
  kind: "exercise, piece, activity, remark, total, teacher, heading, rest, set, pain, question, date, declaration; fault for what is not a line of a journal",
  subject: "the scale, arpeggio or figure; a title; an activity; of a heading its phase; of a declaration its word",
  pattern: "the pattern, as thirds, and the direction; empty where it is played straight",
  articulation: "the articulation and the rhythm",
  place: "as typed: where in a piece, or how far an exercise goes",
  note_value: "the notes played, as 8ths",
  tempos: "beats a minute, one for each attempt; a range as 52-60",
  outcomes: "as typed, one for each attempt",
  minutes: "as stated on the line",
  words_left: "as typed: what was not understood",
} as const;

export type ExplainColumn = keyof typeof EXPLAIN_COLUMNS;
