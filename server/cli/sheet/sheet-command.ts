import type { Command } from "../command.ts";
import { MINUTES } from "../minutes-asked.ts";
import { GENERAL, PATHS } from "../options.ts";

export const SHEET: Command = {
  name: "sheet",
  summary: "make a sheet to print: a plan or a week, with staves",
  usage: [
    "sheet [PATH…] [--date DATE] [--minutes N] [--instrument NAME] [--fingerings] [--show-notes]",
    "sheet [PATH…] (--week WEEK | --since DATE [--until DATE]) [--fingerings] [--show-notes]",
  ],
  about: [
    "Makes a page to print, as HTML: the plan of a day, or the exercises of a week or of other days, each once. Every scale and arpeggio has its staff in the clef of your instrument, and room for a pencil.",
    "The plan is what your journal has for that day, where planned lines wait there; else, and with --minutes or --instrument, as plan makes it. After a word of pain it is always as plan makes it.",
    "It is one file that fetches nothing. Print it from a browser: it fits A4 and US Letter.",
    "Of a week it has what is played and how, not how it went, no remarks, and nothing that you wrote about the body. A plan keeps what it says of the body.",
    PATHS,
    "Given files, it answers for the whole journal around them. Name one journal.",
  ],
  options: {
    date: { type: "string", value: "YYYY-MM-DD", help: "the plan of this day, not of today" },
    minutes: MINUTES,
    instrument: {
      type: "string",
      value: "NAME",
      help: "plan for this instrument, where you play several",
      offers: "instruments",
    },
    week: { type: "string", value: "YYYY-Www", help: "the exercises of this ISO week, such as 2026-W11" },
    since: { type: "string", value: "YYYY-MM-DD", help: "the exercises from this day on, up to today or --until" },
    until: { type: "string", value: "YYYY-MM-DD", help: "with --since, the last day" },
    fingerings: { type: "boolean", help: "with recorder fingerings beneath the notes" },
    "show-notes": { type: "boolean", help: "draw staves where the journal or the line has “hide notes”" },
    today: { type: "string", value: "YYYY-MM-DD", help: "use this day as today" },
    ...GENERAL,
  },
  examples: [
    { line: "daystave sheet > today.html", does: "today’s plan" },
    { line: "daystave sheet --week 2026-W10 > week.html", does: "what was practised in a week" },
    { line: "daystave sheet --minutes 25 --fingerings > today.html", does: "25 minutes, with recorder fingerings" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./sheet.ts")).sheet,
};
