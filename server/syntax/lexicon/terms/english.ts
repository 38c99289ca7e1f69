import { joined } from "../joined.ts";
import type { TermTable } from "./term-table.ts";

/** English terms beside those of `words/terms.ts`: common practice, no source. */
export const ENGLISH_TERMS: TermTable = {
  noteValues: {
    "1/1": "semibreve | whole note",
    "1/2": "minim | half note | half notes",
    "1/4": "quarter | crotchet | crot | crotch | crotch. | quarter note | 1/4 | 1/4 notes | qtrs",
    "1/8": "8th | eighth | quaver | quav | eighth note | 8th note | 1/8 | 1/8 notes | 1/8s",
    "1/16": "16th | sixteenth | semiquaver | semis | semiq | semiqs | sixteenth note | 1/16 | 1/16 notes | 1/16s",
    "1/32": "32nd | thirty second notes | 1/32",
    "1/12":
      "triplet | trip | trips | 8th trips | 8th triplet | eighth triplets | triplet eighths | eighth note triplets",
    "1/6": "quarter triplets | quarter note triplets | crotchet triplets | triplet crotchets | triplet quarters",
    "1/24":
      "sextuplet | 16th triplets | sixteenth triplets | semiquaver triplets | triplet semiquavers | sextuplet 16ths",
    "1/20": "quintuplets | quintuplet",
    "1/28": "septuplets | septuplet",
  },
  directions: {
    up: "up only | only up | going up | upward | ascending only | on the way up",
    down: "down only | only down | going down | downward | descending only | on the way down",
    "up and down": "up & down | up + down | up+down | up and back | up and back down | up and down again",
    "down and up": "down & up | down + up | down+up",
  },
  rhythms: {
    dotted:
      "dotted rhythm | dotted rhythms | in dotted rhythm | in dotted rhythms | long short | in dots | dotted pattern",
    "reverse dotted": "reversed dotted rhythm | reverse dotted rhythm | short long | snap rhythm | reversed dots",
    swung: "swing feel | swung 8ths feel | with swing",
  },
  patterns: {
    thirds: "broken 3rds | in broken thirds | in broken 3rds | 3rds broken",
    octaves: "octave leaps | in broken octaves",
    threes: "in groups of three | in groups of 3 | 3s | groups of threes",
    fours: "in groups of four | in groups of 4 | 4s | groups of fours",
    fives: "in groups of five | in groups of 5 | 5s",
  },
  groups: "groups of | in groups of",
  slow: "slow | slowly",
  manners: {
    "hands together": "hands together | hands tog | hands tog. | ht | h.t. | both hands",
    "hands separate": joined(
      "hands separate | hands separately | hands alone | hands apart | hands sep | hands sep. | hs | h.s.",
      "separate hands",
    ),
    "left hand": "left hand | lh | l.h. | l/h | lh alone | lh only | left hand alone | left hand only | l.h. alone",
    "right hand": joined(
      "right hand | rh | r.h. | r/h | rh alone | rh only | right hand alone | right hand only | r.h. alone",
    ),
    "contrary motion": "contrary motion | in contrary motion",
    "similar motion": "similar motion | parallel motion | in parallel motion",
    "at the frog": "at the frog | at the heel",
    "at the tip": "at the tip | at the point",
    "middle of the bow": "middle of the bow | middle of bow | in the middle of the bow",
    "upper half": "upper half | upper half of the bow",
    "lower half": "lower half | lower half of the bow",
    "whole bows": "whole bows | whole bow | full bows | full bow | long bows",
    "up bow": "up bow | up bows | upbow | upbows",
    "down bow": "down bow | down bows | downbow | downbows",
    "sul ponticello": "sul ponticello | sul pont | sul pont.",
    "sul tasto": "sul tasto",
    "sul G": "sul g",
    "with mute": "with mute | muted | con sordino",
  },
  octave: "octaves | octave | oct | octs | oct. | octs. | 8ve | 8ves | 8va | 8vas",
  degrees: "notes | note | degrees",
  fullRange: "ext range | extended range | full compass | whole compass | entire range",
  twelfth: "12th | a 12th | one 12th",
  numbers: "two | three | four",
  minutes: "min | min. | mins | mins. | minute | minutes | minit | minits | m",
  hours: "h | h. | hr | hrs | hr. | hrs. | hour | hours",
  amounts: {
    15: "quarter of an hour | a quarter of an hour | quarter hour",
    30: "half an hour | half hour | half-an-hour | a half hour",
    45: "three quarters of an hour | three-quarters of an hour",
    60: "an hour | one hour",
    90: "an hour and a half | hour and a half | one and a half hours",
  },
  each: "each | apiece",
  about: "about | abt | abt. | approx | approx. | around | ca | ca. | c. | circa | roughly",
};
