import type { TechniqueTable } from "./technique-table.ts";

/** Dutch techniques: from memory, no source. */
export const DUTCH_TECHNIQUES: TechniqueTable = {
  general: [
    "toonoefening | toonoefeningen | toonvorming",
    "vingeroefeningen | vingeroefening",
    "duimoefening | duimoefeningen",
    "vibrato-oefening",
    "boventonen",
    "flageoletten | flageolet",
    "versieringen",
    "octaafsprongen",
    "intonatie",
    "dynamiek",
    "articulatieoefening | articulatieoefeningen",
  ],
  wind: [
    "ademhalingsoefeningen | ademhalingsoefening | ademoefening | ademoefeningen",
    "ademsteun",
    "embouchureoefening | embouchure",
    "vorkgrepen",
    "overblazen",
    "tongoefening | tongoefeningen",
    "fluttertong",
  ],
  brass: ["lipoefeningen | liptrillers", "natuurtonen", "pedaaltonen"],
  strings: [
    "losse snaren | open snaren",
    "positiewisselingen | positiewisseling",
    "snaarwisselingen | snaarwisseling",
    "streekoefeningen | streekoefening",
    "dubbelgrepen",
    "lange streken",
  ],
  keyboard: ["duimonderzet", "basso continuo"],
  plucked: ["barré | barré-akkoorden", "akkoordwisselingen", "tokkelpatroon"],
  voice: ["stemoefeningen | stemoefening", "liprollen", "klinkers"],
};
