import { WEEKS_FOR_A_TREND } from "../../history/trend.ts";
import { type WeekSpan, weekCount } from "../../history/week-span.ts";
import { mondayOf } from "../../journal/calendar.ts";
import { dateInWords } from "../../journal/date-words.ts";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { printable } from "../printable.ts";
import { WIDTH, wrapped } from "../wrapped.ts";
import { SIGNS, weeksASign } from "./history-bars.ts";
import { type HistoryRow, type HistoryRows, NONE } from "./history-rows.ts";
import { tableOf } from "./history-table.ts";

/** What a journal is called, and its exercises as they are shown. */
export interface JournalRows {
  readonly journal: string;
  readonly rows: HistoryRows;
}

export interface TextAsked {
  /** Of all journals. */
  readonly axis: WeekSpan;
  readonly rates: boolean;
}

/** The most signs of a row where no terminal says how broad it is: two years of weeks. */
const MOST_SIGNS = 104;
const INDENT = 2;

/**
 * A table of exercises for each journal, with its name where there are several. All have the same weeks. Columns are
 * aligned by display width, as broad as the terminal at most; into a pipe goes one line for each.
 */
export function historyText(journals: readonly JournalRows[], asked: TextAsked, io: Io): string {
  const paint = painter(io);
  const room = io.isTerminal ? io.columns?.() || WIDTH : Number.POSITIVE_INFINITY;
  const { axis } = asked;
  const signs = Number.isFinite(room) ? Math.max(1, room - INDENT) : MOST_SIGNS;
  const each = weeksASign(weekCount(axis), signs);
  const tables = journals
    .filter(({ rows }) => rows.drawn.length + rows.ended.length > 0)
    .map(({ journal, rows }) => [
      ...(journals.length > 1 ? [paint(printable(journal), "bold")] : []),
      ...tableOf(rows, { axis, each, room, today: io.today }).map(({ text, isHeading }) =>
        isHeading ? paint(text, "dim") : text,
      ),
    ]);
  const below = legend(journals, { ...asked, each, today: io.today }).flatMap((said) =>
    wrapped(said, Math.min(room, WIDTH)),
  );
  return `${tables.map((lines) => lines.join("\n")).join("\n\n")}\n\n${below.join("\n")}\n`;
}

interface Explained extends TextAsked {
  readonly each: number;
  readonly today: Io["today"];
}

/** `from the week of 25 May to that of 16 November`. */
function weeksInWords({ axis, today }: Explained): string {
  const [first, last] = [axis.first, axis.last].map((week) => dateInWords(mondayOf(week), today));
  return first === last ? `the week of ${last}` : `from the week of ${first} to the week of ${last}`;
}

/** What the signs and figures mean; of what there is none, nothing. */
function legend(journals: readonly JournalRows[], asked: Explained): string[] {
  const rows = journals.flatMap((each) => [...each.rows.drawn, ...each.rows.ended]);
  const sentences = rows.some(isReached)
    ? [signsInWords(asked), asked.rates ? ratesInWords() : notchesInWords()]
    : [
        `No tempo reached yet, so there are no bars: a tempo counts once it is marked clean or easy, as in “8ths at 60 clean”. ${SIGNS.notReached} is a week without a clean tempo, ${SIGNS.notPractised} one without practice. Weeks: ${weeksInWords(asked)}.`,
      ];
  const strands = journals.some((each) => each.rows.hasOthers)
    ? [
        "1 of 3 strands: the exercise was played in three ways that are not compared, and the one with most of these weeks is shown; --subject shows all.",
      ]
    : [];
  const cut = rows.some(({ isCut }) => isCut)
    ? ["A trend since a day goes by what came after a break, as you came back lower."]
    : [];
  return [...sentences, ...cut, ...strands];
}

function isReached({ latest }: HistoryRow): boolean {
  return latest !== NONE;
}

function signsInWords(asked: Explained): string {
  const { each } = asked;
  const those = each === 1 ? "a week" : `${each} weeks`;
  const sign = each === 1 ? "" : ` Each sign is for ${each} weeks, by the best of them.`;
  return `Weeks: ${weeksInWords(asked)}.${sign} ${SIGNS.tested[6]} is the best clean tempo of ${those}, ${SIGNS.belowBest[2]} that of ${those} of slow work, ${SIGNS.notReached} ${those} without a clean tempo, ${SIGNS.notPractised} ${each === 1 ? "one" : those} without practice. Tempo: from the lowest bar of the row to the highest.`;
}

const FITTED = `over the weeks drawn, those of slow work left out, from ${WEEKS_FOR_A_TREND} of them on`;

function notchesInWords(): string {
  return `Tempos: beats a minute, as you wrote them. Trend: ${FITTED}; in notches of the metronome.`;
}

function ratesInWords(): string {
  return `Numbers: notes a minute, for pieces and studies beats a minute. Trend: ${FITTED}.`;
}
