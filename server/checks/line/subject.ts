import { instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay, patternText, subjectToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { type Note, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import type { ClaimedNote, EntryLine } from "../../syntax/line/line.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { FaultySubject, Item } from "../../syntax/words/meaning.ts";
import type { LineContext } from "../context.ts";
import { type Finding, type FindingFix, finding, quoted, replacement, type Stretch } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { checkKey, type OwnWords } from "../notes/key.ts";
import { checkNoteList } from "../notes/note-list.ts";
import { checkOtherMinor, type OpenSubject } from "../notes/other-scale.ts";
import { checkListInRange, checkNotesInRange, type NamedAt } from "../notes/range.ts";
import { checkSignature } from "../notes/signature-claim.ts";
import { checkSteps } from "../notes/step-claim.ts";
import { isUnclosed, unclosedQuote } from "./entry-terms.ts";
import { lineTexts } from "./line-texts.ts";

/** An entry names one subject that can be, within the instrument's reach, and what it claims of it is true. */
export function checkSubject(
  line: EntryLine,
  { text, ...context }: SubjectContext & Pick<LineContext, "text">,
): readonly Finding[] {
  if (line.same && line.subject?.start === line.same.start) return []; // told where it stands
  return subjectFindings(readEntry(line, 0, context.vocabulary), text, context);
}

type SubjectContext = Pick<LineContext, "vocabulary" | "memo" | "conventions">;

function subjectFindings(entry: Entry, text: string, context: SubjectContext): readonly Finding[] {
  const { subject } = entry.source;
  // An unknown word there is told by itself.
  if (!subject) return entry.source.items[0]?.meaning.type === "unknown" ? [] : [noSubject(entry.source)];
  if (subject.meaning.type === "faulty subject")
    return [faulty(subject as Item<FaultySubject>, context.conventions.names)];
  if (isUnclosed(text, subject)) return [unclosedQuote(subject)];
  if (subject.meaning.type === "title") {
    const unknown = subject.meaning.declared ? [] : [unknownTitle(subject, subject.meaning.title, context)];
    return [...unknown, ...claimsOnNothing(entry)];
  }
  return musicFindings(entry, subject, text, context);
}

function noSubject(line: EntryLine): Finding {
  return finding("no-subject", line, lineTexts.nothingPlayed);
}

function faulty({ start, end, meaning }: Item<FaultySubject>, names: NoteNames): Finding {
  const { code, because, offers, certain } = meaning;
  const isUnknownKey = code === "unknown-key";
  const guess = offers.length === 0 ? "" : fixTexts.didYouMean(offers.map(shown));
  const fixes = offers.map((offer) =>
    replacement(
      offer.includes("\n") ? lineTexts.oneLineEach : fixTexts.changeTo(fixTexts.quoted(quoted(offer))),
      { start, end },
      offer,
      certain,
    ),
  );
  const sentence = lineTexts.faultySubject(because, isUnknownKey && offers.length ? names.id : undefined);
  const help = isUnknownKey && !offers.length ? whatNotesAre(names) : "";
  return finding(code, { start, end }, sentence + help + guess, fixes);
}

function whatNotesAre(names: NoteNames): string {
  if (names.words === null) return lineTexts.englishNotes;
  const examples = [0, 6, -2].map((fifths) => names.name(nameAtFifths(fifths)));
  return lineTexts.notesIn(names.id, examples.join(", "));
}

function shown(offer: string): string {
  return offer
    .split("\n")
    .map((line) => fixTexts.quoted(quoted(line)))
    .join(", ");
}

function unknownTitle(subject: Item, title: string, { vocabulary }: Pick<LineContext, "vocabulary">): Finding {
  const near = vocabulary.nearest(title, vocabulary.titleNames);
  const declare = declarationOf(title);
  const offer = near === undefined ? undefined : fixTexts.quoted(near);
  const guess = offer === undefined ? [] : [replacement(fixTexts.changeTo(offer), subject, `"${near}"`)];
  const hint = offer === undefined ? "" : fixTexts.didYouMean([offer]);
  return finding("unknown-title", subject, lineTexts.titleNotDeclared(quoted(title)) + hint, [...guess, ...declare]);
}

/** Quotes with nothing between them name nothing that could be declared. */
function declarationOf(title: string): readonly FindingFix[] {
  if (title.trim() === "") return [];
  return [{ title: lineTexts.declare(`piece "${quoted(title)}"`), safe: false, edits: [], head: `piece "${title}"` }];
}

function musicFindings(entry: Entry, subject: Item, text: string, context: SubjectContext): readonly Finding[] {
  const { conventions } = context;
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  const meaning = entry.subject!;
  if (meaning.type === "figure" || meaning.type === "technique") {
    const written = (meaning.notes ?? []).filter((note): note is Note => note.octave !== undefined);
    return [
      ...(instrument ? checkNotesInRange(written, instrument, namedAt(subject, text), conventions.names) : []),
      ...claimsOnNothing(entry),
    ];
  }
  const toPlay = subjectToPlay(meaning, entry.inversion ?? 0, conventions);
  // A declaration that cannot be read says so itself.
  if (!toPlay) return meaning.type === "scale" ? [] : claimsOnNothing(entry);
  return [
    ...checkKey(toPlay, subject, conventions.names, inOwnWords(entry, text, context)),
    ...rangeFindings(entry, text, conventions),
    ...claimFindings(entry, toPlay, text, context),
  ];
}

/**
 * The subject as the line has it, where these words say all of it by themselves: not where a kind comes further on, or
 * is left unsaid.
 */
function ownWords(entry: Entry, text: string, context: SubjectContext): string | undefined {
  const { subject, same } = entry.source;
  const isUnsaid = entry.subject?.type === "scale" && entry.subject.unsaid !== undefined;
  if (!entry.subject || !subject || subject.start === same?.start || isUnsaid) return undefined;
  const typed = text.slice(subject.start, subject.end);
  const shown = subjectText(entry.subject, context.conventions.names);
  if (typed === shown) return shown;
  return saysAlone(typed, shown, context) ? quoted(typed) : undefined;
}

/** Whether words by themselves name the subject that is shown so. */
function saysAlone(words: string, shown: string, { vocabulary, memo, conventions }: SubjectContext): boolean {
  const alone = parseLine(words, { vocabulary, memo, head: false });
  const read = alone.type === "entry" && alone.items.length === 0 ? readEntry(alone, 0, vocabulary).subject : undefined;
  return read !== undefined && subjectText(read, conventions.names) === shown;
}

function inOwnWords(entry: Entry, text: string, context: SubjectContext): OwnWords {
  const { start, end } = entry.source.subject!;
  const typed = text.slice(start, end);
  return {
    words: () => ownWords(entry, text, context),
    on: (tonic, shown) => {
      const own = typed.replace(/^[^\s-]+/, /^\p{Ll}/u.test(typed) ? tonic.toLowerCase() : tonic);
      return saysAlone(own, shown, context) ? own : shown;
    },
  };
}

/** The pattern as the line has it, with its variant. */
function ownPattern({ pattern, source }: Entry, text: string): string | undefined {
  if (pattern?.type !== "known") return undefined;
  const words = (["pattern", "variant"] as const).flatMap((type) => {
    const item = source.items.find(({ meaning }) => meaning.type === type);
    return item ? [text.slice(item.start, item.end)] : [];
  });
  return words.length === (pattern.variant ? 2 : 1) ? quoted(words.join(" ")) : undefined;
}

/** `minor` with nothing said of which. */
function openSubject({ source, subject }: Entry, text: string, context: SubjectContext): OpenSubject | undefined {
  if (subject?.type !== "scale" || subject.kind !== "natural minor" || subject.unsaid !== "natural") return undefined;
  const { start, end } = source.subject!;
  const { names } = context.conventions;
  const typed = text.slice(start, end);
  const as = (kind: string): string => {
    const shown = subjectText({ ...subject, kind }, names);
    const own = `${typed} ${kind.replace(" minor", "")}`;
    return typed !== subjectText({ ...subject, kind: "minor" }, names) && saysAlone(own, shown, context) ? own : shown;
  };
  return { start, end, as };
}

/** Notes and steps beside a subject that theory says nothing about. */
function claimsOnNothing({ source }: Entry): readonly Finding[] {
  const claims = source.claims.filter(({ type }) => type !== "signature");
  return claims.map((claim) => finding("unknown-term", claim, lineTexts.claimsOnNothing));
}

/** Only what the line names is held against the instrument: a span with notes, or so many octaves or notes. */
function rangeFindings(entry: Entry, text: string, conventions: LineContext["conventions"]): readonly Finding[] {
  const span = entry.source.items.find((item) => item.meaning.type === "span");
  const conditions = entry.attempts[0]?.conditions;
  const stated = span ?? (entry.subject?.type === "scale" && entry.subject.to ? entry.source.subject : undefined);
  const toPlay = stated && exerciseToPlay({ ...entry, pattern: undefined }, conditions, conventions);
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  if (!stated || !toPlay || !instrument || toPlay.reach?.type === "full range") return [];
  const { reach } = toPlay;
  const notes = reach?.type === "between" ? [reach.from, reach.to] : notesToPlay(toPlay).outOfRange;
  return checkNotesInRange(notes, instrument, namedAt(stated, text), conventions.names);
}

function namedAt({ start, end }: Item, line: string): NamedAt {
  return { start, end, text: line.slice(start, end) };
}

function claimFindings(
  entry: Entry,
  subject: NonNullable<ReturnType<typeof subjectToPlay>>,
  text: string,
  context: SubjectContext,
): readonly Finding[] {
  if (entry.source.claims.length === 0) return [];
  const { conventions } = context;
  const { names } = conventions;
  const name = ownWords(entry, text, context) ?? subjectText(entry.subject!, names);
  const conditions = entry.attempts[0]?.conditions;
  const toPlay = exerciseToPlay(entry, conditions, conventions);
  const open = openSubject(entry, text, context);
  const orOtherMinor = (
    claim: Stretch,
    what: "notes" | "steps",
    check: (beside: typeof subject) => readonly Finding[],
  ): readonly Finding[] => {
    const found = check(subject);
    if (found.length === 0 || !open || subject.type !== "scale") return found;
    const other = checkOtherMinor(claim, what, open, (kind) => check({ ...subject, kind }).length === 0);
    return other ? [other] : found;
  };
  return entry.source.claims.flatMap((claim): readonly Finding[] => {
    if (claim.type === "signature")
      return checkSignature({ ...claim, text: text.slice(claim.start, claim.end) }, subject, name, names);
    if (claim.type === "steps")
      return orOtherMinor(claim, "steps", (beside) => checkSteps(claim, beside, name, names, conditions?.direction));
    if (!toPlay) return [];
    const { pattern, variant, direction, reach, instrument } = toPlay;
    const played = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
    const patternName = ownPattern(entry, text) ?? (entry.pattern && patternText(entry.pattern));
    const found = orOtherMinor(claim, "notes", (beside) =>
      checkNoteList(claim.notes, {
        subject: beside,
        subjectText: name,
        pattern,
        patternText: patternName,
        variant,
        direction,
        reach,
        instrument,
        names,
      }),
    );
    return played ? [...found, ...checkListInRange(untold(claim.notes, found), played, names)] : found;
  });
}

/** What is wrong on a note by itself says enough of it. */
function untold(notes: readonly ClaimedNote[], found: readonly Finding[]): readonly ClaimedNote[] {
  return notes.filter((note) => !found.some(({ start, end }) => start === note.start && end === note.end));
}
