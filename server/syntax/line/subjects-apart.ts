import { phraseKey } from "../words/fold.ts";
import type {
  Columns,
  FaultySubject,
  Item,
  Meaning,
  MeaningOf,
  ScaleMeaning,
  SingleSubject,
  SubjectMeaning,
} from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { TERMS } from "./evidence.ts";
import { columnsFrom } from "./keys-in-row.ts";
import { chordOn } from "./several.ts";

// Subjects of one line that do not stand side by side: what was said of each stands between.

interface Found {
  readonly subject: Item<SubjectMeaning | FaultySubject>;
  readonly items: readonly Item[];
}

type Keyed = ScaleMeaning | MeaningOf<"chord">;

/**
 * `E flat major 54 ok, E flat minor 60`: a further scale behind what was said of the one before it is practised, too;
 * `B flat major 76, even. Arpeggio 66` on the same tonic. Right behind the key's comma the arpeggio is what was played:
 * `F# major, arpeggio`.
 */
export function withSubjectsApart(found: Found, text: string, vocabulary: Vocabulary): Found {
  const { subject } = found;
  const first = keysOf(subject.meaning);
  if (first.length === 0) return found;
  const refined = asArpeggio(found, text, vocabulary);
  if (refined) return refined;
  const subjects: Keyed[] = [...first];
  const at: Columns[] = [...columnsOf(subject)];
  const items: Item[] = [];
  for (const [i, item] of found.items.entries()) {
    const own = stands(found, i, text, vocabulary) ? furtherSubject(item, subjects.at(-1)!) : undefined;
    if (own) {
      if (isSign(items.at(-1)?.meaning)) items.pop(); // it parts the two, and says nothing
      subjects.push(own);
      at.push(item);
    }
    items.push(own ? { ...item, meaning: own } : item);
  }
  if (subjects.length === first.length) return found;
  const several = { type: "several", subjects, at: columnsFrom(subject.start, at) } as const;
  return { subject: { ...subject, meaning: several }, items };
}

/** What is practised in keys, one or several by their names; nothing of a set and what has a reach of its own. */
function keysOf(meaning: Meaning): readonly Keyed[] {
  if (isKeyed(meaning)) return [meaning];
  if (meaning.type !== "several" || meaning.called !== undefined || !meaning.at) return [];
  const keyed = meaning.subjects.filter(isKeyed);
  return keyed.length === meaning.subjects.length ? keyed : [];
}

function isKeyed(meaning: Meaning | SingleSubject): meaning is Keyed {
  return (meaning.type === "scale" && !meaning.fromLowest) || meaning.type === "chord";
}

function columnsOf({ start, end, meaning }: Found["subject"]): readonly Columns[] {
  if (meaning.type !== "several" || !meaning.at) return [{ start, end }];
  return meaning.at.map((each) => ({ start: start + each.start, end: start + each.end }));
}

function furtherSubject({ meaning }: Item, before: Keyed): Keyed | undefined {
  if (meaning.type === "chord kind") return chordOn(before, meaning);
  return isKeyed(meaning) ? meaning : undefined;
}

/** Behind a sign or what was said of the one before, and with nothing behind it but what is said of it. */
function stands({ subject, items }: Found, i: number, text: string, vocabulary: Vocabulary): boolean {
  const item = items[i]!;
  if (
    item.start < subject.end ||
    !ANSWERS.some((type) => items.slice(0, i).some(({ meaning }) => meaning.type === type))
  )
    return false;
  const before = items[i - 1]!;
  const isBehind =
    isSign(before.meaning) ||
    ENDS.includes(before.meaning.type) ||
    /[,;.|/]\s*$|\s[–-]\s+$/.test(text.slice(0, item.start));
  const next = items[i + 1];
  const isSigned = !next || /^\s*[,;.|/]/.test(text.slice(item.end, next.start));
  return isBehind && (isSigned || next.meaning.type !== "unknown" || isDenied(next.meaning, vocabulary));
}

function isSign(meaning: Meaning | undefined): boolean {
  return meaning?.type === "unknown" && /^[/|;+&]$/.test(meaning.words);
}

/** Behind it another subject may begin without a sign. */
const ENDS: readonly Meaning["type"][] = ["tempo", "number", "range", "outcome", "tries", "times", "amount"];
/** That something was said of the one before. */
const ANSWERS: readonly Meaning["type"][] = [...ENDS, ...TERMS];

/** `NOT ok` is said of it; other words may make a sentence of it: `D minor next week`. */
function isDenied({ words }: MeaningOf<"unknown">, vocabulary: Vocabulary): boolean {
  const [word = ""] = words.split(/\s+/);
  const classes = vocabulary.classesOfWord(phraseKey(word)) ?? [];
  return classes.some((each) => each.class === "negation");
}

/** `Fis-Dur, Dreiklang`, but `F major scale, arpeggio` is both. */
function asArpeggio({ subject, items }: Found, text: string, vocabulary: Vocabulary): Found | undefined {
  const [next, ...others] = items;
  const { start, end, meaning } = subject;
  if (meaning.type !== "scale" || next?.meaning.type !== "chord kind" || !/^\s*,\s*$/.test(text.slice(end, next.start)))
    return undefined;
  const chord = chordOn(meaning, next.meaning);
  const isScale = text
    .slice(start, end)
    .split(/\s+/)
    .some((word) => word === "scale" || vocabulary.standard(phraseKey(word)) === "scale");
  if (!isScale) return { subject: { start, end: next.end, meaning: chord }, items: others };
  const at = columnsFrom(start, [subject, next]);
  return {
    subject: { start, end: next.end, meaning: { type: "several", subjects: [meaning, chord], at } },
    items: others,
  };
}

/** `Arps / C maj, C min`: the word before tells what the keys behind it are. Undefined where it tells of none. */
export function ledByChord({ subject, items }: Found, text: string): Found | undefined {
  const lead = items.findLast(({ end }) => end <= subject.start);
  if (lead?.meaning.type !== "chord kind" || !/^\s*[,:;/|–-]\s*$/.test(text.slice(lead.end, subject.start)))
    return undefined;
  const { meaning } = lead;
  const keys = keysOf(subject.meaning);
  if (keys.length === 0 || keys.some(({ type }) => type === "chord")) return undefined;
  const chords = keys.map((key) => chordOn(key, meaning));
  const rest = items.filter((item) => item !== lead);
  if (subject.meaning.type !== "several") return { subject: { ...subject, meaning: chords[0]! }, items: rest };
  return { subject: { ...subject, meaning: { ...subject.meaning, subjects: chords } }, items: rest };
}
