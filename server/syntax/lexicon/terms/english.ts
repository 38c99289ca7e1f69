import { joined } from "../joined.ts";
import type { TermTable } from "./term-table.ts";

/** English terms beside those of `words/terms.ts`: common practice, no source. */
export const ENGLISH_TERMS: TermTable = {
  noteValues: {
    "1/1": "semibreve | whole note",
    "1/2": "minim | half note | half notes",
    "1/4": "quarter | crotchet | crot | crotch | crotch. | quarter note | 1/4 | 1/4 notes | qtrs | qtr notes | 1/4s",
    "1/8": joined(
      "8th | eighth | quaver | quav | eighth note | 8th note | 1/8 | 1/8 notes | 1/8s | 1/8th | 1/8ths",
      "1/8th notes | swing 8ths",
    ),
    "1/16": joined(
      "16th | sixteenth | semiquaver | semis | semiq | semiqs | sixteenth note | 1/16 | 1/16 notes | 1/16s",
      "1/16th | 1/16ths | 1/16th notes",
    ),
    "1/32": "32nd | thirty second notes | 1/32",
    "1/12": joined(
      "triplet | trip | trips | 8th trips | 8th triplet | eighth triplets | triplet eighths",
      "eighth note triplets | eighth triplet | quaver triplet | 8ths triplets",
    ),
    "1/6": "quarter triplets | quarter note triplets | crotchet triplets | triplet crotchets | triplet quarters",
    "1/24": joined(
      "sextuplet | 16th triplets | sixteenth triplets | semiquaver triplets | triplet semiquavers",
      "sextuplet 16ths",
    ),
    "1/20": "quintuplets | quintuplet",
    "1/28": "septuplets | septuplet",
  },
  directions: {
    up: "up only | only up | going up | upward | ascending only | on the way up | asc | asc. | asc only | ascend",
    down: joined(
      "down only | only down | going down | downward | descending only | on the way down | desc | desc.",
      "desc only | descend",
    ),
    "up and down": joined(
      "up & down | up + down | up+down | up and back | up and back down | up and down again | asc & desc",
      "asc + desc | asc and desc | asc desc | ascending & descending | up n down | up and down both | up + back",
    ),
    "down and up": "down & up | down + up | down+up",
  },
  rhythms: {
    dotted: joined(
      "dotted rhythm | dotted rhythms | in dotted rhythm | in dotted rhythms | long short | in dots",
      "dotted pattern | dotted 8ths | dotted eighths | dotted quavers | in dotted | with dotted rhythms",
      "with dotted rhythm | dotted rhythm variations",
    ),
    "reverse dotted": "reversed dotted rhythm | reverse dotted rhythm | short long | snap rhythm | reversed dots",
    swung: joined(
      "swing feel | swung 8ths feel | with swing | in swing | swing eighths | swing quavers | swung eighths",
      "swung quavers | shuffle feel",
    ),
  },
  patterns: {
    thirds: "broken 3rds | in broken thirds | in broken 3rds | 3rds broken",
    octaves: "octave leaps | in broken octaves",
    threes: "in groups of three | in groups of 3 | 3s | groups of threes | groups of 3s | in 3 note groups",
    fours: "in groups of four | in groups of 4 | 4s | groups of fours | groups of 4s | in 4 note groups",
    fives: "in groups of five | in groups of 5 | 5s",
  },
  groups: "groups of | in groups of",
  slow: joined(
    "slow | slowly | dead slow | half speed | half tempo | nice and slow | really slow | really slowly | slow mo",
    "slow practice | slow tempo | slow motion | very slow | very slowly | v slow | v slowly",
    "super slow | slow and careful",
  ),
  manners: {
    "hands together": joined(
      "hands together | hands tog | hands tog. | ht | h.t. | both hands | 2 hands | both hands together | hts",
      "together hands | two hands",
    ),
    "hands separate": joined(
      "hands separate | hands separately | hands alone | hands apart | hands sep | hands sep. | hs | h.s.",
      "separate hands | each hand alone | each hand separately | one hand at a time | sep hands",
    ),
    "left hand": joined(
      "left hand | lh | l.h. | l/h | lh alone | lh only | left hand alone | left hand only | l.h. alone",
      "just left hand | just lh | left hand by itself | left hand solo | left only | l hand only | lh solo",
    ),
    "right hand": joined(
      "right hand | rh | r.h. | r/h | rh alone | rh only | right hand alone | right hand only | r.h. alone",
      "just rh | just right hand | right hand by itself | right hand solo | right only | r hand only | rh solo",
    ),
    "contrary motion": "contrary motion | in contrary motion | cont motion | contrary mot | contr motion",
    "similar motion": "similar motion | parallel motion | in parallel motion",
    "at the frog": "at the frog | at the heel | near the frog",
    "at the tip": "at the tip | at the point | near the tip",
    "middle of the bow": "middle of the bow | middle of bow | in the middle of the bow | mid bow | middle bow",
    "upper half": "upper half | upper half of the bow | upper half bow",
    "lower half": "lower half | lower half of the bow | lower half bow",
    "whole bows": "whole bows | whole bow | full bows | full bow | long bows | long bow | whole bow strokes",
    "up bow": "up bow | up bows | upbow | upbows",
    "down bow": "down bow | down bows | downbow | downbows",
    "sul ponticello": "sul ponticello | sul pont | sul pont.",
    "sul tasto": "sul tasto | over the fingerboard",
    "sul G": "sul g",
    "with mute": joined(
      "with mute | muted | con sordino | mute on | practice mute | w/ mute | with practice mute | with the mute",
    ),
    "by heart": joined(
      "by memory | off book | off copy | w/o music | without looking | without music | without the book",
      "without the music | from mem | off by heart",
    ),
    "at sight": "at first sight",
  },
  octave: "octaves | octave | oct | octs | oct. | octs. | 8ve | 8ves | 8va | 8vas",
  degrees: "notes | note | degrees",
  fullRange: "ext range | extended range | full compass | whole compass | entire range",
  twelfth: "12th | a 12th | one 12th",
  numbers: "two | three | four",
  minutes: "min | min. | mins | mins. | minute | minutes | minit | minits | m",
  hours: "h | h. | hr | hrs | hr. | hrs. | hour | hours",
  amounts: {
    15: "quarter of an hour | a quarter of an hour | quarter hour | 1/4 hour | quarter hr",
    30: joined(
      "half an hour | half hour | half-an-hour | a half hour | 1/2 hour | 1/2 hr | half hr | half an hr",
      "1/2 an hour",
    ),
    45: "three quarters of an hour | three-quarters of an hour | three quarter hour | 3/4 hour | 3/4 of an hour",
    60: "an hour | one hour",
    90: joined(
      "an hour and a half | hour and a half | one and a half hours | hour & a half | an hour & a half",
      "1 and a half hours | 1 hour and a half",
    ),
  },
  each: "each | apiece",
  about: "about | abt | abt. | approx | approx. | around | ca | ca. | c. | circa | roughly",
};
