import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in Dutch, or beside hours of the clock: from memory. */
export const DUTCH_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "al met al | alles bij elkaar | alles samen | bij elkaar | dagtotaal | in totaal | opgeteld | samen | tot",
      "tot. | totaal | totaal vandaag | total | totale oefentijd | totale tijd | vandaag totaal",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "aan de piano | aan het orgel | alleen | alles bij elkaar | bij elkaar | bijna | circa | dik | een klein",
      "gedaan | geoefend | gespeeld | gestudeerd | goed | hooguit | in totaal | klaar | krap | maar | max",
      "met een pauze | met pauze | met pauzes | minstens | net | net geen | oefenen | oefentijd | of zo",
      "ongeveer | ruim | samen | slechts | studeren | tot nu toe | totaal | vanavond | vandaag | vanochtend",
      "verdeeld over de dag | zeker | zo'n | zonder de les | zonder les | zonder pauze",
    ),
  },
  "counted-with": {
    "what is in it": joined(
      "excl | excl. | exclusief | incl | incl. | inclusief | niet meegerekend | plus de les | plus les",
      "waarvan",
    ),
  },
  "goes-on": {
    "goes on": "en | maar",
  },
  "longer-time": {
    "more than a day": joined(
      "deze maand | deze week | dit jaar | jaar | maand | maand tot nu toe | maandtotaal | vorige maand",
      "vorige week | week | week tot nu toe | weektotaal",
    ),
  },
  meeting: {
    meeting: joined(
      "duo | ensemble | groep | kamermuziek | koor | kwartet | kwintet | les | muziekles | orkest | repetitie",
      "samenspel | trio",
    ),
  },
  "called-off": {
    "called off": "afgelast | afgezegd | gaat niet door | ging niet door | verplaatst | verzet",
  },
};
