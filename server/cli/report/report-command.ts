import type { Command } from "../command.ts";
import { COMMON, PATHS } from "../options.ts";

export const REPORT: Command = {
  name: "report",
  summary: "put a week, or other days, together for a teacher",
  usage: ["report [PATH…] [--week WEEK | --since DATE [--until DATE]] [--md | --html | --json] [--body]"],
  about: [
    "Puts some days of a journal together on a page to print or hand on; without an option, the week of today. It has, where there is something to say: the questions and the teacher's words, the set work with the days it was played, the time by phase, what moved, what has settled, what has no clear change and what it is too early to say of, the aims, the pieces by place, and the days' own lines, without what was only planned.",
    "What is known of an exercise is known as of the last of these days, and what came later is left out. The trend is over the half year up to then.",
    "What you wrote about the body is for you alone. Without --body it is cut out of the days' lines, with remarks that speak of it, and nothing else in the report speaks of it; a sentence says so, whether or not there was any. Questions, set work and the teacher's words stay as they are written. Read a report before you hand it on.",
    "The HTML page is one file that fetches nothing. Several journals follow one another in Markdown and JSON; for --html, name one.",
    PATHS,
    "Given files, it answers for the whole journal around them.",
  ],
  options: {
    week: { type: "string", value: "YYYY-Www", help: "the days of this ISO week, such as 2026-W11" },
    since: { type: "string", value: "YYYY-MM-DD", help: "the days from this one on, up to today or --until" },
    until: { type: "string", value: "YYYY-MM-DD", help: "with --since, the last day" },
    md: { type: "boolean", help: "as Markdown, which is usual" },
    html: { type: "boolean", help: "as a page to print, with charts" },
    body: { type: "boolean", help: "with what is written about the body" },
    ...COMMON,
  },
  prints: {
    heading: "The document of --json",
    rows: {
      name: "who plays, else the name of the folder or file",
      "since, until": "the first and the last day that count",
      time: "each phase: phase (null for time under none), minutes, about (shared out, not written)",
      days: "the days that were not only planned: date, minutes, or null where none are noted",
      "moved, settled":
        "exercises: subject, strand; best, the fastest rate reached in these days, in notes a minute, or null; trend, as in history; facts, sentences",
      "unchanged, early": "the same, of those with no clear change and those of which it is too early to say",
      aims: "as in aims",
      pieces:
        "each place that was worked: piece, place (null for the whole), days; latest and goal, in beats a minute, or null",
      set: "text; done, the days on which it was done; wanted, for how many days it was set, or null; by, or null",
      "questions, words": "of the lesson, the words being the teacher's: date, text",
      body: "with --body: date, text",
      journals: "where there are several: path and name of each, with all of this",
      skipped: "what could not be read: path, reason",
    },
  },
  examples: [
    { line: "daystave report", does: "this week" },
    { line: "daystave report --week 2026-W10 --html > week.html", does: "a page to print" },
    { line: "daystave report --since 2026-02-28 > since-lesson.md", does: "from the last lesson up to today" },
    { line: "daystave report --json", does: "this week's numbers for a script" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./report.ts")).report,
};
