import type { Command } from "../command.ts";
import { MINUTES } from "../minutes-asked.ts";
import { COMMON, PATHS } from "../options.ts";

export const PLAN: Command = {
  name: "plan",
  summary: "suggest a session for a day, with the reason for each line",
  usage: ["plan [PATH…] [--date DATE] [--minutes N] [--instrument NAME] [--no-reasons] [--json]"],
  about: [
    "Prints a day as it would look in your journal, ready to be put there: a warm-up, the places of your pieces that want work, slow work, and what goes well with one thing changed, with pauses. It goes by what was played before that day, by your pieces, aims and set work. It is a suggestion: what you do not play of it counts for nothing.",
    "The plan is never longer than the minutes you give; without them, as long as your last days. After a word of pain it gets shorter and slower, or goes without the instrument. That is not treatment, and no option changes it. The same journal gives the same plan.",
    "Where the journal has that day already, what is printed belongs at the end of it.",
    PATHS,
    "Given files, it plans for the whole journal around them. Several journals follow one another, each by itself.",
  ],
  options: {
    date: { type: "string", value: "YYYY-MM-DD", help: "plan this day, not today" },
    minutes: MINUTES,
    instrument: {
      type: "string",
      value: "NAME",
      help: "plan for this instrument, where you play several",
      offers: "instruments",
    },
    "no-reasons": { type: "boolean", help: "leave the reasons out; what is said of the body stays" },
    ...COMMON,
  },
  prints: {
    heading: "The document of --json",
    rows: {
      "date, asked, minutes": "the day; the minutes that were asked for, or usual; those of the plan, with its pauses",
      kind: "usual, unhurried, sparing, return, concert, noInstrument, rest, or none: what kind of day it is",
      notes: "what is said at the top, in sentences: of the body first, then of the day",
      lines: "text, phase, minutes; rule, which one put it there; exercise, its name or null; reasons, in sentences",
      breaks: "pauses: before, the index of the line that follows; minutes",
      journalText: "what would be printed without --json",
      journals: "where there are several: path and name of each, with all of this",
      skipped: "what could not be read: path, reason",
    },
  },
  examples: [
    { line: "daystave plan", does: "a session for today" },
    { line: "daystave plan --minutes 25", does: "for 25 minutes" },
    { line: "daystave plan --no-reasons >> diary.practice", does: "the lines alone, at the end of the diary" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./plan.ts")).plan,
};
