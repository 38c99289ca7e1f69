import { isoDate } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectKey, subjectText } from "../journal/subject-text.ts";
import { CHORDS } from "../music/chord.ts";
import { KINDS } from "../music/kind.ts";
import { fifthsOf, printName, sameName } from "../music/note.ts";
import { describeFifths, isTheoretical } from "../music/signature.ts";
import { nameKey } from "../syntax/fold.ts";
import type { ScaleMeaning, SubjectMeaning, WrittenNote } from "../syntax/meaning.ts";
import { noteAt } from "../syntax/note-word.ts";
import { tokenise } from "../syntax/token.ts";
import { headDeclarations } from "./completion-heads.ts";
import type { Candidate } from "./completion-rank.ts";
import type { Usage } from "./completion-usage.ts";

/** What subjects are offered for, and how those that were used lately fit there. */
export interface SubjectPlace {
  readonly journal: Journal;
  readonly usage: Usage;
  /** What is typed so far, from the beginning of the subject on. */
  readonly typed: string;
  readonly fit: number;
}

const SUBJECTS: readonly string[] = ["scale", "chord", "title", "figure", "chain", "activity"];

/** Everything that may be practised: what was practised lately, what is aimed at, titles, tonic and kind, activities. */
export function subjectCandidates(place: SubjectPlace): Candidate[] {
  const { journal, fit } = place;
  return [
    ...usedSubjects(place),
    ...workSubjects(journal, fit),
    ...titles(journal, fit + 1),
    ...scaleCandidates(place),
    ...openings(journal, fit + 2),
  ];
}

/** As they were last typed; where the tonic is typed already, with the tonic as it stands. */
function usedSubjects({ usage, fit, typed }: SubjectPlace): Candidate[] {
  const tonic = tonicIn(typed);
  return [...usage.used].flatMap(([key, { text, type }]) =>
    SUBJECTS.includes(type) && key.startsWith(`${type}: `) && text.length <= 80
      ? [
          {
            label: withTonic(text, type, tonic),
            ...looksOf(type),
            fit,
            usage: key,
            identity: key,
            resolve: { topic: type === "title" ? "title" : "subject", key: text },
          },
        ]
      : [],
  );
}

/** A tonic that opens a text, and what follows it. */
export interface Tonic {
  readonly text: string;
  readonly rest: string;
  readonly note: WrittenNote;
}

export function tonicIn(text: string): Tonic | undefined {
  const tokens = tokenise(text);
  const run = noteAt(tokens, 0);
  if (!run || run.note.octave !== undefined) return undefined;
  const end = tokens[run.length - 1]!.end;
  return { text: text.slice(tokens[0]!.start, end), rest: text.slice(end), note: run.note };
}

/** `F# major` for who types `F♯` is `F♯ major`. */
export function withTonic(text: string, type: string, typed: Tonic | undefined): string {
  const own = typed && (type === "scale" || type === "chord") ? tonicIn(text) : undefined;
  return typed && own && sameName(own.note, typed.note) ? typed.text + own.rest : text;
}

export function looksOf(type: string): Pick<Candidate, "kind"> {
  return { kind: type === "title" ? "title" : type === "activity" || type === "figure" ? "term" : "scale" };
}

/** Subjects of aims and of set work. */
function workSubjects(journal: Journal, fit: number): Candidate[] {
  return headDeclarations(journal).flatMap((declared): Candidate[] => {
    if (declared.type !== "aim" && declared.type !== "set") return [];
    const meaning = declared.entry?.subject?.meaning;
    if (!meaning || meaning.type === "faulty subject" || meaning.type === "title") return [];
    const key = subjectKey(meaning);
    const detail = declared.by === undefined ? declared.type : `${declared.type}, by ${isoDate(declared.by)}`;
    return [{ label: subjectText(meaning), ...looksOf(meaning.type), detail, fit, usage: key, identity: key }];
  });
}

/** Short names where there are any, else titles in quotes. */
export function titles({ vocabulary }: Journal, fit: number): Candidate[] {
  return vocabulary.declared.titles.map(({ title, short }) => {
    const subject: SubjectMeaning = { type: "title", title, declared: true };
    const key = subjectKey(subject);
    const resolve = { topic: "title", key: title };
    const kind = "title" as const;
    if (short === undefined)
      return { label: `"${title}"`, aliases: [title], kind, fit, usage: key, identity: key, resolve };
    return {
      label: short,
      aliases: [title, `"${title}"`],
      kind,
      detail: title,
      fit,
      usage: key,
      identity: key,
      resolve,
    };
  });
}

/** Titles in quotes, for the declarations that name one. */
export function quotedTitles({ vocabulary }: Journal, fit: number): Candidate[] {
  return vocabulary.declared.titles.map(({ title }) => ({
    label: `"${title}"`,
    aliases: [title],
    kind: "title",
    fit,
    resolve: { topic: "title", key: title },
  }));
}

/** The tonic that is typed, as it is typed, with every kind of scale and chord. */
export function scaleCandidates({ journal, typed, fit }: SubjectPlace): Candidate[] {
  const found = tonicIn(typed);
  if (!found) return [];
  const { text: tonic, note } = found;
  const declared = journal.vocabulary.declared.scales.map(
    (name): Candidate => ({
      label: `"${name}" on ${tonic}`,
      aliases: [`${tonic} ${name}`, `${tonic} "${name}"`],
      kind: "scale",
      fit: fit + 1,
      resolve: { topic: "subject", key: `"${name}" on ${tonic}` },
    }),
  );
  return [
    ...kindsOn(tonic, note, fit + 1),
    ...chordsOn(tonic, fit + 1, journal),
    ...declared,
    ...(isLetter(found) ? keysOfLetter(tonic, note, fit + 2) : []),
  ];
}

function isLetter({ rest, note }: Tonic): boolean {
  return rest === "" && note.alter === 0;
}

/**
 * The usual keys on a letter with an accidental. Who types `Eb m` at once may get the list that was made for `E`: editors go on
 * with one that comes late.
 */
function keysOfLetter(letter: string, note: WrittenNote, fit: number): Candidate[] {
  return [-1, 1].flatMap((alter) => {
    const altered = { ...note, alter };
    const usual = KINDS.filter((kind) => !isTheoretical(altered, kind));
    return kindsOn(`${letter}${alter < 0 ? "b" : "#"}`, altered, fit, usual);
  });
}

function kindsOn(tonic: string, note: WrittenNote, fit: number, kinds = KINDS): Candidate[] {
  return kinds.flatMap(({ id, names, signature }): Candidate[] => {
    const [name, ...others] = names;
    const meaning: ScaleMeaning = {
      type: "scale",
      tonic: { letter: note.letter, alter: note.alter },
      kind: id,
      declared: false,
    };
    const detail = signature ? describeFifths(fifthsOf(note) + signature.own) : undefined;
    const offered = (words: string, alternatives: readonly string[], told = detail): Candidate => ({
      label: `${tonic} ${words}`,
      alternatives: alternatives.map((each) => `${tonic} ${each}`),
      kind: "scale",
      detail: told,
      fit,
      usage: `kind ${id}`,
      identity: `${subjectKey(meaning)}${words === "minor" ? " unsaid" : ""}`,
      resolve: { topic: "subject", key: `${printName(note)} ${words}` },
    });
    if (id !== "natural minor") return [offered(name!, others)];
    return [
      offered(
        name!,
        others.filter((other) => other !== "minor"),
      ),
      offered("minor", [], `natural minor, ${detail}`),
    ];
  });
}

function chordsOn(tonic: string, fit: number, { vocabulary }: Journal): Candidate[] {
  const order = CHORDS.map(({ id }) => id);
  return vocabulary.own.flatMap(({ words, meaning }): Candidate[] => {
    if (meaning.type !== "chord kind" || !order.includes(meaning.id)) return [];
    const [name, ...others] = words.map((each) => `${tonic} ${each}`);
    return [
      {
        label: name!,
        alternatives: others,
        kind: "scale",
        fit,
        usage: `chord kind ${meaning.id}${meaning.broken ? " broken" : ""}`,
        resolve: { topic: "subject", key: name! },
      },
    ];
  });
}

/** Words that a subject may open with, besides a tonic. */
function openings({ vocabulary, memo }: Journal, fit: number): Candidate[] {
  return memo.of(vocabulary, `openings ${fit}`, () => {
    const named = vocabulary.own.flatMap(({ words, meaning }) =>
      meaning.type === "activity" ? [{ label: words[0]!, alternatives: words.slice(1) }] : [],
    );
    const declared = vocabulary.declared.activities.map((label) => ({ label, alternatives: [] as string[] }));
    const activities = [...named, ...declared].map(
      ({ label, alternatives }): Candidate => ({
        label,
        alternatives,
        kind: "term",
        fit,
        usage: `activity: ${nameKey(label)}`,
      }),
    );
    const figures = ["long tones on", "notes", "trill", "dominant seventh in"].map(
      (label): Candidate => ({ label, insert: `${label} `, kind: "term", fit }),
    );
    const scales = vocabulary.declared.scales.map(
      (name): Candidate => ({
        label: `"${name}" on`,
        aliases: [name],
        insert: `"${name}" on `,
        kind: "scale",
        fit,
      }),
    );
    const chromatic: Candidate = {
      label: "chromatic",
      kind: "scale",
      fit,
      usage: "kind chromatic",
      resolve: { topic: "term", key: "chromatic" },
    };
    return [...figures, chromatic, ...scales, ...activities];
  });
}

/** Scales alone: after `on` of long tones, between the links of a chain, as the key of a piece. */
export function keyCandidates(place: SubjectPlace): Candidate[] {
  return [...usedSubjects(place).filter(({ usage }) => usage?.startsWith("scale: ")), ...scaleCandidates(place)];
}
