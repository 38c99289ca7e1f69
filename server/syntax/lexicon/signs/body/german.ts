import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in German: common practice, no source. */
export const GERMAN_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "arm | arme | bein | beine | daumen | daumenballen | daumengelenk | daumennagel | daumensattelgelenk",
      "ellbogen | ellbogengelenk | ellenbogen | finger | fingergelenk | fingergelenke",
      "fingerknöchel | fingerkuppe | fingerkuppen | fingernagel | fingerspitze | fingerspitzen | fuß | füße",
      "hand | handballen | handgelenk | handgelenke | handrücken | hände | hüfte | kleiner finger | knie",
      "knöchel | li hand | linke hand | linker arm | linker daumen | mittelfinger | nagel | nägel | oberarm",
      "oberarme | oberschenkel | re hand | rechte hand | rechter arm | rechter daumen | ringfinger",
      "sehnenscheide | sehnenscheiden | unterarm | unterarme | wade | waden | zeh | zehen",
      "zeigefinger",
    ),
    ear: "gehör | hörsturz | ohr | ohren | ohrensausen | tinnitus | trommelfell",
    "part of the body": joined(
      "auge | augen | backe | backen | bauch | becken | brust | brustkorb | bws | gelenk | gelenke | hals",
      "halswirbel | halswirbelsäule | hws | kehle | kehlkopf | kiefer | kiefergelenk | kopf | lendenwirbel",
      "lippe | lippen | lws | magen | mundwinkel | muskel | muskeln | nacken | nackenmuskeln | nase | oberkiefer",
      "oberlippe | rippe | rippen | rotatorenmanschette | rücken | schläfe | schläfen | schulter | schulterblatt",
      "schulterblätter | schultern | sehne | sehnen | steißbein | stimmbänder | stirn | trapez | trapezmuskel",
      "unterkiefer | unterlippe | wange | wangen | wirbelsäule | zahn | zahnfleisch | zunge | zwerchfell | zähne",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "ameisenlaufen | arthrose | aua | autsch | bandscheibe | bandscheibenvorfall | dystonie | fokale dystonie",
      "gefühllos | geschwollen | heiser | heiserkeit | hexenschuss | ischias | karpaltunnel | keine stimme",
      "krampf | kribbeln | kribbelt | krämpfe | mausarm | muskelfaserriss | muskelkater | nerv eingeklemmt",
      "prellung | schmerz | schmerzen | schmerzende | schmerzender | schmerzhaft | schmerzt | schmerzte",
      "schmerzten | schwellung | schwindel | schwindelig | schwindlig | sehnenscheidenentzündung | stimme weg",
      "stimmlos | tat weh | taten weh | taub | taubheit | taubheitsgefühl | tennisarm | tennisellenbogen",
      "tun weh | tut weh | verkrampfung | verkrampfungen | verletzt | verletzung | weh | weh getan | weh tut",
      "wehtun | zerrung | ziehender schmerz | übelkeit | überanstrengung | überbein | überlastung",
    ),
    sore: joined(
      "angeschlagen | blase | blasen | blockiert | brennen | brennend | brennt | drückt | dumpf | eingeklemmt",
      "eingeschlafen | entzündet | gehorchen nicht | gehorcht nicht | gereizt | gezerrt | juckt | kaputt",
      "klingeln | klingelt | knackt | kraftlos | lahm | lädiert | macht probleme | macht zicken | meckert",
      "melden sich | meldet sich | ohrensausen | pfeifen | pfeift | pochend | pocht | rauschen | rauscht | reißt",
      "rissig | sausen | schwach | spannt | starr | stechen | steif | steife | sticht | taube | tinnitus",
      "verrenkt | verstaucht | wund | wunde | zerrt | zieht | ziepen | ziept | zittern | zittert | zuckt",
      "zwicken | zwickt | zwickte | überanstrengt | überlastet | überreizt",
    ),
    tight: "verhärtet | verkrampft | verspannt | verspannung | verspannungen",
    tense: "angespannt | anspannung | spannung | verkrampfe",
    tired: joined(
      "ausgelaugt | ausgepowert | ermüdet | ermüdung | erschöpft | groggy | hundemüde | müde | müdigkeit",
      "schlapp | todmüde",
    ),
    cold: "kalt | schwer",
  },
  "body-trouble-ending": {
    hurts: "entzündung | krampf | krämpfe | schmerz | schmerzen | weh",
  },
  eased: {
    eased: "besser | weg",
    free: "beschwerdefrei | schmerzfrei",
  },
};
