import { joined } from "../../joined.ts";

/** English techniques of bowed strings: common practice, no source. */
export const STRINGS_TECHNIQUES: readonly string[] = [
  joined(
    "open strings | open string | open strings bowing | open string exercise | open strings exercise",
    "open string bows | open string bowing | open string drill",
  ),
  "slow bows | slow bow | slow bow exercise | slow bowing | long slow bows | son filé | sons filés | son file",
  joined(
    "string crossings | string crossing | crossing strings | string crossing exercise | string crossing exercises",
    "string crossing drill | string crossing drills | string crossings exercise | string xings | string xing",
  ),
  "bow changes | bow change | bow change exercise",
  "bow distribution | bow division | bow division exercise | bow distribution exercise | dividing the bow",
  joined(
    "bow exercise | bow exercises | bowing exercise | bowing exercises | bow drills | bow drill | bow strokes",
    "bow work | bow technique | bowing drill | bowing drills | bowing technique | bowing patterns | bowing pattern",
    "bowings exercise | bowing practice | bow practice | bowing study | bowing studies",
  ),
  joined(
    "bow control | bow speed | bow control exercise | bow speed exercise | bow weight | bow pressure | bow placement",
    "straight bows | straight bowing",
  ),
  joined(
    "bow hold | bow hold exercise | bow hold exercises | bow hold practice | bow holds | bow hold games | bow games",
    "bow grip | bow hand exercise | pencil bow hold | bow hold check | bow hold drill | pinky push ups",
    "pinkie push ups | bow crawls | bow crawl",
  ),
  joined(
    "double stops | double stopping | double stop | double stop exercise | double stop exercises",
    "double stopping exercise | double stops exercise | double stop drill | dbl stops | dbl stop",
    "double stop scales",
  ),
  joined(
    "shifting | shifts | shifting exercise | shifting exercises | position shifts | position changes",
    "shifting drill | shifting drills | shifting study | shifting studies | shifting practice | shift drill",
    "shift drills | shift exercise | shift exercises | shift practice | position shift | position shifting",
    "position work | position exercise | position exercises",
  ),
  "thumb position | thumb position exercise | thumb position exercises | thumb pos",
  "half position",
  "bariolage",
  joined(
    "left hand pizzicato | left hand pizz | left hand pizz. | lh pizz | lh pizzicato | l.h. pizz",
    "left hand pizz exercise | lh pizz exercise",
  ),
  joined(
    "left hand exercise | left hand exercises | left hand drill | left hand drills | lh exercise | lh exercises",
    "left hand technique | left hand work | lh technique",
  ),
  "extensions | extension exercise | extension exercises | extensions exercise | extension drill",
  "finger drops | finger drop | finger taps | finger tapping | finger tap exercise | finger lifts",
  "tuning in fifths",
  "drones | drone exercise | drone exercises | drone work | drone practice | drone strings | drone bowing",
  "bow circles | bow circle",
  "bow lifts | bow lift | bow retakes | bow retake",
  "bow chops | bow chopping | chop bowing | chopping exercise",
  "bowed triplets | bowed triplet",
  "contact point | contact points | sounding point | sounding points | contact point exercise",
  "détaché exercise | détaché exercises | detache exercise | detache exercises | détaché study",
  "fingered octaves | fingered octave",
  "hand frame | hand frame exercise | left hand frame | left hand shape",
  "martelé exercise | martele exercise | martelé strokes",
  joined(
    "one string scales | one string scale | single string scales | single string scale | one finger scales",
    "one finger scale",
  ),
  "pizzicato exercise | pizzicato exercises | pizz exercise | pizz exercises | pizz drill",
  "sautillé exercise | sautille exercise",
  "shuffle bowing | shuffle bow | nashville shuffle",
  "spiccato exercise | spiccato exercises | spiccato drill | spiccato study | spiccato practice",
  "tonalization | tonalisation",
  "trill drops | left hand trills",
];
