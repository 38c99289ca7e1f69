import { joined } from "./joined.ts";

// What says by when something is to be learned, at the head of a line. Common practice, no source; Dutch, Italian and
// Spanish from memory.

/** Before a weekday: `By Tues: Scherzo`, `zum Sonntag: Ciacona`. */
export const BEFORE_DUE_DAY: ReadonlySet<string> = new Set(
  joined(
    "by | for | until | till | til | before | zum | zu | bis | für | vor | pour | avant | d'ici | voor | tegen | tot | per | entro",
    "para | antes del",
  ).split(" | "),
);

/** Between it and the weekday. */
export const ARTICLES_OF_DAYS: ReadonlySet<string> = new Set(
  "the | next | zum | den | nächsten | el | la | il | le".split(" | "),
);

/** `this week: G scale, D scale`: with what is practised right behind its colon. */
export const THIS_WEEK: ReadonlySet<string> = new Set(
  joined("this week | this wk | diese woche | cette semaine | deze week | questa settimana | esta semana").split(" | "),
);
