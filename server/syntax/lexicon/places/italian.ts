import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in Italian: from memory, no source. */
export const ITALIAN_PLACES: PlaceTable = {
  numbered: {
    bars: "battuta | battute | misura | misure | batt | bat",
    lines: "rigo | righi | riga | righe",
    page: "pagina | pagine | pag",
    mvt: "movimento | movimenti | mov",
    var: "variazione | variazioni",
    letter: "lettera | numero di chiamata",
    section: "sezione",
    verse: "strofa | strofe",
    phrase: "frase | frasi",
    part: "parte | parti",
  },
  short: { bars: "b", page: "p" },
  ordinals: joined(
    "primo/prima/primi/prime | secondo/seconda/secondi/seconde | terzo/terza | quarto/quarta | quinto/quinta",
  ),
  likeOrdinals: "ultimo | ultima | ultimi | ultime | prossima",
  parts: "metà | ritornello | tema | volta",
  articles: "il | la | le | i | l'",
  from: "da | dal | dalla",
  to: "a | al | alla | fino a | fino al | fino alla",
  onwards: "in poi",
  end: "fine | la fine",
  before: "prima di",
  after: "dopo",
  whole: joined(
    "dall'inizio | dal principio | tutto intero | per intero | tutto il brano | tutto il pezzo",
    "dall'inizio alla fine",
  ),
  named: joined(
    "da capo | da capo al fine | inizio | l'inizio | fine | finale | coda | fino alla fine | con ritornelli",
    "con i ritornelli | senza ritornelli | sviluppo | esposizione | ripresa | tema | ritornello | introduzione",
    "cadenza | levare",
  ),
};
