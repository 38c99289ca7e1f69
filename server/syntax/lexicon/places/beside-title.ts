import { joined } from "../joined.ts";

// What is a place right behind the title of a piece alone, for expressions. Common practice, no source.

/** Numbers that count bars: `first 16`. */
export const BARS_BESIDE_TITLE = joined(
  "(?:last|first|opening|final|closing|middle) \\d{1,2}",
  "(?:letzte|erste|derni[èe]res|premi[èe]res|laatste|eerste|ultime|prime) \\d{1,2}",
)
  .split(" | ")
  .join("|");

/** Words, and numbers that count bars. */
export const BESIDE_TITLE = joined(
  BARS_BESIDE_TITLE,
  "all|through|entire|ganz|tout|helemaal|tutto|todo|trio|turnaround",
)
  .split(" | ")
  .join("|");

/** Between the letters of sections. */
export const JOINTS_OF_SECTIONS = "[-–+&/]|and|to|und|bis|et|à|en|tot|e|y";
