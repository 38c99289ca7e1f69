import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in Dutch: from memory, no source. */
export const DUTCH_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "arm | armen | been | benen | bovenarm | bovenarmen | bovenbeen | bovenbenen | dij | dijen | duim | duimen",
      "duimgewricht | ellebogen | elleboog | enkel | enkels | hand | handen | handpalm | handpalmen | heup | hiel",
      "knie | knieën | knokkel | knokkels | kuit | kuiten | linker pols | linkerarm | linkerduim | linkerhand",
      "middelvinger | nagel | nagels | onderarm | onderarmen | pink | pinken | pols | polsen | rechterarm",
      "rechterduim | rechterhand | rechterpols | ringvinger | teen | tenen | vinger | vingergewricht",
      "vingerkootje | vingers | vingertop | vingertoppen | voet | voeten | wijsvinger",
    ),
    ear: "gehoor | oor | oorsuizen | oren | trommelvlies",
    "part of the body": joined(
      "bekken | borst | bovenlip | bovenrug | buik | embouchure | gewricht | gewrichten | heiligbeen | hoofd",
      "kaak | kaakgewricht | kaken | keel | kin | kniegewricht | lage rug | lendenen | lip | lippen | maag",
      "middenrif | nek | nekspier | nekspieren | neus | ogen | onderlip | onderrug | oog | pees | pezen | rib",
      "ribben | ribbenkast | rug | schouder | schouderblad | schouderbladen | schouders | spier | spieren | stem",
      "stembanden | strottenhoofd | tand | tanden | tandvlees | tong | voorhoofd | wang | wangen | wervel",
      "wervels",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "armklachten | armpijn | artrose | bekneld | deed pijn | deed zeer | doen pijn | doen zeer | doet pijn",
      "doet zeer | duimpijn | duizelig | dystonie | geen stem | gekneusde | gevoelloos | gezwollen | hees",
      "heesheid | hernia | keelpijn | kneuzing | kramp | krampen | misselijk | muisarm | opgezwollen",
      "peesontsteking | pijn | pijnlijk | pijnscheut | pijnscheuten | polsklachten | rsi | rugklachten",
      "schouderklachten | slapende vingers | stem kwijt | stemverlies | stijve nek | tenniselleboog | tintelen",
      "tintelende | tintelingen | tintelt | verdoofd | verstuikt | verzwikt | zenuw bekneld | zere pols",
      "zere rug | zere vingers | zwelling",
    ),
    sore: joined(
      "beurs | blaar | blaren | branderig | brandt | dof | gebarsten | geblesseerd | gekneusd | geschaafd",
      "gesprongen | geïrriteerd | jeukt | kapot | klachten | kloppend | lam | last van | ontstoken | oorsuizen",
      "opgezet | overbelast | piepen | prikken | prikt | protesteert | rauw | slaapt | speelt op | steekt",
      "steken | stijf | stram | strammer | suist | suizen | trekkerig | trekt | trilt | verrekt | verstijfd",
      "zeer | zere | zeurderig | zeurend | zeurt | zwak",
    ),
    tight: "verkramping | verkrampt | verkrampte",
    tense: "aangespannen | gespannen | spanning | verkrampen",
    tired: "afgemat | afgepeigerd | bekaf | doodmoe | gesloopt | moe | uitgeput | vermoeid | vermoeidheid",
    cold: "koud | zwaar",
  },
  "body-trouble-ending": {
    hurts: "kramp | krampen | ontsteking | pijn",
  },
  eased: {
    eased: "beter | weg",
    free: "pijnloos | pijnvrij",
  },
};
