import type { Staff, StaffNote, Stretch } from "../staff.ts";

/** All measures are pixels of a staff whose lines lie ten apart. */
const HEAD = 12;

/** From a note to the next where nothing stands between them, by the notes' value. Common practice, no source. */
const ADVANCE: Readonly<Record<Staff["value"]["base"], number>> = { 1: 46, 2: 40, 4: 32, 8: 26, 16: 22, 32: 20 };

/** How wide each accidental is, with the space behind it. */
const ACCIDENTAL: Readonly<Record<number, number>> = { [-2]: 19, [-1]: 12, 0: 11, 1: 13, 2: 14 };

/** The least space between a head and what comes behind it. */
const LEAST = 5;

/** More between figures of the pattern. */
const BETWEEN_FIGURES = 7;

/** A dot behind a head. */
const DOT = 8;

/** A column of holes, with space at its sides. */
const HOLES = 20;

/** What a note takes up, from its head on, and before its head. */
export interface NoteWidth {
  /** From the head's left edge to where the next note's accidental may begin, or its head. */
  readonly advance: number;
  /** What stands before the head. */
  readonly before: number;
}

/** The widths of a staff's notes at their natural spacing. */
export function noteWidths({ notes }: Pick<Staff, "notes">): readonly NoteWidth[] {
  return notes.map((note, i) => {
    const { value } = note;
    const next = notes[i + 1];
    const least = HEAD + LEAST + (value.dots ? DOT : 0) + (next ? accidentalWidth(next) : 0);
    const holes = note.fingering ? HOLES : 0;
    const figure = next && next.figure !== note.figure ? BETWEEN_FIGURES : 0;
    return { advance: Math.max(ADVANCE[value.base], least, holes) + figure, before: accidentalWidth(note) };
  });
}

/** How wide the accidental before a note is, with the space behind it; 0 for none. */
export function accidentalWidth({ accidental }: StaffNote): number {
  return accidental === null ? 0 : ACCIDENTAL[accidental]!;
}

/** The notes of one line of music, and how wide they are at their natural spacing. */
export interface Line extends Stretch {
  readonly width: number;
}

/**
 * Breaks notes into lines that are no wider than the space between the signature and the right edge, as evenly filled
 * as can be: the fewest lines, and of those the ones with the least sum of squares of what is left over. Lines break
 * between beams alone, unless a beam is wider than a line.
 */
export function linesOf(widths: readonly NoteWidth[], beams: readonly Stretch[], available: number): readonly Line[] {
  const units = unitsOf(widths, beams, available);
  const lineFrom = (first: number, last: number): Line => {
    const { from } = units[first]!;
    const { to } = units[last]!;
    return { from, to, width: widthOf(widths, { from, to }) };
  };
  // best[k]: the lines of the first k units.
  const best: { readonly cost: number; readonly count: number; readonly lines: readonly Line[] }[] = [
    { cost: 0, count: 0, lines: [] },
  ];
  for (let last = 0; last < units.length; last++) {
    for (let first = last; first >= 0; first--) {
      const line = lineFrom(first, last);
      if (line.width > available && first < last) break;
      const before = best[first]!;
      const cost = before.cost + (available - line.width) ** 2;
      const count = before.count + 1;
      const other = best[last + 1];
      if (!other || count < other.count || (count === other.count && cost < other.cost))
        best[last + 1] = { cost, count, lines: [...before.lines, line] };
    }
  }
  return best[units.length]!.lines;
}

/** Beams and single notes; of a beam that is wider than a line its notes. */
function unitsOf(widths: readonly NoteWidth[], beams: readonly Stretch[], available: number): readonly Stretch[] {
  const units: Stretch[] = [];
  let at = 0;
  while (at < widths.length) {
    const beam = beams.find(({ from }) => from === at);
    const unit = beam && widthOf(widths, beam) <= available ? beam : { from: at, to: at };
    units.push(unit);
    at = unit.to + 1;
  }
  return units;
}

function widthOf(widths: readonly NoteWidth[], { from, to }: Stretch): number {
  const sum = widths.slice(from, to).reduce((before, { advance }) => before + advance, 0);
  return widths[from]!.before + sum + HEAD;
}

/** How far spacing is stretched beyond its natural width, at most. */
const MOST_STRETCH = 1.15;

/** How wide lines are drawn so that they end together: what the widest one needs, airily spaced, if there is room. */
export function commonWidth(lines: readonly Line[], available: number): number {
  return Math.min(available, MOST_STRETCH * Math.max(...lines.map(({ width }) => width)));
}

/** The place of each note's head in a line that is to be so wide, from where notes may begin. */
export function headPlaces(widths: readonly NoteWidth[], line: Line, wanted: number): readonly number[] {
  const fixed = widths[line.from]!.before + HEAD;
  const stretch = line.width > fixed ? (wanted - fixed) / (line.width - fixed) : 1;
  const places: number[] = [];
  let x = widths[line.from]!.before;
  for (let i = line.from; i <= line.to; i++) {
    places.push(x);
    x += widths[i]!.advance * stretch;
  }
  return places;
}

/** How wide the last line is: stretched as the one before it is. */
export function lastWidth(lines: readonly Line[], common: number): number {
  const last = lines.at(-1)!;
  const before = lines.at(-2);
  return Math.min(common, last.width * (before ? common / before.width : MOST_STRETCH));
}
