import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { ceilingOn } from "../../../server/history/ceiling.ts";
import type { AttemptRecord } from "../../../server/history/record.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import type { Plan, PlanLine } from "../../../server/plan/plan.ts";
import { doneDay, type HowItWent, planFor } from "../../plan/planned.ts";
import { asJournal, type Invented, type InventedDay } from "./journals.ts";

// A player who does what is planned, and what is found in the journal then. The judging here is naive on purpose, and shares
// nothing with the plan but the records.

/** A day that was planned and done. */
export interface Done {
  readonly plan: Plan;
  /** Before the day. */
  readonly before: Journal;
  /** What came of it, each with the line that it was planned in. */
  readonly records: readonly { readonly record: AttemptRecord; readonly line: PlanLine }[];
}

/** Does the plans of days, each put into the journal before the next is made. */
export function* doing(
  { head, days, hand }: Invented,
  dates: readonly number[],
  minutes: (day: number) => number,
  went: HowItWent,
  sore: (day: number) => string = () => "",
): Generator<Done> {
  const all: InventedDay[] = [...days];
  for (const day of dates) {
    const before = asJournal({ head, days: all });
    const plan = planFor(before, day, { minutes: minutes(day) });
    const lines = doneDay(plan, went);
    const said = sore(day);
    if (said) lines.push(`    -- ${said}`);
    all.push({ day, lines });
    const after = asJournal({ head, days: all });
    yield { plan, before, records: recordsOfPlan(after, plan, lines) };
  }
  void hand;
}

/** Every tempo of a plan as if it had been played: what it comes to in the strands of the journal. */
export function asPlayed(invented: Invented, plan: Plan): Done {
  const before = asJournal(invented);
  const lines = doneDay(plan);
  const days = [...invented.days.filter(({ day }) => day !== plan.date), { day: plan.date, lines }];
  const after = asJournal({ ...invented, days: days.sort((a, b) => a.day - b.day) });
  return { plan, before, records: recordsOfPlan(after, plan, lines) };
}

function recordsOfPlan(journal: Journal, plan: Plan, lines: readonly string[]): Done["records"] {
  const own = attemptsOfJournal(journal).filter(({ day }) => day === plan.date);
  let next = 0;
  const planned = lines.map((text) => {
    const line = plan.lines[next];
    if (!line || !/^ {2}\S/.test(text)) return undefined;
    next++;
    return line;
  });
  return own.flatMap((record) => {
    const line = planned[record.line];
    return line ? [{ record, line }] : [];
  });
}

const WINDOW = 84;

/** The fastest tempo with five tries or more of which four fifths were reached, in twelve weeks. */
function steady(records: readonly AttemptRecord[], day: number): number | null {
  const own = records.filter((each) => each.day < day && each.day >= day - WINDOW && each.reached !== null);
  const rates = [...new Set(own.map(({ rate }) => rate).filter((rate) => rate !== null))];
  const holds = rates.filter((rate) => {
    const tried = own.filter((each) => each.rate === rate);
    const [tries, got] = [tried.reduce((n, { count }) => n + count, 0), tried.reduce((n, each) => n + each.got, 0)];
    return tries >= 5 && 5 * got >= 4 * tries;
  });
  return holds.length === 0 ? null : Math.max(...holds);
}

/** The best of the last day on which a tempo was reached. */
function reached(records: readonly AttemptRecord[], day: number): number | null {
  const own = records.filter((each) => each.day < day && each.reached === true && each.rate !== null);
  const last = Math.max(...own.map((each) => each.day));
  return own.length === 0 ? null : Math.max(...own.filter((each) => each.day === last).map(({ rate }) => rate!));
}

const isWhole = ({ where }: AttemptRecord): boolean => where === null || where === "from the top";

/** Earlier records of the same strand; of a piece played through all its runs. */
function earlier({ before, plan }: Done, record: AttemptRecord): readonly AttemptRecord[] {
  const all = attemptsOfJournal(before).filter(({ day }) => day < plan.date);
  const isSamePiece = (each: AttemptRecord): boolean =>
    each.exerciseKey === record.exerciseKey && each.movement === record.movement && isWhole(each);
  if (record.unit === "beats" && isWhole(record)) return all.filter(isSamePiece);
  return all.filter(({ strandKey }) => strandKey === record.strandKey);
}

/** The lines of a done day on which something was tried faster than was steady before it. */
export function pushed(done: Done): readonly PlanLine[] {
  return done.records
    .filter(({ record }) => {
      const own = attemptsOfJournal(done.before).filter(({ strandKey }) => strandKey === record.strandKey);
      const known = steady(own, done.plan.date);
      return record.rate !== null && known !== null && record.rate > known * (1 + 1e-9);
    })
    .map(({ line }) => line);
}

/** Lines with a tempo above what the day allows. */
export function aboveCeiling(done: Done): readonly string[] {
  const { plan, before, records } = done;
  const { share } = ceilingOn(before, plan.date, records[0]?.record.instrument);
  if (share === undefined) return [];
  return records.flatMap(({ record, line }) => {
    if (record.rate === null) return [];
    const own = earlier(done, record);
    const known = steady(own, plan.date) ?? reached(own, plan.date);
    const tried = own.filter(({ rate }) => rate !== null).map(({ rate }) => rate!);
    const most = known === null ? 0.8 * Math.max(0, ...tried) : share * known;
    return record.rate > most * (1 + 1e-9) ? [`${line.text}: ${record.rate} above ${most}`] : [];
  });
}

/** Lines of exercises and places that a word of the last four weeks says hurt. */
export function whatHurt(done: Done, hurts: readonly string[]): readonly string[] {
  const { plan, before, records } = done;
  if (plan.kind !== "sparing" && plan.kind !== "return" && plan.kind !== "noInstrument") return [];
  const hurting = attemptsOfJournal(before).filter(({ day, block, line }) => {
    const isLate = day <= plan.date && day >= plan.date - 28;
    return isLate && hurts.some((words) => block.lines[line]!.includes(words));
  });
  return records.flatMap(({ record, line }) =>
    hurting.some((each) => isSame(each, record)) ? [`${line.text}: it hurt`] : [],
  );
}

function isSame(a: AttemptRecord, b: AttemptRecord): boolean {
  if (a.exerciseKey !== b.exerciseKey || a.movement !== b.movement) return false;
  if (a.unit === "notes" || isWhole(b) || a.where === b.where) return true;
  const [own, other] = [barsIn(a), barsIn(b)];
  return own !== undefined && other !== undefined && own.from <= other.to && other.from <= own.to;
}

function barsIn({ where }: AttemptRecord): { readonly from: number; readonly to: number } | undefined {
  const [, from, to] = /^bars? (\d+)(?:-(\d+))?$/.exec(where ?? "") ?? [];
  return from === undefined ? undefined : { from: Number(from), to: Number(to ?? from) };
}

/** Exercises that two days of plans have in common, where that is neither set nor plain, and on neither day to warm up. */
export function onTwoDays(first: Done, second: Done): readonly string[] {
  const isTurn = ({ record, line }: Done["records"][number]): boolean =>
    record.unit === "notes" && line.rule !== "warm-up";
  const keys = new Set(first.records.filter(isTurn).map(({ record }) => record.exerciseKey));
  const may = ["set", "warm-up", "plain", "away"];
  return second.records
    .filter(({ record, line }) => !may.includes(line.rule) && keys.has(record.exerciseKey))
    .map(({ line }) => line.text);
}
