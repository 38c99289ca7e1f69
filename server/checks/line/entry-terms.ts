import { instrumentsMeant } from "../../journal/instrument-names.ts";
import { chordById } from "../../music/chords/chord.ts";
import { PATTERNS, patternById } from "../../music/patterns/pattern.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Item, Meaning } from "../../syntax/words/meaning.ts";
import { hasTooManySigns } from "../../syntax/words/note-word.ts";
import { type MeaningType, TERM_TYPES } from "../../syntax/words/term-types.ts";
import { isQuote } from "../../syntax/words/token.ts";
import type { LineContext } from "../context.ts";
import { type Finding, type FindingFix, finding, offered, quoted, replacement, type Stretch } from "../finding.ts";
import { listed } from "../listed.ts";

/** Every word of an entry says something that has its place there. */
export function checkEntryTerms(
  line: EntryLine,
  { text, vocabulary }: Pick<LineContext, "text" | "vocabulary">,
): readonly Finding[] {
  const pattern = line.items.find((item) => item.meaning.type === "pattern");
  const counted = { ...line, items: withCountedWords(line.items, text) };
  return counted.items.flatMap((item, i) => {
    const notes = notesWithoutColon(counted, i, text);
    if (notes) return notes;
    if (i === 0 && !line.subject && item.meaning.type === "unknown")
      return unknownSubject(item, text.slice(item.start, item.end), { vocabulary });
    const isBehindSubject = i === 0 && line.subject !== undefined && item.start - line.subject.end <= 1;
    const types = isBehindSubject ? BEHIND_SUBJECT : TERM_TYPES;
    return termFinding(item, text, line, { pattern, types, vocabulary }) ?? [];
  });
}

/** Right behind a subject a kind of scale or chord may go on with it. */
const BEHIND_SUBJECT: readonly MeaningType[] = [...TERM_TYPES, "kind", "part of a kind", "chord kind"];

function dash(item: Item, text: string): Finding {
  const message = "Put a comma here: a dash alone says nothing.";
  const start = item.start - (/\s/.test(text[item.start - 1] ?? "") ? 1 : 0);
  const fixes = text.slice(0, start).trim() === "" ? [] : [{ start, end: item.end, text: "," }];
  return finding(
    "unknown-term",
    item,
    message,
    fixes.map((edit) => ({ title: "Write a comma", safe: true, edits: [edit] })),
  );
}

/** Where the subject belongs stands something else: a piece that is not declared, more often than not. */
function unknownSubject(item: Item, typed: string, context: Pick<LineContext, "vocabulary">): Finding {
  const near = context.vocabulary.nearest(typed, context.vocabulary.subjectNames, SUBJECT_WORDS);
  const found = unknown(
    item,
    typed,
    "A scale, notes, or a title in quotes comes first",
    near === undefined ? [] : [near],
  );
  const isName = /^\p{Lu}/u.test(typed) && !/["“”„«»]/.test(typed);
  return isName
    ? { ...found, fixes: [...found.fixes, replacement("Put it in quotes, as a title", item, `"${typed}"`)] }
    : found;
}

/** What a subject may begin with beside a tonic. */
const SUBJECT_WORDS = [
  "notes",
  "long tones",
  "trill",
  "chromatic",
  "sight-reading",
  "improvising",
  "tuning",
  "breathing",
  "listening",
  "score study",
  "run-through",
  "rehearsal",
  "dominant seventh",
];

/** Notes right behind the subject without their colon are one finding, with the colon as its fix. */
function notesWithoutColon(line: EntryLine, i: number, text: string): readonly Finding[] | undefined {
  const isNote = (item: Item | undefined): boolean =>
    item?.meaning.type === "note" || (item?.meaning.type === "unknown" && /^[-–|]$/.test(item.meaning.words));
  if (!isNote(line.items[i])) return undefined;
  const first = line.items.findLastIndex((item, k) => k < i && !isNote(item)) + 1;
  const end = line.items.findIndex((item, k) => k > i && !isNote(item));
  const run = line.items.slice(first, end < 0 ? undefined : end);
  const notes = run.filter((item) => item.meaning.type === "note");
  if (notes.length < 2) return undefined;
  if (first < i) return [];
  const subject = line.subject;
  const stretch = { start: notes[0]!.start, end: run.at(-1)!.end };
  const behind = i === 0 && subject && subject.end <= stretch.start && line.claims.length === 0;
  const fixes = behind
    ? [
        {
          title: "Put a colon before the notes",
          safe: false,
          edits: [{ start: subject.end, end: stretch.start, text: ": " }],
        },
      ]
    : [];
  return [
    finding(
      "unknown-term",
      stretch,
      `Put a colon before the notes: \`D minor: ${quoted(text.slice(stretch.start, stretch.end))}\`.`.replace(
        "D minor",
        subject ? quoted(text.slice(subject.start, subject.end)) : "D minor",
      ),
      fixes,
    ),
  ];
}

/** A triad has two inversions, a chord of four notes three: one for each note but the root. */
function noSuchInversion(item: Stretch, inversion: number, chord: string): Finding | undefined {
  const notes = chordById(chord)?.degrees.length ?? 0;
  if (inversion < notes) return undefined;
  const message = "A triad has only two inversions: a third needs a chord of four notes.";
  return finding("arpeggio-note", item, message);
}

function termFinding(
  item: Item,
  text: string,
  line: EntryLine,
  context: Pick<LineContext, "vocabulary"> & {
    readonly pattern: Item | undefined;
    /** What may stand here. */
    readonly types: readonly MeaningType[];
  },
): Finding | undefined {
  const { meaning } = item;
  const { pattern, types } = context;
  const typed = text.slice(item.start, item.end);
  switch (meaning.type) {
    case "unknown":
      if (typed === "-") return dash(item, text);
      if (hasTooManySigns(typed)) return unknown(item, typed, "A note has at most two sharps or flats", []);
      if (/^on\s+\S/i.test(typed)) return unknownInstrument(item, typed, context);
      return unknown(
        item,
        typed,
        "A pattern, articulation, tempo or outcome can go here",
        nearestTo(typed, types, context),
      );
    case "quoted":
      return quotedTerm(item, meaning.text, meaning.closed, context);
    case "variant":
      return variant(item, meaning.id, { text, line, pattern });
    case "inversion":
      return line.subject?.meaning.type === "chord"
        ? noSuchInversion(item, meaning.inversion, line.subject.meaning.chord)
        : misplaced(item, typed, "inversions belong to arpeggios and chords");
    case "number":
    case "range":
      return finding(
        "unknown-term",
        item,
        `What is ${typed}? Write \`at ${typed}\` for a tempo, \`${typed} min\` for time, \`bars ${typed}\` for a place.`,
        [replacement(`Write "at ${typed}"`, item, `at ${typed}`)],
      );
    case "note":
      return finding(
        "unknown-term",
        item,
        `"${typed}" does not go here: notes come after a colon, as in \`D minor: D E F G A Bb C D\`.`,
      );
    default:
      return MISPLACED[meaning.type] === undefined
        ? undefined
        : misplaced(item, typed, MISPLACED[meaning.type]!, misplacedFixes(item, typed, meaning));
  }
}

/** Words that are known, and go elsewhere: `rule` says where. */
export function misplaced(item: Item, typed: string, rule: string, fixes: readonly FindingFix[] = []): Finding {
  return finding("unknown-term", item, `"${quoted(typed)}" does not go here: ${rule}.`, fixes);
}

/** After `on`, where the name of an instrument goes. */
function unknownInstrument(item: Item, typed: string, context: Pick<LineContext, "vocabulary">): Finding {
  const named = typed.replace(/^on\s+/i, "");
  const name = named.replace(/^["“”„«»]|["“”„«»]$/g, "");
  const meant = instrumentsMeant(name, context.vocabulary);
  if (meant.length < 2) {
    const offers = meant.map((each) => `on ${each}`);
    const words = name === named ? typed : name;
    return unknown(item, words, "After `on` comes an instrument", offers);
  }
  const fixes = meant.map((each) => replacement(`Change to "on ${each}"`, item, `on ${each}`));
  return finding("unknown-term", item, `Which instrument is "${quoted(name)}": ${listed(meant, "or")}?`, fixes);
}

/** What is known, but not as a term of an entry. */
const MISPLACED: Partial<Record<Meaning["type"], string>> = {
  scale: "this line already has something to play; start a new line",
  chord: "this line already has something to play; start a new line",
  title: "this line already has something to play; start a new line",
  figure: "this line already has something to play; start a new line",
  activity: "this line already has something to play; start a new line",
  free: "this line already has something to play; start a new line",
  chain: "this line already has something to play; start a new line",
  several: "this line already has something to play; start a new line",
  "faulty subject": "this line already has something to play; start a new line",
  kind: "a kind of scale comes right after its tonic, as in `D minor`",
  "part of a kind": "a kind of scale comes right after its tonic, as in `D harmonic minor`",
  "chord kind": "a chord comes right after its root, as in `D minor arpeggio`",
  weekday: "a weekday goes on a day line",
  clock: "a time of day goes on a `session` line",
  phase: "a phase goes on a line of its own",
  "line word": "it goes on a line of its own",
  date: "a date opens a day, or goes in a declaration",
  goal: "a goal goes in a piece's declaration",
  bars: "bars are written as in `bars 17-32`",
  days: "days go with work that is `set`",
  "last note": "it goes in a piece's declaration",
};

function misplacedFixes(item: Item, typed: string, meaning: Meaning): readonly FindingFix[] {
  if (meaning.type !== "bars") return [];
  const bars = `bars ${typed.replace(/\D+/g, "")}`;
  return [replacement(`Write "${bars}"`, item, bars)];
}

/** Words that are not known, what can go there in a sentence without its stop, and what may have been meant. */
export function unknown(item: Item, typed: string, expected: string, offers: readonly string[]): Finding {
  const guess = offers[0] === undefined ? "" : ` Did you mean ${offered(offers[0])}?`;
  const fixes = offers.map((each) => replacement(`Change to ${offered(each)}`, item, each));
  return finding("unknown-term", item, `I do not know "${quoted(typed)}". ${expected}.${guess}`, fixes);
}

/** What is counted on a journal's lines. */
const UNITS = ["minutes", "hours", "notes", "octaves", "bars", "times", "sharps", "flats", "in a row"];

/** A number and the unknown word behind it are one slip: `50 minuts`. */
export function withCountedWords(items: readonly Item[], text: string): readonly Item[] {
  return items.flatMap((item, i): Item[] => {
    const before = items[i - 1];
    const next = items[i + 1];
    if (item.meaning.type === "number" && next?.meaning.type === "unknown" && next.start - item.end <= 1) {
      return [
        { start: item.start, end: next.end, meaning: { type: "unknown", words: text.slice(item.start, next.end) } },
      ];
    }
    const taken = item.meaning.type === "unknown" && before?.meaning.type === "number" && item.start - before.end <= 1;
    return taken ? [] : [item];
  });
}

/**
 * The nearest phrase, or where each word is near another one, those.
 *
 * @param types what may stand there; of the same place the same array
 */
export function nearestTo(
  typed: string,
  types: readonly MeaningType[],
  { vocabulary }: Pick<LineContext, "vocabulary">,
): readonly string[] {
  if (types.includes("steps") && /^[TSWHA](?:\s?[TSWHA]){4,}$/.test(typed)) return [`steps ${typed}`];
  const name = types.includes("quoted") ? (vocabulary.pattern(typed) ?? vocabulary.title(typed)) : undefined;
  if (name !== undefined) return [`"${name}"`];
  const counted = /^(\d\S*)\s+(\p{L}+)$/u.exec(typed);
  const unit = counted && vocabulary.nearest(counted[2]!, UNITS);
  if (unit) return isSame(unit, counted[2]!) ? [] : [`${counted[1]} ${unit}`];
  const known = vocabulary.wordsFor(types);
  const whole = vocabulary.nearest(typed, known) ?? vocabulary.nearest(typed.replace(/[-‐‑]/g, " "), known);
  if (whole !== undefined) return isSame(whole, typed) ? [] : [whole];
  const words = typed.split(/\s+/);
  if (words.length < 2 || words.length > 4 || words.some((word) => word.length < 4)) return [];
  const each = new Set(words.map((word) => vocabulary.nearest(word, known)));
  return each.size === words.length && !each.has(undefined) ? [[...each].join(", ")] : [];
}

/** What stands there already is no offer. */
function isSame(near: string, typed: string): boolean {
  return phraseKey(near) === phraseKey(typed);
}

function quotedTerm(
  item: Item,
  name: string,
  closed: boolean,
  { vocabulary }: Pick<LineContext, "vocabulary">,
): Finding | undefined {
  if (!closed) return unclosedQuote(item);
  if (vocabulary.pattern(name) !== undefined) return undefined;
  const near = vocabulary.nearest(nameKey(name), vocabulary.declared.patterns);
  const message = `There is no pattern "${quoted(name)}" yet.${near === undefined ? ` Declare it with its degrees: \`pattern "${quoted(name)}": 1 3 2 4\`.` : ` Did you mean "${near}"?`}`;
  return finding(
    "unknown-pattern",
    item,
    message,
    near === undefined ? [] : [replacement(`Change to "${near}"`, item, `"${near}"`)],
  );
}

export function unclosedQuote(item: { readonly start: number; readonly end: number }): Finding {
  return finding("unclosed-quote", item, "The closing quote is missing after the name.", [
    { title: "Close the quote", safe: false, edits: [{ start: item.end, end: item.end, text: '"' }] },
  ]);
}

/** Whether a stretch of a line begins with a quote that does not close. */
export function isUnclosed(text: string, { start, end }: { readonly start: number; readonly end: number }): boolean {
  if (!isQuote(text[start] ?? "")) return false;
  return end - start < 2 || ![...text.slice(start + 1, end)].some(isQuote);
}

/** A variant is one of its pattern's; the fixes are those that the pattern has, or the pattern as it is. */
function variant(
  item: Item,
  id: string,
  { text, line, pattern }: { readonly text: string; readonly line: EntryLine; readonly pattern: Item | undefined },
): Finding | undefined {
  if (pattern?.meaning.type !== "pattern") {
    const having = PATTERNS.filter(({ variants }) => isAmong(variants, id)).map(({ names }) => names[0]!);
    const message = `"${id}" is a way of playing a pattern; name one: ${listed(having, "or")}.`;
    return finding("unknown-term", item, message, [withoutTerm(item, text, line)]);
  }
  const { names, variants } = patternById(pattern.meaning.id)!;
  if (isAmong(variants, id)) return undefined;
  const has = variants.length ? `it has ${variants.join(" and ")}` : "it has only one form";
  const offers = variants.map((each) => replacement(`Change to ${each}`, item, each));
  return finding("unknown-pattern", item, `${names[0]} has no ${id} form: ${has}.`, [
    ...offers,
    withoutTerm(item, text, line),
  ]);
}

function isAmong(variants: readonly string[], id: string): boolean {
  return variants.includes(id);
}

/** The line without a term, and without the comma before it; its bullet stays. */
function withoutTerm({ start, end }: Item, text: string, line: EntryLine): FindingFix {
  const before = text.slice(line.start, start).replace(/[\s,]+$/u, "");
  const from = before === "" ? start : line.start + before.length;
  return replacement(`Take out "${quoted(text.slice(start, end))}"`, { start: from, end }, "");
}
