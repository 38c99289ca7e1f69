import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in German: common practice, no source. */
export const GERMAN_SIGNS: SignTable = {
  "sentence-sign": {
    verb: joined(
      "bin | brauche | finde | freue | fühlt | gefällt | geht | gekauft | gemacht | gemerkt | gibt | ging",
      "glaube | habe | haben | hat | hatte | höre | ist | kam | kann | klang | klingt | kommt | liegt | macht",
      "mag | merke | muss | musste | sind | soll | sollte | war | waren | weiß | werden | will | wird | wollte",
    ),
    conjunction: "dass | ob | wann | warum | was | weil | wer | wie",
    pronoun: "du | er | es | ich | man | mein | meine | meinem | meinen | mich | mir | sie | wir",
  },
  intention: {
    intention: "daran denken | merken | morgen | muss | nicht vergessen | nächstes mal | sollte",
  },
  filler: {
    filler: joined(
      "aber | als | auf | auswendig | bis | dann | das | dem | den | der | die | ein | eine | etwas | ganz | im",
      "immer | in | jetzt | mit | mit metronom | mit stimmgerät | noch | noch mal | nochmal | nur | schon",
      "sehr | und | von | wieder | zu | zum",
    ),
  },
  "practice-verb": {
    practice: "angefangen | angefangen mit | dann | durchgespielt | erst | gespielt | geübt | zuerst",
  },
  "title-kind": {
    "kind of piece": joined(
      "adagio | arie | choral | duo | etüde | fantasie | fuge | gavotte | invention | kanon | konzert | lied",
      "ländler | marsch | menuett | ouvertüre | polka | präludium | romanze | rondo | sonate | sonatine",
      "spielstück | stück | suite | tanz | triosonate | variationen | volkslied | walzer | übung",
    ),
  },
  "title-number": {
    "number of a title":
      "nr | no | op | opus | choral | lied | etude | et | heft | band | stück | etüde | übung | seite",
  },
  "title-end": { "end of a title": "auswendig | mit | nochmal | ohne | nur | wieder | aber" },
  "title-joint": { "inside a title": "bei | auf | von | bis | der | die | das | und | mit | zu | im | am" },
  "title-lead": { "before a title": "die | den | das | der | am | an" },
  "verb-behind": { verb: "ist | war | sind | klingt | klang" },
  "before-time": { "before a time": "nach | vor | bis | seit | in" },
  heading: {
    sitting: "abends | mittags | morgens | nachmittags | vormittags",
    lesson: "flötenstunde | geigenstunde | klavierstunde | stunde | unterricht | unterrichtsstunde",
    pieces: "literatur | repertoire | stück | stücke",
    scales: "tonleitern",
    studies: "etüde | etüden",
    technique: "grundlagen | klang | technik | tonübungen | übungen",
    "warm-up": "aufwärmen | einblasen | einspielen | warmspielen",
  },
  rest: {
    rest: joined(
      "ausgefallen | frei | gar nichts | heute nichts | kein üben | nicht gespielt | nicht geübt | nichts | nix",
      "pause | ruhetag | übefrei",
    ),
    away: "ferien | urlaub",
    "no time": "keine zeit",
    ill: "krank | erkältet | grippe | kopfweh | kopfschmerzen",
  },
  "body-part": {
    "arm or leg": joined(
      "arm | arme | daumen | ellbogen | finger | hand | handgelenk | hände | zeigefinger | ellenbogen",
      "fingerkuppe | fingerkuppen | fingerspitze | fingerspitzen | mittelfinger | ringfinger | kleiner finger | unterarm",
      "unterarme | oberarm | handgelenke | sehnenscheide | sehnenscheiden | daumengelenk | fingergelenk | fingergelenke",
      "knöchel | knie | hüfte | bein | beine | fuß | füße | daumenballen | handballen",
    ),
    ear: "ohr | ohren | gehör | ohrensausen | tinnitus",
    "part of the body": joined(
      "hals | kiefer | kopf | lippe | lippen | nacken | rücken | schulter | schultern | zunge | brust | kehle",
      "sehne | sehnen | schulterblatt | wirbelsäule | zahn | zähne | augen | auge | gelenk | gelenke",
      "muskel | muskeln | bauch | stimmbänder | unterlippe | oberlippe | mundwinkel | wange | wangen",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "schmerz | schmerzen | schmerzhaft | schmerzt | taub | taubheit | tun weh | tut weh | tat weh",
      "taten weh | weh | weh getan | kribbeln | kribbelt | krampf | krämpfe | geschwollen | schwindelig",
      "schwindlig | heiser | stimme weg | schmerzte | schmerzten | schmerzende | schmerzender | sehnenscheidenentzündung",
      "karpaltunnel | verkrampfung | verkrampfungen | gefühllos | schwellung | muskelkater | hexenschuss",
    ),
    sore: joined(
      "brennen | brennt | steif | wund | zieht | schwach | zittern | zittert | ohrensausen | tinnitus",
      "blase | blasen | entzündet | pocht | gehorcht nicht | gehorchen nicht | klingeln | klingelt | pfeifen",
      "pfeift | rauschen | rauscht | sausen | dumpf | zwickt | zwicken | ziept | ziepen | sticht | stechen | meldet sich",
      "melden sich | kaputt | überlastet | überanstrengt | gereizt | blockiert | gezerrt | verrenkt | verstaucht | rissig",
      "wunde | spannt | knackt | zuckt | kraftlos | eingeschlafen | taube",
    ),
    tight: "verkrampft | verspannt | verspannung | verspannungen | verhärtet",
    tense: "angespannt",
    tired: "müde | erschöpft",
    cold: "kalt | schwer",
  },
  "body-trouble-ending": { hurts: "schmerz | schmerzen | weh | krampf | krämpfe | entzündung" },
  eased: { eased: "besser | weg", free: "schmerzfrei | beschwerdefrei" },
  total: {
    total:
      "zus | zus. | insg | insg. | ges | ges. | total | alles zusammen | alles in allem | gesamt | gesamtzeit | insgesamt | summe | zusammen | übezeit",
  },
  "beside-total": {
    "beside a total": joined(
      "alles | etwa | gesamt | gesamtzeit | geübt | heute | in summe | insgesamt | nur | summe | total",
      "ungefähr | zusammen | übezeit",
    ),
  },
  "set-work": {
    "set work": joined(
      "aufgabe | aufgaben | bis nächste woche | bis nächstes mal | bis zur nächsten stunde | für nächste woche",
      "auf | zu montag | zu dienstag | zu mittwoch | zu donnerstag | zu freitag | zu samstag | zur nächsten stunde",
      "bis montag | bis dienstag | bis mittwoch | bis donnerstag | bis freitag | für nächstes mal | ha | hausaufgabe | hausaufgaben | nächste woche | zum nächsten mal",
    ),
  },
  "set-work-with-sign": { "set work": "auf" },
  "teacher-verb": {
    "says or wants": "empfiehlt | fand | findet | hat gesagt | meint | meinte | möchte | rät | sagt | sagte | will",
  },
  "before-teacher": { "before the teacher": "der | die | mein | meine" },
  teacher: {
    teacher: "dirigent | lehrer | lehrerin",
  },
  title: {
    "form of address": "fr | frau | herr | hr",
  },
  question: {
    question: "frage | frage an | fragen | fragen an",
  },
  "same-as-above": {
    same: "das gleiche | derselbe | dieselbe | dieselben | dasselbe | dito | dito nochmal | ebenso | genauso | wie oben",
    again: "nochmal",
  },
  negation: {
    negation: "kein | keine | keinen | keinerlei | nicht | ohne",
  },
  repetitions: {
    times: "mal",
  },
  instrument: {
    instrument: joined(
      "altblockflöte | altflöte | blockflöte | bratsche | cembalo | geige | gitarre | klarinette | klavier",
      "orgel | posaune | querflöte | sopranblockflöte | tenorflöte | trompete",
    ),
  },
  scope: {
    "all majors": "alle dur tonleitern | alle durtonleitern",
    "all minors": "alle molltonleitern",
    "all keys": "alle tonarten | alle tonleitern",
    "circle of fifths": "quintenzirkel",
  },
};
