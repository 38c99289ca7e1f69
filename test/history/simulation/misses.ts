/**
 * The shares of 1,000 courses (in the last block, of 2,000) that miss a limit of claims.ts, by player: what is known to be so,
 * not what should be. `npm run simulation` measures them anew.
 *
 * - A rise that is not found: a metronome's marks tell few tempos apart, and many pairs of weeks are ties. A tie is a slope of
 *   nought, and the interval leaves nought out only where all of them may be counted against the rise. By every whole number
 *   ties are fewer.
 * - Intervals that hold too little: of one who notes no failure the low weeks are left out and not the high ones.
 * - Intervals that hold too much: the true slope of a level player is nought, and so is that of a tie.
 * - A course turned to falling: after four weeks off there are none but slow weeks within eight, and the last of them is
 *   measured by the others.
 */
export const MISSES: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  "a rise of 2 % a week over 12 weeks is found in at least 90 %": {
    "climbs, 5 %, 12 weeks": 0.634,
    "reached only, 5 %, 12 weeks": 0.645,
    "climbs, 5 %, 12 weeks, compound": 0.739,
    "reached only, 5 %, 12 weeks, compound": 0.744,
    "climbs, 5 %, 12 weeks, three days a week": 0.809,
    "reached only, 5 %, 12 weeks, three days a week": 0.808,
    "climbs, 5 %, 12 weeks, whole numbers": 0.864,
    "reached only, 5 %, 12 weeks, whole numbers": 0.865,
  },
  "gaining 1 % a week, the interval holds the true slope in at least 90 %": {
    "reached only, 5 %, 26 weeks": 0.895,
    "reached only, 5 %, 52 weeks, slow weeks": 0.898,
    "reached only, 5 %, 52 weeks, whole numbers": 0.881,
  },
  "gaining 2 % a week, the interval holds the true slope in at least 90 %": {
    "reached only, 5 %, 52 weeks, slow weeks": 0.895,
  },
  "gaining -1 % a week, the interval holds the true slope in at least 90 %": {
    "reached only, 5 %, 12 weeks": 0.8176,
    "reached only, 5 %, 12 weeks, gaps": 0.88,
    "reached only, 5 %, 12 weeks, slow weeks": 0.8147,
    "reached only, 5 %, 12 weeks, gaps, slow weeks": 0.8801,
    "reached only, 5 %, 26 weeks": 0.742,
    "reached only, 5 %, 26 weeks, gaps": 0.823,
    "reached only, 5 %, 26 weeks, slow weeks": 0.724,
    "reached only, 5 %, 26 weeks, gaps, slow weeks": 0.843,
    "reached only, 5 %, 52 weeks": 0.785,
    "reached only, 5 %, 52 weeks, gaps": 0.812,
    "reached only, 5 %, 52 weeks, slow weeks": 0.774,
    "reached only, 5 %, 52 weeks, gaps, slow weeks": 0.814,
    "reached only, 5 %, 12 weeks, whole numbers": 0.8721,
    "reached only, 5 %, 26 weeks, whole numbers": 0.764,
    "reached only, 5 %, 52 weeks, whole numbers": 0.763,
  },
  "gaining 0 % a week, the interval holds the true slope in at most 98 %": {
    "climbs, 5 %, 12 weeks": 0.998,
    "climbs, 5 %, 12 weeks, gaps": 0.998,
    "climbs, 5 %, 12 weeks, slow weeks": 0.997,
    "climbs, 5 %, 12 weeks, gaps, slow weeks": 0.9979,
    "climbs, 5 %, 26 weeks": 1,
    "climbs, 5 %, 26 weeks, gaps": 0.999,
    "climbs, 5 %, 26 weeks, slow weeks": 1,
    "climbs, 5 %, 26 weeks, gaps, slow weeks": 0.997,
    "climbs, 5 %, 52 weeks": 1,
    "climbs, 5 %, 52 weeks, gaps": 1,
    "climbs, 5 %, 52 weeks, slow weeks": 1,
    "climbs, 5 %, 52 weeks, gaps, slow weeks": 1,
    "reached only, 5 %, 12 weeks": 0.995,
    "reached only, 5 %, 12 weeks, gaps": 0.9958,
    "reached only, 5 %, 12 weeks, slow weeks": 0.9889,
    "reached only, 5 %, 12 weeks, gaps, slow weeks": 0.9911,
    "reached only, 5 %, 26 weeks": 0.993,
    "reached only, 5 %, 26 weeks, gaps": 0.994,
    "reached only, 5 %, 26 weeks, slow weeks": 0.992,
    "reached only, 5 %, 26 weeks, gaps, slow weeks": 0.989,
    "reached only, 5 %, 52 weeks": 0.997,
    "reached only, 5 %, 52 weeks, gaps": 0.995,
    "reached only, 5 %, 52 weeks, slow weeks": 0.997,
    "reached only, 5 %, 52 weeks, gaps, slow weeks": 0.994,
    "climbs, 5 %, 12 weeks, whole numbers": 0.983,
    "climbs, 5 %, 26 weeks, whole numbers": 0.993,
    "climbs, 5 %, 52 weeks, whole numbers": 0.999,
  },
  "one to three slow weeks more turn no course to falling": {
    "climbs, 5 %, 26 weeks, gaps, slow weeks, tenths": 0.0005,
  },
};
