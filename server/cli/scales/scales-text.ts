import stringWidth from "string-width";
import { printable } from "../printable.ts";
import { type Row, twoColumns } from "../two-columns.ts";
import { wrapped } from "../wrapped.ts";
import type { NamedChord, NamedMiss, NamedScale, ScalesReport } from "./scales-report.ts";

/** Names longer than this have what is said of them on the next line. */
const WIDEST_NAME = 30;
/** So many of each list are shown unless all are asked for. */
const SHOWN = 12;

interface Shown {
  /** Not only the nearest. */
  readonly all: boolean;
  /** In columns of a terminal. */
  readonly width: number;
}

/** What notes may be, for a person: each list under a heading, one row a name. */
export function scalesText(report: ScalesReport, { all, width }: Shown): string {
  const { notes, chords, scales, nearMisses } = report;
  const section = (heading: string, rows: readonly Row[]) => sectionLines(heading, rows, { all, width });
  const lines = [
    ...wrapped(`Notes: ${notes.join(" ")}`, width),
    ...section("A chord of exactly these notes:", chords.map(chordRow)),
    ...(scales.length > 0
      ? section("Scales that have them all, the nearest first:", scales.map(scaleRow))
      : ["", "No known scale has them all."]),
    ...section("Nearly, with one note that differs:", nearMisses.map(missRow)),
    ...respellingKey([...chords, ...scales, ...nearMisses].slice(0, all ? undefined : SHOWN), width),
  ];
  return `${lines.join("\n")}\n`;
}

function sectionLines(heading: string, rows: readonly Row[], { all, width }: Shown): string[] {
  if (rows.length === 0) return [];
  const shown = all ? rows : rows.slice(0, SHOWN);
  const column = Math.min(WIDEST_NAME, Math.max(...shown.map(([name]) => stringWidth(name)))) + 4;
  const more = rows.length - shown.length;
  return [
    "",
    ...wrapped(heading, width),
    ...twoColumns(shown, { column, width, widthOf: stringWidth }),
    ...(more > 0 ? [`  and ${more} more: --all`] : []),
  ];
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
function respellingKey(shown: readonly Pick<NamedScale, "respelled">[], width: number): string[] {
  const pair = shown.flatMap(({ respelled }) => respelled)[0];
  if (!pair) return [];
  const { given, written } = pair;
  return [
    "",
    ...wrapped(`With ${written} for ${given}: the right pitch, written with another letter in that scale.`, width),
  ];
}

function theoryWords({ usual }: NamedScale): string[] {
  return usual === null ? [] : [`in theory only, usually ${printable(usual)}`];
}
