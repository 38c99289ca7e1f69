import type { TechniqueTable } from "./technique-table.ts";

/** Italian techniques: from memory, no source. */
export const ITALIAN_TECHNIQUES: TechniqueTable = {
  general: [
    "esercizi di suono | esercizio di suono | studio del suono",
    "esercizi per le dita | esercizio per le dita",
    "esercizio di vibrato",
    "armonici",
    "abbellimenti",
    "salti d'ottava",
    "intonazione",
    "dinamica | dinamiche",
    "note ribattute",
    "cadenze",
  ],
  wind: [
    "esercizi di respirazione | esercizio di respirazione | respirazione",
    "esercizi di emissione | emissione",
    "attacchi",
    "imboccatura",
    "frullato",
    "colpo di lingua | colpi di lingua",
    "posizioni alternative",
  ],
  brass: ["flessibilità | esercizi di flessibilità", "note pedale"],
  strings: [
    "corde vuote | corda vuota",
    "cambi di posizione | cambio di posizione",
    "cambi di corda | cambio di corda",
    "cambi d'arco",
    "doppie corde",
    "arcate lente | arcate lunghe",
    "colpi d'arco",
  ],
  keyboard: ["passaggio del pollice", "basso continuo"],
  plucked: ["barré", "cambi di accordo", "legature", "arpeggi mano destra"],
  voice: ["vocalizzi | vocalizzo", "sirene", "vocali"],
};
