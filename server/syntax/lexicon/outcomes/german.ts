import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in German. Words: reference lexicon of practice words, class outcome; what has `nicht` before a word of
 * the table is from memory.
 */
export const GERMAN_OUTCOMES: OutcomeWords = {
  reached: `
    besser als gestern | fehlerfrei | flüssig | geht | gelungen | geschafft | gleichmässig | gleichmäßig | gut | in
    ordnung | ja | keine fehler | klappt | leicht | leichter | locker | läuft | ohne fehler | ok | ordentlich |
    prima | sauber | schön | sehr gut | sehr schön | sicher | sitzt | stabil | super | top | nicht schlecht
  `,
  nearly: `
    beinahe | besser | einigermaßen | fast | fast gut | fehler | geht so | halbwegs | knapp | mittel | na ja | naja
    | noch nicht ganz | patzer | so lala | teils | teilweise | wackelig | wacklig | wird besser
  `,
  not: `
    daneben | eilt | falsch | gehetzt | geht nicht | gestolpert | hakelig | hakt | hastig | hetzt | holpert |
    holprig | hängt | kickst | kippt | klappt nicht | nein | noch nicht | nö | quietscht | rausgeflogen | schlecht |
    schleppt | schwer | schwierig | stocken | stockt | stolpert | ungenau | ungleichmäßig | unsauber | verspielt |
    wackelt | zu hoch | zu schnell | zu tief | zäh | nicht sauber | nicht gut
  `,
  intensifiers:
    "sehr | ganz | recht | ziemlich | etwas | ein bisschen | meist | jetzt | endlich | schon | noch | so | echt | wirklich",
  negations: "nicht | kein | keine | nie | kaum | aber | außer | bis auf",
};
