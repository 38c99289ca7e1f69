import { CHORDS_BY_FIGURE } from "../words/chord-words.ts";
import { faultTexts } from "../words/fault-texts.ts";
import type { FaultySubject, Item, Meaning, MeaningOf, ScaleMeaning, SubjectMeaning } from "../words/meaning.ts";
import type { NoteReading } from "../words/note-word.ts";
import { claimAfterColon } from "./claim.ts";
import { cutLine, type Part } from "./cut.ts";
import { withOutcomesDealt } from "./dealt-outcomes.ts";
import { furtherTrills } from "./further-trills.ts";
import { keysInRow } from "./keys-in-row.ts";
import type { Claim, EntryLine } from "./line.ts";
import { isLeadingTempo, isNumber, resolveNumbers } from "./numbers.ts";
import { type PartContext, partsOf } from "./parts.ts";
import { placesOfPiece } from "./places-of-piece.ts";
import { asSaid } from "./said.ts";
import { rowFrom } from "./several.ts";
import { ledByChord, withSubjectsApart } from "./subjects-apart.ts";
import { withTonicBehind } from "./tonic-behind.ts";

type Subject = Item<SubjectMeaning | FaultySubject>;

/** An entry of parts that are read already: its subject, what it claims, and its terms in their order. */
export function parseEntry(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  context: PartContext,
  subject?: Subject,
): EntryLine {
  const row = subject ? undefined : keysInRow(parts, context.vocabulary);
  const { claims, parts: rest } = row ? { claims: [], parts } : takeClaim(text, end, parts, context);
  const named = subject ?? row?.subject;
  const found = named
    ? { subject: named, items: behind(named, rest).filter((item) => !row?.told.includes(item)) }
    : withOthersApart(behindLead(text, rest, context), text, context);
  const placed =
    found.subject?.meaning.type === "title"
      ? placesOfPiece(found.items, found.subject.end, text.slice(0, end))
      : found.items;
  const { vocabulary } = context;
  const said = asSaid(resolveNumbers(placed, text, found.subject), text, vocabulary);
  const items = withOutcomesDealt(said, text, vocabulary);
  for (const item of items) {
    if (item.meaning.type === "signature")
      claims.push({ type: "signature", start: item.start, end: item.end, fifths: item.meaning.fifths });
    if (item.meaning.type === "steps")
      claims.push({ type: "steps", start: item.start, end: item.end, words: item.meaning.words });
  }
  return { type: "entry", start, end, subject: found.subject, items, claims };
}

/** What else is practised on the line, and what a word before the keys makes of them. */
function withOthersApart({ subject, items }: Found, text: string, { vocabulary }: PartContext): Found {
  if (!subject) return { items };
  const found = ledByChord({ subject, items }, text) ?? { subject, items };
  return withSubjectsApart(found, text, vocabulary);
}

/** What stands beside a subject that words make; within a row of keys the tempo of each. */
function behind({ start, end, meaning }: Subject, parts: readonly Part[]): readonly Item[] {
  const isBeside = (item: Item) => item.end <= start || item.start >= end;
  const isOfOne = (item: Item) => meaning.type === "several" && item.meaning.type === "number";
  return parts.flatMap(({ items }) => items).filter((item) => isBeside(item) || isOfOne(item));
}

/** The same entry, with the words kept that reach over its subject: of those only what the subject is does it name. */
export function withWordsBeside(entry: EntryLine, text: string, parts: readonly Part[]): EntryLine {
  const { start, end } = entry.subject!;
  const words = parts
    .flatMap(({ items }) => items)
    .filter((item) => item.meaning.type === "unknown" && item.start < end && item.end > start)
    .flatMap((item) => [...wordsIn(text, item.start, start), ...wordsIn(text, end, item.end)]);
  return words.length === 0 ? entry : { ...entry, items: [...entry.items, ...words].sort((a, b) => a.start - b.start) };
}

function wordsIn(text: string, from: number, to: number): readonly Item[] {
  const words = text.slice(from, Math.max(from, to));
  const start = from + words.length - words.trimStart().length;
  const typed = words.trim();
  return /[\p{L}\p{N}]/u.test(typed)
    ? [{ start, end: start + typed.length, meaning: { type: "unknown", words: typed } }]
    : [];
}

/** Takes what stands after the first colon out of the parts, where it is a claim in notes or steps. */
function takeClaim(
  text: string,
  end: number,
  parts: readonly Part[],
  context: PartContext,
): { claims: Claim[]; parts: readonly Part[] } {
  const colon = parts.findIndex((part, i) => i > 0 && part.after === ":");
  const claim =
    colon < 0
      ? undefined
      : claimAfterColon(
          text,
          parts[colon - 1]!.end + text.slice(parts[colon - 1]!.end).indexOf(":") + 1,
          end,
          context.vocabulary.notes,
        );
  if (!claim) return { claims: [], parts };
  const after = partsOf(text, cutLine(text.slice(0, end), claim.end).cuts, context).filter(
    (part) => part.items.length > 0,
  );
  return { claims: [claim], parts: [...parts.slice(0, colon), ...after] };
}

interface Found {
  readonly subject?: Subject;
  readonly items: readonly Item[];
}

/** `5' lip slurs`: amounts and hours before the subject stand beside it as those behind it do. */
function behindLead(text: string, parts: readonly Part[], context: PartContext): Found {
  const [first, ...others] = parts;
  const count = first ? leadLength(first.items, text) : 0;
  if (count === 0) return chainOf(text, parts) ?? tonicBehind(firstSubject(parts, context, text));
  const lead = first!.items.slice(0, count);
  const behind = { ...first!, items: first!.items.slice(count) };
  const rest =
    behind.items.length > 0 || others.length === 0
      ? [behind, ...others]
      : [{ ...others[0]!, after: "" as const }, ...others.slice(1)];
  const found = chainOf(text, rest) ?? tonicBehind(firstSubject(rest, context, text));
  return { ...found, items: [...lead, ...found.items] };
}

/** Amounts, hours, and tempos that open the line: `72 76 flam taps`. */
function leadLength(items: readonly Item[], text: string): number {
  const areTempos = items[0]?.meaning.type === "tempo" || isLeadingTempo(items, 0, text);
  const first = items.findIndex(
    (item) => !LEADING.includes(item.meaning.type) && !(areTempos && (item.meaning.type === "tempo" || isNumber(item))),
  );
  return first < 0 ? items.length : first;
}

const LEADING: readonly Meaning["type"][] = ["amount", "clock"];

function tonicBehind({ subject, items }: Found): Found {
  return subject ? withTonicBehind({ subject, items }) : { items };
}

/** Scales joined by `>`: one subject that moves between keys. */
function chainOf(text: string, parts: readonly Part[]): Found | undefined {
  if (parts[1]?.after !== ">") return undefined;
  const length = parts.findIndex((part, i) => i > 0 && part.after !== ">");
  const links = length < 0 ? parts : parts.slice(0, length);
  const scales: ScaleMeaning[] = [];
  const others: Item[] = [];
  for (const [i, link] of links.entries()) {
    const scale = asScale(link.items[0]);
    if (scale) scales.push(scale);
    others.push(
      ...link.items
        .slice(scale ? 1 : 0)
        .filter((item) => i === links.length - 1 || item.meaning.type !== "unknown" || scale),
    );
    if (!scale && link.items.length === 0)
      others.push({
        start: link.start - 1,
        end: link.start,
        meaning: { type: "unknown", words: text.slice(link.start - 1, link.start) },
      });
  }
  if (scales.length < 2) return undefined;
  const last = links.findLast((link) => link.items.length > 0)!;
  const subject: Subject = {
    start: links[0]!.start,
    end: last.items[0]!.end,
    meaning: { type: "chain", scales },
  };
  return { subject, items: [...others, ...parts.slice(links.length).flatMap((part) => part.items)] };
}

function asScale(item: Item | undefined): ScaleMeaning | undefined {
  if (item?.meaning.type === "scale") return item.meaning;
  if (item?.meaning.type !== "note" || item.meaning.lower) return undefined;
  return { type: "scale", tonic: item.meaning.note, kind: "major", declared: false, unsaid: "major" };
}

function firstSubject(parts: readonly Part[], context: PartContext, text: string): Found {
  const items = parts.flatMap((part) => part.items);
  const row = rowFrom(parts, 0, text);
  if (row) return { subject: row.subject, items: items.slice(row.length) };
  const first = items[0];
  const subject = first && asSubject(text, first, items[1], context);
  const trills = subject && furtherTrills(subject, parts, context, text);
  if (trills) return trills;
  if (subject)
    return subject.meaning.type === "figure"
      ? withFurtherNotes(subject as Item<MeaningOf<"figure">>, parts)
      : { subject, items: items.slice(1) };
  const late = items.findIndex((item, i) => LATE.includes(item.meaning.type) || isTonicBehindIn(items, i));
  const found = late > 0 ? late : behindAmounts(items);
  return found > 0 ? lateSubject(parts, found, text) : { items };
}

/** `5' mouthpiece buzz`: what is practised by its name, behind nothing but how long or how often; -1 where none is. */
function behindAmounts(items: readonly Item[]): number {
  const first = items.findIndex(({ meaning }) => !BEFORE_NAMES.includes(meaning.type));
  const type = items[first]?.meaning.type;
  return type === "technique" || type === "activity" ? first : -1;
}

const BEFORE_NAMES: readonly Meaning["type"][] = ["amount", "times", "clock", "without click"];

/** What is a subject wherever it stands, where none stands first. */
const LATE: readonly Meaning["type"][] = ["scale", "chord", "figure", "several"];

function asSubject(text: string, item: Item, next: Item | undefined, { vocabulary }: PartContext): Subject | undefined {
  const { start, end, meaning } = item;
  const at = (subject: Subject["meaning"]): Subject => ({ start, end, meaning: subject });
  switch (meaning.type) {
    case "scale":
    case "chord":
    case "several":
    case "title":
    case "figure":
    case "activity":
    case "technique":
    case "free":
    case "faulty subject":
      return at(meaning);
    case "quoted": {
      const title = vocabulary.title(meaning.text);
      return at({ type: "title", title: title ?? meaning.text.trim(), declared: title !== undefined });
    }
    case "note":
      return next?.meaning.type === "note" && next.start <= end + 1
        ? undefined
        : loneNote(text.slice(start, end), meaning, { at, notes: vocabulary.notes });
    default:
      return undefined;
  }
}

/** An upper-case letter alone is major; a lower-case one may be either. */
function loneNote(
  typed: string,
  { note, lower }: MeaningOf<"note">,
  { at, notes }: { readonly at: (meaning: Subject["meaning"]) => Subject; readonly notes: NoteReading },
): Subject {
  const { octave, letter, alter } = note;
  const chord = octave === undefined || lower ? undefined : CHORDS_BY_FIGURE[octave];
  if (chord !== undefined) return at({ type: "chord", root: { letter, alter }, chord, broken: false });
  if (octave !== undefined) {
    return at({
      type: "faulty subject",
      code: "ambiguous-subject",
      because: faultTexts.singleNote(typed),
      offers: [`notes ${typed}`, `long tones on ${typed}`],
      certain: false,
    });
  }
  if (!lower) return at({ type: "scale", tonic: note, kind: "major", declared: false, unsaid: "major" });
  const tonic = notes.words === null ? typed[0]!.toUpperCase() + typed.slice(1) : typed;
  const [major, minor] = [notes.key(note, "major", tonic), notes.key(note, "minor", tonic)];
  return at({
    type: "faulty subject",
    code: "ambiguous-subject",
    because: faultTexts.majorOrMinor(typed),
    offers: [major, minor],
    certain: false,
  });
}

/** `thirds in C`. */
function isTonicBehindIn(items: readonly Item[], i: number): boolean {
  const before = items[i - 1]?.meaning;
  return i > 1 && before?.type === "unknown" && /^in$/i.test(before.words) && asScale(items[i]) !== undefined;
}

/** `thirds in D minor`, `slow D minor`: word order is free. */
function lateSubject(parts: readonly Part[], late: number, text: string): Found {
  const items = parts.flatMap((part) => part.items);
  const before = items.slice(0, late).filter((item) => !isLead(item));
  const row = rowFrom(parts, late, text);
  const rest = items.slice(late + (row?.length ?? 1)).filter((item) => !isLead(item));
  return { subject: row?.subject ?? plainSubject(items[late]!), items: [...before, ...rest] };
}

/** A tonic alone is major. */
function plainSubject(item: Item): Subject {
  const { start, end, meaning } = item;
  return meaning.type === "note" ? { start, end, meaning: asScale(item)! } : (item as Subject);
}
/** A word that leads to the subject behind it: `thirds in D minor`. */
export function isLead(item: Item): boolean {
  return item.meaning.type === "unknown" && /^(?:in|on|of)$/i.test(item.meaning.words);
}

/** `notes E5, F5`: parts that are notes throughout go on with the figure. */
function withFurtherNotes(subject: Item<MeaningOf<"figure">>, parts: readonly Part[]): Found {
  const further: Item<MeaningOf<"note">>[] = [];
  let taken = 1;
  if (parts[0]!.items.length === 1 && subject.meaning.notes.length > 0 && !subject.meaning.scale) {
    while (
      parts[taken]?.after === "," &&
      parts[taken]!.items.length > 0 &&
      parts[taken]!.items.every((item) => item.meaning.type === "note")
    ) {
      further.push(...(parts[taken]!.items as readonly Item<MeaningOf<"note">>[]));
      taken++;
    }
  }
  const rest = [...parts[0]!.items.slice(1), ...parts.slice(taken).flatMap((part) => part.items)];
  if (!further.length) return { subject, items: rest };
  const notes = [...subject.meaning.notes, ...further.map((item) => item.meaning.note)];
  return {
    subject: { start: subject.start, end: further.at(-1)!.end, meaning: { ...subject.meaning, notes } },
    items: rest,
  };
}
