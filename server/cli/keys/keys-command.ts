import type { Command } from "../command.ts";
import { COMMON, PATHS } from "../options.ts";

export const KEYS: Command = {
  name: "keys",
  summary: "show which keys were played, and which the current pieces want",
  usage: ["keys [PATH…] [--since DATE] [--until DATE] [--json]"],
  about: [
    "Lists the scales and chords played in the last twelve weeks with the number of days, those with most days first, and the patterns, articulations, directions and reaches they were played in.",
    "Below that is what the current pieces want, and when it was last played: each piece's key, in any form of minor (within 14 days), the keys a fifth above and below (28 days); for a piece with a range, its scale as high and as low; on a recorder, the hardest finger change of that scale. Other keys are shown and never asked for.",
    PATHS,
    "Given files, it answers for the whole journal around them.",
  ],
  options: {
    since: { type: "string", value: "YYYY-MM-DD", help: "count from this day on, not twelve weeks" },
    until: { type: "string", value: "YYYY-MM-DD", help: "count up to this day, with what was wanted then" },
    ...COMMON,
  },
  prints: {
    heading: "The document of --json",
    rows: {
      "since, until": "the first and the last day that count",
      keys: "most days first: kind, tonic, fifths (sharps, or flats below 0; null for no key), days, last",
      "patterns, articulations": "of scales and chords, most days first: name, days",
      "directions, reaches": "the same",
      wanted:
        "piece; what: key, neighbour, range or fingerChange; name; played, lately enough; last, the day or null; why, a sentence",
      journals: "where there are several: path and name of each, with all of this",
      skipped: "what could not be read: path, reason",
    },
  },
  examples: [
    { line: "daystave keys", does: "the last twelve weeks" },
    { line: "daystave keys --since 2026-01-01", does: "this year" },
    { line: "daystave keys --json", does: "the same for a script" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./keys.ts")).keys,
};
