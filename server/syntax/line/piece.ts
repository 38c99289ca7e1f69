import type { Fraction, Item, Meaning, MeaningOf, Tries } from "../words/meaning.ts";
import { isAmiss } from "../words/outcome-words.ts";
import { isSpeech } from "../words/speech.ts";
import { FASTEST, SLOWEST } from "../words/tempo-words.ts";
import { BESIDE, isCondition, MEANING_TRAITS, type OnceBits, onceBit, onceKey } from "../words/term-types.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { claimAfterColon } from "./claim.ts";
import { declarationWordAt } from "./declaration-word.ts";
import { countsElse, isNumber } from "./numbers.ts";
import { readPart } from "./part.ts";

/** What was said of how a tempo went. */
export interface Said {
  /** Something that was said is that it was reached; something keeps it from that (`isAmiss`). */
  readonly good: boolean;
  readonly amiss: boolean;
  readonly tries?: Tries;
}

/** How a piece begins, as far as what stands before it goes. */
export type Opening = "nothing" | "tempo" | "number" | "outcome" | "tries" | "other";

/** How a piece ends: on a tempo or what was said of it, on an outcome that answers none, or on something else. */
export type Ending = "answered" | "leading" | "as before" | "other";

/**
 * A stretch of a line that was read once for all lines that have it, with whatever number. What it says of itself is
 * what a line asks of its pieces: one object for one text (and number apart), so that what is found out of several
 * hangs on them.
 */
export interface Piece {
  /** How many of its items are kept: all, or none of a long piece, whose items are read again when somebody asks. */
  readonly keptItems: number;
  /**
   * Where its number stands, and which item has it as its value; missing where the piece has no number that may change.
   */
  readonly number?: { readonly start: number; readonly end: number; readonly item: number };
  /** The declared phase, session, break … that a line opens with this piece. */
  readonly opening: Meaning["type"] | undefined;
  readonly phase?: string;
  /** It begins with a declaration word. */
  readonly declares: boolean;
  readonly begins: Opening;
  readonly ends: Ending;
  /** Its last item is an outcome, which tries may follow. */
  readonly endsInOutcome: boolean;
  /** Some item is a tempo, or a number or range that goes on with one. */
  readonly hasTempo: boolean;
  readonly beat?: Fraction;
  /** Beats a minute of its tempo, the top of a range; of a number that may change the line tells them. */
  readonly bpm?: number;
  /**
   * It is too entangled to be looked at apart from its line: it says a thing twice, or has something before its tempo.
   */
  readonly tangled: boolean;
  /** What may be said once on a line; once for each tempo, before its tempo (or without one) and behind it. */
  readonly once: OnceBits;
  readonly oncePerTempo: OnceBits;
  /**
   * Some of it can be at fault, or bears on whether another piece is: always, or beside some others (bits of `BESIDE`).
   */
  readonly bears: boolean;
  readonly bearsBeside: number;
  /** What it is to others that bear beside it. */
  readonly beside: number;
  /** The history tells attempts by it: by what was played, or by how. */
  readonly tellsWhat: boolean;
  readonly tellsHow: boolean;
  /** Pieces with the same key tell the history the same; missing where the piece is one of a kind. */
  readonly toldAs?: string;
  /** Some of its words are not known. */
  readonly strange: boolean;
  /** Says of the tempo before it, or of its own. */
  readonly said?: Said;
  /** How many outcomes it has. */
  readonly outcomes: number;
  readonly counted: boolean;
  readonly minutes?: number;
  /** Names a subject, a kind or notes: at the beginning of a line, in a chain or in a claim only. */
  readonly subject: boolean;
  readonly onlyNotes: boolean;
  readonly hasPlace: boolean;
  /** Where in a piece, where it says nothing else. */
  readonly place?: string;
  /** It ends in a place in bars, which numbers behind it go on with. */
  readonly bars: boolean;
  /** It cannot be at fault on the line of a phase: the phase itself, minutes, what was listened for, with whom. */
  readonly plainOfPhase: boolean;
  readonly known: Known;
  /** It is no more than these, side by side: they are looked at in its place. */
  readonly split?: readonly SplitPiece[];
  /** Columns from the beginning of the piece; those behind its number are moved by `itemsOf`. */
  items(): readonly Item[];
  /** Behind a colon it is a claim, in notes or in steps. */
  claims(): boolean;
}

/** A piece within another, by its columns there. */
export interface SplitPiece {
  readonly piece: Piece;
  readonly start: number;
  readonly end: number;
}

/** What tells an entry from prose (`entry-rule.ts`). */
export interface Known {
  /** Every word is known, where no tempo or place stood before in the same stretch; and where one did. */
  readonly alone: boolean;
  readonly behindTempo: boolean;
  /** A tempo or a place is in it. */
  readonly counts: boolean;
  /** A single note in a small letter: known only where nothing else stands in its stretch. */
  readonly lowerNote: boolean;
  readonly empty: boolean;
  /** It begins with a subject. */
  readonly opensSubject: boolean;
  readonly namesKind: boolean;
  /** What opens it can be the subject of an entry. */
  readonly opensEntry: boolean;
  /** It begins with a tempo, a place or an amount. */
  readonly strong: boolean;
}

/**
 * Of longer pieces (lists of notes, sentences) the items are read again when somebody asks: kept, those of one day
 * would push each other out of the table.
 */
const MOST_KEPT = 6;

/** What is known of the words of a piece. */
export function pieceOf(
  text: string,
  items: readonly Item[],
  known: Known,
  vocabulary: Vocabulary,
  { number, split }: Pick<Piece, "number" | "split"> = {},
): Piece {
  const walk = new Walk(vocabulary, number);
  for (const [i, item] of items.entries()) walk.take(item.meaning, i);
  const [first] = items;
  const only = items.length === 1 ? first!.meaning : undefined;
  const last = items.at(-1)?.meaning;
  let claims: boolean | undefined;
  const kept = items.length <= MOST_KEPT ? items : undefined;
  return {
    keptItems: kept?.length ?? 0,
    number,
    opening: first?.meaning.type,
    phase: first?.meaning.type === "phase" ? first.meaning.id : undefined,
    declares: declarationWordAt(text, 0, text.length) !== undefined,
    begins: walk.begins,
    ends: walk.ends,
    endsInOutcome: items.at(-1)?.meaning.type === "outcome",
    hasTempo: walk.hasTempo,
    beat: walk.beat,
    bpm: walk.bpm,
    tangled: walk.tangled || items.some((item) => isNumber(item) && countsElse(item, text)), // `20 bars 17-32`
    once: walk.once,
    oncePerTempo: walk.oncePerTempo,
    bears: walk.bears,
    bearsBeside: walk.bearsBeside,
    beside: walk.beside,
    tellsWhat: walk.tellsWhat,
    tellsHow: walk.tellsHow,
    toldAs: only && toldAs(only),
    said: walk.said,
    outcomes: walk.outcomes,
    counted: walk.counted,
    minutes: walk.minutes,
    strange:
      items.some(({ meaning }) => meaning.type === "unknown") ||
      (first?.meaning.type === "quoted" && isSpeech(first.meaning.text, vocabulary)),
    subject: walk.subject,
    onlyNotes: items.length > 0 && items.every(({ meaning }) => meaning.type === "note"),
    hasPlace: items.some(({ meaning }) => meaning.type === "place"),
    place: only?.type === "place" && only.word !== "mvt" ? only.text : undefined,
    bars: last?.type === "place" && last.word === "bars",
    plainOfPhase: items.every(
      ({ meaning: { type } }, i) => PHASE_TERMS.includes(type) || (type === "phase" && i === 0),
    ),
    known,
    split,
    items: () => kept ?? readPart(text, vocabulary),
    claims() {
      claims ??= claimAfterColon(text, 0, text.length, vocabulary.notes) !== undefined;
      return claims;
    },
  };
}

/** What could be the subject of a line, or one of several keys in a row. */
const SUBJECTS: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "figure",
  "technique",
  "chain",
  "several",
  "note",
  "kind",
  "part of a kind",
  "chord kind",
  "faulty subject",
];

const PHASE_TERMS: readonly Meaning["type"][] = ["amount", "focus", "with"];

/** Goes over the items of a piece once. */
class Walk {
  begins: Opening = "nothing";
  ends: Ending = "as before";
  hasTempo = false;
  beat: Fraction | undefined;
  bpm: number | undefined;
  tangled = false;
  once: OnceBits = 0;
  oncePerTempo: OnceBits = 0;
  bears = false;
  bearsBeside = 0;
  beside = 0;
  tellsWhat = false;
  tellsHow = false;
  outcomes = 0;
  counted = false;
  subject = false;
  minutes: number | undefined;
  said: Said | undefined;
  private before: Meaning | undefined;

  constructor(
    private readonly vocabulary: Vocabulary,
    private readonly number: Piece["number"],
  ) {}

  take(meaning: Meaning, index: number): void {
    if (index === 0) this.begins = openingOf(meaning);
    const traits = MEANING_TRAITS[meaning.type];
    this.bears ||= traits.bears === "always";
    if (typeof traits.bears !== "string") for (const each of traits.bears) this.bearsBeside |= BESIDE[each];
    this.beside |= besideOf(meaning);
    if (traits.told) {
      if (isCondition(meaning)) this.tellsHow = true;
      else this.tellsWhat = true;
    }
    this.subject ||= SUBJECTS.includes(meaning.type);
    this.sayOnce(meaning, traits.once);
    switch (meaning.type) {
      case "tempo":
      case "number":
      case "range":
        this.takeTempo(meaning, index);
        break;
      case "outcome":
        this.takeOutcome(meaning);
        break;
      case "tries":
        this.tangled ||= index > 0 && this.before?.type !== "outcome";
        this.say({ tries: meaning.tries });
        break;
      case "amount":
        this.tangled ||= !meaning.possible;
        this.minutes ??= meaning.minutes;
        break;
      case "done":
        this.counted = true;
        break;
    }
    this.ends = this.endingAfter(meaning);
    this.before = meaning;
  }

  private takeTempo(meaning: MeaningOf<"tempo" | "number" | "range">, index: number): void {
    this.tangled ||= index > 0 || (this.number?.item !== index && !isInRange(meaning));
    this.hasTempo = true;
    if (meaning.type === "tempo") this.beat = meaning.beat;
    this.bpm = topOf(meaning);
  }

  private takeOutcome(meaning: MeaningOf<"outcome">): void {
    this.counted = true;
    this.outcomes++;
    this.tangled ||= meaning.inRow === true;
    this.say({ good: meaning.says === "reached", amiss: isAmiss(meaning) });
  }

  private say({ good = false, amiss = false, tries = this.said?.tries }: Partial<Said>): void {
    this.said = { good: good || (this.said?.good ?? false), amiss: amiss || (this.said?.amiss ?? false), tries };
  }

  private sayOnce(meaning: Meaning, once: "line" | "tempo" | undefined): void {
    const key = this.isPattern(meaning) ? "pattern" : once && onceKey(meaning);
    if (key === undefined) return;
    const bit = onceBit(key);
    this.tangled ||= ((this.once | this.oncePerTempo) & bit) !== 0;
    if (once === "tempo") this.oncePerTempo |= bit;
    else this.once |= bit;
  }

  private isPattern(meaning: Meaning): boolean {
    return meaning.type === "quoted" && this.vocabulary.pattern(meaning.text) !== undefined;
  }

  private endingAfter({ type }: Meaning): Ending {
    if (type === "tempo" || type === "number" || type === "range") return "answered";
    if (type !== "outcome" && type !== "tries") return "other";
    return this.ends === "other" ? "leading" : this.ends;
  }
}

/** A span, notes with their octaves, and a variant make others bear; whether notes are claimed, their line tells. */
function besideOf(meaning: Meaning): number {
  if (meaning.type === "variant") return BESIDE.variant;
  const reaches = meaning.type === "span" || meaning.type === "figure" || (meaning.type === "scale" && meaning.to);
  return reaches ? BESIDE.span : 0;
}

function openingOf({ type }: Meaning): Opening {
  if (type === "tempo" || type === "outcome" || type === "tries") return type;
  return type === "number" || type === "range" ? "number" : "other";
}

function topOf(meaning: MeaningOf<"tempo" | "number" | "range">): number {
  if (meaning.type === "number") return meaning.value;
  return meaning.type === "range" ? Math.max(meaning.range.low, meaning.range.high) : meaning.bpm;
}

/** A range of tempos is in whole beats: `20.00-22.30` are hours. */
function isInRange(meaning: MeaningOf<"tempo" | "number" | "range">): boolean {
  if (meaning.type === "range" && !(Number.isInteger(meaning.range.low) && Number.isInteger(meaning.range.high)))
    return false;
  if (meaning.type === "number") return meaning.value >= SLOWEST && meaning.value <= FASTEST;
  const { low, high } =
    meaning.type === "range" ? meaning.range : { low: meaning.low ?? meaning.bpm, high: meaning.bpm };
  return Math.min(low, high) >= SLOWEST && Math.max(low, high) <= FASTEST;
}

/** Articulations count by their tonguing, even rhythms by being even. */
function toldAs(meaning: Meaning): string | undefined {
  if (meaning.type === "articulation" && !meaning.half) return `articulation ${meaning.tonguing}`;
  return meaning.type === "rhythm" ? `rhythm ${meaning.even ? "even" : meaning.id}` : undefined;
}

/** The items of a piece with its own number, from its first column on. */
export function itemsOf(piece: Piece, own: string | undefined, start: number): readonly Item[] {
  const { number } = piece;
  const items = piece.items();
  if (own === undefined || number === undefined) return start === 0 ? items : items.map((item) => moved(item, start));
  const longer = own.length - (number.end - number.start);
  return items.map((item, i) => {
    const { start: from, end, meaning } = item;
    if (i < number.item) return moved(item, start);
    if (i > number.item) return { start: start + from + longer, end: start + end + longer, meaning };
    return { start: start + from, end: start + end + longer, meaning: withNumber(meaning, Number(own)) };
  });
}

export function moved({ start, end, meaning }: Item, by: number): Item {
  return { start: start + by, end: end + by, meaning };
}

/** What holds a number that may change: a bare tempo, a number, or minutes. */
export function holds(meaning: Meaning, value: number): boolean {
  if (meaning.type === "tempo") return meaning.bpm === value && meaning.low === undefined;
  if (meaning.type === "number") return meaning.value === value;
  return meaning.type === "amount" && meaning.possible && meaning.minutes === value;
}

function withNumber(meaning: Meaning, value: number): Meaning {
  if (meaning.type === "tempo") return { ...meaning, bpm: value };
  return meaning.type === "number"
    ? { type: "number", value }
    : { ...(meaning as MeaningOf<"amount">), minutes: value };
}
