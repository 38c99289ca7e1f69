import type {
  FaultySubject,
  Fraction,
  Item,
  Meaning,
  MeaningOf,
  ScaleMeaning,
  SubjectMeaning,
} from "../words/meaning.ts";
import { type NoteReading, noteAt, parted } from "../words/note-word.ts";
import { tokenise } from "../words/token.ts";
import { claimAfterColon } from "./claim.ts";
import { cutLine, type Part } from "./cut.ts";
import type { Claim, EntryLine } from "./line.ts";
import { type PartContext, partsOf } from "./parts.ts";

type Subject = Item<SubjectMeaning | FaultySubject>;

/** An entry of parts that are read already: its subject, what it claims, and its terms in their order. */
export function parseEntry(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  context: PartContext,
): EntryLine {
  const { claims, parts: rest } = takeClaim(text, end, parts, context);
  const found = chainOf(text, rest) ?? keysInARow(text, end, rest, context) ?? firstSubject(text, end, rest, context);
  const items = resolveNumbers(found.items);
  for (const item of items) {
    if (item.meaning.type === "signature")
      claims.push({ type: "signature", start: item.start, end: item.end, fifths: item.meaning.fifths });
    if (item.meaning.type === "steps")
      claims.push({ type: "steps", start: item.start, end: item.end, words: item.meaning.words });
  }
  return { type: "entry", start, end, subject: found.subject, items, claims };
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

/** `C, G and D major`: several keys where one subject belongs. */
function keysInARow(text: string, end: number, parts: readonly Part[], { vocabulary }: PartContext): Found | undefined {
  const row: Item[] = [];
  let taken = 0;
  for (const part of parts) {
    if (part.after === ":" || !part.items.every((item, i) => isKeyInRow(item, part.items[i + 1]))) break;
    row.push(...part.items);
    taken++;
    if (row.at(-1)?.meaning.type === "scale") break;
  }
  const lastOfPart = parts[taken]?.items ?? [];
  const lead = row.at(-1)?.meaning.type === "scale" ? -1 : leadingKeys(lastOfPart);
  if (lead > 0) row.push(...lastOfPart.slice(0, lead));
  const scale = row.at(-1)?.meaning;
  const tonics = row.filter((item) => item.meaning.type === "note" || item.meaning.type === "scale");
  if (tonics.length < 2 || scale?.type !== "scale" || scale.declared) return undefined;
  const last = row.at(-1)!;
  const kind = behindTonic(text.slice(last.start, last.end), vocabulary.notes);
  const rest = text.slice(last.end, end);
  const lines = tonics.map(
    (item) => (item === last ? text.slice(last.start, last.end) : `${text.slice(item.start, item.end)} ${kind}`) + rest,
  );
  const meaning: FaultySubject = {
    type: "faulty subject",
    code: "ambiguous-subject",
    because: "one line is for one scale",
    offers: [lines.join("\n")],
    certain: false,
  };
  const items = [...lastOfPart.slice(Math.max(lead, 0)), ...parts.slice(taken + 1).flatMap((part) => part.items)];
  const others = lead > 0 ? items : parts.slice(taken).flatMap((part) => part.items);
  return { subject: { start: row[0]!.start, end: last.end, meaning }, items: others };
}

function isKeyInRow(item: Item, next: Item | undefined): boolean {
  const { meaning } = item;
  if (meaning.type === "note") return !meaning.lower && meaning.note.octave === undefined;
  return (
    (meaning.type === "unknown" && /^(?:and|&)$/i.test(meaning.words)) ||
    (meaning.type === "scale" && next === undefined)
  );
}

/** How many items in front of a part are keys in a row that ends in a scale, where terms follow it without a comma. */
function leadingKeys(items: readonly Item[]): number {
  const scale = items.findIndex((item) => item.meaning.type === "scale");
  return scale >= 0 && items.slice(0, scale).every((item) => isKeyInRow(item, item)) ? scale + 1 : -1;
}

function firstSubject(text: string, end: number, parts: readonly Part[], context: PartContext): Found {
  const items = parts.flatMap((part) => part.items);
  const first = items[0];
  const subject = first && asSubject(text, first, items[1], context);
  if (subject)
    return subject.meaning.type === "figure"
      ? withFurtherNotes(subject as Item<MeaningOf<"figure">>, parts)
      : { subject, items: items.slice(1) };
  const late = items.findIndex(
    (item) => item.meaning.type === "scale" || item.meaning.type === "chord" || item.meaning.type === "figure",
  );
  if (late <= 0) return { items };
  return {
    subject: lateSubject(text, end, items, late),
    items: [...items.slice(0, late), ...items.slice(late + 1)].filter((item) => !isJoint(item)),
  };
}

/** `minor` of `F sharp minor`, `Dur` of `Fis-Dur`. */
function behindTonic(subject: string, notes: NoteReading): string {
  const tokens = parted(tokenise(subject), notes);
  const first = tokens[noteAt(tokens, 0, notes)?.length ?? 1];
  return first ? subject.slice(first.start) : "";
}

function asSubject(text: string, item: Item, next: Item | undefined, { vocabulary }: PartContext): Subject | undefined {
  const { start, end, meaning } = item;
  const at = (subject: Subject["meaning"]): Subject => ({ start, end, meaning: subject });
  switch (meaning.type) {
    case "scale":
    case "chord":
    case "title":
    case "figure":
    case "activity":
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
  if (note.octave !== undefined) {
    return at({
      type: "faulty subject",
      code: "ambiguous-subject",
      because: `${typed} is one note`,
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
    because: `a lower-case ${typed} may be ${major} or ${minor}`,
    offers: [major, minor],
    certain: false,
  });
}

/** `thirds in D minor`, `slow D minor`: what is practised comes first. */
function lateSubject(text: string, end: number, items: readonly Item[], late: number): Subject {
  const subject = items[late]!;
  const words = text.slice(subject.start, subject.end);
  const before = text.slice(items[0]!.start, subject.start).replace(/[\s,]*(?:\b(?:in|on|of)\b)?[\s,]*$/i, "");
  const after = text.slice(subject.end, end).replace(/^[\s,]+/, "");
  const certain = items.slice(0, late).every((item) => isJoint(item) || item.meaning.type !== "unknown");
  const whole = [words, before, after].filter(Boolean).join(", ");
  return {
    start: items[0]!.start,
    end,
    meaning: {
      type: "faulty subject",
      code: "no-subject",
      because: `what is practised comes first`,
      offers: [whole],
      certain,
    },
  };
}

function isJoint(item: Item): boolean {
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

/**
 * A bare number or range goes on with the tempo before it, or belongs to the bars before it, whichever stood last;
 * a tempo that goes on keeps its beat. Others stay as they are: nothing says what they count.
 */
function resolveNumbers(items: readonly Item[]): readonly Item[] {
  const resolved: Item[] = [];
  let open:
    | { readonly type: "tempo"; readonly beat?: Fraction }
    | { readonly type: "place"; readonly at: number }
    | undefined;
  for (const item of items) {
    const { meaning } = item;
    if (meaning.type === "tempo") open = { type: "tempo", beat: meaning.beat };
    if (meaning.type === "place") open = meaning.word === "bars" ? { type: "place", at: resolved.length } : open;
    const number = meaning.type === "number" || meaning.type === "range" ? meaning : undefined;
    if (number && open?.type === "tempo") resolved.push({ ...item, meaning: goingOn(number, open.beat) });
    else if (number && open?.type === "place" && open.at === resolved.length - 1)
      resolved[open.at] = extended(resolved[open.at] as Item<MeaningOf<"place">>, item.end, number);
    else resolved.push(item);
  }
  return resolved;
}

function goingOn(number: MeaningOf<"number" | "range">, beat: Fraction | undefined): Meaning {
  const named = beat ? { beat } : {};
  if (number.type === "number") return { type: "tempo", bpm: number.value, ...named };
  const { low, high } = number.range;
  return { type: "tempo", bpm: Math.max(low, high), low: Math.min(low, high), ...named };
}

function extended(place: Item<MeaningOf<"place">>, end: number, number: MeaningOf<"number" | "range">): Item {
  const text = number.type === "number" ? String(number.value) : `${number.range.low}-${number.range.high}`;
  return { start: place.start, end, meaning: { ...place.meaning, text: `${place.meaning.text}, ${text}` } };
}
