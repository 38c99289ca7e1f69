import { JOINTS_OF_SUBJECTS, ON_NOTE } from "../lexicon/note-leads.ts";
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
    const joint =
      isJoint(item.meaning) || (isDash(item.meaning) && row.takesKinds(placed[at + 1]?.item.meaning)) ? 1 : 0;
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
        return this.takeSubject(meaning);
      case "figure":
        return meaning.figure === "trill" && this.waiting.length === 0 && this.areTrills() && this.add(meaning);
      case "kind":
      case "part of a kind":
        return this.takeKind(meaning, standing);
      case "chord kind":
        return standing.joined && this.takeChord(meaning);
      default:
        return false;
    }
  }

  private areTrills(): boolean {
    return this.subjects.every(({ type }) => type === "figure");
  }

  /** A letter waits for its kind; behind `scales F` each is major. */
  private takeNote({ note, lower }: MeaningOf<"note">, { led }: Standing): boolean {
    const before = this.subjects.at(-1);
    if (led) return (before?.type === "scale" || before?.type === "chord") && this.add(onNote(before, note));
    if (lower || (note.octave !== undefined && CHORDS_BY_FIGURE[note.octave] === undefined)) return false;
    const last = this.subjects.at(-1);
    if (last?.type === "scale" && last.unsaid === "major" && this.waiting.length === 0 && note.octave === undefined)
      return this.add({ type: "scale", tonic: note, kind: "major", declared: false, unsaid: "major" });
    this.waiting.push({ note, at: this.taken });
    return true;
  }

  private takeSubject(subject: ScaleMeaning | MeaningOf<"chord">): boolean {
    const isOfItsOwn = subject.type === "scale" && (subject.declared || subject.fromLowest || subject.to);
    const areSymbols = this.waiting.some(({ note }) => note.octave !== undefined);
    if (this.waiting.length > 0 && (isOfItsOwn || (areSymbols && subject.type !== "chord"))) return false;
    const { waiting } = this;
    this.waiting = [];
    const named = this.asArpeggio(subject) ?? subject;
    if (named.type === "scale" && named.unsaid !== "major") this.tellKind(named);
    for (const { note, at } of waiting) this.add(onNote(named, note), at);
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

  private takeChord({ id, broken }: MeaningOf<"chord kind">): boolean {
    const last = this.subjects.at(-1);
    if (!last || last.type === "figure" || this.waiting.length > 0) return false;
    const root = last.type === "scale" ? last.tonic : last.root;
    const isMinor = last.type === "scale" ? last.kind.endsWith("minor") : last.chord === "minor";
    return this.add({ type: "chord", root, chord: id === "major" && isMinor ? "minor" : id, broken });
  }

  private add(subject: SingleSubject, at = this.taken): true {
    this.subjects.push(subject);
    this.at.push(at);
    return true;
  }
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

function onNote(subject: ScaleMeaning | MeaningOf<"chord">, note: WrittenNote): SingleSubject {
  if (subject.type === "scale") return { ...subject, tonic: note };
  const { letter, alter, octave } = note;
  const symbol = octave === undefined ? undefined : CHORDS_BY_FIGURE[octave];
  const root = symbol === undefined ? note : { letter, alter };
  return { type: "chord", root, chord: symbol ?? subject.chord, broken: subject.broken };
}
