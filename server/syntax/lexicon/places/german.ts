import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in German: common practice, no source. */
export const GERMAN_PLACES: PlaceTable = {
  numbered: {
    bars: "Takt | Takte | Takten | Tkt",
    lines: "Zeile | Zeilen",
    page: "Seite | Seiten",
    mvt: "Satz | Sätze",
    var: "Var | Variation | Variationen",
    letter: "Buchstabe | Buchstaben | Ziffer | Ziffern",
    section: "Abschnitt | Abschnitte",
    verse: "Strophe | Strophen",
    phrase: "Phrase | Phrasen",
    part: "Teil | Teile",
  },
  short: { bars: "T", lines: "Z", page: "S" },
  ordinals: joined(
    "erste/erster/ersten/erstes | zweite/zweiter/zweiten/zweites | dritte/dritter/dritten/drittes",
    "vierte/vierter/vierten/viertes | fünfte/fünfter/fünften",
  ),
  likeOrdinals: "letzte | letzter | letzten | letztes | nächste | mittlere | langsamer | schneller | beide",
  parts: "Hälfte | Klammer | Wiederholung | Stelle | Stellen | Thema | Einsatz",
  articles: "der | die | das | den",
  from: "ab | von | vom",
  to: "bis | bis zu | bis zum | bis zur",
  onwards: "ff",
  end: "Ende | zum Ende | Schluss | zum Schluss",
  before: "vor",
  after: "nach",
  whole: joined(
    "ganz | ganz durch | einmal durch | am Stück | das Ganze | ganzes Stück | das ganze Stück | komplett",
    "vom Anfang | von Anfang an | von vorne | von vorn | von Anfang bis Ende",
  ),
  named: joined(
    "bis zum Doppelstrich | Trio | Minore | Anfang | Auftakt | A-Teil | B-Teil | C-Teil | Beginn | Durchführung",
    "Exposition | mit Wdh | mit Wdh. | mit Wiederholungen | mit Wiederholung | ohne Wdh | ohne Wdh.",
    "ohne Wiederholungen | ohne Wiederholung | Mittelteil | Reprise | Schluss | Schlussteil | bis Ende",
    "bis zum Ende | bis Schluss | bis zum Schluss | Thema | Refrain | Überleitung | Kadenz | Einleitung | Coda",
  ),
};
