import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in German: common practice, no source. */
export const GERMAN_PLACES: PlaceTable = {
  numbered: {
    bars: "Takt | Takte | Takten | Tkt | Tkte | Takt Nr",
    lines: "Zeile | Zeilen | Systeme | Notenzeile | Notenzeilen | Akkolade",
    page: "Seite | Seiten",
    mvt: "Satz | Sätze",
    var: "Var | Variation | Variationen",
    letter: "Buchstabe | Buchstaben | Ziffer | Ziffern | Buchst | Probeziffer | Studierziffer",
    section: "Abschnitt | Abschnitte | Abschn",
    verse: "Strophe | Strophen",
    phrase: "Phrase | Phrasen",
    part: "Teil | Teile",
  },
  short: {
    bars: "T",
    lines: "Z",
    page: "S",
  },
  ordinals: joined(
    "erste/erster/ersten/erstes | zweite/zweiter/zweiten/zweites | dritte/dritter/dritten/drittes",
    "vierte/vierter/vierten/viertes | fünfte/fünfter/fünften",
  ),
  likeOrdinals: joined(
    "letzte | letzter | letzten | letztes | nächste | mittlere | langsamer | schneller | beide | heikle | heiklen",
    "knifflige | langsame | langsamen | oberste | oberen | schnelle | schnellen | schwere | schweren | schwierige",
    "schwierigen | unterste | vorletzte | vorletzten | nächsten | ganze",
  ),
  parts: joined(
    "Hälfte | Klammer | Wiederholung | Stelle | Stellen | Thema | Einsatz | Drittel | Lauf | Läufe | Passage",
    "Passagen | Übergang | Übergänge",
  ),
  articles: "der | die | das | den",
  from: "ab | von | vom",
  to: "bis | bis zu | bis zum | bis zur",
  onwards: "ff",
  end: "Ende | zum Ende | Schluss | zum Schluss | Ende der Seite | Seitenende | Schluß",
  before: "vor",
  after: "nach",
  whole: joined(
    "ganz | ganz durch | einmal durch | am Stück | das Ganze | ganzes Stück | das ganze Stück | komplett",
    "vom Anfang | von Anfang an | von vorne | von vorn | von Anfang bis Ende | alles durch | von A bis Z",
    "von Anfang bis Schluss | vom Anfang bis zum Ende | ganzes Lied | das ganze Lied | im Ganzen",
    "einmal ganz durch | von vorn bis hinten",
  ),
  named: joined(
    "bis zum Doppelstrich | Trio | Minore | Anfang | Auftakt | A-Teil | B-Teil | C-Teil | Beginn | Durchführung",
    "Exposition | mit Wdh | mit Wdh. | mit Wiederholungen | mit Wiederholung | ohne Wdh | ohne Wdh.",
    "ohne Wiederholungen | ohne Wiederholung | Mittelteil | Reprise | Schluss | Schlussteil | bis Ende",
    "bis zum Ende | bis Schluss | bis zum Schluss | Thema | Refrain | Überleitung | Kadenz | Einleitung | Coda",
    "ab der Reprise | ab der Coda | ab dem Trio | Auftakte | bis zur Coda | bis zur Reprise",
    "bis zur Wiederholung | bis zum Trio | Codetta | Hauptthema | Majore | mit Wdhg | Nachspiel | ohne Wdhg",
    "Seitenthema | Soloteil | Stretta | Strophe | Trioteil | Zwischenspiel | zweites Thema | erstes Thema",
    "schwere Stelle | schwere Stellen | schwierige Stelle | schwierige Stellen | schnelle Stellen",
    "schneller Teil | langsamer Teil | erster Teil | zweiter Teil | dritter Teil | Schlusstakte | Anfangstakte",
    "Modulation | Minoreteil | Rückführung | nur Anfang | nur Schluss | Problemstellen | Volta 1 | Volta 2",
  ),
};
