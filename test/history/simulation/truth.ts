import { errorFunction, linearRegression } from "simple-statistics";
import { comfortableTempo, daysOf, levelOf, type Player, SETTINGS } from "./player.ts";
import { NOTES_A_BEAT } from "./written.ts";

/**
 * What a trend of the player's usual tempo ought to say, in notes a minute for a week: the slope of the least-squares
 * line through the *expected* tempo of every week of the course, whether it was practised or not.
 *
 * A gain of so many per cent of the week before is no line, so that no slope is true of it: the truth is asked of players
 * whose level is a straight line. The week's tempo is the highest setting of the metronome at or below the middle day of the week. Its mean goes up
 * in proportion to the level where it can be set to every whole number. With the usual marks, 3 to 6 % apart, the expected
 * best waves a little about a line, by less the more the days differ.
 *
 * For a player who keeps to a comfortable tempo it is the line through the tempos as they were set: nothing more can
 * be known from such a journal.
 */
export function trueSlope(player: Player, lowest: number): number {
  const points = Array.from({ length: player.weeks }, (_, week) => [week, expectedUsual(player, lowest, week)]);
  return NOTES_A_BEAT * linearRegression(points).m;
}

/** In quarters a minute. */
export function expectedUsual(player: Player, lowest: number, week: number): number {
  if (player.habit === "comfortable") return comfortableTempo(player, lowest, week);
  const { noise } = player;
  const days = daysOf(player, week).length;
  const middle = levelOf(player, lowest, week);
  const [always, never] = [middle * Math.exp(-FAR_OUT * noise), middle * Math.exp(FAR_OUT * noise)];
  // The mean of a quantity with steps: each step's width, times how likely it is to be climbed.
  return SETTINGS[player.metronome].reduce((sum, setting, i, all) => {
    if (i === 0) return setting;
    if (setting > never) return sum;
    const width = setting - all[i - 1]!;
    if (setting < always) return sum + width;
    return sum + width * mostOf(days, 1 - normalProbability(Math.log(setting / middle) / noise));
  }, 0);
}

/** How likely more than half of an odd number of days climb a step that each climbs with this probability. */
function mostOf(days: number, each: number): number {
  let sum = 0;
  for (let k = (days + 1) / 2; k <= days; k++) sum += choose(days, k) * each ** k * (1 - each) ** (days - k);
  return sum;
}

function choose(n: number, k: number): number {
  return k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k;
}

/** In standard deviations: farther out a probability is as near to 0 or 1 as the error function is known, 1e-7. */
const FAR_OUT = 6;

/** How likely a standard normal deviate lies below z, to about 1e-7. */
function normalProbability(z: number): number {
  return (1 + errorFunction(z / Math.SQRT2)) / 2;
}
