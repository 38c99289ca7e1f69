import type { Command } from "../command.ts";
import { COMMON, PATHS } from "../options.ts";

export const PUPILS: Command = {
  name: "pupils",
  summary: "show a teacher each pupil's set work and questions",
  usage: ["pupils [PATH…] [--json]"],
  about: [
    "For a teacher whose pupils have a folder each, with a journal.practice of its own. Of every journal it shows, by name: the last day with practice, what is set and on which days it was played, and the questions since the last lesson, in the pupil's own words. Where no lesson is noted, those of the last four weeks.",
    "It counts no minutes and compares nobody: nothing of one journal enters another's lines.",
    "What a journal says of the body is shown only if that journal itself has the line “share body” above its first day. A journal.practice with “shared” cannot say so for others.",
    PATHS,
    "Given files, it answers for the whole journal around them. A journal.practice with “shared” and without a day is nobody's, and has no lines.",
  ],
  options: { ...COMMON },
  prints: {
    heading: "The document of --json",
    rows: {
      pupils: "by name: name, the player's or else the folder's; path, of the folder",
      last: "the last day with practice, or null",
      set: "text, as it was set; done, the days on which it was played; wanted, on how many days, or null; by, the day it is for, or null",
      questions: "since the last lesson, the oldest first: date, text",
      body: "likewise, what was said of the body; only where the journal has “share body”",
      skipped: "what could not be read: path, reason",
    },
  },
  examples: [
    { line: "daystave pupils", does: "every journal below the current folder" },
    { line: "daystave pupils --today 2026-03-09", does: "as it was on a Monday in March" },
    { line: "daystave pupils --json", does: "the same for a script" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./pupils.ts")).pupils,
};
