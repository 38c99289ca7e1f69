import { joined } from "./joined.ts";

// Words right before or behind a number that say what it counts, for expressions: a point may be left out, and the
// like. Common practice, no source; Dutch, Italian and Spanish from memory.

/** The number behind them is of another day, or wished for: no tempo that was played. */
export const OF_ANOTHER_DAY = expression("goal | was | were | since | stuck");

/** Behind these a number counts what they say, and nothing else; beginnings of words too. */
export const COUNTED_BY_WORD_BEFORE = expression(
  joined("was | were | since | stuck | str | pos | fing | fret | capo | track | ch\\b | chapter | valve"),
);

/** Behind a number: what it counts, so that it names no group of notes. Beginnings of words, unless `$` ends them. */
export const COUNTED_BY_WORD_BEHIND = expression(
  joined(
    "oct | 8v | okt | ott | notes?$ | degrees | min | m$ | ['′’] | bars? | lines? | times? | x$ | days | h$ | hours?",
    "sharps? | flats? | bpm | of | in | strings? | to$ | [-–/+=]",
  ),
);

/** Note values that stand behind a number or before one, and are no tempo by themselves. */
export const VALUES_BESIDE_NUMBER = expression(
  "8ths | 16ths | 32nds | 4ths | quavers | crotchets | minims | semiquavers | quarters | eighths | sixteenths | triplets",
);

/** `5 min`, `5 minuti`. */
export const MINUTES_BEHIND = expression("min(?:\\.|s|utes?|uten|uut|uti|utos?)? | mn");

/** Belongs to the amount behind it. */
export const ABOUT_AMOUNT = expression(
  joined(
    "about | abt\\.? | approx\\.? | around | ca\\.? | c\\. | circa | roughly | etwa | rund | ungef(?:ähr|\\.) | env\\.?",
    "environ | ongeveer | aprox\\.?",
  ),
);

/** Behind an amount: nothing took so long, as something was so much too late, or so far away. */
export const BEHIND_NO_AMOUNT: ReadonlySet<string> = new Set(
  joined(
    "late | too late | early | too early | ago | later | away | zu spät | zu früh | später | verspätung | entfernt",
    "de retard | en retard | d'avance | en avance | plus tard | plus tôt | te laat | te vroeg | later | geleden",
    "vertraging | di ritardo | in ritardo | di anticipo | in anticipo | più tardi | de retraso | tarde | más tarde",
    "antes",
  ).split(" | "),
);

/** What follows them is as typed, numbers too. */
export const FREE_WORDS_BEHIND = expression("focus | with | sore");

/** A number belongs to them: `60 to 72`, `bars 17 and 32`, `goal 84`, `1 h 20`. */
export const JOINED_TO_NUMBER = expression(
  joined(
    "to | and | & | of | or | -> | → | [-–—/+x×] | bars? | measures? | meas\\.? | lines? | pages? | pg\\.? | letter",
    "fig\\.? | mvt\\.? | movement | var\\.? | variations? | verses? | (?:bb?|m|mes|pp?|ll?|t|s|z|sys)\\. | takte?",
    "mesures? | zeilen? | seiten? | lignes? | misur[ae] | battut[ae] | comp[aá]s(?:es)? | maat | maten | goal",
    "\\d*(?:h|hrs?|hours?)\\.? | on | from | by",
  ),
);

/** `1,5 h`, `1,5 Stunden`. */
export const HOURS_BEHIND = expression("h | hrs? | hours? | std\\.? | stunden? | heures? | uur | ore | horas?");

/** Behind a number it counts what they say, or goes on. */
export const COUNTED_BEHIND = expression(
  joined(
    "of | to | and | in | times? | mins?\\.? | minutes? | m | h | hrs? | hours? | notes? | octaves? | degrees | sharps?",
    "flats? | bars? | measures | days? | ['′’&/–—-]",
  ),
);

function expression(words: string): string {
  return words.split(" | ").join("|");
}
