// Turns an entry's shorthand into the line of the journal: what was tried that day, from slow to fast, and how it went.
import { EXERCISES, MARKS, WITHOUT_TEMPO } from "./player.mjs";
import { oneOf } from "./random.mjs";

const OUTCOMES = ["easy", "clean", "nearly", "uneven", "rushed", "slips"];
const HOW = ["well", "row", "once", "slow", "heart", ...OUTCOMES];

/** How often, where the shorthand does not say. */
const OFTEN = { fails: 0.5, tries: 0.18, focus: 0.15, easy: 0.15, range: 0.12, lighter: 0.4 };

/** The line for an entry in this week (1 to 52). What stands behind `= ` is taken as it is. */
export function entryLine(shorthand, week, random) {
  if (shorthand.startsWith("= ")) return shorthand.slice(2);
  const [name, ...words] = shorthand.split(" ");
  const wrong = words.find((word) => !HOW.includes(word) && !/^-\d$/.test(word));
  if (wrong) throw new Error(`no way to say how it went: ${shorthand}`);
  if (WITHOUT_TEMPO[name]) return oneOf(WITHOUT_TEMPO[name], random);
  const exercise = EXERCISES[name];
  if (!exercise) throw new Error(`no exercise: ${shorthand}`);
  const { line } = exercise;
  const how = { words, outcome: words.find((word) => OUTCOMES.includes(word)) };
  const heart = words.includes("heart") ? ", by heart" : "";
  if (words.includes("slow")) return `${line}, slow${how.outcome ? `, ${how.outcome}` : ""}${heart}`;
  const tempos = tempoTerms(exercise, week, how, random);
  const focus = random() < OFTEN.focus ? `, focus ${oneOf(exercise.focuses, random)}` : "";
  return `${line}${/\d(?:th|nd)s$/.test(line) ? "" : ","} at ${tempos}${heart}${focus}`;
}

/**
 * `54 clean, 58 clean 4 of 5, 60 uneven`: up to two steps below the best of the day, the best, and perhaps one above.
 */
function tempoTerms(exercise, week, { words, outcome }, random) {
  const best = bestOf(exercise, week, random) - Number(words.find((word) => word.startsWith("-"))?.slice(1) ?? 0);
  const fails = outcome ?? oneOf(exercise.fails, random);
  const below = words.includes("once") ? 0 : Math.min(best, oneOf([0, 1, 1, 2, 2], random));
  const attempts = [];
  if (below > 0) attempts.push(`${MARKS[best - below]} ${random() < OFTEN.easy ? "easy" : "clean"}`);
  if (below > 1 && random() < OFTEN.lighter) attempts.push(`${MARKS[best - 1]} clean`);
  attempts.push(`${MARKS[best]} clean${tries(words, random)}`);
  const failed = random() < OFTEN.fails && !words.some((word) => ["well", "row", "once"].includes(word));
  if (outcome || failed) attempts.push(`${MARKS[best + 1]} ${fails}`);
  return attempts.join(", ");
}

function tries(words, random) {
  if (words.includes("row")) return " 5 in a row";
  return random() < OFTEN.tries ? oneOf([" 4 of 5", " 3 of 5", " 3 times"], random) : "";
}

/** The day's best as an index of MARKS: what the course says, and a little of what no day shares with the next. */
function bestOf({ course, swing = 0.6 }, week, random) {
  const mark = markOf(course, week) + (random() * 2 - 1) * swing;
  return Math.min(MARKS.length - 2, Math.max(0, Math.round(mark)));
}

/** Where the course stands in a week, between the steps of the metronome. */
function markOf(course, week) {
  const pairs = [];
  for (let i = 0; i < course.length; i += 2) pairs.push([course[i], MARKS.indexOf(course[i + 1])]);
  if (pairs.some(([, mark]) => mark === -1)) throw new Error(`no metronome step in ${course}`);
  const after = pairs.findIndex(([at]) => at >= week);
  if (after === 0) return pairs[0][1];
  if (after === -1) return pairs.at(-1)[1];
  const [[from, low], [to, high]] = [pairs[after - 1], pairs[after]];
  return low + ((high - low) * (week - from)) / (to - from);
}
