import type { Meaning, MeaningOf } from "./meaning.ts";

export type MeaningType = Meaning["type"];

/** What a type of term says of an entry. */
export interface TermType {
  readonly stands: "as a term";
  /**
   * `what` is played, which tells exercises apart; `how`, which holds for an attempt and may change from one tempo to the
   * next; the `result` of this one time; what is a `claim` about the notes; or something `besides`.
   */
  readonly tells: "what" | "how" | "result" | "claim" | "besides";
  /** How often a line says it. */
  readonly said: "once" | "once for each tempo" | "freely";
  /** The language's own words, figures, either of them, names of the journal's or the music's, or whatever a player writes. */
  readonly words: "fixed" | "figures" | "fixed or figures" | "names" | "free";
}

/** Where a type stands that is no term of an entry. */
interface OtherType {
  readonly stands: "as a subject" | "in another" | "in a frame" | "in a declaration" | "nowhere";
}

const SUBJECT: OtherType = { stands: "as a subject" };
/** A piece of a subject or of a tempo. */
const PIECE: OtherType = { stands: "in another" };
/** On the lines of days, sessions and phases. */
const FRAME: OtherType = { stands: "in a frame" };
const DECLARATION: OtherType = { stands: "in a declaration" };
/** Nothing can be made of it. */
const NOWHERE: OtherType = { stands: "nowhere" };

function term<Tells extends TermType["tells"]>(
  tells: Tells,
  said: TermType["said"],
  words: TermType["words"],
): TermType & { readonly tells: Tells } {
  return { stands: "as a term", tells, said, words };
}

/** What each type of meaning is on a line: the one table. */
const MEANING_TYPES = {
  scale: SUBJECT,
  chord: SUBJECT,
  chain: SUBJECT,
  figure: SUBJECT,
  title: SUBJECT,
  activity: SUBJECT,
  free: SUBJECT,
  kind: PIECE,
  "part of a kind": PIECE,
  "chord kind": PIECE,
  note: PIECE,
  number: PIECE,
  range: PIECE,
  pattern: term("what", "once", "fixed"),
  quoted: term("what", "freely", "names"),
  variant: term("what", "once", "fixed"),
  inversion: term("what", "once", "fixed"),
  place: term("what", "freely", "names"),
  instrument: term("what", "once", "names"),
  direction: term("how", "once for each tempo", "fixed"),
  span: term("how", "once for each tempo", "fixed or figures"),
  articulation: term("how", "once for each tempo", "fixed or figures"),
  rhythm: term("how", "once for each tempo", "fixed or figures"),
  "note value": term("how", "once for each tempo", "fixed"),
  "without click": term("how", "once for each tempo", "fixed"),
  manner: term("how", "freely", "fixed"),
  tempo: term("result", "freely", "figures"),
  outcome: term("result", "freely", "fixed"),
  tries: term("result", "freely", "figures"),
  times: term("result", "once", "figures"),
  amount: term("result", "once", "figures"),
  sore: term("result", "freely", "free"),
  done: term("result", "once", "fixed"),
  signature: term("claim", "freely", "figures"),
  steps: term("claim", "freely", "figures"),
  focus: term("besides", "once", "free"),
  with: term("besides", "freely", "free"),
  phase: FRAME,
  "line word": FRAME,
  clock: FRAME,
  weekday: FRAME,
  date: DECLARATION,
  goal: DECLARATION,
  bars: DECLARATION,
  days: DECLARATION,
  "last note": DECLARATION,
  "faulty subject": NOWHERE,
  unknown: NOWHERE,
} satisfies Readonly<Record<MeaningType, TermType | OtherType>>;

type ConditionType = {
  [T in MeaningType]: (typeof MEANING_TYPES)[T] extends { readonly tells: "how" } ? T : never;
}[MeaningType];

/** A term that tells how an attempt was played. */
export type Condition = MeaningOf<ConditionType>;

export function isCondition(meaning: Meaning): meaning is Condition {
  return termType(meaning.type)?.tells === "how";
}

export function isSubjectType(type: MeaningType): boolean {
  return MEANING_TYPES[type].stands === "as a subject";
}

/** Undefined for a type that is no term of an entry. */
export function termType(type: MeaningType): TermType | undefined {
  const found: TermType | OtherType = MEANING_TYPES[type];
  return found.stands === "as a term" ? found : undefined;
}
