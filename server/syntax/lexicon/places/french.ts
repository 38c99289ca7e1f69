import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in French: common practice, no source. */
export const FRENCH_PLACES: PlaceTable = {
  numbered: {
    bars: "mesure | mesures | mes",
    lines: "ligne | lignes | portée | portées | système | systèmes",
    page: "page | pages",
    mvt: "mouvement | mvt | mouv",
    var: "var | variation | variations",
    letter: "lettre | lettres | chiffre | chiffres | repère | repères | numéro de repère | chiffre de repère",
    section: "section | sections",
    verse: "couplet | couplets | strophe",
    phrase: "phrase | phrases",
    part: "partie | parties",
  },
  short: {
    bars: "m",
    lines: "l",
    page: "p",
  },
  ordinals: joined(
    "premier/première/premières/premiers | deuxième/second/seconde | troisième | quatrième | cinquième | sixième",
  ),
  likeOrdinals: "dernier | dernière | dernières | derniers | prochaine | avant-dernier | avant-dernière",
  parts: "moitié | moitiés | reprise | thème | fois | passage | passages | trait | traits | système | volta",
  articles: "le | la | les | l'",
  from: "depuis | de | du | à partir de | dès",
  to: "à | au | jusqu'à | jusqu'au | jusqu'à la",
  onwards: "et suite | et suivantes",
  end: "fin | la fin | fin de la page | bas de la page | fin du morceau",
  before: "avant",
  after: "après",
  whole: joined(
    "tout | tout d'un trait | depuis le début | du début | du début à la fin | en entier | en entière | entier",
    "entière | tout le morceau | toute la pièce | le tout | complet | complète | d'un bout à l'autre | de A à Z",
    "de bout en bout | en intégralité | intégralement | la pièce entière | le morceau en entier | morceau complet",
    "morceau entier | tout du long",
  ),
  named: joined(
    "page entière | pages entières | trio | mineur | la reprise | avec reprise | avec reprises",
    "avec les reprises | sans reprise | sans reprises | sans les reprises | coda | début | le début",
    "début seulement | développement | enchaîné | exposition | fin | la fin | fin seulement | jusqu'à la fin",
    "jusqu'au bout | jusqu'à la reprise | milieu | le milieu | refrain | reprise | réexposition | thème | pont",
    "introduction | intro | cadence finale | levée | anacrouse | changement de ton | codetta | couplet",
    "deuxième moitié | épisode | jusqu'à la coda | la coda | la cadence | le pont | le refrain | le thème",
    "modulation | partie A | partie B | partie C | partie centrale | partie lente | partie rapide",
    "passage difficile | passages difficiles | passage rapide | passages rapides | premier thème",
    "première moitié | second thème | deuxième thème | seconde moitié | section A | section B | strette | thème A",
    "thème B | toute la page | traits rapides | première fois | deuxième fois | le solo | le trio",
    "le milieu seulement",
  ),
};
