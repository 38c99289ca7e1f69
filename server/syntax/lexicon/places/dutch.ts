import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in Dutch: from memory, no source. */
export const DUTCH_PLACES: PlaceTable = {
  numbered: {
    bars: "maat | maten | maatnummer | maatnummers",
    lines: "regel | regels | balk | balken | notenbalk | notenbalken | regeltje | regeltjes | systeem | systemen",
    page: "bladzijde | bladzijden | pagina | pagina's | blz | pag | pg | blad | bladz",
    var: "variatie | variaties",
    letter: "letter | letters | cijfer | repetitieletter | oefenletter | repetitiecijfer",
    verse: "couplet | coupletten | vers",
    phrase: "frase | zin | zinnen | frases | zinnetje",
    part: "deel | delen | gedeelte | deeltje | stukje",
  },
  short: {
    bars: "m",
    page: "p",
  },
  ordinals: "eerste | tweede | derde | vierde | vijfde",
  likeOrdinals: joined(
    "laatste | volgende | beide | bovenste | hele | langzame | lastige | middelste | moeilijke | onderste",
    "snelle | voorlaatste",
  ),
  parts: joined(
    "helft | herhaling | thema | stuk | gedeelte | helften | loopje | loopjes | passage | passages | plek",
    "plekken | stukje | stukjes",
  ),
  articles: "de | het",
  from: "vanaf | van",
  to: "tot | tot en met | t/m",
  onwards: "en verder | en verder door",
  end: "eind | einde | het eind | het einde | het slot | einde van de bladzijde | eind van de regel",
  before: "voor",
  after: "na",
  whole: joined(
    "vanaf het begin | van begin tot eind | helemaal | het geheel | hele stuk | het hele stuk | compleet",
    "compleet stuk | helemaal door | het hele lied | hele lied | hele nummer | het hele nummer | in zijn geheel",
    "van voor naar achter | van voor tot achter | van voren af aan | van a tot z",
  ),
  named: joined(
    "begin | het begin | einde | slot | coda | met herhaling | met herhalingen | zonder herhaling",
    "zonder herhalingen | tot het eind | tot het einde | doorwerking | expositie | reprise | thema | refrein",
    "opmaat | middendeel | A-deel | B-deel | C-deel | A-gedeelte | B-gedeelte | brug | cadens | couplet",
    "couplet en refrein | eerste helft | eerste thema | kadens | langzame deel | lastige maten | lastige plekken",
    "lastige stukjes | laatste regel | moeilijke maten | moeilijke plekken | moeilijke stuk | moeilijke stukje",
    "moeilijke stukjes | naspel | overgang | slotakkoord | slotmaten | snelle deel | snelle stuk | solo",
    "tot de coda | tot de herhaling | tussenspel | tweede helft | tweede thema | vanaf de herhaling",
    "de herhaling | het slot | het thema | het refrein | de opmaat",
  ),
};
