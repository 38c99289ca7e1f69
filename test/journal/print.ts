import { isoDate } from "../../server/journal/calendar.ts";
import { patternText } from "../../server/journal/entry-exercise.ts";
import { Journal } from "../../server/journal/journal.ts";
import type { Attempt, BlockModel, Conditions, Entry, Tempo } from "../../server/journal/model.ts";
import { subjectText } from "../../server/journal/subject-text.ts";
import { ENGLISH_NAMES } from "../../server/music/notes/note-names.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import type { Claim } from "../../server/syntax/line/line.ts";
import type { Fraction } from "../../server/syntax/words/meaning.ts";

/** `1/8`, `3/8`. */
export function fractionText({ numerator, denominator }: Fraction): string {
  return `${numerator}/${denominator}`;
}

/** `72`, `60-72`, `1/4=72`. */
export function tempoText({ bpm, low, beat }: Tempo): string {
  const rate = low === undefined ? String(bpm) : `${low}-${bpm}`;
  return beat ? `${fractionText(beat)}=${rate}` : rate;
}

function reachText(reach: NonNullable<Conditions["reach"]>): string {
  switch (reach.type) {
    case "degrees":
      return `${reach.count} notes`;
    case "octaves":
      return `${reach.count} oct`;
    case "between":
      return `${noteText(reach.from)} to ${noteText(reach.to)}`;
    default:
      return reach.type;
  }
}

/** `F#`, `Bb4`, `Cx`. */
export function noteText(note: { readonly letter: string; readonly alter: number; readonly octave?: number }): string {
  const sign = { "-2": "bb", "-1": "b", 0: "", 1: "#", 2: "x" }[note.alter as -2 | -1 | 0 | 1 | 2];
  return `${note.letter}${sign}${note.octave ?? ""}`;
}

/** What an attempt was played under, each condition in one or two words; "" for nothing. */
export function conditionsText(conditions: Conditions): string {
  const { articulation, rhythm, noteValue, reach, direction, manner, withoutClick } = conditions;
  return [
    articulation && `${articulation.text} (${articulation.tonguing})`,
    rhythm && (rhythm.even ? rhythm.text : `${rhythm.text} (uneven)`),
    noteValue && `${fractionText(noteValue)}s`,
    reach && reachText(reach),
    direction,
    ...manner,
    withoutClick,
  ]
    .filter(Boolean)
    .join(", ");
}

/** `slurred (slurred): 54 clean 4/5 reached`. */
export function attemptText({ tempo, outcomes, tries, reached, conditions }: Attempt): string {
  const under = conditionsText(conditions);
  const how = [
    tempo && tempoText(tempo),
    ...outcomes,
    tries.count === 1 ? "" : `${tries.got}/${tries.count}`,
    reached ? "reached" : "",
  ].filter(Boolean);
  return [under, how.join(" ")].filter(Boolean).join(": ");
}

/** `notes D E F`, `signature -1`, `steps TTSTTTS`. */
export function claimText(claim: Claim): string {
  if (claim.type === "signature") return `signature ${claim.fifths}`;
  if (claim.type === "steps") return `steps ${claim.words}`;
  return `notes ${claim.notes.map(({ note, text }) => (note ? noteText(note) : `(${text})`)).join(" ")}`;
}

/** An entry in one line: subject, then what is said once, then each attempt. */
export function entryText(entry: Entry): string {
  const { subject, pattern, inversion, where, instrument, focus, sore, minutes, attempts, done, planned, remarks } =
    entry;
  const further = entry.source.items.flatMap(({ meaning }) =>
    meaning.type === "with" ? [`with ${meaning.words}`] : meaning.type === "times" ? [`${meaning.count} times`] : [],
  );
  return [
    subject ? subjectText(subject, ENGLISH_NAMES) : "(no subject)",
    pattern && patternText(pattern),
    inversion !== undefined && `inversion ${inversion}`,
    where && [where.movement && `mvt ${where.movement}`, where.text].filter(Boolean).join(", "),
    instrument && `on ${instrument}`,
    focus && `focus ${focus}`,
    sore && `sore ${sore}`,
    ...further,
    minutes !== undefined && `${minutes} min`,
    ...entry.source.claims.map(claimText),
    planned && "planned",
    done && "done",
    ...attempts.map(attemptText),
    ...remarks.map((remark) => `-- ${remark}`),
  ]
    .filter(Boolean)
    .join(" | ");
}

/** A block as a list: its day, then sittings, phases and entries in the order of their lines. */
export function blockText(model: BlockModel): readonly string[] {
  const { day, sittings, phases, entries } = model;
  const rows: { line: number; rank: number; text: string }[] = [];
  if (day) {
    const date = day.date === undefined ? "no date" : isoDate(day.date);
    const text = [date, day.planned && "plan", day.rest !== undefined && "rest"].filter(Boolean).join(", ");
    rows.push({ line: 0, rank: 0, text });
  }
  for (const [i, { line, minutes, breaks }] of sittings.entries()) {
    const said = [minutes !== undefined && `${minutes} min`, breaks.length > 0 && `${breaks.length} break`];
    rows.push({ line, rank: 1, text: [`sitting ${i + 1}`, ...said].filter(Boolean).join(", ") });
  }
  for (const { phase, line, minutes, entryMinutes } of phases) {
    if (phase === undefined) continue;
    const said = [minutes !== undefined && `${minutes} min`, entryMinutes > 0 && `${entryMinutes} stated below`];
    rows.push({ line, rank: 2, text: [phase, ...said].filter(Boolean).join(", ") });
  }
  for (const entry of entries) rows.push({ line: entry.place.line, rank: 3, text: `  ${entryText(entry)}` });
  return rows.sort((a, b) => a.line - b.line || a.rank - b.rank).map(({ text }) => text);
}

/** The attempts of an entry whose terms stand behind `D minor, `, each as `attemptText` has it. */
export function attemptsTold(terms: string): string {
  const uri = "file:///j/journal.practice";
  const journal = new Journal("file:///j", new Map([[uri, createDocument(`2026-03-02\nD minor, ${terms}`)]]));
  const [entry] = journal.model(journal.files.get(uri)!.blocks[0]!).entries;
  return entry!.attempts.map(attemptText).join(" | ");
}
