import { CODES } from "../../checks/codes.ts";
import type { Command } from "../command.ts";
import { GENERAL, JSON_OPTION } from "../options.ts";

export const EXPLAIN: Command = {
  name: "explain",
  summary: "explain a code that daystave check reports",
  usage: ["explain CODE [--json]"],
  about: [
    "Says what a code means: a small journal that raises it, with what is said of that, why, and what to do. The text is that of the format reference. All codes: daystave list codes.",
  ],
  options: { ...JSON_OPTION, ...GENERAL },
  prints: {
    heading: "The document of --json",
    rows: {
      code: "the code",
      severity: "error, warning, information or hint",
      meaning: "what it means, in a sentence",
      example: "a journal that raises it",
      found: "what is said of the example: line and column, from 1; message; fixes, each with title and safe",
      why: "why it is reported",
      whatToDo: "what fixes it",
      further: "what else there is to know, or null",
    },
  },
  examples: [
    { line: "daystave explain scale-note", does: "why a note was underlined, and what to do" },
    { line: "daystave explain aim-far --json", does: "the same for a script" },
  ],
  most: 1,
  offers: Object.keys(CODES),
  load: async () => (await import("./explain.ts")).explain,
};
