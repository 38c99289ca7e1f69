import fc from "fast-check";
import { expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { randomFrom } from "../../history/random.ts";
import { dayOf, planFor } from "../../plan/planned.ts";
import { times } from "../../support/random-runs.ts";
import { aboveCeiling, asPlayed, type Done, doing, onTwoDays, pushed, whatHurt } from "./doing.ts";
import { asJournal, dayToPlan, FIRST, type Invented, journals, textOf } from "./journals.ts";

// What holds for a player who does the plans, and for every tempo of a plan (design: plan.md, 4.1 and 11.3). Judged by the
// records alone.

const DAYS = 8;

/** Plans of random journals, as if each had been played at once. */
const PLAYED = fc
  .sample(fc.tuple(journals(14), fc.nat(1000)), { seed: 41, numRuns: times(100) })
  .map(([invented, at]) => {
    const plan = planFor(asJournal(invented), dayToPlan(invented, at), { minutes: 10 + 5 * (at % 12) });
    return { invented, days: [asPlayed(invented, plan)] };
  });

/** The days of players who do their plans for a week, and to whom now and then something hurts. */
const DONE = fc.sample(fc.tuple(journals(14), fc.nat(1000)), { seed: 42, numRuns: times(25) }).map(([invented, at]) => {
  const random = randomFrom(at);
  const { hand, days } = invented;
  const first = (days.at(-1)?.day ?? FIRST) + 1;
  const dates = Array.from({ length: DAYS }, (_, i) => first + i);
  const reached = () => (random() < 0.6 ? "clean 5 in a row" : "clean");
  const went = () => (random() < 0.75 ? reached() : hand.failed[0]!);
  const sore = () => (random() < 0.04 ? hand.hurts[at % hand.hurts.length]! : "");
  return { invented, days: [...doing(invented, dates, () => 15 + 5 * (at % 8), went, sore)] };
});

/** Nothing is found in any of them; else the journal before the last of the days is shown, and its plan. */
function never(
  found: (days: readonly Done[], invented: Invented) => readonly string[],
  all: readonly { readonly invented: Invented; readonly days: readonly Done[] }[],
): void {
  for (const { invented, days } of all)
    for (let i = 1; i <= days.length; i++) {
      const [last] = days.slice(i - 1, i);
      const [text] = [...last!.before.files.values()].map(({ blocks }) => blocks.map((block) => block.text).join(""));
      expect(found(days.slice(0, i), invented), `${text ?? textOf(invented)}\n${dayOf(last!.plan).join("\n")}`).toEqual(
        [],
      );
    }
}

const EVERY = [...PLAYED, ...DONE];

test("a journal that lives on has the plan of one that nobody read before", () => {
  for (const { days } of DONE) {
    let living = days[0]!.before;
    for (const { before, plan } of days) {
      for (const [uri, document] of before.files) living = living.with(uri, document);
      if (plan !== days.at(-1)!.plan) continue;
      const fresh = new Journal(before.root, before.files);
      const asked = { minutes: plan.minutes };
      expect(planFor(living, plan.date, asked)).toEqual(planFor(fresh, plan.date, asked));
    }
  }
});

test("every line that is done is read as practice", () => {
  never((days) => {
    const { plan, records } = days.at(-1)!;
    const played = plan.lines.filter(({ phase }) => phase !== "away");
    return played.filter((line) => !records.some((each) => each.line === line)).map(({ text }) => text);
  }, DONE);
});

test("no tempo is above what the day allows", () => never((days) => aboveCeiling(days.at(-1)!), EVERY));

test("after something hurt its exercises and places are left alone", () =>
  never((days, { hand }) => whatHurt(days.at(-1)!, hand.hurts), EVERY));

test("on a day on which something hurts, or the day after, nothing is played", () => {
  for (const { invented, days } of EVERY)
    for (const { plan, before } of days) {
      const written = [...before.files.values()].flatMap(({ blocks }) => blocks);
      const lately = written.filter(({ text }) =>
        invented.days.some(
          ({ day, lines }) => lines[0] === text.split("\n")[0] && day <= plan.date && day >= plan.date - 1,
        ),
      );
      if (!lately.some(({ text }) => invented.hand.hurts.some((words) => text.includes(words)))) continue;
      expect(["noInstrument", "rest"]).toContain(plan.kind);
      expect(plan.lines.every(({ phase }) => phase === "away")).toBe(true);
      expect(plan.care[0]).toContain("If something hurts, stop and rest");
    }
});

test("no exercise comes on two days running, but set work, warming up and what is plain", () =>
  never((days) => (days.length < 2 ? [] : onTwoDays(days.at(-2)!, days.at(-1)!)), DONE));

test("on no three days in a row is something tried that is faster than was steady, but in set work", () =>
  never((days) => {
    const last = days.slice(-3).map((each) => pushed(each).filter(({ rule }) => rule !== "set"));
    return last.length === 3 && last.every((lines) => lines.length > 0) ? last.flat().map(({ text }) => text) : [];
  }, DONE));

test("such days are of every kind", () => {
  const all = ["concert", "noInstrument", "rest", "return", "sparing", "unhurried", "usual"];
  const kinds = new Set<string>(EVERY.flatMap(({ days }) => days.map(({ plan }) => plan.kind)));
  expect(all.filter((kind) => !kinds.has(kind))).toEqual([]);
  const faster = DONE.flatMap(({ days }) => days).filter((each) => pushed(each).length > 0);
  expect(faster.length).toBeGreaterThan(0);
});
