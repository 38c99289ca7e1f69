import { instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay, patternText, subjectToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { type Note, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import type { ClaimedNote, EntryLine } from "../../syntax/line/line.ts";
import type { FaultySubject, Item } from "../../syntax/words/meaning.ts";
import type { LineContext } from "../context.ts";
import { type Finding, type FindingFix, finding, quoted, replacement, type Stretch } from "../finding.ts";
import { checkKey } from "../notes/key.ts";
import { checkNoteList } from "../notes/note-list.ts";
import { checkOtherMinor, type OpenSubject } from "../notes/other-scale.ts";
import { checkListInRange, checkNotesInRange, type NamedAt } from "../notes/range.ts";
import { checkSignature } from "../notes/signature-claim.ts";
import { checkSteps } from "../notes/step-claim.ts";
import { isUnclosed, unclosedQuote } from "./entry-terms.ts";

/** An entry names one subject that can be, within the instrument's reach, and what it claims of it is true. */
export function checkSubject(
  line: EntryLine,
  { text, vocabulary, conventions }: Pick<LineContext, "text" | "vocabulary" | "conventions">,
): readonly Finding[] {
  if (line.same && line.subject?.start === line.same.start) return []; // told where it stands
  return subjectFindings(readEntry(line, 0, vocabulary), text, { vocabulary, conventions });
}

function subjectFindings(
  entry: Entry,
  text: string,
  context: Pick<LineContext, "vocabulary" | "conventions">,
): readonly Finding[] {
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
  return finding(
    "no-subject",
    line,
    "What was practised is missing: a scale (`D minor`), notes (`notes E5 F5`), or a title in quotes belongs first.",
  );
}

function faulty({ start, end, meaning }: Item<FaultySubject>, names: NoteNames): Finding {
  const { code, because, offers, certain } = meaning;
  const sentence = because[0]!.toUpperCase() + because.slice(1);
  const instead =
    offers.length === 0 ? "" : offers.length === 1 ? `: ${shown(offers[0]!)}` : `: ${offers.map(shown).join(" or ")}`;
  const fixes = offers.map((offer) =>
    replacement(
      offer.includes("\n") ? "Write one line for each" : `Change to "${quoted(offer)}"`,
      { start, end },
      offer,
      certain,
    ),
  );
  const help = code === "unknown-key" && !offers.length ? `. ${whatNotesAre(names)}` : "";
  return finding(code, { start, end }, `${sentence}${help}${instead}.`, fixes);
}

function whatNotesAre({ id, words, name }: NoteNames): string {
  if (words === null) return "The notes are the letters A to G, with up to two sharps or flats";
  const examples = [0, 6, -2].map((fifths) => name(nameAtFifths(fifths)));
  return `The journal names notes in ${id[0]!.toUpperCase()}${id.slice(1)}, as ${examples.join(", ")}`;
}

function shown(offer: string): string {
  return offer.includes("\n")
    ? offer
        .split("\n")
        .map((line) => `"${quoted(line)}"`)
        .join(", ")
    : `"${quoted(offer)}"`;
}

function unknownTitle(subject: Item, title: string, { vocabulary }: Pick<LineContext, "vocabulary">): Finding {
  const near = vocabulary.nearest(title, vocabulary.titleNames);
  const declare = declarationOf(title);
  const guess = near === undefined ? [] : [replacement(`Change to "${near}"`, subject, `"${near}"`)];
  const hint = near === undefined ? "" : ` Did you mean "${near}"?`;
  return finding(
    "unknown-title",
    subject,
    `"${quoted(title)}" is not declared, so nothing is known of its key or goal.${hint}`,
    [...guess, ...declare],
  );
}

/** Quotes with nothing between them name nothing that could be declared. */
function declarationOf(title: string): readonly FindingFix[] {
  if (title.trim() === "") return [];
  return [{ title: `Declare piece "${quoted(title)}"`, safe: false, edits: [], head: `piece "${title}"` }];
}

function musicFindings(
  entry: Entry,
  subject: Item,
  text: string,
  { conventions }: Pick<LineContext, "conventions">,
): readonly Finding[] {
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
    ...checkKey(toPlay, subject, conventions.names),
    ...rangeFindings(entry, text, conventions),
    ...claimFindings(entry, toPlay, text, conventions),
  ];
}

/** `minor` with nothing said of which. */
function openSubject({ source, subject }: Entry, names: NoteNames): OpenSubject | undefined {
  if (subject?.type !== "scale" || subject.kind !== "natural minor" || subject.unsaid !== "natural") return undefined;
  const { start, end } = source.subject!;
  const as = (kind: string): string => subjectText({ ...subject, kind }, names);
  return { start, end, as };
}

/** Notes and steps beside a subject that theory says nothing about. */
function claimsOnNothing({ source }: Entry): readonly Finding[] {
  const claims = source.claims.filter(({ type }) => type !== "signature");
  return claims.map((claim) =>
    finding(
      "unknown-term",
      claim,
      "Notes and steps behind a colon are checked beside one scale or one arpeggio; this line names neither.",
    ),
  );
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
  conventions: LineContext["conventions"],
): readonly Finding[] {
  const { names } = conventions;
  const name = subjectText(entry.subject!, names);
  const conditions = entry.attempts[0]?.conditions;
  const toPlay = exerciseToPlay(entry, conditions, conventions);
  const open = openSubject(entry, names);
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
    const patternName = entry.pattern && patternText(entry.pattern);
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
