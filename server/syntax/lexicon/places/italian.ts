import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in Italian: from memory, no source. */
export const ITALIAN_PLACES: PlaceTable = {
  numbered: {
    bars: "battuta | battute | misura | misure | batt | bat",
    lines: "rigo | righi | riga | righe | sistema | sistemi | pentagramma | pentagrammi",
    page: "pagina | pagine | pag",
    mvt: "movimento | movimenti | mov",
    var: "variazione | variazioni",
    letter: "lettera | numero di chiamata",
    section: "sezione | sezioni",
    verse: "strofa | strofe",
    phrase: "frase | frasi",
    part: "parte | parti",
  },
  short: {
    bars: "b",
    page: "p",
  },
  ordinals: "primo/prima/primi/prime | secondo/seconda/secondi/seconde | terzo/terza | quarto/quarta | quinto/quinta",
  likeOrdinals: "ultimo | ultima | ultimi | ultime | prossima | penultimo | penultima | centrale",
  parts: "metà | ritornello | tema | volta | passaggio | passaggi | frase",
  articles: "il | la | le | i | l'",
  from: "da | dal | dalla",
  to: "a | al | alla | fino a | fino al | fino alla",
  onwards: "in poi",
  end: "fine | la fine | fine pagina | fine della pagina | fine del brano",
  before: "prima di",
  after: "dopo",
  whole: joined(
    "dall'inizio | dal principio | tutto intero | per intero | tutto il brano | tutto il pezzo",
    "dall'inizio alla fine | completo | completa | da cima a fondo | dall'inizio alla fine del brano | intero",
    "intera | l'intero brano | tutto di seguito | tutta la canzone | tutto lo studio",
  ),
  named: joined(
    "da capo | da capo al fine | inizio | l'inizio | fine | finale | coda | fino alla fine | con ritornelli",
    "con i ritornelli | senza ritornelli | sviluppo | esposizione | ripresa | tema | ritornello | introduzione",
    "cadenza | levare | anacrusi | cambio di tonalità | codetta | dal ritornello | episodio | fino al ritornello",
    "fino alla coda | il finale | il tema | interludio | la coda | modulazione | parte A | parte B | parte C",
    "parte centrale | parte lenta | parte veloce | passaggi difficili | passaggi veloci | passaggio difficile",
    "ponte | prima metà | primo tema | seconda metà | secondo tema | sezione A | sezione B | sezione centrale",
    "solo finale | solo l'inizio | strofa | ultima pagina | ultima riga | trio",
  ),
};
