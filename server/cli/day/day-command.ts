import type { Command } from "../command.ts";
import { COMMON, quietOption } from "../options.ts";

export const DAY: Command = {
  name: "day",
  summary: "print today’s day line, to begin a day with",
  usage: ["day [PATH] [--phases] [--quiet] [--json]"],
  about: [
    "Prints the line that begins today, written as your journal writes its days: with the weekday or without, in full or shortened. With --phases the phases of the last session and their minutes follow, ready to fill in.",
    "Where standard output is a file of the journal, as after >>, an empty line comes first if the file parts its days by one. Where the journal has today already, nothing is printed, and where it is comes on standard error; the exit status is 0 all the same.",
    "PATH is a journal's folder, or one file whose way of writing days counts. Without it, it is the journal of the current folder.",
  ],
  options: {
    phases: { type: "boolean", help: "add the phases of the last session that had some" },
    ...quietOption("say nothing on standard error where all went well"),
    ...COMMON,
  },
  prints: {
    heading: "The document of --json",
    rows: {
      date: "today, as 2026-03-02",
      line: "the day line; null where the journal has today already",
      phases: "the lines of --phases",
      there: "where today is: path, line; null where the journal does not have it",
    },
  },
  examples: [
    { line: "daystave day >> diary.practice", does: "begin today at the end of a file" },
    { line: "daystave day --phases >> diary.practice", does: "with the phases of the last session" },
  ],
  most: 1,
  offers: "journals",
  load: async () => (await import("./day.ts")).day,
};
