import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in Dutch: from memory, no source. */
export const DUTCH_PLACES: PlaceTable = {
  numbered: {
    bars: "maat | maten",
    lines: "regel | regels | balk | balken",
    page: "bladzijde | bladzijden | pagina | pagina's | blz | pag",
    var: "variatie | variaties",
    letter: "letter | letters | cijfer",
    verse: "couplet | coupletten | vers",
    phrase: "frase | zin",
    part: "deel | delen | gedeelte",
  },
  short: { bars: "m", page: "p" },
  ordinals: "eerste | tweede | derde | vierde | vijfde",
  likeOrdinals: "laatste | volgende",
  parts: "helft | herhaling | thema | stuk",
  articles: "de | het",
  from: "vanaf | van",
  to: "tot | tot en met | t/m",
  onwards: "en verder",
  end: "eind | einde | het eind | het einde",
  before: "voor",
  after: "na",
  whole: "vanaf het begin | van begin tot eind | helemaal | het geheel | hele stuk | het hele stuk",
  named: joined(
    "begin | het begin | einde | slot | coda | met herhaling | met herhalingen | zonder herhaling",
    "zonder herhalingen | tot het eind | tot het einde | doorwerking | expositie | reprise | thema | refrein",
    "opmaat | middendeel | A-deel | B-deel",
  ),
};
