import type { Instrument } from "./instrument.ts";

/** The two ways of playing that a line may change between, as players of an instrument call them. */
export interface Articulations {
  readonly joined: string;
  readonly parted: string;
}

/** Strings that are bowed; the others are plucked. */
const BOWED: readonly string[] = ["violin", "viola", "cello", "double bass", "treble viol", "tenor viol", "bass viol"];

/** Common practice, no source. */
export function articulationsOf(instrument: Instrument | undefined): Articulations {
  switch (instrument?.family) {
    case "string":
      return isBowed(instrument) ? { joined: "slurred", parted: "separate" } : { joined: "legato", parted: "staccato" };
    case "keyboard":
    case "percussion":
    case "voice":
      return { joined: "legato", parted: "staccato" };
    default:
      return { joined: "slurred", parted: "tongued" };
  }
}

/**
 * What notes that nothing joins are called where a line says nothing of it; null where nobody says anything of it:
 * only what is blown is tongued. Common practice, no source.
 */
export function singleNotesOn(instrument: Instrument | undefined): string | null {
  switch (instrument?.family) {
    case "string":
      return isBowed(instrument) ? "separate bows" : null;
    case "keyboard":
    case "percussion":
    case "voice":
    case "declared":
      return null;
    default:
      return "tongued";
  }
}

/** Whether a note can be held for as long as one likes; so it is where nothing is known of the instrument. */
export function holdsNotes(instrument: Instrument | undefined): boolean {
  if (instrument?.family === "string") return isBowed(instrument);
  return instrument?.family !== "keyboard" && instrument?.family !== "percussion";
}

function isBowed({ id }: Instrument): boolean {
  return BOWED.includes(id);
}
