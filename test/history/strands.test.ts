import { describe, expect, test } from "vitest";
import type { AttemptRecord } from "../../server/history/record.ts";
import { type Choice, exercisesOf, strandName } from "../../server/history/strands.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt, pieceAttempt, practised } from "./attempt.ts";

/** These records form these exercises: `subject: strand; strand`, the one shown first. */
function check(records: AttemptRecord[], expected: string[], choice: Choice = {}): void {
  const grouped = exercisesOf(records, choice).map(
    ({ subject, strands }) => `${subject}: ${strands.map(strandName).join("; ")}`,
  );
  expect(grouped).toEqual(expected);
}

const monday = parseIsoDate("2026-03-02")!;

describe("a strand is what may fairly be compared", () => {
  test("direction, tempo and day do not part attempts", () => {
    check([attempt(), attempt({ day: monday + 7, rate: 60 })], ["D minor melodic: octave, single, even"]);
  });

  test.each([
    ["reach", { reach: "wide" }, "wide, single, even"],
    ["tonguing", { tonguing: "slurred" }, "octave, slurred, even"],
    ["evenness", { evenness: "uneven" }, "octave, single, uneven"],
  ] as const)("%s parts strands of one exercise", (_, different, name) => {
    check([attempt({ order: 1 }), attempt(different)], [`D minor melodic: octave, single, even; ${name}`]);
  });

  test.each([
    ["instrument", { instrument: "tenor recorder" }],
    ["pattern", { pattern: "straight" }],
  ] as const)("%s parts exercises", (_, different) => {
    expect(exercisesOf([attempt(), attempt(different)])).toHaveLength(2);
  });

  test("a reach that nobody can tell is left unsaid", () => {
    check([attempt({ reach: null })], ["D minor melodic: single, even"]);
  });
});

describe("for a title, the movement and the place count, and nothing else", () => {
  test("tonguing, reach and evenness do not part its strands", () => {
    check(
      [pieceAttempt(), pieceAttempt({ tonguing: "slurred", reach: "wide", evenness: "uneven" })],
      ["Ground in G minor: bars 17-32"],
    );
  });

  test("places part strands, apart from case and spacing", () => {
    check(
      [
        pieceAttempt({ where: "Bars  17-32" }),
        pieceAttempt({ where: "bars 17-32", order: 1 }),
        pieceAttempt({ where: "bars 1-8" }),
      ],
      ["Ground in G minor: bars 17-32; bars 1-8"],
    );
  });

  test("so do movements; with neither it is the whole piece", () => {
    check(
      [
        pieceAttempt({ movement: "mvt 2", order: 2 }),
        pieceAttempt({ movement: "mvt 2", where: null, order: 1 }),
        pieceAttempt({ where: null }),
      ],
      ["Ground in G minor: mvt 2, bars 17-32; mvt 2; whole piece"],
    );
  });
});

describe("the strand that an exercise shows", () => {
  test("has most weeks, not most attempts", () => {
    check(
      [...practised("2026-03-02 60\n2026-03-09 60"), ...practised("2026-03-16 60 60 60 60", { tonguing: "slurred" })],
      ["D minor melodic: octave, single, even; octave, slurred, even"],
    );
  });

  test("counts the weeks with practice, not those between", () => {
    check(
      [
        ...practised("2026-01-05 60\n2026-03-09 60", { tonguing: "slurred" }),
        ...practised("2026-01-05 60\n2026-01-12 60\n2026-01-19 60"),
      ],
      ["D minor melodic: octave, single, even; octave, slurred, even"],
    );
  });

  test("is the latest of equals", () => {
    check(
      [attempt({ tonguing: "slurred" }), attempt({ day: monday + 2 })],
      ["D minor melodic: octave, single, even; octave, slurred, even"],
    );
    check(
      [attempt({ tonguing: "slurred", order: 1 }), attempt({ order: 0 })],
      ["D minor melodic: octave, slurred, even; octave, single, even"],
    );
  });
});

describe("exercises", () => {
  test("stand by the day they were last practised, the latest first, then by subject", () => {
    const of = (subject: string, day: number) => attempt({ subject, subjectKey: subject, day });
    check(
      [of("C major", monday), of("F major", monday + 2), of("A major", monday + 2)],
      ["A major: octave, single, even", "F major: octave, single, even", "C major: octave, single, even"],
    );
  });

  test("carry the subject as it was last written", () => {
    const records = [
      attempt({ subject: "d minor melodic" }),
      attempt({ subject: "D minor melodic", day: monday + 1 }),
      attempt({ subject: "D melodic minor" }),
    ];
    expect(exercisesOf(records)[0]).toMatchObject({ subject: "D minor melodic", lastDay: monday + 1 });
  });

  test("may be asked for since a day", () => {
    const old = attempt({ subject: "C major", subjectKey: "scale:c:major" });
    const slurred = attempt({ tonguing: "slurred" });
    const later = attempt({ day: monday + 8 });
    check([old, slurred, later], ["D minor melodic: octave, single, even"], { since: monday + 8 });
    check([old, later], [], { since: monday + 9 });
  });

  test("hold their records oldest first", () => {
    const records = [attempt({ day: monday + 3 }), attempt({ order: 1 }), attempt()];
    expect(exercisesOf(records)[0]!.strands[0]!.records).toEqual([records[2], records[1], records[0]]);
  });
});
