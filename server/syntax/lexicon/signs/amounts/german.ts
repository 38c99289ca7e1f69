import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in German, or beside hours of the clock: common practice, no source. */
export const GERMAN_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "alles in allem | alles zusammen | ges | ges. | gesamt | gesamtdauer | gesamtzeit | gesamtübezeit",
      "heute gesamt | heute insgesamt | insg | insg. | insgesamt | macht zusammen | summe | summe heute",
      "tagessumme | total | zus | zus. | zusammen | zusammen heute | üben insgesamt | übezeit",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "alles | am flügel | am klavier | am stück | an der orgel | bisher | ca | circa | eigenes üben | etwa",
      "fast | gerade mal | gesamt | gesamtzeit | geschafft | gespielt | geübt | gut | heute | höchstens",
      "immerhin | in summe | insgesamt | knapp | maximal | mindestens | mit pause | mit pausen | mit päuschen",
      "mit unterbrechungen | nur | oder so | ohne pause | ohne pausen | ohne probe | ohne stunde",
      "ohne unterricht | rund | selbst geübt | summe | total | ungefähr | verteilt | zusammen | üben",
      "über den tag | übezeit | übung",
    ),
  },
  "counted-with": {
    "what is in it": joined(
      "darunter | davon | einschl | einschl. | einschließlich | incl. | inkl | inkl. | inklusive",
      "nicht gerechnet | plus probe | plus stunde | plus unterricht | zuzüglich | zzgl.",
    ),
  },
  "goes-on": {
    "goes on": "aber | und",
  },
  "longer-time": {
    "more than a day": joined(
      "diese woche | dieser monat | diesen monat | dieses jahr | dieses semester | jahr | letzte woche",
      "letzten monat | monat | monat bisher | monatssumme | monatszeit | semester | woche | woche bisher",
      "wochensumme | wochenzeit",
    ),
  },
  meeting: {
    meeting: joined(
      "bandprobe | chor | duo | ensemble | gruppe | kammermusik | orchester | probe | quartett | quintett",
      "session | spielkreis | stunde | trio | unterricht",
    ),
  },
  "called-off": {
    "called off": "abgesagt | ausgefallen | entfällt | fiel aus | fällt aus | verlegt | verschoben",
  },
};
