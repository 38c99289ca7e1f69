import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in Italian, or beside hours of the clock: from memory. */
export const ITALIAN_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "complessivamente | durata totale | in totale | in tutto | in tutto oggi | tempo di studio | tempo totale",
      "tot | tot. | totale | totale di oggi | totale giornaliero | totale oggi",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "abbondante | abbondanti | al massimo | al pianoforte | all'organo | almeno | appena | ben | circa",
      "con le pause | con pause | con una pausa | di esercizio | di piano | di pratica | di studio | di violino",
      "effettivi | fatti | fatto | finora | in due volte | in totale | in tutto | netti | o poco più | oggi",
      "più o meno | quasi | scarsa | scarsi | scarso | senza la lezione | senza lezione | senza pause | solo",
      "stamattina | stasera | studiato | suonato | tempo totale | totale",
    ),
  },
  "counted-with": {
    "what is in it": joined(
      "compresa | comprese | compresi | compreso | di cui | esclusa | escluso | inclusa | incluso",
      "più la lezione | più lezione | senza contare",
    ),
  },
  "goes-on": {
    "goes on": "e | ma",
  },
  "longer-time": {
    "more than a day":
      "anno | mese | quest'anno | questa settimana | questo mese | sett | settimana | settimana scorsa",
  },
  meeting: {
    meeting: joined(
      "banda | coro | duo | gruppo | lezione | musica d'insieme | orchestra | prova | prove | quartetto",
      "quintetto | trio",
    ),
  },
  "called-off": {
    "called off": joined(
      "annullata | annullato | rimandata | rimandato | rinviata | rinviato | saltata | saltato | spostata",
      "spostato",
    ),
  },
};
