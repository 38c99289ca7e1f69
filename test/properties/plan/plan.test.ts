import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import type { Plan } from "../../../server/plan/plan.ts";
import { dayOf, planFor } from "../../plan/planned.ts";
import { FEW } from "../../support/random-runs.ts";
import {
  asJournal,
  dayToPlan,
  FIRST,
  type Invented,
  type InventedDay,
  journalOf,
  journals,
  textOf,
  URI,
} from "./journals.ts";

// What every plan holds to, over random journals, days and minutes (design: plan.md, 11.3). Its numbers are our own choices.

const UNIT = 5;
const minutes = fc.oneof(fc.integer({ min: 5, max: 240 }), fc.constantFrom(5, 10, 15, 20, 30, 45, 60, 90, 240));

interface Case {
  readonly invented: Invented;
  readonly day: number;
  readonly asked: number;
}

interface Planned extends Case {
  readonly plan: Plan;
}

const CASES: fc.Arbitrary<Case> = fc
  .tuple(journals(20), fc.nat(1000), minutes)
  .map(([invented, at, asked]) => ({ invented, day: dayToPlan(invented, at), asked }));

/** The same plans for every test, as making them is most of the work. */
const PLANNED: readonly Planned[] = fc
  .sample(CASES, { seed: 11, numRuns: FEW })
  .map((each) => ({ ...each, plan: planFor(asJournal(each.invented), each.day, { minutes: each.asked }) }));

/** Holds of every plan; where it does not, the journal is shown. */
function always(holds: (plan: Plan, each: Case) => void, all = PLANNED): void {
  for (const { plan, ...each } of all)
    try {
      holds(plan, each);
    } catch (error) {
      const shown = `${textOf(each.invented)}\n=== ${each.asked} minutes, ${plan.kind}\n${dayOf(plan).join("\n")}`;
      throw new Error(`${(error as Error).message}\n${shown}`, { cause: error });
    }
}

/** Those that are planned once more for a journal that should say the same. */
const AGAIN = PLANNED.filter((_, i) => i % 4 === 0);

/** A plan as it is compared: everything that is said and written. */
function written(plan: Plan): unknown {
  return { ...plan, text: dayOf(plan).join("\n") };
}

function sum(all: readonly { readonly minutes: number }[]): number {
  return all.reduce((total, each) => total + each.minutes, 0);
}

/** The minutes played between two pauses. */
function stretches({ lines, breaks }: Plan): number[] {
  const found = [0];
  for (const [i, { minutes: own }] of lines.entries()) {
    if (breaks.some(({ before }) => before === i)) found.push(0);
    found[found.length - 1]! += own;
  }
  return found;
}

describe("minutes", () => {
  test("never more than were asked for, in units of five, and the sum of lines and pauses", () => {
    always((plan, { asked }) => {
      expect(plan.asked).toBe(asked);
      expect(plan.minutes).toBeLessThanOrEqual(asked);
      expect(plan.lines.length).toBeLessThanOrEqual(Math.floor(asked / UNIT));
      expect(sum(plan.lines) + sum(plan.breaks)).toBe(plan.minutes);
      for (const each of [...plan.lines, ...plan.breaks]) expect(each.minutes % UNIT).toBe(0);
      for (const each of plan.lines) expect(each.minutes).toBeGreaterThan(0);
    });
  });

  test("no stretch of over half an hour, no line of over a quarter of one but a piece from the top", () => {
    always((plan) => {
      for (const each of stretches(plan)) expect(each).toBeLessThanOrEqual(30);
      for (const { text, minutes: own } of plan.lines)
        expect(own, text).toBeLessThanOrEqual(text.includes("from the top") ? 30 : 15);
      const [first] = plan.breaks;
      if (first) expect(first.before).toBeGreaterThan(0);
    });
  });

  test("pieces take at least half of the time that is played", () => {
    always((plan, { asked }) => {
      const pieces = plan.lines.filter(({ phase }) => phase === "pieces");
      if (asked < 2 * UNIT || pieces.length === 0) return;
      expect(2 * sum(pieces)).toBeGreaterThanOrEqual(sum(plan.lines));
    });
  });

  test("a piece that was declared and not played yet is on every plan of ten minutes", () => {
    always((plan, { invented: { head, days }, asked }) => {
      const isNew = head.includes('piece "Evening"') && !days.some(({ lines }) => lines.join().includes("Evening"));
      const isToday = head.some((line) => line.startsWith("concert"));
      if (!isNew || isToday || asked < 2 * UNIT || plan.minutes < 2 * UNIT || plan.kind === "noInstrument") return;
      expect(plan.lines.some(({ phase }) => phase === "pieces")).toBe(true);
    });
  });
});

describe("lines", () => {
  test("none twice, each with a reason", () => {
    always(({ lines }) => {
      const texts = lines.map(({ text, minutes: own }) => text.slice(0, -`, ${own} min`.length));
      expect(new Set(texts).size).toBe(texts.length);
      for (const { reasons, text } of lines) {
        expect(reasons.length, text).toBeGreaterThan(0);
        for (const reason of reasons) expect(reason.length, reason).toBeGreaterThan(10);
      }
    });
  });

  // A title that is nowhere declared has a hint for that, on the player's own lines as on those of the plan.
  test("the whole day, put into the journal, is read without any diagnostic but that a title is not declared", () => {
    always((plan, { invented, day }) => {
      const own = new Set(dayOf(plan));
      const text = textOf(withPlan(invented, plan)).split("\n");
      const journal = journalOf({ [URI]: text.join("\n") });
      const from = text.findIndex((line) => line.startsWith(isoDate(day)));
      const to = text.indexOf("", from);
      const found = diagnosticsOf(journal, URI, day).filter(
        ({ range: { start } }) => start.line >= from && start.line < to,
      );
      const ofPlan = found
        .filter(({ code }) => code !== "unknown-title")
        .filter(({ range: { start } }) => own.has(text[start.line]!));
      expect(ofPlan.map(({ range, code, message }) => `${text[range.start.line]}: ${code} ${message}`)).toEqual([]);
    });
  });
});

/** The day as a plan is put into it: an own day, or below what was written on it already. */
function withPlan({ head, days }: Invented, plan: Plan): Pick<Invented, "head" | "days"> {
  const [first, ...lines] = dayOf(plan);
  const here = days.find(({ day }) => day === plan.date);
  const own: InventedDay = { day: plan.date, lines: here ? [...here.lines, "plan", ...lines] : [first!, ...lines] };
  return { head, days: [...days.filter((each) => each !== here), own].sort((a, b) => a.day - b.day) };
}

describe("the same plan", () => {
  test("again, after any order of files, and in files by month", () => {
    always((plan, { invented, day, asked }) => {
      expect(written(planFor(asJournal(invented), day, { minutes: asked }))).toEqual(written(plan));
      const months = new Map<string, InventedDay[]>();
      for (const each of invented.days) {
        const month = isoDate(each.day).slice(0, 7);
        months.set(month, [...(months.get(month) ?? []), each]);
      }
      const files = [
        ["file:///j/journal.practice", textOf({ head: invented.head, days: [] })] as const,
        ...[...months].map(([month, days]) => [`file:///j/${month}.practice`, textOf({ head: [], days })] as const),
      ];
      const split = planFor(journalOf(Object.fromEntries(files)), day, { minutes: asked });
      expect(written(split)).toEqual(written(plan));
      const turned = planFor(journalOf(Object.fromEntries([...files].reverse())), day, { minutes: asked });
      expect(written(turned)).toEqual(written(plan));
    }, AGAIN);
  });

  test("with other line ends", () => {
    always((plan, { invented, day, asked }) => {
      const journal = journalOf({ [URI]: textOf(invented, "\r\n") });
      expect(written(planFor(journal, day, { minutes: asked }))).toEqual(written(plan));
    }, AGAIN);
  });

  test("whatever was planned and not played", () => {
    always((plan, { invented, day, asked }) => {
      const taken = new Set(invented.days.map((each) => each.day));
      const free = [day - 1, day - 2, day - 5, FIRST - 3].filter((each) => !taken.has(each));
      const lines = [
        "pieces, 20 min",
        "  D minor, thirds, 8ths at 200",
        "  Ground, bars 1-8, at 200",
        "  F major, slow",
      ];
      const planned = free.map(
        (each): InventedDay => ({ day: each, lines: [`${isoDate(each)}, 40 min, plan`, ...lines] }),
      );
      const days = [...invented.days, ...planned].sort((a, b) => a.day - b.day);
      expect(written(planFor(asJournal({ ...invented, days }), day, { minutes: asked }))).toEqual(written(plan));
    }, AGAIN);
  });

  test("whatever comes after the day", () => {
    always((plan, { invented, day, asked }) => {
      const days = invented.days.filter((each) => each.day <= day);
      expect(written(planFor(asJournal({ ...invented, days }), day, { minutes: asked }))).toEqual(written(plan));
    }, AGAIN);
  });
});
