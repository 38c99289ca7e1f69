import type { ArticulationWords } from "./articulation-table.ts";

/** Italian articulations: from memory, no source. Those that English took over stand there. */
export const ITALIAN_ARTICULATIONS: ArticulationWords = {
  slurred: "legate | legati | legata | tutto legato",
  tongued: "staccate | articolato | articolate | articolati | separato",
  "no tongue": "senza lingua",
  "double tongued": "doppio colpo di lingua | doppio staccato",
  "triple tongued": "triplo colpo di lingua | triplo staccato",
  "slur 2": "legate a due | legato a due | legate due a due | a due a due legate",
  "slur 2+1+1": "due legate due staccate | 2 legate 2 staccate | due legate e due staccate",
  separate: "arcate separate | sciolto | sciolte",
  spiccato: "balzato | saltellato",
  "rest stroke": "tocco appoggiato | appoggiato",
  "free stroke": "tocco libero",
  "alternate picking": "pennata alternata",
  plectrum: "con plettro | col plettro",
};
