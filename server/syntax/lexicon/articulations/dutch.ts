import type { ArticulationWords } from "./articulation-table.ts";

/** Dutch articulations: from memory, no source. */
export const DUTCH_ARTICULATIONS: ArticulationWords = {
  slurred: "gebonden | geb. | alles gebonden",
  tongued: "aangezet | getongd | gestoten | los",
  staccato: "kort",
  "no tongue": "zonder tong",
  "double tongued": "dubbeltong | dubbele tong",
  "triple tongued": "tripeltong | driedubbele tong",
  "slur 2": "per twee gebonden | twee aan twee gebonden | gebonden per twee",
  "slur 2+1+1": "twee gebonden twee los | 2 gebonden 2 los",
  separate: "losse streken | gescheiden",
  pizzicato: "getokkeld",
  arco: "gestreken",
  "rest stroke": "steunslag",
  "free stroke": "vrije aanslag",
  plectrum: "met plectrum",
};
