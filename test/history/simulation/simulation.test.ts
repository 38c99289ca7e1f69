import { describe, expect, test } from "vitest";
import { CLAIMS, type Claim, type Count, Simulation } from "./claims.ts";
import { MISSES } from "./misses.ts";
import { nameOf, ways } from "./models.ts";
import { differingAsText } from "./runs.ts";

// Invented players whose truth is known, and many courses of each. Their sittings swing by 5 % about what is possible, once
// a week unless said; each climbs until a mark is not reached, and notes either both or only what was reached. What
// other players would get is told by `node test/bench/simulation.mjs`. How real ones swing: no source, an assumption.
//
// The limits are those that the trend is meant to keep. In full, 1,000 courses of each player must keep them to the letter. Here
// are 100, the first of those, and a share of so few swings by chance: a limit p is given a slack of three standard errors
// of a binomial share, 3 √(p (1 − p) / n). Who misses a limit stands in misses.ts with the share that was measured in full.
// That share must be met again within the same slack, in full within a hundredth: a better one is to be written down.

const IN_FULL = process.env["DAYSTAVE_SIMULATION"] === "in full"; // as in-full.mjs says
const COURSES = IN_FULL ? 1000 : 100;
const STANDARD_ERRORS = 3;
const HUNDREDTH = 0.01;

const slackOf = (share: number, n: number) => STANDARD_ERRORS * Math.sqrt((share * (1 - share)) / n);
const simulation = new Simulation(COURSES);

for (const claim of CLAIMS)
  describe(claim.name, () => {
    const misses = MISSES[claim.name] ?? {};
    const names = claim.players.map(nameOf);
    test("every miss is one of the players", () => expect(names).toEqual(expect.arrayContaining(Object.keys(misses))));
    const isPromised = claim.least !== undefined || claim.most !== undefined;
    if (!isPromised) test("all are recorded", () => expect(Object.keys(misses)).toEqual(names));
    for (const [i, each] of claim.players.entries()) {
      const name = names[i]!;
      const recorded = misses[name];
      if (recorded === undefined) test(name, () => isKept(claim, claim.counted(each, simulation)));
      else
        test(`known miss: ${name}`, ({ task }) => {
          const counted = claim.counted(each, simulation);
          Object.assign(task.meta, { miss: { recorded, measured: counted.count / counted.of } });
          isAsRecorded(claim, recorded, counted);
        });
    }
  });

function isKept({ least = 0, most = 1 }: Claim, { count, of }: Count): void {
  expect(count / of).toBeGreaterThanOrEqual(least - (IN_FULL ? 0 : slackOf(least, of)));
  expect(count / of).toBeLessThanOrEqual(most + (IN_FULL ? 0 : slackOf(most, of)));
}

/** A share beyond its limit, or of a player who has none, near that of the table. */
function isAsRecorded({ least, most }: Claim, recorded: number, { count, of }: Count): void {
  const isPromised = least !== undefined || most !== undefined;
  const isMissed = recorded < (least ?? 0) || recorded > (most ?? 1);
  expect(isMissed || !isPromised, "a share of the table that misses no limit").toBe(true);
  const tolerance = IN_FULL ? HUNDREDTH : slackOf(recorded, of);
  const wrong = `${count} of ${of}; misses.ts has ${recorded}, give or take ${tolerance.toFixed(3)}`;
  expect(Math.abs(count / of - recorded), wrong).toBeLessThanOrEqual(tolerance);
}

test("a journal read as text says the same as its records", () => {
  expect(differingAsText({ ...ways({ gaps: true, slowWeeks: true, daysAWeek: 3 }), gain: 1 }, COURSES)).toBe(0);
});
