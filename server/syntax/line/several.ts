import { ARTICLES_OF_ARPEGGIO, JOINTS_OF_SUBJECTS, ON_NOTE } from "../lexicon/note-leads.ts";
import { ARTICLES } from "../lexicon/title-words.ts";
import { CHORDS_BY_FIGURE } from "../words/chord-words.ts";
import type { Columns, Item, Meaning, MeaningOf, ScaleMeaning, SingleSubject, WrittenNote } from "../words/meaning.ts";
import type { Part } from "./cut.ts";
import { columnsFrom } from "./keys-in-row.ts";

/** What is practised, and the items that stand before and behind it. */
export interface Row {
  readonly subject: Item<MeaningOf<"several"> | ScaleMeaning>;
  /** How many items it takes. */
  readonly length: number;
}

/** An item, and whether it is the first of its part, behind what sign. */
interface Placed {
  readonly item: Item;
  readonly first: boolean;
  readonly after: string;
}

/**
 * Several subjects in a row from an item on: `C major, G major`, `C, G and D major`, `G major & arpeggio`,
 * `g# natural/harmonic/melodic`, `A minor: nat, harm`, `F7 Bb7 arps`, `dominant sevenths on G, C`; and a kind behind a
 * comma that tells the minor before it: `D minor, harmonic`. Undefined where one subject stands alone.
 */
export function rowFrom(parts: readonly Part[], from: number, text: string): Row | undefined {
  const placed = placedItems(parts).slice(from);
  const set = keySet(placed);
  if (set) return set;
  const row = new SubjectRow(LED_BY_KIND.test(text.slice(placed[0]?.item.start)));
  let at = 0;
  while (at < placed.length) {
    const { item, first, after } = placed[at]!;
    if (first && at > 0 && after !== "," && !(after === ":" && row.takesKinds(item.meaning))) break;
    const joint = row.isJoined(item, placed[at + 1]?.item, text) ? 1 : 0;
    // `(the melodic one)`
    const article = isArticle(item.meaning) && row.takesKinds(placed[at + 1]?.item.meaning) ? 1 : 0;
    const next = placed[at + joint + article];
    if (!next || (joint && (next.first || at === 0))) break;
    const led = item.meaning.type === "unknown" && / (?:from|on)$/i.test(item.meaning.words);
    const onNote = next.item.meaning.type === "note" && (joint > 0 || next.first) && row.endsOnNote(text);
    const standing = {
      joined: joint > 0,
      led: (led && joint > 0) || onNote,
      behindComma: (next.first || article > 0) && at > 0,
      small: /^\p{Ll}/u.test(text.slice(next.item.start)),
      plural: /s$/i.test(text.slice(next.item.start, next.item.end)),
    };
    if (!row.take(next.item, standing, at + joint + article + 1)) break;
    at += joint + article + 1;
  }
  return row.found();
}

/** A tonic is a letter, or a capital and what alters it. */
const LED_BY_KIND = /^(?:\p{Ll}{2}|\p{Lu}\p{Ll}{2})/u;

function placedItems(parts: readonly Part[]): readonly Placed[] {
  return parts.flatMap(({ items, after }) => items.map((item, i) => ({ item, first: i === 0, after })));
}

/** `all majors, circle of fourths`: the order of the keys does not change which they are. */
function keySet(placed: readonly Placed[]): Row | undefined {
  const [set, order] = placed;
  if (set?.item.meaning.type !== "several") return undefined;
  const also = order?.item.meaning.type === "several" && order.item.meaning.called?.startsWith("circle ");
  return { subject: set.item as Row["subject"], length: also ? 2 : 1 };
}

const JOINT = new RegExp(`^(?:${JOINTS_OF_SUBJECTS})(?: from| on)?$`, "i");

/** Whether words join two subjects: `C and G major`, `E major / E minor`. */
export function isJoint(meaning: Meaning): boolean {
  return meaning.type === "unknown" && JOINT.test(meaning.words);
}

const BEFORE_CHORD = new RegExp(
  `^(?:${JOINTS_OF_SUBJECTS})(?: (?:${ARTICLES_OF_ARPEGGIO}))?$|^(?:${ARTICLES_OF_ARPEGGIO})$`,
  "i",
);
/** `F scale n Bb scale`; by itself a no. */
const SHORT_AND = /^(?:n|'n'?|n')$/i;

function isArticle(meaning: Meaning): boolean {
  return meaning.type === "unknown" && ARTICLES.has(meaning.words.toLowerCase());
}

function isDash(meaning: Meaning): boolean {
  return meaning.type === "unknown" && /^[-–—]$/.test(meaning.words);
}

interface Standing {
  /** Behind `and` or a stroke. */
  readonly joined: boolean;
  /** Behind `/ from`, or behind `dominant sevenths on G`: on another tonic the same. */
  readonly led: boolean;
  readonly behindComma: boolean;
  /** It begins with a small letter: `F, Bb, g hm`. */
  readonly small: boolean;
  /** `and the arpeggios`. */
  readonly plural: boolean;
}

/** Gathers subjects; letters take the kind that follows. */
class SubjectRow {
  private readonly subjects: SingleSubject[] = [];
  /** Where each of them stands. */
  private readonly at: Columns[] = [];
  private waiting: { readonly note: WrittenNote; readonly at: Columns }[] = [];
  /** Where what is taken stands. */
  private taken: Columns = { start: 0, end: 0 };
  private refined: ScaleMeaning | undefined;
  private length = 0;
  private start = -1;
  /** Where the last stands that is more than a letter. */
  private lastNamed: readonly [number, number] = [0, 0];
  private end = 0;

  /** @param ledByKind the first subject begins with the word for it, and no tonic: `arp Bb` */
  constructor(private readonly ledByKind: boolean) {}

  /** False where an item does not go on with the row. @param length with it, in items */
  take(item: Item, standing: Standing, length: number): boolean {
    const isFurther = !this.refined || (standing.behindComma && this.takesKinds(item.meaning));
    this.taken = item;
    if (!isFurther || !this.takeMeaning(item.meaning, standing)) return false;
    if (this.start < 0) this.start = item.start;
    if (this.waiting.length > 0) return true;
    this.length = length;
    if (item.meaning.type !== "note") this.lastNamed = [item.start, item.end];
    this.end = item.end;
    return true;
  }

  /** `D minor` and nothing else stands before a kind, which is one of its forms. */
  takesKinds(meaning: Meaning | undefined): boolean {
    const [first] = this.subjects;
    const kind = meaning && kindOf(meaning);
    return kind !== undefined && first?.type === "scale" && first.kind.endsWith(" minor") && this.waiting.length === 0;
  }

  /** Whether an item joins the row to the next one. */
  isJoined({ start, end, meaning }: Item, next: Item | undefined, text: string): boolean {
    if (isJoint(meaning)) return true;
    if (isDash(meaning)) return this.takesKinds(next?.meaning);
    const words = text.slice(start, end);
    if (next?.meaning.type === "chord kind") return BEFORE_CHORD.test(words);
    return SHORT_AND.test(words) && (next?.meaning.type === "scale" || next?.meaning.type === "chord");
  }

  /** Its last subject is a kind on a note: `whole tone from f`. */
  endsOnNote(text: string): boolean {
    return this.waiting.length === 0 && this.subjects.length > 0 && ON_A_NOTE.test(text.slice(...this.lastNamed));
  }

  found(): Row | undefined {
    const { start, end, length, refined, subjects } = this;
    if (refined && subjects.length === 1) return { subject: { start, end, meaning: refined }, length };
    return subjects.length > 1
      ? { subject: { start, end, meaning: { type: "several", subjects, at: columnsFrom(start, this.at) } }, length }
      : undefined;
  }

  private takeMeaning(meaning: Meaning, standing: Standing): boolean {
    switch (meaning.type) {
      case "note":
        return this.takeNote(meaning, standing);
      case "scale":
      case "chord":
        return this.takeSubject(meaning, standing);
      case "figure":
        return this.waiting.length === 0 && this.takesFigure(meaning, standing) && this.add(meaning);
      case "technique":
        return this.waiting.length === 0 && this.takesTechnique(meaning, standing) && this.add(meaning);
      case "kind":
      case "part of a kind":
        return this.takeKind(meaning, standing);
      case "chord kind":
        return this.takeChord(meaning, standing);
      default:
        return false;
    }
  }

  /** Trills go on with trills, and long tones with what a sign joins to them: `lip slurs + long tones`. */
  private takesFigure({ figure }: MeaningOf<"figure">, { joined }: Standing): boolean {
    const areFigures = this.subjects.every(({ type }) => type === "figure");
    if (figure === "trill") return areFigures || joined;
    return this.subjects.length === 0 || (joined && this.subjects.every(isByName));
  }

  /** `sirens + lip trills`; side by side what ends in the same word: `5 stroke rolls 9 stroke rolls`. */
  private takesTechnique({ name }: MeaningOf<"technique">, { joined, behindComma }: Standing): boolean {
    const last = this.subjects.at(-1);
    if (last === undefined) return true;
    const isAlike = last.type === "technique" && lastWord(last.name) === lastWord(name);
    return this.subjects.every(isByName) && (joined || (isAlike && !behindComma));
  }

  /** A letter waits for its kind; behind `scales F` each is major. */
  private takeNote({ note, lower }: MeaningOf<"note">, { led }: Standing): boolean {
    const before = this.subjects.at(-1);
    if (before?.type === "technique" || before?.type === "figure") return false;
    if (led) return (before?.type === "scale" || before?.type === "chord") && this.add(onNote(before, note));
    const isOnNext = this.ledByKind && before?.type === "chord" && this.waiting.length === 0;
    if (isOnNext && !lower && note.octave === undefined) return this.add(onNote(before, note));
    if (lower || (note.octave !== undefined && CHORDS_BY_FIGURE[note.octave] === undefined)) return false;
    const last = this.subjects.at(-1);
    if (last?.type === "scale" && last.unsaid === "major" && this.waiting.length === 0 && note.octave === undefined)
      return this.add(majorOn(note));
    this.waiting.push({ note, at: this.taken });
    return true;
  }

  private takeSubject(subject: ScaleMeaning | MeaningOf<"chord">, { small }: Standing): boolean {
    if (this.subjects.some(isByName)) return false;
    const isOfItsOwn = subject.type === "scale" && (subject.declared || subject.fromLowest || subject.to);
    const areSymbols = this.waiting.some(({ note }) => note.octave !== undefined);
    if (this.waiting.length > 0 && (isOfItsOwn || (areSymbols && subject.type !== "chord"))) return false;
    const { waiting } = this;
    this.waiting = [];
    const named = this.asArpeggio(subject) ?? subject;
    const isOnlyItsOwn = small && named.type === "scale" && isMinor(named); // `F, Bb, g hm`: capitals are major
    if (named.type === "scale" && named.unsaid !== "major" && !isOnlyItsOwn) this.tellKind(named);
    for (const { note, at } of waiting) this.add(isOnlyItsOwn ? majorOn(note) : onNote(named, note), at);
    return this.add(named);
  }

  /** `arp Bb maj, F maj`: said before the first, what they are goes for the others. */
  private asArpeggio(subject: ScaleMeaning | MeaningOf<"chord">): MeaningOf<"chord"> | undefined {
    const [first] = this.subjects;
    if (subject.type !== "scale" || first?.type !== "chord" || !this.ledByKind) return undefined;
    const chord = TRIADS.get(subject.kind);
    return chord === undefined ? undefined : { type: "chord", root: subject.tonic, chord, broken: first.broken };
  }

  /** `scales F C G maj`: what was left unsaid is told at the end. */
  private tellKind({ kind, unsaid }: ScaleMeaning): void {
    for (const [i, each] of this.subjects.entries())
      if (each.type === "scale" && each.unsaid === "major")
        this.subjects[i] = { type: "scale", tonic: each.tonic, kind, declared: false, ...(unsaid ? { unsaid } : {}) };
  }

  private takeKind(meaning: MeaningOf<"kind" | "part of a kind">, { joined, behindComma }: Standing): boolean {
    const last = this.subjects.at(-1);
    const kind = kindOf(meaning);
    if (last?.type !== "scale" || this.waiting.length > 0 || kind === undefined) return false;
    if (joined) return this.add({ type: "scale", tonic: last.tonic, kind, declared: false });
    const next = { type: "scale", tonic: last.tonic, kind, declared: false } as const;
    if (!behindComma || !kind.endsWith(" minor")) return false;
    if (this.refined) return this.addForm(next);
    const isAnother = last.unsaid === undefined && last.kind.endsWith(" minor") && last.kind !== kind;
    if (isAnother && !last.declared) return this.add(next); // `D natural minor, harmonic`
    if (last.unsaid !== "natural" || this.subjects.length > 1) return false;
    this.refined = next;
    return true;
  }

  /** `A minor, nat, harm`: more than one form, each by itself. */
  private addForm(form: ScaleMeaning): boolean {
    if (this.refined && this.subjects.length === 1) this.subjects[0] = this.refined;
    return this.add(form);
  }

  /** `G major & arpeggio`, `g scale and d scale and the arpeggios`. */
  private takeChord(meaning: MeaningOf<"chord kind">, { joined, plural }: Standing): boolean {
    const last = this.subjects.at(-1);
    if (!joined || !last || isByName(last) || this.waiting.length > 0) return false;
    const of = plural ? this.subjects.filter(({ type }) => type === "scale") : [last];
    for (const each of of) if (!isByName(each)) this.add(chordOn(each, meaning));
    return of.length > 0;
  }

  private add(subject: SingleSubject, at = this.taken): true {
    this.subjects.push(subject);
    this.at.push(at);
    return true;
  }
}

/** What is practised by a word of the trade, and not in a key. */
function isByName(subject: SingleSubject): subject is MeaningOf<"figure" | "technique"> {
  return subject.type === "figure" || subject.type === "technique";
}

function lastWord(name: string): string {
  return name.slice(name.lastIndexOf(" ") + 1);
}

function isMinor(subject: ScaleMeaning | MeaningOf<"chord">): boolean {
  return subject.type === "scale" ? subject.kind.endsWith("minor") : subject.chord === "minor";
}

/** The arpeggio, or another chord, of a key or on a root. */
export function chordOn(
  subject: ScaleMeaning | MeaningOf<"chord">,
  { id, broken }: MeaningOf<"chord kind">,
): MeaningOf<"chord"> {
  const root = subject.type === "scale" ? subject.tonic : subject.root;
  return { type: "chord", root, chord: id === "major" && isMinor(subject) ? "minor" : id, broken };
}

const TRIADS: ReadonlyMap<string, string> = new Map([
  ["major", "major"],
  ["natural minor", "minor"],
]);

/** A kind on a note in the words of a subject. */
const ON_A_NOTE = new RegExp(`\\s(?:${ON_NOTE.join("|")})\\s+\\S+$`, "iu");

function kindOf(meaning: Meaning): string | undefined {
  if (meaning.type === "kind") return meaning.id;
  return meaning.type === "part of a kind" && meaning.offers.length === 1 ? meaning.offers[0] : undefined;
}

function majorOn(tonic: WrittenNote): ScaleMeaning {
  return { type: "scale", tonic, kind: "major", declared: false, unsaid: "major" };
}

function onNote(subject: ScaleMeaning | MeaningOf<"chord">, note: WrittenNote): SingleSubject {
  if (subject.type === "scale") return { ...subject, tonic: note };
  const { letter, alter, octave } = note;
  const symbol = octave === undefined ? undefined : CHORDS_BY_FIGURE[octave];
  const root = symbol === undefined ? note : { letter, alter };
  return { type: "chord", root, chord: symbol ?? subject.chord, broken: subject.broken };
}
