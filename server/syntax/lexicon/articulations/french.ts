import type { ArticulationWords } from "./articulation-table.ts";

/** French articulations: common practice, no source. */
export const FRENCH_ARTICULATIONS: ArticulationWords = {
  slurred: "lié | liée | liés | liées | coulé | coulée | tout lié | tout coulé",
  tongued: "détaché | détachée | détachés | détachées | articulé | articulée | tout détaché",
  staccato: "piqué | piquée | piqués | piquées",
  portato: "louré | porté",
  "legato tongued": "lié articulé | détaché lié",
  "no tongue": "sans langue | sans coup de langue",
  "double tongued": "double coup de langue | double langue | double détaché",
  "triple tongued": "triple coup de langue | triple langue",
  "slur 2": "lié par deux | lié par 2 | liées par deux | liées par 2 | liés par deux | liés par 2 | par deux liées",
  "slur 2+1+1": "deux liées deux détachées | 2 liées 2 détachées | deux liées deux piquées | 2 liées 2 piquées",
  "slur 3": "lié par trois | lié par 3 | liées par trois | liées par 3",
  "slur 4": "lié par quatre | lié par 4 | liées par quatre | liées par 4",
  separate: "séparé | séparés | séparées",
  arco: "à l'archet",
  pizzicato: "pincé | en pizz",
  "rest stroke": "buté",
  "free stroke": "tiré | pincé libre",
  "alternate picking": "aller-retour au médiator",
  plectrum: "au médiator | avec médiator",
};
