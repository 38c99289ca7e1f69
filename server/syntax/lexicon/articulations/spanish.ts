import type { ArticulationWords } from "./articulation-table.ts";

/** Spanish articulations: from memory, no source. */
export const SPANISH_ARTICULATIONS: ArticulationWords = {
  slurred: "ligado | ligada | ligados | ligadas | todo ligado",
  tongued: "suelto | suelta | sueltos | sueltas | articulado | articulada | articuladas | con golpe de lengua",
  staccato: "picado | picada | picadas | estacato",
  "no tongue": "sin lengua",
  "double tongued": "doble picado | doble golpe de lengua | doble lengua",
  "triple tongued": "triple picado | triple golpe de lengua",
  "slur 2": "ligado de dos en dos | ligadas de dos en dos | ligado de a dos | de dos en dos ligadas",
  "slur 2+1+1": "dos ligadas dos sueltas | dos ligadas dos picadas | 2 ligadas 2 picadas",
  separate: "arcos separados | arcos sueltos",
  "rest stroke": "apoyado",
  "free stroke": "tirado",
  "alternate picking": "púa alternada | púa alterna",
  plectrum: "con púa",
};
