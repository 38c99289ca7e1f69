import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in Italian: from memory.
 */
export const ITALIAN_OUTCOMES: OutcomeWords = {
  reached: `
    bene | molto bene | buono | buona | pulito | pulita | facile | sicuro | sicura | ok | sì | fluido | fluida |
    regolare | perfetto | perfetta | ottimo | ottima | riuscito | riuscita | senza errori | nessun errore | va bene
    | non male | intonato | intonata | preciso | precisa | a posto | finalmente
  `,
  nearly: `
    quasi | quasi bene | quasi pulito | così così | insomma | meglio | un po' meglio | discreto | discreta | incerto
    | incerta | qualche errore | un errore | errori | ci siamo quasi
  `,
  not: `
    no | male | sporco | sporca | sbagliato | sbagliata | irregolare | stonato | stonata | troppo veloce | troppo
    lento | non va | non ancora | non bene | non pulito | non pulita | difficile | di corsa | teso | tesa | confuso
    | confusa | crolla | fallito | fallita | disastro
  `,
  intensifiers: "molto | abbastanza | un po' | piuttosto | ora | adesso | finalmente | davvero | ancora | così",
  negations: "non | nessun | mai | senza | ma | tranne",
};
