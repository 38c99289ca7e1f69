import { instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Tonguing } from "../journal/model.ts";
import { articulationsOf, singleNotesOn } from "../music/instruments/articulations.ts";
import type { AttemptRecord } from "./record.ts";
import { wayTexts } from "./way-texts.ts";

/** How the articulation of a record is called on its instrument, where its line does not say. */
export interface ArticulationWords {
  /** By itself: `slurred`, `separate bows`; null where nothing is said of single notes, as on a keyboard. */
  readonly alone: (tonguing: Tonguing) => string | null;
  /** Held against another: `tongued`, `separate`, `not legato`. */
  readonly beside: (tonguing: Tonguing) => string;
}

const TONGUINGS = { slurred: "slurred", single: "tongued", mixed: "mixed", multiple: "double-tongued" } as const;

export function articulationWords(
  journal: Journal,
  { instrument: id, uri }: Pick<AttemptRecord, "instrument" | "uri">,
): ArticulationWords {
  const instrument = id === null ? undefined : instrumentOf(id, journal.conventions(uri));
  const single = id !== null && !instrument ? null : singleNotesOn(instrument); // nobody knows whether it is blown
  const { joined, parted } = articulationsOf(instrument);
  const apart = single === null ? wayTexts.not(joined) : wayTexts.way(parted);
  return {
    alone: (tonguing) => (tonguing === "single" ? single && wayTexts.way(single) : wayTexts.way(TONGUINGS[tonguing])),
    beside: (tonguing) =>
      tonguing === "single" ? apart : wayTexts.way(tonguing === "slurred" ? joined : TONGUINGS[tonguing]),
  };
}
