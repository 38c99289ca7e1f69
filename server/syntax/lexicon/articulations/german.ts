import { joined } from "../joined.ts";
import type { ArticulationWords } from "./articulation-table.ts";

/** German articulations: common practice, no source. */
export const GERMAN_ARTICULATIONS: ArticulationWords = {
  slurred: "gebunden | geb | geb. | gebd | alles gebunden",
  tongued: "gestoßen | gestossen | gest | gest. | angestoßen | angestossen | gezungt",
  staccato: "stakkato | kurz gestoßen | kurz",
  portato: "portato gestoßen | weich gestoßen",
  "legato tongued": "legato gestoßen",
  "no tongue": "ohne Zunge | ohne Anstoß",
  "double tongued": "Doppelzunge",
  "triple tongued": "Tripelzunge",
  "slur 2": joined(
    "paarweise gebunden | zu zweit gebunden | je zwei gebunden | Zweierbindung | Zweierbindungen",
    "2er Bindung | 2er Bindungen | in Zweierbindungen",
  ),
  "slur 2+1+1": "zwei gebunden zwei gestoßen | 2 gebunden 2 gestoßen | 2 geb 2 gest | 2 geb. 2 gest.",
  "slur 3": "Dreierbindung | Dreierbindungen | 3er Bindung | 3er Bindungen",
  "slur 4": "Viererbindung | Viererbindungen | 4er Bindung | 4er Bindungen",
  separate: "einzeln | einzeln gestrichen | getrennt",
  spiccato: "Springbogen",
  pizzicato: "gezupft",
  arco: "gestrichen",
  "non legato": "nicht gebunden",
  "rest stroke": "angelegt | Anlegen | mit Anlegen",
  "free stroke": "frei angeschlagen | freier Anschlag",
  "alternate picking": "Wechselschlag",
  plectrum: "mit Plektrum",
};
