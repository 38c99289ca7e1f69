import { joined } from "./joined.ts";

/**
 * Words between what is practised and the note that it is practised on, in the languages of names: common practice, no
 * source; Dutch, Italian and Spanish from memory.
 */

/** `double tonguing on G`, `overtones off B`, `Doppelzunge auf a`. */
export const ON_NOTE: readonly string[] = list(
  joined(
    "on | from | off | auf | von | ab | sur | depuis | vom | op | van | vanaf | su | da | dal | en | sobre | desde",
  ),
);

/** `on tenor recorder`, `auf Tenorblockflöte`. */
export const ON_INSTRUMENT: readonly string[] = list("on | auf | sur | op");

/** Those among them that may open a range: `long tones from G to D`. */
export const FROM_NOTE: readonly string[] = list(
  "from | von | vom | ab | depuis | van | vanaf | da | dal | desde | del",
);

/** `chromatic starting on C`: what may stand before `on` and `from`. */
export const BEFORE_LEAD: readonly string[] = list("starting | beginning | start | starts | begin | begins");

/** Which of the notes with one name: it names no octave that could be counted. */
export const REGISTERS: readonly string[] = list(
  joined(
    "open | low | lower | lowest | high | higher | highest | bottom | top | middle | tief | tiefe | tiefes | tiefem",
    "tiefen | hoch | hohe | hohes | hohem | hohen | mittleres | grave | aigu | aigue | lage | hoge | acuto | agudo",
  ),
);

/** `si grave`, `do-ré aigu`: where the note stands first. */
export const REGISTERS_BEHIND: readonly string[] = list(
  joined("low | high | tief | hoch | grave | aigu | aiguë | aigue | médium | laag | hoog | acuto | agudo"),
);

/** `D string`, `Saite D`: the letter names a string, and no note. */
export const STRINGS: readonly string[] = list(
  "string | strings | saite | saiten | corde | cordes | snaar | snaren | corda | corde | cuerda | cuerdas",
);

/** What stands between the two notes of a range or a pair. */
export const BETWEEN_NOTES: readonly string[] = list(
  joined(
    "with | to | and | & | / | - | – | mit | bis | nach | avec | à | met | tot | naar | con | hasta | up to | bis zum | au | al",
  ),
);

/** `F4 to G6`: how far. */
export const UP_TO: ReadonlySet<string> = new Set(list("to | up to | bis | à | jusqu'à | tot | a | al | hasta"));

/** `double tonguing on one note`, `Staccato auf einem Ton`: no note is named, for expressions. */
export const ON_ONE_NOTE =
  "(?:(?:on|auf|sur|op|su|sobre|en) )?(?:(?:one|a|the same|one single|a single|repeated) (?:notes?|tones?|pitch)|repeated notes|" +
  "(?:einem|demselben) ton|tonwiederholungen|(?:une|la même) note|(?:een|één|dezelfde) (?:noot|toon)|" +
  "una (?:sola )?nota(?: sola)?|notes répétées|note ribattute|notas repetidas)";

/** From where a trill begins: `trills from above`, `von oben`. */
export const NEIGHBOURS: readonly string[] = list(
  "above | below | oben | unten | dessus | dessous | boven | onderen | onder | sopra | sotto | arriba | abajo",
);

/** Tonics that are words of a language as well: English a, German es, French la, Italian and Spanish mi, do. */
export const TONICS_THAT_ARE_WORDS: ReadonlySet<string> = new Set(
  list("a | as | es | des | la | si | mi | do | sol | re | ut"),
);

/** Between two subjects, for expressions: `C and G major`, `E major / E minor`. */
export const JOINTS_OF_SUBJECTS = "and|&|\\+|\\/|und|et|e|y|en|u";

/** Before `arpeggio`, behind what joins it to its scale: `G major and the arpeggio`. */
export const ARTICLES_OF_ARPEGGIO =
  "the|its|their|der|die|das|dem|l'|les|son|leurs?|de|het|bijbehorende|gli|suo|el|los|su|sus";

/** What joins one thing with the next. */
export const AND: readonly string[] = list("and | & | + | und | et | en | e | y");

/** What leads from one thing that was played to the next: `100 then 108`, `then same again`. */
export const THEN: readonly string[] = list("then | dann | puis | luego | poi | dan");
export const LEADS_ON: ReadonlySet<string> = new Set([...THEN, ...AND]);

function list(words: string): readonly string[] {
  return words.split(" | ");
}
