import stringWidth from "string-width";
import { dateInWords, shortDate } from "../../journal/date-words.ts";
import { needsInWords } from "../../plan/key-words.ts";
import type { WayPlayed } from "../../plan/ways-played.ts";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { paragraph, roomOf } from "../paragraph.ts";
import { printable } from "../printable.ts";
import type { Around } from "../whole-journals.ts";
import { type Days, type KeysOfJournal, keysOfJournal } from "./keys-report.ts";

const INDENT = "  ";

/** The keys of each journal with their days, how they were played, and what its pieces want; of none nothing. */
export function keysText(journals: readonly Around[], days: Days, io: Io): string {
  const paint = painter(io);
  const told = journals
    .map((around) => ({ ...around, found: keysOfJournal(around.journal, days) }))
    .filter(({ found }) => found.keys.length + found.wanted.length > 0);
  return told
    .map(({ found, journal, name }) => {
      const parts = [
        ...keysPart(found, days, io),
        ...wantedPart(needsInWords(journal, found.wanted, days.until), io),
      ].map(({ heading, lines }) => [paint(heading, "dim"), ...lines].join("\n"));
      return [...(journals.length > 1 ? [paint(printable(name), "bold")] : []), parts.join("\n\n")].join("\n");
    })
    .map((text) => `${text}\n`)
    .join("\n");
}

interface Part {
  readonly heading: string;
  readonly lines: readonly string[];
}

function keysPart({ keys, ...ways }: KeysOfJournal, days: Days, io: Io): Part[] {
  if (keys.length === 0) return [];
  const rows = keys.map(({ key, days: on, last }) => [
    printable(key.name),
    on.size === 1 ? "1 day " : `${on.size} days`,
    `last on ${shortDate(last.day, io.today)}`,
  ]);
  const lists = [
    ["Patterns", ways.patterns],
    ["Articulation", ways.articulations],
    ["Direction", ways.directions],
    ["Reach", ways.reaches],
  ] as const;
  return [
    { heading: `Keys ${spanInWords(days, io)}:`, lines: aligned(rows) },
    {
      heading: "How scales and chords were played, with the number of days:",
      lines: lists
        .filter(([, found]) => found.length > 0)
        .flatMap(([name, found]) => paragraph(`${name}: ${listOf(found)}`, roomOf(io), INDENT)),
    },
  ];
}

function spanInWords({ since, until }: Days, { today }: Io): string {
  return `from ${dateInWords(since, today)} to ${dateInWords(until, today)}`;
}

function listOf(found: readonly WayPlayed[]): string {
  return found.map(({ name, days }) => `${name} ${days}`).join(", ");
}

function aligned(rows: readonly (readonly string[])[]): string[] {
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => stringWidth(row[column]!))));
  return rows.map(([name, days, last]) => {
    const [first, second] = [name!, days!].map((cell, i) => " ".repeat(widths[i]! - stringWidth(cell)));
    return `${INDENT}${name}${first}  ${second}${days}  ${last}`;
  });
}

function wantedPart(needs: ReturnType<typeof needsInWords>, io: Io): Part[] {
  const groups = [
    ["Wanted for the current pieces:", needs.filter(({ played }) => !played)],
    ["Wanted, and played lately:", needs.filter(({ played }) => played)],
  ] as const;
  return groups
    .filter(([, own]) => own.length > 0)
    .map(([heading, own]) => ({
      heading,
      lines: own.flatMap(({ sentence }) => paragraph(sentence, roomOf(io), INDENT)),
    }));
}
