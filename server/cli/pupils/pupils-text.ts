import stringWidth from "string-width";
import type { DayNumber } from "../../journal/calendar.ts";
import { isFarBack, weekdayDateBack } from "../../journal/date-words.ts";
import type { Spoken } from "../../plan/lesson.ts";
import { setWorkWithDay, textOfSet } from "../../plan/set-work-words.ts";
import { headingOf } from "../attempts-asked.ts";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { roomOf } from "../paragraph.ts";
import { printable } from "../printable.ts";
import { wrapped } from "../wrapped.ts";
import type { PlacedPupil } from "./pupils-report.ts";

const INDENT = "  ";
/** At which begins what is said; in front of it is what it is. */
const COLUMN = 8;

/** What stands beside a label: texts, and below each perhaps more of it. */
interface Told {
  readonly label: string;
  readonly texts: readonly { readonly text: string; readonly below?: string }[];
}

/** Each pupil under a name, with what there is below it; of none nothing. */
export function pupilsText(pupils: readonly PlacedPupil[], io: Io): string {
  const paint = painter(io);
  const names = pupils.map(({ pupil, path }) => ({ player: pupil.name, journal: path }));
  return pupils
    .map((each, i) => [paint(printable(headingOf(names[i]!, names)), "bold"), ...linesOf(each, io)].join("\n"))
    .map((text) => `${text}\n`)
    .join("\n");
}

function linesOf({ pupil: { last, lesson, set, asked, body = [] } }: PlacedPupil, io: Io): string[] {
  const told: readonly Told[] = [
    { label: "last", texts: [{ text: last ? weekdayDateBack(last.day, io.today) : "nothing played yet" }] },
    { label: "since", texts: lesson && isFarBack(lesson.day, io.today) ? [{ text: sinceLesson(lesson.day, io) }] : [] },
    { label: "set", texts: set.map((each) => ({ text: textOfSet(each.work), below: setWorkWithDay(each, io.today) })) },
    { label: "ask", texts: asked.map((each) => dated(each, io)) },
    { label: "body", texts: body.map((each) => dated(each, io)) },
  ];
  return told.flatMap((each) => beside(each, roomOf(io)));
}

/** Said where one would not guess it: what is below goes back to it. */
function sinceLesson(day: DayNumber, { today }: Io): string {
  return `the last lesson, ${weekdayDateBack(day, today)}`;
}

function dated({ day, text }: Spoken, { today }: Io): { readonly text: string } {
  return { text: `${weekdayDateBack(day, today)}: ${text}` };
}

/** Texts one below the other, the label before the first of them. */
function beside({ label, texts }: Told, room: number): string[] {
  const lines = texts.flatMap(({ text, below = "" }) => [
    ...hanging(text, room, " ".repeat(COLUMN)),
    ...(below === "" ? [] : hanging(below, room, " ".repeat(COLUMN) + INDENT)),
  ]);
  return lines.map((line, i) => (i === 0 ? (INDENT + label).padEnd(COLUMN) + line.slice(COLUMN) : line));
}

function hanging(text: string, room: number, indent: string): string[] {
  return wrapped(printable(text), room - indent.length, stringWidth).map((line) => indent + line);
}
