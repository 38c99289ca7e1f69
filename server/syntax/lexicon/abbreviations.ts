/**
 * Short forms of five letters and more that are written with a point, in the six languages: the point ends no sentence.
 * Common practice, no source.
 */
export const ABBREVIATIONS: ReadonlySet<string> = new Set(
  (
    "chrom | stacc | exerc | cresc | decresc | slurr | mixol | phryg | crotch | semiq | metro | approx | ungef | artif | concl | " +
    "expos | recap | perform | accomp | tutti | seite | zeile | buchst | oktav | spicc | circa | nummer | überm | punkt | gebro | " +
    "arpeg | marti | tempo | alleg | mouvt | mesur | exercit | vingt"
  ).split(" | "),
);

/** Shorter words that are no short form: a point behind them does end a sentence. */
export const SHORT_WORDS: ReadonlySet<string> = new Set(
  (
    "ok | yes | no | bad | off | top | low | all | end | now | not | too | day | fine | good | both | down | done | slow | fast | late | " +
    "flat | hard | easy | well | once | time | page | line | only | long | soft | loud | even | deep | warm | cold | tidy | okay | sure | " +
    "gone | here | more | less | next | nice | best | week | hand | lips | bow | ja | nee | non | oui | gut | nie | mal | auch | ganz | " +
    "bien | faux | lent | goed | vals | snel | bene | lento | bien | lento | mal"
  ).split(" | "),
);
