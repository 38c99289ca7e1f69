import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in Spanish: from memory.
 */
export const SPANISH_OUTCOMES: OutcomeWords = {
  reached: `
    bien | muy bien | bueno | buena | limpio | limpia | fácil | seguro | segura | ok | sí | fluido | fluida |
    regular y limpio | parejo | pareja | perfecto | perfecta | logrado | lograda | sale | salió | salió bien | sin
    errores | sin fallos | ningún error | no está mal | nada mal | afinado | afinada | cómodo | cómoda | por fin
  `,
  nearly: `
    casi | casi bien | casi limpio | más o menos | así así | mejor | un poco mejor | va saliendo | algún error | un
    error | errores | fallos | inseguro | insegura | tambaleante
  `,
  not: `
    no | mal | sucio | sucia | irregular | desigual | desafinado | desafinada | demasiado rápido | muy rápido |
    atropellado | atropellada | apresurado | apresurada | no sale | no salió | todavía no | aún no | no bien |
    difícil | tenso | tensa | tropiezo | tropiezos | se cae | fatal | desastre | fallido | fallida
  `,
  intensifiers: "muy | bastante | un poco | más bien | ahora | por fin | realmente | todavía | aún | tan",
  negations: "no | ningún | nunca | sin | pero | excepto | salvo",
};
