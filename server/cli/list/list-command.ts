import type { Command } from "../command.ts";
import { GENERAL, JSON_OPTION } from "../options.ts";
import { LISTS } from "./lists.ts";

export const LIST: Command = {
  name: "list",
  summary: "list the words that a journal may use, and their meanings",
  usage: [`list ${LISTS.join("|")} [--json]`],
  about: [
    "Prints what Daystave knows without a declaration, one thing a line, with its other names and its words in other languages, so that you can search it with grep.",
    "instruments: name, range as written, how far it sounds from that. kinds: scales and arpeggios, with their degrees. patterns: what each plays. terms: all other words of an entry, and what each means. codes: what daystave check can report, how much it matters, and what it means.",
  ],
  options: { ...JSON_OPTION, ...GENERAL },
  prints: {
    heading: "The rows of --json, an array under the name of the list",
    rows: {
      instruments: "names, the usual one first; family, low, high, sounds, varies",
      kinds: "names, of, degrees, falling, sentence, languages",
      patterns: "names, of, sentence, variants, languages",
      terms: "names, of, sentence, languages",
      codes: "code, severity, meaning",
    },
  },
  examples: [
    { line: "daystave list instruments", does: "every instrument and its range" },
    { line: "daystave list terms | grep -i staccato", does: "what that word means, and what others mean the same" },
    { line: "daystave list codes --json", does: "for a script" },
  ],
  most: 1,
  offers: LISTS,
  load: async () => (await import("./list.ts")).list,
};
