import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in French, or beside hours of the clock: common practice, no source. */
export const FRENCH_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "au total | cumul | durée totale | en tout | en tout et pour tout | temps de jeu | temps de travail",
      "temps total | tot | tot. | total | total aujourd'hui | total du jour | totale",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "au maximum | au moins | au piano | au total | aujourd'hui | avec des pauses | avec pause | avec pauses",
      "avec une pause | bien | ce matin | ce soir | d'instrument | de flûte | de guitare | de piano",
      "de pratique | de travail | de violon | durée | en deux fois | en tout | environ | fait | hors cours",
      "j'ai joué | joué | jusqu'ici | maxi | mini | pas plus | pause comprise | pauses comprises | pratique",
      "pratiqué | presque | sans le cours | sans pause | seulement | temps total | total | travaillé",
      "travaillées | travaillés | à la louche | à peine | à peu près | à tout casser",
    ),
  },
  "counted-with": {
    "what is in it": "dont | en comptant | hors | plus le cours | plus un cours | sans compter | y compris",
  },
  "goes-on": {
    "goes on": "et | mais",
  },
  "longer-time": {
    "more than a day": joined(
      "année | ce mois | ce mois ci | cette année | cette semaine | depuis lundi | mois | sem | semaine",
      "semaine dernière | trimestre",
    ),
  },
  meeting: {
    meeting: joined(
      "chorale | chœur | cours | duo | ensemble | groupe | leçon | musique de chambre | orchestre | quatuor",
      "quintette | répète | répèt | répétition | trio",
    ),
  },
  "called-off": {
    "called off": "annulé | annulée | déplacé | déplacée | reporté | reportée",
  },
};
