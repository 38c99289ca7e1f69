import { rateAsWritten } from "../../history/exercise-row.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry, NoteValue } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { notesPerMinute, QUARTER } from "../../music/notes/note-value.ts";
import { isDrawn } from "../../music/patterns/pattern.ts";
import { patternDegrees } from "../../music/patterns/pattern-forms.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Item, MeaningOf } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { explainTerm, metronomeWords, orderOf, sentenceCase } from "../explain/explain.ts";
import { instrumentInWords } from "../explain/instrument-words.ts";
import { escapedExtract, escapeMarkdown, paragraphs } from "../explain/markdown.ts";
import { termKey } from "../explain/term-key.ts";
import { termTexts } from "../explain/term-texts.ts";
import { cutRow, rowOf } from "../explain/theory.ts";
import type { EntryAt } from "./entry.ts";
import { hoverTexts } from "./hover-texts.ts";
import { keptHover } from "./kept.ts";

/** What a term means where it stands. */
export function termHover(at: EntryAt, item: Item): string | undefined {
  const { meaning } = item;
  const { journal, uri, entry } = at;
  const conventions = journal.conventions(uri);
  switch (meaning.type) {
    case "quoted":
      return keptHover(at, item) ?? patternHover(entry, meaning, at);
    case "tempo":
      return tempoHover(at, item as Item<MeaningOf<"tempo">>);
    case "pattern":
    case "variant":
      return patternHover(entry, meaning, at);
    case "instrument":
      return instrumentInWords(meaning.id, instrumentOf(meaning.id, conventions), conventions.names);
    default:
      return explainTerm(meaning, journal.vocabulary) ?? keptHover(at, item);
  }
}

/** `8ths at 72 are 144 notes a minute; metronome: 69 below, 76 above`. */
function tempoHover({ journal, uri, entry, text }: EntryAt, { start, meaning }: Item<MeaningOf<"tempo">>): string {
  const conditions = entry.attempts.find(({ place }) => place.start === start)?.conditions;
  const noteValue = conditions?.noteValue ?? journal.conventions(uri).noteValue;
  const { bpm, low, beat } = meaning;
  const top = low === undefined ? "" : hoverTexts.tempoRange(low, bpm);
  const end = `${bpm > 0 ? `; ${metronomeWords(bpm)}` : ""}.${top}`;
  const named = beat ? rateAsWritten(bpm, { unit: "beats" }, { beat }) : String(bpm);
  if (entry.subject?.type === "title") return hoverTexts.titleTempo(named, bpm, end);
  if (!noteValue) return hoverTexts.noteABeat(named, bpm, end);
  const rate = Math.round(notesPerMinute(bpm, beat ?? QUARTER, noteValue) * 10) / 10;
  const value = noteValueWords(noteValue, entry, text, journal.vocabulary);
  return hoverTexts.noteValueTempo(sentenceCase(escapeMarkdown(value)), named, rate, end);
}

/** As the line names it, or as the language does. */
function noteValueWords(value: NoteValue, { source }: Entry, text: string, { own }: Vocabulary): string {
  const key = termKey({ type: "note value", value });
  const typed = source.items.find(({ meaning }) => termKey(meaning) === key);
  if (typed) return text.slice(typed.start, typed.end);
  return own.find(({ meaning }) => termKey(meaning) === key)?.words[0] ?? hoverTexts.notes;
}

/**
 * What a pattern is, its degrees over the span and its notes, in the way stated or rising; of leaps in the day's order.
 */
function patternHover(
  entry: Entry,
  meaning: MeaningOf<"pattern" | "variant" | "quoted">,
  { journal, uri, day }: EntryAt,
): string | undefined {
  const conventions = journal.conventions(uri);
  const pattern = entry.pattern;
  const sentence =
    meaning.type === "quoted" ? declaredSentence(meaning.text, conventions) : explainTerm(meaning, journal.vocabulary);
  const conditions = entry.attempts[0]?.conditions;
  const input = pattern && exerciseToPlay(entry, conditions, conventions, day);
  if (!input)
    return paragraphs([
      sentence,
      pattern?.type === "known" && !isDrawn(pattern.id)
        ? hoverTexts.degreesOverOctave(cutRow(patternDegrees(pattern.id, pattern.variant, 8, true)))
        : undefined,
    ]);
  const row = rowOf({ ...input, direction: conditions?.direction ?? "up" }, conventions.names);
  const way = isDrawn(input.pattern) ? orderOf(day) : wayInWords(conditions?.direction);
  if (row.notes === "") return paragraphs([sentence, hoverTexts.nothingFits]);
  const notes = notesHidden(entry, conventions) ? [] : [hoverTexts.patternNotes(row.notes)];
  return paragraphs([sentence, [hoverTexts.degrees(way, row.degrees), ...notes].join("  \n")]);
}

function wayInWords(direction: keyof typeof termTexts.directions | undefined): string {
  return direction === undefined ? hoverTexts.rising : termTexts.directions[direction];
}

function declaredSentence(name: string, { cells }: Conventions): string | undefined {
  const cell = cells.get(nameKey(name));
  if (!cell) return undefined;
  return hoverTexts.declaredPattern(escapedExtract(name), cell.degrees.join(" "), cell.step);
}
