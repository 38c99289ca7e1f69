import type { Command } from "../command.ts";
import { COMMON, PATHS } from "../options.ts";

export const AIMS: Command = {
  name: "aims",
  summary: "show how far each aim has come, and when it may be reached",
  usage: ["aims [PATH…] [--json]"],
  about: [
    "Lists the aims of a journal, the nearest date first: the day on which it was reached, or the best tempo yet, and a forecast as a range of weeks, or why there is none. Aims without a tempo, such as “by heart”, say when they were last done.",
    "A forecast needs six tested weeks in the last half year, the latest of them within four weeks, and tempos that rise. It says what comes of it if it goes on like that. It promises nothing: many things change the pace, and a rest is one of the good ones.",
    PATHS,
    "Given files, it answers for the whole journal around them.",
  ],
  options: { ...COMMON },
  prints: {
    heading: "The document of --json",
    rows: {
      aims: "the nearest date first: text, path, line (from 0), by; subject, where the aim has several and each has its own row",
      state: "reached, open, or past: the date has gone by",
      reachedOn: "the first day on which one attempt had all that the aim says, or null",
      "best, wanted": "rates, in notes a minute (a piece: beats), or null",
      forecast:
        "earliest and latest, in weeks from now; fromWeek and toWeek, the same as ISO weeks; testedWeeks, how many it rests on; or null",
      why: "a sentence: what the forecast rests on, or why there is none",
      journals: "where there are several: path, name and aims of each",
      skipped: "what could not be read: path, reason",
    },
  },
  examples: [
    { line: "daystave aims", does: "the aims of the journal in the current folder" },
    { line: "daystave aims --today 2026-01-31", does: "as they were at the end of January" },
    { line: "daystave aims --json", does: "the same for a script" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./aims.ts")).aims,
};
