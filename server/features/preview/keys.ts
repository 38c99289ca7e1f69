import type { PreviewCell, PreviewKeys, PreviewKind, PreviewLink } from "../../../shared/preview.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type AttemptRecord, compareText, inTimeOrder } from "../../history/record.ts";
import type { Exercise } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { kindOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import { keyOfPiece } from "../../journal/likely-key.ts";
import type { Subject } from "../../journal/model.ts";
import { chordWords, subjectText } from "../../journal/subject-text.ts";
import { chordById } from "../../music/chords/chord.ts";
import { CHORDS } from "../../music/chords/chord-kinds.ts";
import { chordSignature } from "../../music/chords/chord-signature.ts";
import { fifthsOf, type NoteName, nameAtFifths, printName } from "../../music/notes/note.ts";
import { kindText, type NoteNames } from "../../music/notes/note-names.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import { KINDS, kindById } from "../../music/scales/kinds.ts";
import { describeFifths, keySignature } from "../../music/scales/signature.ts";
import type { ScaleMeaning } from "../../syntax/words/meaning.ts";
import type { DeclaredLine } from "../explain/declared-lines.ts";
import { entryOf } from "../explain/entry-of-record.ts";
import { isInSpan, type SpanOfDays, spanInWords } from "./span.ts";
import { placeOf, sentence, shownText } from "./text.ts";

const MOST_ACCIDENTALS = 7;
const COLUMNS = Array.from({ length: 2 * MOST_ACCIDENTALS + 1 }, (_, at) => at - MOST_ACCIDENTALS);
const SHADES = 4;

/** Where on the line of fifths a scale or chord stands. */
interface KeyOfSubject {
  readonly kind: string;
  readonly tonic: NoteName;
  /** Its key signature, sharps or flats where negative; null where it belongs to no key. */
  readonly fifths: number | null;
  readonly name: string;
}

/** What was practised of one kind in one key, over all its patterns. */
interface Practised {
  key: KeyOfSubject;
  readonly days: Set<DayNumber>;
  last: AttemptRecord;
}

/** A piece in hand with its key. */
export interface PieceInKey {
  readonly name: string;
  readonly key: ScaleMeaning;
  /** Whether the key is only likely, by its last note and signature. */
  readonly likely: boolean;
}

/** The pieces among those in hand whose key is declared, or likely by their last note and signature. */
export function piecesInKeys(pieces: readonly { readonly line: DeclaredLine }[]): readonly PieceInKey[] {
  return pieces.flatMap(({ line: { declared } }) => {
    const found = declared.type === "piece" ? keyOfPiece(declared) : undefined;
    return declared.type === "piece" && found ? [{ name: declared.short ?? declared.title, ...found }] : [];
  });
}

/** Days of practice by key signature, one row for each kind of scale or chord. */
export function keysSection(
  journal: Journal,
  days: SpanOfDays,
  { instrument, pieces }: { readonly instrument: string | null; readonly pieces: readonly PieceInKey[] },
): PreviewKeys {
  const practised = practisedKeys(journal, days, instrument);
  const inTable = practised.filter(({ key }) => isColumn(key.fifths));
  const most = Math.max(1, ...inTable.map((each) => each.days.size));
  const rows = kindsInOrder(inTable).map((kind): PreviewKind => {
    const own = inTable.filter(({ key }) => key.kind === kind);
    return {
      kind: shownText(kindText(kind, journal.names)),
      cells: COLUMNS.map((fifths) => cellOf(journal, own, fifths, { most, pieces })),
    };
  });
  const columns = COLUMNS.map((fifths, at) => ({
    label: fifths === 0 ? "0" : `${Math.abs(fifths)}${fifths < 0 ? "♭" : "♯"}`,
    name: describeFifths(fifths),
    unused: rows.every(({ cells }) => cells[at]!.days === 0 && cells[at]!.mark === ""),
  }));
  return { columns, rows, others: othersOf(journal, practised), sentence: sentenceOf(rows, days) };
}

function isColumn(fifths: number | null): fifths is number {
  return fifths !== null && Math.abs(fifths) <= MOST_ACCIDENTALS;
}

function sentenceOf(rows: readonly PreviewKind[], days: SpanOfDays): string {
  if (rows.length === 0)
    return `No scale or arpeggio was practised ${spanInWords(days)}. Write one such as \`G major, slow\` below a day, and its key appears here.`;
  const outlined = rows.some(({ cells }) => cells.some(({ mark }) => mark !== ""));
  const marks = outlined
    ? " A double line: the key of a piece in hand; a single one: a neighbour, one accidental away."
    : "";
  return `${sentence(`days of practice ${spanInWords(days)}, by key signature`)}${marks}`;
}

/** Each kind and key once. */
function practisedKeys(journal: Journal, days: SpanOfDays, instrument: string | null): readonly Practised[] {
  const found = new Map<string, Practised>();
  for (const exercise of journalHistory(journal).exercises.values()) {
    if (instrument !== null && exercise.instrument !== instrument) continue;
    const records = exercise.strands.flatMap((strand) => strand.records.filter(({ day }) => isInSpan(day, days)));
    if (records.length === 0) continue;
    const last = records.reduce((a, b) => (inTimeOrder(a, b) < 0 ? b : a));
    for (const key of keysOf(journal, exercise)) {
      const name = `${key.kind}\n${printName(key.tonic)}`;
      const known = found.get(name);
      const practised = known ?? { key, days: new Set<DayNumber>(), last };
      for (const { day } of records) practised.days.add(day);
      if (inTimeOrder(practised.last, last) < 0) {
        practised.last = last;
        practised.key = key; // as it was called last
      }
      if (!known) found.set(name, practised);
    }
  }
  return [...found.values()];
}

/** The keys of an exercise's subject: one, or those of a chain or of a set; none for titles and figures. */
function keysOf(journal: Journal, exercise: Exercise): readonly KeyOfSubject[] {
  return journal.memo.of(exercise, "keys", () => {
    const last = exercise.strands[0]!.records.at(-1)!;
    const subject = entryOf(journal, last)?.subject;
    const conventions = journal.conventions(last.uri);
    const all = subject?.type === "chain" ? subject.scales : subject?.type === "several" ? subject.subjects : [subject];
    return all.flatMap((each): KeyOfSubject[] => {
      if (each?.type === "chord") return [keyOfChord(each, journal.names)];
      if (each?.type !== "scale") return [];
      return [keyOfScale(each, kindOf(each.kind, each.declared, conventions), journal.names)];
    });
  });
}

function keyOfScale(scale: ScaleMeaning, kind: ScaleKind | undefined, names: NoteNames): KeyOfSubject {
  const fifths = kind ? (keySignature(scale.tonic, kind)?.fifths ?? null) : null;
  return { kind: scale.kind, tonic: scale.tonic, fifths, name: subjectText(scale, names) };
}

function keyOfChord(chord: Extract<Subject, { readonly type: "chord" }>, names: NoteNames): KeyOfSubject {
  const known = chordById(chord.chord);
  const fifths = known ? (chordSignature(chord.root, known, chord.key, chord.keyMode)?.fifths ?? null) : null;
  const whole = { ...chord, broken: false };
  return { kind: chordWords(whole), tonic: chord.root, fifths, name: subjectText(whole, names) };
}

/** Scales in the order of the language's own table, then chords, then declared kinds. */
function kindsInOrder(practised: readonly Practised[]): readonly string[] {
  const known: readonly string[] = [
    ...KINDS.map(({ id }) => id),
    ...CHORDS.flatMap(({ id }) => [`${id} arpeggio`, id]),
  ];
  const rank = (kind: string): number => (known.includes(kind) ? known.indexOf(kind) : known.length);
  const kinds = new Set(practised.map(({ key }) => key.kind));
  return [...kinds].sort((a, b) => rank(a) - rank(b) || compareText(a, b));
}

interface CellsOf {
  /** The days of the key that was practised on most. */
  readonly most: number;
  readonly pieces: readonly PieceInKey[];
}

function cellOf(journal: Journal, row: readonly Practised[], fifths: number, { most, pieces }: CellsOf): PreviewCell {
  const practised = row.find(({ key }) => key.fifths === fifths);
  const { kind, tonic, fifths: own } = row[0]!.key;
  const days = practised?.days.size ?? 0;
  const { last } = practised ?? {};
  return {
    tonic: journal.names.name(practised?.key.tonic ?? nameAtFifths(fifthsOf(tonic) + fifths - own!)),
    days,
    shade: Math.ceil((SHADES * days) / most),
    ...markOf(kind, fifths, pieces),
    place: last ? placeOf(journal, last.uri, last.block, last.line) : null,
  };
}

/** Pieces mark the rows of their own mode: major, the three forms of minor, or a mode by its name. */
function markOf(kind: string, fifths: number, pieces: readonly PieceInKey[]): Pick<PreviewCell, "mark" | "isPieceKey"> {
  const distances = pieces.flatMap(({ name, key, likely }) => {
    const known = key.declared ? undefined : kindById(key.kind);
    const signature = known && keySignature(key.tonic, known);
    return signature && modeOf(key.kind) === modeOf(kind)
      ? [{ name, likely, away: Math.abs(signature.fifths - fifths) }]
      : [];
  });
  const names = (away: number): string =>
    distances
      .flatMap((each) => (each.away === away ? [shownText(each.name, 40) + (each.likely ? " (likely)" : "")] : []))
      .join(", ");
  if (names(0) !== "") return { mark: `key of ${names(0)}`, isPieceKey: true };
  return { mark: names(1) === "" ? "" : `next to the key of ${names(1)}`, isPieceKey: false };
}

function modeOf(kind: string): string {
  return /^(?:natural|harmonic|melodic) minor$/.test(kind) ? "minor" : kind;
}

function othersOf(journal: Journal, practised: readonly Practised[]): PreviewLink[] {
  return practised
    .filter(({ key }) => !isColumn(key.fifths))
    .sort((a, b) => b.days.size - a.days.size || compareText(a.key.name, b.key.name))
    .map(({ key, days, last }) => ({
      text: shownText(key.name),
      note: `${days.size} ${days.size === 1 ? "day" : "days"}`,
      place: placeOf(journal, last.uri, last.block, last.line),
    }));
}
