import { isoDate } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { chordPhrases } from "../../journal/language.ts";
import { subjectKey, subjectText } from "../../journal/subject-text.ts";
import { fifthsOf, sameName } from "../../music/notes/note.ts";
import { ENGLISH_NAMES, keysInOtherWords, type NoteNames } from "../../music/notes/note-names.ts";
import { KINDS } from "../../music/scales/kinds.ts";
import { isTheoretical } from "../../music/scales/signature.ts";
import { signatureTexts } from "../../music/scales/signature-texts.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { ScaleMeaning, SubjectMeaning, WrittenNote } from "../../syntax/words/meaning.ts";
import { noteAt, parted } from "../../syntax/words/note-word.ts";
import { isSubjectType } from "../../syntax/words/term-types.ts";
import { tokenise } from "../../syntax/words/token.ts";
import { completionTexts } from "./completion-texts.ts";
import { headDeclarations } from "./heads.ts";
import type { Candidate } from "./rank.ts";
import type { Usage } from "./usage.ts";

/** What subjects are offered for, and how those that were used lately fit there. */
export interface SubjectPlace {
  readonly journal: Journal;
  readonly usage: Usage;
  /** What is typed so far, from the beginning of the subject on. */
  readonly typed: string;
  readonly fit: number;
  /** Subjects by `subjectKey` that are not likely to come once more. */
  readonly had?: ReadonlySet<string>;
}

/** What the day has already comes so much later. */
const HAD_LATER = 2;

/**
 * Everything that may be practised: what was practised lately, what is aimed at, titles, tonic and kind, activities.
 */
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
function usedSubjects({ journal, usage, fit, typed, had }: SubjectPlace): Candidate[] {
  const tonic = tonicIn(typed, journal.names);
  return [...usage.used].flatMap(([key, { text, type }]) =>
    isSubjectType(type) && key.startsWith(`${type}: `) && text.length <= 80
      ? [
          {
            label: withTonic(text, type, tonic, journal.names),
            ...looksOf(type),
            fit: had?.has(key) ? fit + HAD_LATER : fit,
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

export function tonicIn(text: string, names: NoteNames): Tonic | undefined {
  const tokens = parted(tokenise(text), names);
  const run = noteAt(tokens, 0, names);
  if (!run || run.note.octave !== undefined) return undefined;
  const end = tokens[run.length - 1]!.end;
  return { text: text.slice(tokens[0]!.start, end), rest: text.slice(end), note: run.note };
}

/** `F# major` for who types `F♯` is `F♯ major`. */
export function withTonic(text: string, type: string, typed: Tonic | undefined, names: NoteNames): string {
  const own = typed && (type === "scale" || type === "chord") ? tonicIn(text, names) : undefined;
  return typed && own && sameName(own.note, typed.note) ? typed.text + own.rest : text;
}

const TERM_SUBJECTS: readonly string[] = ["activity", "figure", "technique"];

export function looksOf(type: string): Pick<Candidate, "kind"> {
  return { kind: type === "title" ? "title" : TERM_SUBJECTS.includes(type) ? "term" : "scale" };
}

/** Subjects of aims and of set work. */
function workSubjects(journal: Journal, fit: number): Candidate[] {
  return headDeclarations(journal).flatMap((declared): Candidate[] => {
    if (declared.type !== "aim" && declared.type !== "set") return [];
    const meaning = declared.entry?.subject?.meaning;
    if (!meaning || meaning.type === "faulty subject" || meaning.type === "title") return [];
    const key = subjectKey(meaning);
    const work = completionTexts[declared.type];
    const detail = declared.by === undefined ? work : completionTexts.workBy(work, isoDate(declared.by));
    return [
      { label: subjectText(meaning, journal.names), ...looksOf(meaning.type), detail, fit, usage: key, identity: key },
    ];
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
  const { names } = journal;
  const found = tonicIn(typed, names);
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
    ...kindsOn({ tonic, note, names, fit: fit + 1 }),
    ...chordsOn({ tonic, note, names, fit: fit + 1 }, journal),
    ...declared,
    ...(isLetter(found) ? keysOfLetter({ tonic, note, names, fit: fit + 2 }) : []),
  ];
}

function isLetter({ rest, note }: Tonic): boolean {
  return rest === "" && note.alter === 0;
}

/** A tonic as it is typed, and what is offered on it. */
interface OnTonic {
  readonly tonic: string;
  readonly note: WrittenNote;
  readonly names: NoteNames;
  readonly fit: number;
}

/**
 * The usual keys on a letter with an accidental. Who types `Eb m` at once may get the list that was made for `E`:
 * editors go on with one that comes late.
 */
function keysOfLetter({ tonic, note, names, fit }: OnTonic): Candidate[] {
  return [-1, 1].flatMap((alter) => {
    const altered = { ...note, alter };
    const usual = KINDS.filter((kind) => !isTheoretical(altered, kind));
    const spelled = names.words === null ? `${tonic}${alter < 0 ? "b" : "#"}` : names.name(altered, "words");
    return kindsOn({ tonic: spelled, note: altered, names, fit }, usual);
  });
}

function kindsOn({ tonic, note, names, fit }: OnTonic, kinds = KINDS): Candidate[] {
  const key = (words: string): string => names.key(note, words, tonic);
  return kinds.flatMap(({ id, names: [name, ...others], signature }): Candidate[] => {
    const meaning: ScaleMeaning = {
      type: "scale",
      tonic: { letter: note.letter, alter: note.alter },
      kind: id,
      declared: false,
    };
    const detail = signature ? signatureTexts.accidentals(fifthsOf(note) + signature.own) : undefined;
    const offered = (words: string, alternatives: readonly string[], told = detail): Candidate => ({
      label: key(words),
      alternatives: otherWays({ tonic, note, names }, words, alternatives),
      kind: "scale",
      detail: told,
      fit,
      usage: `kind ${id}`,
      identity: `${subjectKey(meaning)}${words === "minor" ? " unsaid" : ""}`,
      resolve: { topic: "subject", key: names.key(note, words) },
    });
    if (id !== "natural minor") return [offered(name!, others)];
    return [
      offered(
        name!,
        others.filter((other) => other !== "minor"),
      ),
      offered("minor", [], completionTexts.naturalMinor(detail!)),
    ];
  });
}

/** The other ways to say a kind on a tonic: its further names, and each with what else the language calls the mode. */
function otherWays(
  { tonic, note, names }: Omit<OnTonic, "fit">,
  name: string,
  others: readonly string[],
): readonly string[] {
  const further = others.map((other) => names.key(note, other, tonic));
  return [...further, ...[name, ...others].flatMap((each) => keysInOtherWords(note, each, tonic, names))];
}

function chordsOn({ tonic, note, names, fit }: OnTonic, { memo, vocabulary }: Journal): Candidate[] {
  const phrases = memo.of(vocabulary, "chords in English", () => chordPhrases(ENGLISH_NAMES));
  return phrases.flatMap(({ words: [name, ...others], meaning }): Candidate[] => {
    if (meaning.type !== "chord kind") return [];
    const label = names.key(note, name!, tonic);
    return [
      {
        label,
        alternatives: otherWays({ tonic, note, names }, name!, others),
        kind: "scale",
        fit,
        usage: `chord kind ${meaning.id}${meaning.broken ? " broken" : ""}`,
        resolve: { topic: "subject", key: label },
      },
    ];
  });
}

/** Words that a subject may open with, besides a tonic. */
function openings({ vocabulary, memo }: Journal, fit: number): Candidate[] {
  return memo.of(vocabulary, `openings ${fit}`, () => {
    const named = vocabulary.own.flatMap(({ words, meaning }) =>
      meaning.type === "activity" || meaning.type === "technique"
        ? [{ label: words[0]!, alternatives: words.slice(1), type: meaning.type, name: meaning.name }]
        : [],
    );
    const declared = vocabulary.declared.activities.map((label) => ({
      label,
      alternatives: [] as string[],
      type: "activity" as const,
      name: label,
    }));
    const activities = [...named, ...declared].map(
      ({ label, alternatives, type, name }): Candidate => ({
        label,
        alternatives,
        kind: "term",
        fit,
        usage: `${type}: ${nameKey(name)}`,
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
