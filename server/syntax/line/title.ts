import { FOR_WHOM, PERSONS, WHOSE } from "../lexicon/persons.ts";
import { BEFORE_KEY_OF_TITLE, NUMBERED, PARTS_OF_PIECES } from "../lexicon/title-words.ts";
import { COUNTED_PLACES } from "./cut-signs.ts";
import type { LineWords } from "./line-words.ts";
import { isLeadingTempo, SLOWEST_LEADING } from "./numbers.ts";

/** Words that may be the title of a piece, by their place in the line. */
export interface TitleWords {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The first word, and the one behind the last. */
  readonly from: number;
  readonly to: number;
  readonly capitals: number;
  /** It has a word that pieces are called by (`minuet`, `study`), or a number behind such a word. */
  readonly isKind: boolean;
  readonly numbered: boolean;
}

/** What ends a title: what is said of the piece begins there. */
const ENDS: readonly string[] = [
  "tempo",
  "place",
  "amount",
  "tries",
  "times",
  "clock",
  "done",
  "goal",
  "sore",
  "focus",
  "with",
];
/** These end it in small letters only: with a capital they are words of it. */
const ENDS_SMALL: readonly string[] = [
  "outcome",
  "without click",
  "manner",
  "note value",
  "articulation",
  "direction",
  "span",
];
const LONGEST_TITLE = 10;

/** The words that stand where the title of a piece would; undefined where none do. */
export function titleIn(words: LineWords): TitleWords | undefined {
  const first = behindPartOf(words, firstWord(words));
  const from = behindKindOfBracket(words, first);
  let to = from;
  while (to < words.count && to - from < LONGEST_TITLE && !isEnd(words, from, to)) to++;
  while (to > from && isJoint(words, to - 1) && !isKeyOfTitle(words, to - 1)) to--;
  if (to <= from) return undefined;
  const [start, end] = [words.words[from]!.start, words.words[to - 1]!.end];
  const text = words.text.slice(start, end);
  if ((text.match(/\p{L}/gu) ?? []).length < 2) return undefined;
  const stretch = Array.from({ length: to - from }, (_, i) => from + i);
  return {
    start,
    end,
    text,
    from,
    to,
    capitals: stretch.filter((i) => words.isCapital(i) && !NOTES_TOGETHER.test(words.typed(i))).length,
    isKind: stretch.some((i) => words.is(i, "title-kind")),
    numbered: stretch.some((i) => isTitleNumber(words, i)),
  };
}

/** `GDG`, `Bb-C`, `A+B`: notes or sections, and no name. */
const NOTES_TOGETHER = /^[A-H][#b♯♭]?(?:[-+/&]?[A-H][#b♯♭]?)+$/u;
/** Of a part: `Sarabande 2e deel`. */
const ORDINAL = /^\d(?:st|nd|rd|th|er|re|ère|e|ème|eme|de|ste|ª|º)$/i;
const SECTIONS = /^[A-H](?:[+&/][A-H])+$/;

function isJoint(words: LineWords, i: number): boolean {
  return words.is(i, "title-joint") && (!words.isCapital(i) || words.found(i) !== undefined);
}

/** `Sonata in a`, `Valse en la`, `Suite D`: a joint by its letters, and the key of the piece by its place. */
function isKeyOfTitle(words: LineWords, i: number): boolean {
  if (/^[A-Z]$/.test(words.typed(i))) return true;
  return BEFORE_KEY_OF_TITLE.has(words.key(i - 1)) && words.found(i)?.meaning.type === "note";
}

/** Behind a leading tempo or amounts, and words that say that something was practised. */
export function firstWord(words: LineWords): number {
  let i = opensWithTempo(words) ? 1 : 0;
  while (words.found(i)?.meaning.type === "amount") i++;
  const verb = words.lengthOf(i, "practice-verb");
  if (verb === 0 || i + verb >= words.count) return i;
  i += verb;
  while (words.is(i, "title-lead") && !words.isCapital(i)) i++;
  return i;
}

/** `[72] Gavotte`, `69/76/84: study 4`: a sign stands between. */
export function opensWithTempo(words: LineWords): boolean {
  const isSigned = words.count > 1 && /^[\]),:|–—-]/.test(words.before(1));
  return isSigned && words.found(0) === words.items[0] && isLeadingTempo(words.items, 0, words.text);
}

/** `study 14`, `no. 4`, `op. 3`: the number belongs to the title. */
export function isTitleNumber(words: LineWords, i: number): boolean {
  const before = words.words[i - 1];
  if (words.is(i - 1, "title-kind") && !words.is(i - 1, "title-number") && !mayBeNumbered(words, i)) return false;
  if (/^\./.test(words.before(i + 1)) && COUNTED_PLACES.has(words.key(i + 1))) return false; // `Allegro 2. Seite`
  if (COUNTED.test(words.key(i + 1)) && /^\s*$/.test(words.before(i + 1))) return false; // `vocalise 5 notes`
  return (
    /^#?\d{1,3}[a-z]?$/.test(words.typed(i)) && before !== undefined && words.is(i - 1, "title-kind", "title-number")
  );
}

/** `song 41`, but `minuet 96 wobbly`: a dance and the like are seldom numbered so high. */
function mayBeNumbered(words: LineWords, i: number): boolean {
  return NUMBERED.has(words.key(i - 1)) || Number(words.typed(i).replace(/\D/g, "")) < SLOWEST_LEADING;
}

const COUNTED = /^(?:notes?|times|min|mins|minutes?|octaves?|oct)$/;

function isEnd(words: LineWords, from: number, i: number): boolean {
  if (i === from) return ENDS.includes(words.found(i)?.meaning.type ?? "");
  if (isBehindComposer(words, from, i)) return false;
  if (isForWhom(words, i)) return true;
  if (/[,;:!()→>=]/.test(words.before(i)) || /^[^\p{L}\p{N}&+#]+$/u.test(words.typed(i))) return true;
  if (/(?:^|\s)[–—-]+(?:\s|$)/.test(words.before(i)) || (/\.$/.test(words.before(i)) && words.typed(i - 1).length > 4))
    return true;
  if (isTitleNumber(words, i)) return false;
  if (/^(?:[x×]\d+|\d+\/\d+)$/i.test(words.typed(i)) || SECTIONS.test(words.typed(i))) return true;
  if (ORDINAL.test(words.typed(i))) return true;
  if (isTitleNumber(words, i - 1) && endsBehindNumber(words, i)) return true;
  const found = words.found(i);
  const type = found?.meaning.type ?? "";
  if (isNameOfPlace(words, i) || isOrigin(words, i)) return false;
  if (ENDS.includes(type) || type === "number" || type === "range") return true;
  if (words.isCapital(i)) return false;
  return ENDS_SMALL.includes(type) || words.is(i, "title-end", "same-as-above");
}

/** `Bach, Präludium h-Moll`: one or two names before a comma, and a kind of piece behind it. */
function isBehindComposer(words: LineWords, from: number, i: number): boolean {
  if (i - from > 2 || words.before(i) !== "," || !words.isCapital(i) || !words.is(i, "title-kind")) return false;
  for (let k = from; k < i; k++)
    if (!words.isCapital(k) || words.found(k) || words.is(k, ...NO_COMPOSERS)) return false;
  return true;
}

const NO_COMPOSERS = [
  "title-kind",
  "title-number",
  "heading",
  "filler",
  "instrument",
  "sentence-sign",
  "teacher",
] as const;

/** `Mouse Waltz for Granny`, `Hot Cross Buns to my grandad`. */
export function isForWhom(words: LineWords, i: number): boolean {
  if (!FOR_WHOM.has(words.key(i)) || words.isCapital(i)) return false;
  return PERSONS.has(words.key(i + 1)) || (WHOSE.has(words.key(i + 1)) && PERSONS.has(words.key(i + 2)));
}

/** `trio of the Minuet`: where the name of the piece begins. */
function behindPartOf(words: LineWords, from: number): number {
  const item = words.found(from);
  let i = from;
  if (item?.meaning.type === "place") while (i < words.count && words.found(i) === item) i++;
  else if (PARTS_OF_PIECES.has(words.key(from))) i++;
  if (i === from || words.key(i) !== "of" || words.key(i + 1) !== "the") return from;
  return i + 2 < words.count ? i + 2 : from;
}

/** `strathspey (Mrs Pirnie's Kettle) part 1`: the name of the piece stands in brackets behind its kind. */
function behindKindOfBracket(words: LineWords, from: number): number {
  const behind = from + words.lengthOf(from, "title-kind");
  if (behind === from || words.isCapital(from) || words.before(behind) !== "(") return from;
  const isNamed = words.isCapital(behind) && !words.found(behind) && !words.is(behind, "sentence-sign");
  return isNamed ? behind : from;
}

/** `No 15. Awful`, `study 9 sight reading`. */
function endsBehindNumber(words: LineWords, i: number): boolean {
  return (/^\./.test(words.before(i)) && words.isCapital(i)) || words.found(i)?.meaning.type === "activity";
}

/** `Fanfare for a Bridge`: a capital makes a word of it that names a place elsewhere. */
function isNameOfPlace(words: LineWords, i: number): boolean {
  const found = words.found(i);
  const isNamed = found?.meaning.type === "place" && found.meaning.word === "named";
  return isNamed && words.isCapital(i) && words.is(i - 1, "title-joint");
}

/** `Giga from the green book`: where the piece comes from; `from the top` is a place. */
function isOrigin(words: LineWords, i: number): boolean {
  const length = words.lengthOf(i, "title-origin");
  const isWhole = isTitleNumber(words, i - 1); // `Study no 3 from the green book`
  return length > 0 && !isWhole && !words.found(i) && !words.found(i + length);
}

/** Words that end a title and say that it was played: `again`, `from memory`, `with the CD`. */
export function isAgain(words: LineWords, i: number): boolean {
  return !words.isCapital(i) && words.is(i, "title-end");
}
