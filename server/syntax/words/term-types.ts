import type { Meaning, MeaningOf } from "./meaning.ts";

export type MeaningType = Meaning["type"];

/** What a type of term says of an entry. */
export interface TermType {
  readonly stands: "as a term";
  /**
   * `what` is played, which tells exercises apart; `how`, which holds for an attempt and may change from one tempo to
   * the next; the `result` of this one time; what is a `claim` about the notes; or something `besides`.
   */
  readonly tells: "what" | "how" | "result" | "claim" | "besides";
  /** How often a line says it. */
  readonly said: "once" | "once for each tempo" | "freely";
  /**
   * The language's own words, figures, either of them, names of the journal's or the music's, or whatever a player
   * writes.
   */
  readonly words: "fixed" | "figures" | "fixed or figures" | "names" | "free";
  readonly bears: Bearing;
  readonly told: boolean;
}

/**
 * Whether a meaning can be at fault, or bears on whether another term is: `always`, `never`, or only where something
 * stands on the line beside which it does: notes that are claimed, a span (or notes with their octaves), a pattern's
 * variant.
 */
export type Bearing = "always" | "never" | readonly Beside[];
export type Beside = "claim" | "span" | "variant";

/** Where a type stands that is no term of an entry. */
interface OtherType {
  readonly stands: "as a subject" | "in another" | "in a frame" | "in a declaration" | "nowhere";
  readonly bears?: "never";
  readonly told?: false;
}

const SUBJECT: OtherType = { stands: "as a subject" };
/** A piece of a subject or of a tempo. */
const PIECE: OtherType = { stands: "in another" };
/** Goes on with a tempo or with bars. */
const NUMBER: OtherType = { stands: "in another", bears: "never", told: false };
/** On the lines of days, sessions and phases. */
const FRAME: OtherType = { stands: "in a frame" };
const DECLARATION: OtherType = { stands: "in a declaration" };
/** Nothing can be made of it. */
const NOWHERE: OtherType = { stands: "nowhere" };

/** @param told the history tells attempts by it: by everything that is played, and by nearly every way of playing */
function term<Tells extends TermType["tells"]>(
  tells: Tells,
  said: TermType["said"],
  words: TermType["words"],
  bears: Bearing,
  told: boolean = tells === "what" || tells === "how",
): TermType & { readonly tells: Tells } {
  return { stands: "as a term", tells, said, words, bears, told };
}

/** What each type of meaning is on a line: the one table. */
const MEANING_TYPES = {
  scale: SUBJECT,
  chord: SUBJECT,
  chain: SUBJECT,
  several: SUBJECT,
  figure: SUBJECT,
  title: SUBJECT,
  activity: SUBJECT,
  technique: SUBJECT,
  free: SUBJECT,
  kind: PIECE,
  "part of a kind": PIECE,
  "chord kind": PIECE,
  "figure word": PIECE,
  note: PIECE,
  "place word": PIECE,
  number: NUMBER,
  range: NUMBER,
  pattern: term("what", "once", "fixed", ["claim", "variant"]),
  quoted: term("what", "freely", "names", "always"),
  variant: term("what", "once", "fixed", "always"),
  inversion: term("what", "once", "fixed", "always"),
  place: term("what", "freely", "names", "never"),
  instrument: term("what", "once", "names", ["claim", "span"]),
  direction: term("how", "once for each tempo", "fixed", ["claim", "span"]),
  span: term("how", "once for each tempo", "fixed or figures", "always"),
  articulation: term("how", "once for each tempo", "fixed or figures", "never"),
  rhythm: term("how", "once for each tempo", "fixed or figures", "never"),
  "note value": term("how", "once for each tempo", "fixed", "never"),
  "without click": term("how", "once for each tempo", "fixed", "never", false),
  manner: term("how", "freely", "fixed", "never"),
  tempo: term("result", "freely", "figures", "never"),
  outcome: term("result", "freely", "fixed", "never"),
  tries: term("result", "freely", "figures", "never"),
  times: term("result", "once", "figures", "never"),
  amount: term("result", "once", "figures", "never"),
  sore: term("result", "freely", "free", "never"),
  done: term("result", "once", "fixed", "never"),
  signature: term("claim", "freely", "figures", "always"),
  steps: term("claim", "freely", "figures", "always"),
  focus: term("besides", "once", "free", "never"),
  with: term("besides", "freely", "free", "never"),
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

/** What may stand as a term of an entry. */
export const TERM_TYPES: readonly MeaningType[] = (Object.keys(MEANING_TYPES) as MeaningType[]).filter(termType);

/** How a kind of meaning stands on its line. */
export interface MeaningTraits {
  readonly bears: Bearing;
  /** The history tells attempts by it: what was played, and in which way. */
  readonly told: boolean;
  /** How often it may be said: once on a line, or once for each tempo; as often as one likes where nothing is said. */
  readonly once?: "line" | "tempo";
}

/** What is no term bears, and is told, as it makes a subject or a fault. */
export const MEANING_TRAITS = Object.fromEntries(
  Object.entries(MEANING_TYPES).map(([type, row]: [string, TermType | OtherType]) => {
    const said = row.stands === "as a term" ? row.said : "freely";
    const once = said === "once" ? "line" : said === "once for each tempo" ? "tempo" : undefined;
    return [type, { bears: row.bears ?? "always", told: row.told ?? true, once }];
  }),
) as Readonly<Record<MeaningType, MeaningTraits>>;

/** A bit for each kind of meaning that may be said once: the two halves of an articulation are two things. */
export type OnceBits = number;

const ONCE_KEYS = [
  ...(Object.keys(MEANING_TRAITS) as MeaningType[]).filter((type) => MEANING_TRAITS[type].once),
  "articulation up",
  "articulation down",
];

/** What a meaning is called where it may be said once: its type, and for half an articulation the half. */
export function onceKey(meaning: Meaning): string {
  return meaning.type === "articulation" && meaning.half ? `articulation ${meaning.half}` : meaning.type;
}

const ONCE_BITS: ReadonlyMap<string, OnceBits> = new Map(ONCE_KEYS.map((key, i) => [key, 1 << i]));

/** The bit of a meaning by its `onceKey`; 0 where it may be said as often as one likes. */
export function onceBit(key: string): OnceBits {
  return ONCE_BITS.get(key) ?? 0;
}

/** Each of `Beside` as a bit. */
export const BESIDE: Readonly<Record<Beside, number>> = { claim: 1, span: 2, variant: 4 };
