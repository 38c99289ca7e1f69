import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { dateTexts } from "../../journal/date-texts.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { nearestSteps } from "../../music/notes/note-value.ts";
import { kindById } from "../../music/scales/kinds.ts";
import type { Fraction, Meaning, MeaningOf } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { escapeMarkdown } from "./markdown.ts";
import { termKey } from "./term-key.ts";
import { termSentenceTexts } from "./term-sentence-texts.ts";
import { termTexts } from "./term-texts.ts";
import { theorySentenceTexts } from "./theory-sentence-texts.ts";

/** What a term means, in a sentence of Markdown; undefined for what explains itself. */
export function explainTerm(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  const own = ownSentence(meaning, vocabulary);
  switch (meaning.type) {
    case "kind":
      return meaning.unsaid === "natural" ? `${unsaidMinor(vocabulary.notes)} ${own}` : own;
    case "articulation":
      return own ? own + halfOf(meaning) : articulation(meaning);
    case "rhythm":
      return own ?? termTexts.rhythm(meaning.id);
    case "note value":
      return noteValue(meaning.value);
    case "span":
      return own ?? span(meaning);
    case "outcome":
      return own ?? termTexts.verdicts[meaning.says];
    case "tries":
      return tries(meaning);
    case "times":
      return termTexts.times(meaning.count);
    case "amount":
      return meaning.possible ? amountText(meaning) : termTexts.impossibleAmount;
    case "focus":
      return termTexts.focus(escapeMarkdown(meaning.words));
    case "sore":
      return termTexts.sore(escapeMarkdown(meaning.words));
    case "with":
      return termTexts.with(escapeMarkdown(meaning.words));
    case "manner":
      return own ?? termTexts.manner(meaning.id);
    case "technique":
      return termTexts.technique;
    case "done":
      return own;
    case "phase":
      return own ?? termTexts.declaredPhase(escapeMarkdown(meaning.id));
    case "weekday":
      return termTexts.weekday(dateTexts.weekdays[meaning.day - 1]!);
    default:
      return own;
  }
}

function amountText({ minutes, about, each }: MeaningOf<"amount">): string {
  return termTexts.amount(minutes, about === true, each === true);
}

/** As a day line has them; Monday is the first (ISO 8601). */
export const WEEKDAY_NAMES = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

function ownSentence(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  const key = termKey(meaning);
  if (key === undefined) return undefined;
  const own = vocabulary.own.find((phrase) => phrase.meaning.type === meaning.type && termKey(phrase.meaning) === key);
  return own?.sentence && termSentenceTexts.of(theorySentenceTexts.of(own.sentence));
}

function halfOf({ half }: MeaningOf<"articulation">): string {
  return half ? termTexts.halfOnly(half) : "";
}

function articulation(meaning: MeaningOf<"articulation">): string {
  const { id } = meaning;
  if (id.startsWith("slur ")) {
    return termTexts.slur(id.slice("slur ".length).split("+")) + halfOf(meaning);
  }
  if (meaning.declared) return termTexts.declaredArticulation(escapeMarkdown(id)) + halfOf(meaning);
  const strokes = /^[tkdg]+$/.test(id) ? id.replace(/(?<=.)(?=.)/gs, "-") : id;
  const syllables = id.startsWith("tongue ") ? [id.slice("tongue ".length)] : strokes.split(/[-‐‑]/);
  const said = syllables.map((syllable) => `\`${syllable}\``).join(" ");
  return (syllables.length === 1 ? termTexts.tonguedWith(said) : termTexts.tonguedInTurn(said)) + halfOf(meaning);
}

/** How many of a value fill a quarter, which is the beat unless another is named. */
function noteValue({ numerator, denominator }: Fraction): string {
  if (denominator < 4 * numerator) return termTexts.beatsToNote((4 * numerator) / denominator);
  return termTexts.notesToBeat(denominator / (4 * numerator));
}

function span({ reach }: MeaningOf<"span">): string | undefined {
  switch (reach.type) {
    case "degrees":
      return termTexts.firstNotes(reach.count);
    case "octaves":
      return reach.count === 1 ? termTexts.oneOctave : termTexts.octaves(reach.count);
    case "between":
      return termTexts.between;
    default:
      return undefined;
  }
}

function tries({ tries: { got, count } }: MeaningOf<"tries">): string {
  return termTexts.tries(count, got);
}

/** `metronome: 69 below, 76 above`, from beats a minute. */
export function metronomeWords(bpm: number): string {
  const { below, above } = nearestSteps(bpm);
  return termTexts.metronome(below?.toString(), above?.toString());
}

const PURPOSES: Readonly<Record<string, string>> = declarationTexts.purposes;

export function explainDeclaration(word: string): string | undefined {
  return Object.hasOwn(PURPOSES, word) ? PURPOSES[word] : undefined;
}

/** The sentence of a kind of scale, with what its name leaves unsaid; `names` call minor as the journal does. */
export function explainKind(id: string, unsaid: string | undefined, names: MinorNames): string | undefined {
  const sentence = kindById(id)?.sentence;
  if (sentence === undefined) return undefined;
  return withUnsaid(theorySentenceTexts.of(sentence), unsaid, names);
}

function withUnsaid(sentence: string, unsaid: string | undefined, names: MinorNames): string {
  if (unsaid === "natural") return `${unsaidMinor(names)} ${sentence}`;
  if (unsaid === "major") return `${termTexts.letterAloneIsMajor} ${sentence}`;
  return sentence;
}

type MinorNames = Pick<NoteNames, "minor">;

function unsaidMinor({ minor: [minor] }: MinorNames): string {
  return termTexts.minorAlone(minor!);
}

/** Whose order `leaps` are played in; a day without a date that exists has none to name. */
export function orderOf(day: DayNumber | undefined): string {
  return day === undefined ? termTexts.inLeaps : termTexts.inOrderOf(isoDate(day));
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
