import fc from "fast-check";
import { type DayNumber, isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { HANDS, type Hand } from "./hands.ts";

// Random journals, invented: what is practised, when and how it is written is drawn; what a plan must hold is not.

export const FIRST = parseIsoDate("2026-01-05")!;

export interface InventedDay {
  readonly day: DayNumber;
  /** The day line first. */
  readonly lines: readonly string[];
}

/** A journal by its parts, so that they can be put into other files, or left out. */
export interface Invented {
  readonly head: readonly string[];
  /** In order, each day once. */
  readonly days: readonly InventedDay[];
  readonly hand: Hand;
}

/** All of it in one file. */
export function textOf({ head, days }: Pick<Invented, "head" | "days">, end = "\n"): string {
  return [...head, "", ...days.flatMap(({ lines }) => [...lines, ""])].join(end);
}

export const URI = "file:///j/a.practice";

export function journalOf(texts: Readonly<Record<string, string>>): Journal {
  return new Journal("file:///j", new Map(Object.entries(texts).map(([uri, text]) => [uri, createDocument(text)])));
}

export function asJournal(invented: Pick<Invented, "head" | "days">): Journal {
  return journalOf({ [URI]: textOf(invented) });
}

const TEMPOS = [38, 50, 56, 60, 63, 66, 69, 72, 76, 80, 84, 100, 120, 67];
const oneOf = <T>(all: readonly T[]) => fc.constantFrom(...all);

const bars = fc.tuple(fc.constantFrom(1, 5, 9, 17, 25), fc.constantFrom(0, 3, 7));

/** A tempo with how it went; several on some lines. */
function trials(hand: Hand): fc.Arbitrary<string> {
  const trial = fc
    .tuple(oneOf(TEMPOS), fc.constantFrom("reached", "reached", "failed", "none"), fc.nat(6))
    .map(([bpm, how, at]) => {
      const words = how === "none" ? [] : hand[how as "reached" | "failed"];
      return words.length === 0 ? `${bpm}` : `${bpm} ${words[at % words.length]}`;
    });
  const several = fc.array(trial, { minLength: 1, maxLength: 3 }).map((all) => all.join(hand.comma));
  const beat = fc.constantFrom(...hand.values.map((value) => `${value}at `), "quarter=", "at half=");
  return fc.oneof(
    { weight: 5, arbitrary: fc.tuple(beat, several).map((both) => both.join("")) },
    { weight: 1, arbitrary: fc.constantFrom("slow", ...hand.reached, ...hand.failed, "") },
  );
}

function exercise(hand: Hand): fc.Arbitrary<string> {
  return fc
    .tuple(oneOf(hand.subjects), fc.uniqueArray(oneOf(hand.terms), { maxLength: 3 }), trials(hand))
    .map(([subject, terms, tries]) => [subject, ...terms, tries].filter(Boolean).join(hand.comma));
}

export const TITLES = ["Ground", "Evening", '"Gates", mvt 2', '"Gates"', '"Old & new <song>"', "One", '"Daily study"'];

function piece(hand: Hand): fc.Arbitrary<string> {
  const where = fc.oneof(
    bars.map(([from, more]) => hand.bars(from, from + more)),
    fc.constantFrom("from the top", "lines 3-5", "bar 3", "letter B", ""),
  );
  return fc
    .tuple(oneOf(TITLES), where, trials(hand))
    .map(([title, place, tries]) => [title, place, tries].filter(Boolean).join(hand.comma));
}

function again(hand: Hand): fc.Arbitrary<string> {
  return trials(hand).map((tries) => `${hand.same}${hand.comma}${tries}`);
}

/** A line below a day. Few hurt: else no day would be a usual one. */
function line(hand: Hand): fc.Arbitrary<string> {
  const indented = (text: string) => `  ${text}`;
  return fc.oneof(
    { weight: 14, arbitrary: exercise(hand).map(indented) },
    { weight: 7, arbitrary: piece(hand).map(indented) },
    { weight: 4, arbitrary: again(hand).map(indented) },
    { weight: 2, arbitrary: oneOf(hand.remarks).map((words) => `    -- ${words}`) },
    { weight: 2, arbitrary: fc.constantFrom("pieces, 15 min", "groundwork", "warm-up, 5 min", "break, 5 min") },
    { weight: 1, arbitrary: fc.constantFrom("lesson, 30 min", "session 19:30, 20 min", "together, 20 min") },
  );
}

function hurting(hand: Hand): fc.Arbitrary<string> {
  return fc.oneof(
    fc.tuple(exercise(hand), oneOf(hand.hurts)).map(([text, words]) => `  ${text}${hand.comma}${words}`),
    fc.tuple(piece(hand), oneOf(hand.hurts)).map(([text, words]) => `  ${text} -- ${words}`),
    oneOf(hand.hurts).map((words) => `    -- ${words}`),
    oneOf(hand.hurts).map((words) => `  ${words}`),
    fc.constant(`    -- ${hand.eased}`),
  );
}

/** What a teacher set, and an aim, below a day. */
function wished(hand: Hand): fc.Arbitrary<string> {
  const by = fc.nat(160).map((days) => isoDate(FIRST + days));
  return fc.oneof(
    fc
      .tuple(oneOf(hand.subjects), fc.constantFrom("", ", 4 days"), by)
      .map(([subject, days, date]) => `set ${subject}, slow${days} by ${date}`),
    fc.constantFrom(
      'set "clap line 4 -- then <say> it"',
      "set Ground, bars 1-8, at 60",
      'set "Evening", 3 days',
      "set F major, thirds, slurred, 8ths at 96, 5 min",
      "said: lighter, “roll” it",
      'done "clap line 4 -- then <say> it"',
    ),
    fc
      .tuple(oneOf(hand.subjects), oneOf(TEMPOS), by)
      .map(([subject, bpm, date]) => `aim ${subject}, at ${bpm} by ${date}`),
  );
}

type Kind = "played" | "rest" | "plan" | "hurts";

function dayOf(hand: Hand): fc.Arbitrary<readonly string[]> {
  const kind = fc.oneof(
    { weight: 20, arbitrary: fc.constant<Kind>("played") },
    { weight: 2, arbitrary: fc.constant<Kind>("rest") },
    { weight: 2, arbitrary: fc.constant<Kind>("plan") },
    { weight: 1, arbitrary: fc.constant<Kind>("hurts") },
  );
  const lines = fc.array(line(hand), { minLength: 1, maxLength: 6 });
  const head = fc.constantFrom("", ", 20 min", ", 45 min", " 1 h");
  const rest = oneOf(["", ", ill", ", travel", ...hand.hurts.map((words) => `, ${words}`)]);
  const wish = fc.option(wished(hand), { freq: 5, nil: undefined });
  return fc.tuple(kind, lines, head, rest, hurting(hand), wish).map(([is, own, minutes, why, pain, wish]) => {
    const more = wish === undefined ? [] : [wish];
    if (is === "rest") return [`, rest${why}`];
    if (is === "plan") return [`${minutes}, plan`, ...own];
    return [minutes, ...own, ...(is === "hurts" ? [pain] : []), ...more];
  });
}

/** Gaps between days: mostly short, some a break of up to sixty. */
const gap = fc.oneof(
  { weight: 30, arbitrary: fc.integer({ min: 1, max: 3 }) },
  { weight: 3, arbitrary: fc.integer({ min: 4, max: 20 }) },
  { weight: 1, arbitrary: fc.integer({ min: 21, max: 60 }) },
);

const PIECES = [
  (due: string) => `piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84, due ${due}`,
  () => 'piece "Evening"',
  () => 'piece "Gates"\nmovement "Gates" 2 "Iron": C major, goal half=60',
  () => 'piece "One": C major, 1 bar',
  () => 'study "Daily study": last note D, 1 flat, range C4 to F5, 20 bars',
  (from: string) => `piece "<b>Étude</b> -- two" as Two: Eb major, 64 bars, from ${from}`,
] as const;

function head(hand: Hand): fc.Arbitrary<readonly string[]> {
  const date = fc.nat(160).map((days) => isoDate(FIRST + days));
  const instrument = fc.option(oneOf(hand.instruments), { freq: 6, nil: undefined });
  const pieces = fc.subarray([...PIECES]).chain((all) => fc.tuple(...all.map((each) => date.map((day) => each(day)))));
  const soon = fc.nat(50).map((days) => isoDate(FIRST + days));
  const concert = soon.map((day) => `concert "Recital <1>" on ${day}: "Ground in G minor", "Evening"`);
  return fc
    .tuple(
      instrument,
      pieces as fc.Arbitrary<readonly string[]>,
      fc.array(wished(hand), { maxLength: 4 }),
      fc.option(concert, { freq: 2, nil: undefined }),
      fc.constantFrom("", "", "", "hide notes"),
    )
    .map(([name, own, wishes, recital, hide]) =>
      [
        ...(hand.names && hand.names !== "english" ? [`names ${hand.names}`] : []),
        ...(name ? [`instrument ${name}`] : []),
        'pattern "zig-zag": 1 3 2 4',
        'scale "double harmonic": 1 b2 3 4 5 b6 7',
        ...own,
        ...wishes.filter((each) => /^(?:aim|set) /.test(each)),
        ...(recital ? [recital] : []),
        ...(hide ? [hide] : []),
      ].flatMap((each) => each.split("\n")),
    );
}

/** Who practises few things comes back to them. */
function ofFew(hand: Hand): fc.Arbitrary<Hand> {
  return fc
    .tuple(
      fc.subarray([...hand.subjects], { minLength: 2, maxLength: Math.min(7, hand.subjects.length) }),
      fc.subarray([...hand.terms], { minLength: 1 }),
    )
    .map(([subjects, terms]) => ({ ...hand, subjects, terms }));
}

/** Journals of up to so many days. */
export function journals(most = 30): fc.Arbitrary<Invented> {
  return oneOf(HANDS)
    .chain(ofFew)
    .chain((hand) =>
      fc.tuple(head(hand), fc.array(fc.tuple(gap, dayOf(hand)), { maxLength: most })).map(([own, all]): Invented => {
        let day = FIRST;
        const days = all.map(([days, [first, ...lines]]): InventedDay => {
          day += days;
          return { day, lines: [isoDate(day) + first, ...lines] };
        });
        return { head: own, days, hand };
      }),
    );
}

/** A day to plan for: some days after the last, or one of those that were practised, so that later ones lie ahead. */
export function dayToPlan({ days }: Invented, at: number): DayNumber {
  const last = days.at(-1)?.day ?? FIRST;
  if (at % 4 !== 0 || days.length === 0) return last + 1 + (at % 3);
  return days[at % days.length]!.day + ((at >> 4) % 2);
}
