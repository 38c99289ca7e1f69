import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { nearestSteps } from "../../music/notes/note-value.ts";
import { kindById } from "../../music/scales/kinds.ts";
import type { Fraction, Meaning, MeaningOf, Verdict } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { escapeMarkdown } from "./markdown.ts";
import { termKey } from "./term-key.ts";

/** What a term means, in a sentence of Markdown; undefined for what explains itself. */
export function explainTerm(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  const own = ownSentence(meaning, vocabulary);
  switch (meaning.type) {
    case "kind":
      return meaning.unsaid === "natural" ? `${unsaidMinor(vocabulary.notes)} ${own}` : own;
    case "articulation":
      return own ? own + halfOf(meaning) : articulation(meaning);
    case "rhythm":
      return own ?? `Long (L) and short (S) notes in this order, again and again: ${meaning.id}.`;
    case "note value":
      return noteValue(meaning.value);
    case "span":
      return own ?? span(meaning);
    case "outcome":
      return own ?? VERDICTS[meaning.says];
    case "tries":
      return tries(meaning);
    case "times":
      return `Played ${meaning.count === 1 ? "once" : `${meaning.count} times`}: how often you played the line, not tries.`;
    case "amount":
      return meaning.possible ? `${amountText(meaning)}.` : "Not a possible time.";
    case "focus":
      return `What is listened for: ${escapeMarkdown(meaning.words)}.`;
    case "sore":
      return `Something hurts: ${escapeMarkdown(meaning.words)}. Rest it, and tell your teacher; see a doctor if it lasts or comes back.`;
    case "with":
      return `With ${escapeMarkdown(meaning.words)}.`;
    case "manner":
      return own ?? `How it was played: ${meaning.id}.`;
    case "technique":
      return "A technique: it counts like an exercise, by its name.";
    case "done":
      return own;
    case "phase":
      return own ?? `A phase that this journal declares: ${escapeMarkdown(meaning.id)}.`;
    case "weekday":
      return `${WEEKDAY_NAMES[meaning.day - 1]}.`;
    default:
      return own;
  }
}

function amountText({ minutes, about, each }: MeaningOf<"amount">): string {
  return `${about ? "About " : ""}${minutes} minutes${each ? " each" : ""}`;
}

/** Monday is the first (ISO 8601). */
export const WEEKDAY_NAMES = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

function ownSentence(meaning: Meaning, vocabulary: Vocabulary): string | undefined {
  const key = termKey(meaning);
  if (key === undefined) return undefined;
  return vocabulary.own.find((phrase) => phrase.meaning.type === meaning.type && termKey(phrase.meaning) === key)
    ?.sentence;
}

function halfOf({ half }: MeaningOf<"articulation">): string {
  return half ? ` Here for the way ${half} only.` : "";
}

/** For words that no table explains one by one. */
const VERDICTS: Readonly<Record<Verdict, string>> = {
  reached: "It went well; the tempo counts as reached.",
  nearly: "Not quite; the tempo does not count as reached.",
  not: "It did not go well; the tempo does not count as reached.",
};

function articulation(meaning: MeaningOf<"articulation">): string {
  const { id } = meaning;
  if (id.startsWith("slur ")) {
    const groups = id.slice("slur ".length).split("+");
    const parts = groups.map((size) => (size === "1" ? "one tongued" : `${size} slurred`));
    return `${sentenceCase(parts.join(", "))}, again and again.${halfOf(meaning)}`;
  }
  if (meaning.declared) return `An articulation that this journal declares: ${escapeMarkdown(id)}.${halfOf(meaning)}`;
  const strokes = /^[tkdg]+$/.test(id) ? id.replace(/(?<=.)(?=.)/gs, "-") : id;
  const syllables = id.startsWith("tongue ") ? [id.slice("tongue ".length)] : strokes.split(/[-‐‑]/);
  const said = syllables.map((syllable) => `\`${syllable}\``).join(" ");
  return syllables.length === 1
    ? `Each note tongued with ${said}.${halfOf(meaning)}`
    : `Tongued with the syllables ${said} in turn.${halfOf(meaning)}`;
}

const COUNTS = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"];

/** How many of a value fill a quarter, which is the beat unless another is named. */
function noteValue({ numerator, denominator }: Fraction): string {
  if (denominator < 4 * numerator) {
    const beats = (4 * numerator) / denominator;
    return `${COUNTS[beats] ?? beats} quarter beats to a note.`;
  }
  const notes = denominator / (4 * numerator);
  return `${COUNTS[notes] ?? notes} ${notes === 1 ? "note" : "notes"} to a quarter beat.`;
}

function span({ reach }: MeaningOf<"span">): string | undefined {
  switch (reach.type) {
    case "degrees":
      return `The first ${reach.count} notes.`;
    case "octaves":
      return reach.count === 1 ? "From a tonic to the next." : `${reach.count} octaves, from the lowest tonic.`;
    case "between":
      return "As far as the notes lie between these two.";
    default:
      return undefined;
  }
}

function tries({ tries: { got, count } }: MeaningOf<"tries">): string {
  const attempts = count === 1 ? "One attempt" : `${count} attempts`;
  if (got === count) return `${attempts}${count === 1 ? "" : ", all"} with this outcome.`;
  return `${attempts}, ${got} of them with this outcome; a tempo counts as reached from half of them on.`;
}

/** `metronome: 69 below, 76 above`, from beats a minute. */
export function metronomeWords(bpm: number): string {
  const { below, above } = nearestSteps(bpm);
  if (below === undefined) return `metronome: ${above} above, nothing below`;
  return above === undefined ? `metronome: ${below} below, nothing above` : `metronome: ${below} below, ${above} above`;
}

/** What the declarations are for, by their words. */
const DECLARATIONS: Readonly<Record<string, string>> = {
  player: "Whose journal this is.",
  instrument: "What is played; the first is used when an entry does not name one.",
  pitch: "The pitch of A4 in hertz, and perhaps the temperament.",
  names: "The language of the note names.",
  shared:
    "Names, pitch, note value, patterns, scales, articulations, outcomes and phases declared here hold in the journals of the folders below, too.",
  "share body":
    "What this journal says of the body is shown to a teacher who reads it with `daystave pupils`. Without this line it is not.",
  "hide notes":
    "Names of notes stay out of sight until they are asked for, for anyone who plays by ear or from a signature.",
  "note value": "The note value that tempos are counted in when an entry does not name one.",
  "usual articulation": "The articulation that is used when an entry does not name one.",
  piece: "A current piece, with its key, its bars, its goal and its dates.",
  study: "A current study, likewise.",
  movement: "A movement of a piece, with its own key and goal.",
  concert: "A day on which pieces are due.",
  aim: "What is to be reached, and by when.",
  set: "Work set by a teacher.",
  pattern: "A pattern of this journal's own, in degrees: 1 is the first note, 8 the octave.",
  scale: "A scale of this journal's own, in degrees or in cents.",
  focus: "Something to listen for, offered after `focus`.",
  phase: "A phase of this journal's own.",
  activity: "An activity of this journal's own.",
  articulation: "An articulation of this journal's own: `single`, `slurred`, `mixed` or `multiple`.",
  outcome: "Words of this journal's own for how it went: `reached`, `nearly` or `not`.",
};

export function explainDeclaration(word: string): string | undefined {
  return Object.hasOwn(DECLARATIONS, word) ? DECLARATIONS[word] : undefined;
}

/** The sentence of a kind of scale, with what its name leaves unsaid; `names` call minor as the journal does. */
export function explainKind(id: string, unsaid: string | undefined, names: MinorNames): string | undefined {
  const sentence = kindById(id)?.sentence;
  if (unsaid === "natural") return `${unsaidMinor(names)} ${sentence}`;
  if (unsaid === "major") return `A letter alone means major. ${sentence}`;
  return sentence;
}

type MinorNames = Pick<NoteNames, "minor">;

function unsaidMinor({ minor: [minor] }: MinorNames): string {
  return `\`${minor}\` alone means natural minor.`;
}

/** Whose order `leaps` are played in; a day without a date that exists has none to name. */
export function orderOf(day: DayNumber | undefined): string {
  return day === undefined ? "in leaps" : `in the order of ${isoDate(day)}`;
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
