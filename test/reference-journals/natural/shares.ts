import * as asMeant from "./as-meant.ts";
import type { WrittenLine } from "./written-lines.ts";

/** So many of so many. */
export interface Share {
  readonly count: number;
  readonly of: number;
}

export type Figure = "read" | "false" | "underlined" | "tempos" | "outcomes" | "places" | "minutes";

interface Measure {
  /** What the share is of. */
  readonly among: (line: WrittenLine) => boolean;
  readonly counts: (line: WrittenLine) => boolean;
}

const certain = ({ meant }: WrittenLine): boolean => asMeant.isCertain(meant);
const played = (line: WrittenLine): boolean => certain(line) && asMeant.isPlayed(line.meant);

/** What is measured. What an annotator was unsure of counts for `underlined` alone. */
const MEASURES: Readonly<Record<Figure, Measure>> = {
  /** Exercises and pieces of which kind and subject are as meant. */
  read: { among: played, counts: asMeant.isAsMeant },
  /** What is no practice and was counted as practice. */
  false: {
    among: (line) => certain(line) && !asMeant.isPractice(line.meant),
    counts: ({ read }) => asMeant.countsAsPractice(read),
  },
  /** Lines with an error or a warning. */
  underlined: { among: () => true, counts: ({ underlined }) => underlined },
  /** Exercises and pieces with tempos, meant or read, and every one right. */
  tempos: {
    among: (line) => played(line) && (line.meant.tempos !== "" || line.read.tempos.length > 0),
    counts: ({ meant, read }) => asMeant.hasTempos(meant, read),
  },
  /** Likewise, each outcome as typed at its tempo. */
  outcomes: {
    among: (line) => played(line) && (line.meant.outcomes !== "" || line.read.outcomes.length > 0),
    counts: ({ meant, read }) => asMeant.hasOutcomes(meant, read),
  },
  /** Exercises and pieces with a place that is meant; how far a scale goes was annotated by some alone. */
  places: {
    among: (line) => played(line) && line.meant.place !== "",
    counts: ({ meant, read }) => asMeant.hasPlace(meant, read),
  },
  /** Lines of every kind that say an amount of time. */
  minutes: {
    among: (line) => certain(line) && line.meant.minutes !== "",
    counts: ({ meant, read }) => asMeant.hasMinutes(meant, read),
  },
};

export const FIGURES = Object.keys(MEASURES) as Figure[];

export function shareOf(figure: Figure, lines: readonly WrittenLine[]): Share {
  const among = lines.filter(MEASURES[figure].among);
  return { count: among.filter(MEASURES[figure].counts).length, of: among.length };
}

/** The lines that a share falls short by; of what should not be, those that are. */
export function missesOf(figure: Figure, lines: readonly WrittenLine[]): readonly WrittenLine[] {
  const { among, counts } = MEASURES[figure];
  const bad = figure === "false" || figure === "underlined";
  return lines.filter((line) => among(line) && counts(line) === bad);
}

/** Players by the letter before their number; those of `all` are the tables' that were written first. */
export const GROUPS: Readonly<Record<string, string>> = {
  a: "a",
  b: "b",
  all: "ab",
  new: "n",
  more: "c",
  kept: "k",
  further: "e",
  unseen: "f",
  ordinary: "g",
  various: "h",
  mixed: "i",
  late: "j",
  later: "l",
  latest: "m",
};

/** A group's or one player's. */
export function linesOf(asked: string, lines: readonly WrittenLine[]): readonly WrittenLine[] {
  const letters = GROUPS[asked];
  return lines.filter(({ meant }) => (letters ? letters.includes(meant.person[0]!) : meant.person === asked));
}

export function personsOf(lines: readonly WrittenLine[]): readonly string[] {
  return [...new Set(lines.map(({ meant }) => meant.person))];
}

/** `a3     read 20/24 83 %  false …` for each group, one a line. */
export function sharesText(groups: readonly string[], lines: readonly WrittenLine[]): string {
  const cells = (group: string) =>
    FIGURES.map((figure) => {
      const { count, of } = shareOf(figure, linesOf(group, lines));
      return `${figure} ${count}/${of} ${of === 0 ? "–" : Math.round((100 * count) / of)} %`.padEnd(24);
    });
  return groups.map((group) => `${group.padEnd(5)}${cells(group).join("")}`.trimEnd()).join("\n");
}
