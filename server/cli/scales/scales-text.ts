import { printable } from "../printable.ts";
import { WIDTH, wrapped } from "../wrapped.ts";
import type { NamedChord, NamedMiss, NamedScale, ScalesReport } from "./scales-report.ts";

/** Names longer than this have what is said of them on the next line. */
const WIDEST_NAME = 30;
/** So many of each list are shown unless all are asked for. */
const SHOWN = 12;

/** What notes may be, for a person: each list under a heading, one row a name. */
export function scalesText(report: ScalesReport, all: boolean): string {
  const { notes, chords, scales, nearMisses } = report;
  const most = all ? Number.POSITIVE_INFINITY : SHOWN;
  const lines = [
    ...wrapped(`Notes: ${notes.join(" ")}`, WIDTH),
    ...section("A chord of exactly these notes:", chords.map(chordRow), most),
    ...(scales.length > 0
      ? section("Scales that have them all, the nearest first:", scales.map(scaleRow), most)
      : ["", "No scale that is known has them all."]),
    ...section("Nearly, with one note that differs:", nearMisses.map(missRow), most),
    ...respellingKey([...chords, ...scales, ...nearMisses].slice(0, all ? undefined : SHOWN)),
  ];
  return `${lines.join("\n")}\n`;
}

type Row = readonly [name: string, said: string];

function section(heading: string, rows: readonly Row[], most: number): string[] {
  if (rows.length === 0) return [];
  const shown = rows.slice(0, most);
  const column = Math.min(WIDEST_NAME, Math.max(...shown.map(([name]) => name.length))) + 4;
  const more = rows.length - shown.length;
  return [
    "",
    heading,
    ...shown.flatMap((row) => rowLines(row, column)),
    ...(more > 0 ? [`  and ${more} more: --all`] : []),
  ];
}

function rowLines([name, said]: Row, column: number): string[] {
  const lines = wrapped(said, WIDTH - column);
  const indent = " ".repeat(column);
  if (name.length > column - 4) return [`  ${name}`, ...lines.map((line) => indent + line)];
  return lines.map((line, i) => (i === 0 ? `  ${name}`.padEnd(column) : indent) + line);
}

function scaleRow(scale: NamedScale): Row {
  const { notGiven } = scale;
  const besides = notGiven.length === 0 ? "these notes and no other" : `and ${notGiven.join(" ")}`;
  return [nameOf(scale), [besides, ...respelledWords(scale), ...theoryWords(scale)].join("; ")];
}

function missRow(miss: NamedMiss): Row {
  const { given, instead } = miss.differs;
  const differs = instead === null ? `all but ${given}, which it does not have` : `has ${instead}, not ${given}`;
  const besides = miss.notGiven.length === 0 ? [] : [`and ${miss.notGiven.join(" ")}`];
  return [nameOf(miss), [differs, ...besides, ...respelledWords(miss), ...theoryWords(miss)].join("; ")];
}

function chordRow(chord: NamedChord): Row {
  const { inversion, root } = chord;
  const position = inversion === 0 ? "root position" : `inversion ${inversion}, its root is ${root}`;
  return [chord.name, [position, ...respelledWords(chord)].join("; ")];
}

function nameOf({ name, alsoCalled }: NamedScale): string {
  return printable(alsoCalled.length === 0 ? name : `${name} (${alsoCalled.join(", ")})`);
}

/** `with E# for F`. */
function respelledWords({ respelled }: Pick<NamedScale, "respelled">): string[] {
  if (respelled.length === 0) return [];
  return [`with ${respelled.map(({ given, written }) => `${written} for ${given}`).join(", ")}`];
}

/** What such words mean, below the lists. */
function respellingKey(shown: readonly Pick<NamedScale, "respelled">[]): string[] {
  const pair = shown.flatMap(({ respelled }) => respelled)[0];
  if (!pair) return [];
  const { given, written } = pair;
  return [
    "",
    ...wrapped(`With ${written} for ${given}: the right pitch, which is written with another letter there.`, WIDTH),
  ];
}

function theoryWords({ usual }: NamedScale): string[] {
  return usual === null ? [] : [`in theory only, usually ${printable(usual)}`];
}
