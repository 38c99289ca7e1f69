import type { PreviewCell, PreviewKeys, PreviewKind, PreviewLink } from "../../../shared/preview.ts";
import { compareText } from "../../history/record.ts";
import { weekCount, weeksFrom } from "../../history/week-span.ts";
import type { DeclaredLine } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { keyOfPiece } from "../../journal/likely-key.ts";
import { fifthsOf, nameAtFifths } from "../../music/notes/note.ts";
import { kindText } from "../../music/notes/note-names.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { describeFifths, keySignature } from "../../music/scales/signature.ts";
import type { NeedInWords } from "../../plan/key-words.ts";
import { kindsInOrder, modeOf, type PractisedKey, practisedKeys } from "../../plan/keys-played.ts";
import type { ScaleMeaning } from "../../syntax/words/meaning.ts";
import { keyTableTexts } from "./key-table-texts.ts";
import type { SpanOfDays } from "./span.ts";
import { placeOf, shownText } from "./text.ts";

const MOST_ACCIDENTALS = 7;
const COLUMNS = Array.from({ length: 2 * MOST_ACCIDENTALS + 1 }, (_, at) => at - MOST_ACCIDENTALS);
const SHADES = 4;

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

/** What is shown of keys besides the days: of which instrument, what the pieces mark, and what is wanted of them. */
export interface KeysShown {
  /** Null of any. */
  readonly instrument: string | null;
  readonly pieces: readonly PieceInKey[];
  readonly wanted?: readonly NeedInWords[];
}

/** So many sentences of what is wanted are shown at most. */
const MOST_WANTED = 3;

/** Days of practice by key signature, one row for each kind of scale or chord. */
export function keysSection(
  journal: Journal,
  days: SpanOfDays,
  { instrument, pieces, wanted = [] }: KeysShown,
): PreviewKeys | null {
  const practised = practisedKeys(journal, { ...days, instrument });
  const inTable = practised.filter(({ key }) => isColumn(key.fifths));
  const most = Math.max(1, ...inTable.map((each) => each.days.size));
  const signs = typesSigns(practised) ? withSigns : (tonic: string) => tonic;
  const rows = kindsInOrder(inTable).map((kind): PreviewKind => {
    const own = inTable.filter(({ key }) => key.kind === kind);
    return {
      kind: shownText(keyTableTexts.kind(kind, kindText(kind, journal.names))),
      cells: COLUMNS.map((fifths) => cellOf(journal, own, fifths, { most, pieces, signs })),
    };
  });
  const columns = COLUMNS.map((fifths, at) => ({
    label: signs(fifths === 0 ? "0" : `${Math.abs(fifths)}${fifths < 0 ? "b" : "#"}`),
    name: describeFifths(fifths),
    unused: rows.every(({ cells }) => cells[at]!.days === 0 && cells[at]!.mark === ""),
  }));
  const others = othersOf(journal, practised);
  if (rows.length + others.length === 0) return null;
  return { note: noteOf(days), columns, rows, others, sentence: sentenceOf(rows), wanted: notPlayed(wanted) };
}

function notPlayed(wanted: readonly NeedInWords[]): string[] {
  return wanted
    .filter(({ played }) => !played)
    .slice(0, MOST_WANTED)
    .map(({ sentence }) => shownText(sentence, 300));
}

function isColumn(fifths: number | null): fifths is number {
  return fifths !== null && Math.abs(fifths) <= MOST_ACCIDENTALS;
}

/** `days in 26 weeks`. */
function noteOf({ since, today }: SpanOfDays): string {
  return since === undefined
    ? keyTableTexts.daysOverAll
    : keyTableTexts.daysInWeeks(weekCount(weeksFrom(since, today)));
}

function sentenceOf(rows: readonly PreviewKind[]): string {
  const outlined = rows.some(({ cells }) => cells.some(({ mark }) => mark !== ""));
  return outlined ? keyTableTexts.borders : "";
}

interface CellsOf {
  /** The days of the key that was practised on most. */
  readonly most: number;
  readonly pieces: readonly PieceInKey[];
  /** A tonic with the player's own signs. */
  readonly signs: (tonic: string) => string;
}

function cellOf(
  journal: Journal,
  row: readonly PractisedKey[],
  fifths: number,
  { most, pieces, signs }: CellsOf,
): PreviewCell {
  const practised = row.find(({ key }) => key.fifths === fifths);
  const { kind, tonic, fifths: own } = row[0]!.key;
  const days = practised?.days.size ?? 0;
  const { last } = practised ?? {};
  return {
    tonic: signs(journal.names.name(practised?.key.tonic ?? nameAtFifths(fifthsOf(tonic) + fifths - own!))),
    days,
    shade: Math.ceil((SHADES * days) / most),
    ...markOf(kind, fifths, pieces),
    place: last ? placeOf(journal, last.uri, last.block, last.line) : null,
  };
}

/** Whether the player types `E♭` or `Eb`, as the latest line with a sign of a key that was practised has it. */
function typesSigns(practised: readonly PractisedKey[]): boolean {
  const lines = practised
    .map(({ last: { day, block, line } }) => ({ day, text: block.lines[line] ?? "" }))
    .filter(({ text }) => SIGNED.test(text))
    .sort((a, b) => b.day - a.day);
  return /[♯♭]/.test(lines[0]?.text ?? "");
}

const SIGNED = /\b[A-H][#b♯♭]/;

/** `E♭` for `Eb`, `3♭` for `3b`. */
function withSigns(tonic: string): string {
  return tonic.replace(/^([A-Z\d])(b+)$/, (_, first, flats) => first + "♭".repeat(flats.length)).replaceAll("#", "♯");
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
  const at = (away: number): readonly string[] =>
    distances.filter((each) => each.away === away).map(({ name, likely }) => nameInMark(name, likely));
  const [own, beside] = [at(0), at(1)];
  if (own.length > 0) return { mark: keyTableTexts.keyOf(own), isPieceKey: true };
  return { mark: beside.length === 0 ? "" : keyTableTexts.besideKeyOf(beside), isPieceKey: false };
}

function nameInMark(name: string, likely: boolean): string {
  const shown = shownText(name, 40);
  return likely ? keyTableTexts.likely(shown) : shown;
}

function othersOf(journal: Journal, practised: readonly PractisedKey[]): PreviewLink[] {
  return practised
    .filter(({ key }) => !isColumn(key.fifths))
    .sort((a, b) => b.days.size - a.days.size || compareText(a.key.name, b.key.name))
    .map(({ key, days, last }) => ({
      text: shownText(key.name),
      note: String(days.size),
      place: placeOf(journal, last.uri, last.block, last.line),
    }));
}
