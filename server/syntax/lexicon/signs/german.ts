import { joined } from "../joined.ts";
import { GERMAN_AMOUNT_SIGNS } from "./amounts/german.ts";
import { GERMAN_BODY_SIGNS } from "./body/german.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in German: common practice, no source. */
export const GERMAN_SIGNS: SignTable = {
  ...GERMAN_BODY_SIGNS,
  ...GERMAN_AMOUNT_SIGNS,
  "sentence-sign": {
    verb: joined(
      "bekam | bekomme | bekommen | bin | bin ich | bleibt | blieb | brachte | brauche | brauchte | dachte | darf",
      "denke | denken | denkt | durfte | erklärt | erklärte | fand | fehlt | fehlte | fiel | finde | findet",
      "fing | freue | freute | fuhr | fährt | fühlt | gab | gefunden | gefällt | gegangen | geht | gehört",
      "gekauft | gekommen | gemacht | gemerkt | gesagt | gesehen | gewesen | gibt | ging | glaube | habe",
      "habe ich | haben | haben wir | half | hat | hatte | hatten | hieß | hilft | hoffe | hofft | hätte | höre",
      "hörte | ist | ist es | kam | kann | kannst | klang | klingt | kommt | konnte | konnten | könnte | lag",
      "liegt | ließ | macht | mag | merke | merkte | mochte | muss | muss ich | musste | mussten | möchte | nahm",
      "nehme | regnet | rief | sagt | sagte | sah | scheint | schien | schneit | sieht | sind | soll | soll ich",
      "sollte | sollten | spüre | spürte | stand | steht | traf | treffe | vergaß | vergessen | verstanden",
      "verstehe | war | waren | warten | wartet | weiss | weiß | werden | will | wird | wirkt | wollen | wollte",
      "wurde | wurden | wusste | wäre | wünsche | würde | zeigte | zog",
    ),
    conjunction: joined(
      "bevor | damit | dass | denn | deshalb | falls | nachdem | ob | obwohl | sobald | sodass | trotzdem | wann",
      "warum | was | weil | wenn | wer | weshalb | wie | wieso | wo | während",
    ),
    pronoun: joined(
      "dein | deine | dich | dir | du | er | es | ich | ihm | ihn | ihnen | ihr | ihre | jeder | jemand",
      "jemanden | keiner | man | mein | meine | meinem | meinen | meiner | meines | mich | mir | niemand | sein",
      "seine | selbst | sie | uns | unser | unsere | unseren | unserer | wir",
    ),
  },
  intention: {
    intention: joined(
      "besorgen | bestellen | daran denken | demnächst | dran denken | ich muss | ich möchte | ich sollte",
      "ich will | kaufen | mehr zeit für | mehr üben | merke | merken | mitbringen | morgen | muss | muss mehr",
      "muss noch | nicht vergessen | noch üben | nächstes mal | nächstes mal mehr | sollte | sollte ich",
      "unbedingt | vornehmen | weiter üben | ziel | übermorgen",
    ),
  },
  filler: {
    filler: joined(
      "aber | als | auch | auf | auswendig | bis | bisschen | danach | dann | das | dazu | dem | den | der | die",
      "ein | ein bisschen | ein paar | eine | einige | einmal | erstmal | etwas | für | ganz | hauptsächlich | im",
      "immer | in | jetzt | kurz noch | mehr | mit | mit dem metronom | mit dem stimmgerät | mit klick",
      "mit metronom | mit stimmgerät | mit tuner | noch | noch mal | nochmal | nochmals | nur | ohne noten",
      "schon | sehr | so | und | viel | vom blatt noch | von | vor allem | weiter | wie immer | wieder | zu | zum",
      "zusätzlich | über",
    ),
  },
  "practice-verb": {
    practice: joined(
      "als erstes | als letztes | angefangen | angefangen mit | angeschaut | angesehen | angespielt",
      "anschliessend | anschließend | arbeit an | außerdem | begonnen mit | danach | danach noch | danach nur",
      "dann | dann noch | dann nochmal | dann nur | dann wieder | daran gearbeitet | durchgearbeitet",
      "durchgespielt | durchgesungen | ein bisschen | ein paar | ein wenig | einstudiert | erst | erstmal | etwas",
      "gearbeitet an | gelernt von | geprobt | gespielt | gestartet mit | gesungen | geübt | habe gespielt",
      "habe geübt | ich habe gespielt | ich habe geübt | ich spielte | ich übte | kurz angespielt | los mit",
      "mit dem anfang von | neu angefangen | noch etwas | schließlich | viel | weiter an | weiter mit",
      "weitergearbeitet an | weitergemacht mit | wiederholt | wiederholung | wiederholung von | zu beginn",
      "zuerst | zuletzt | zum abschluss | zum aufwärmen | zum einspielen | zum ende | zum schluss | zum schluß",
      "zunächst",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "adagio | albumblatt | allemande | arabeske | aria | arie | bagatelle | ballade | blues | boarischer",
      "boogie | bossa | bourrée | canzone | capriccio | caprice | chaconne | ciacona | charakterstück | choral",
      "choralvorspiel | concertino | courante | deutscher tanz | divertimento | duett | duo | etude | etuden",
      "etüde | fantasie | filmmusik | fuge | fugen | galopp | gavotte | gesang | gigue | humoreske | hymne",
      "impromptu | intermezzo | invention | jodler | kanon | kantate | kanzone | kinderlied | kirchenlied",
      "klavierstück | konzert | konzertstück | lied | lieder | ländler | marsch | mazurka | melodie | menuett",
      "menuette | moritat | motette | musette | märsche | nachtstück | nocturne | oktett | oratorium | orgelstück",
      "ouvertüre | passacaglia | pflichtstück | polka | polonaise | popsong | probespielstelle",
      "probespielstellen | präludien | präludium | prüfungsstück | psalm | quartett | quintett | ragtime | reigen",
      "requiem | rheinländer | romanze | rondo | rumba | sarabande | scherzo | schlager | schottisch | serenade",
      "sextett | siciliano | sinfonie | solostück | sonate | sonatine | song | spielstück | ständchen | stück",
      "stücklein | suite | symphonie | tango | tanz | thema mit variationen | toccata | tokkata | trio",
      "triosonate | tänze | variation | variationen | volkslied | volkslieder | vorspiel und fuge | vorspielstück",
      "vortragsstück | walzer | weihnachtslied | weihnachtslieder | weise | wiegenlied | zwiefacher | übung",
      "übungsstück",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "band | choral | duett | et | etude | etüde | heft | invention | kapitel | lektion | lied | menuett | no",
      "nr | nummer | op | opus | präludium | psalm | seite | sonate | sonatine | stück | stücke | variation",
      "walzer | übung | übungen",
    ),
  },
  "title-end": {
    "end of a title": "aber | auswendig | mit | nochmal | nochmals | nur | nur noch | ohne | ohne noten | wieder",
  },
  "title-joint": {
    "inside a title": "am | auf | bei | bis | das | der | die | im | mit | und | von | zu",
  },
  "title-lead": {
    "before a title": "am | an | das | den | der | die",
  },
  "verb-behind": {
    verb: "braucht | geht nicht | ist | klang | klangen | klingt | sind | war",
  },
  "before-time": {
    "before a time": "bis | ersten | in | innerhalb | letzten | nach | seit | vor | während | über",
  },
  heading: {
    sitting: joined(
      "abend | abends | am abend | am mittag | am morgen | am nachmittag | am vormittag | dienstag | donnerstag",
      "einheit 1 | einheit 2 | erste einheit | erste session | freitag | früh | heute abend | heute früh",
      "heute morgen | heute nachmittag | in der früh | mittag | mittags | mittwoch | montag | morgens",
      "nach dem essen | nach der arbeit | nach der schule | nachmittag | nachmittags | samstag | sonntag",
      "spät abends | später | vor der arbeit | vor der schule | vormittag | vormittags | zweite einheit",
      "zweite runde | zweite session",
    ),
    lesson: joined(
      "aus der stunde | blockflötenstunde | bratschenunterricht | cellostunde | cellounterricht | flötenstunde",
      "flötenunterricht | geigenstunde | geigenunterricht | gesangsstunde | gesangsunterricht | gitarrenstunde",
      "gitarrenunterricht | hornunterricht | in der stunde | klarinettenunterricht | klavierstunde",
      "klavierunterricht | musikstunde | musikunterricht | nach der stunde | oboenunterricht | online unterricht",
      "orgelunterricht | saxophonunterricht | schlagzeugstunde | schlagzeugunterricht | stunde | stunde heute",
      "trompetenstunde | trompetenunterricht | unterricht | unterricht heute | unterrichtsstunde",
    ),
    pieces: joined(
      "alte stücke | konzertprogramm | konzertstücke | lieder | literatur | meine stücke | musik | neue stücke",
      "orchesternoten | orchesterstücke | programm | prüfungsprogramm | prüfungsstücke | repertoire | songs",
      "stück | stücke | vorspielstücke",
    ),
    scales: joined(
      "dreiklänge und tonleitern | skalen | skalen und arpeggien | tonleitern | tonleitern & dreiklänge",
      "tonleitern und arpeggien | tonleitern und dreiklänge | tonleiterübung | tonleiterübungen",
    ),
    studies: "etuden | etüde | etüden | studien",
    technique: joined(
      "basics | basisübungen | grundlagen | grundübungen | handwerk | klang | mechanik | routine | technik",
      "techniktraining | technische übungen | ton | tonübungen | tägliche übungen | tägliches | übungen",
    ),
    "warm-up": joined(
      "aufwärmen | aufwärmübungen | einblasen | einblasübungen | einsingen | einspielen | einspielübungen",
      "einstimmen und einspielen | warm machen | warm up | warmblasen | warmspielen",
    ),
    reading: "blattlesen heute",
  },
  rest: {
    rest: joined(
      "ausgefallen | ein tag pause | frei | freier tag | gar nicht gespielt | gar nicht geübt | gar nichts",
      "heute frei | heute nicht gespielt | heute nicht geübt | heute nichts | kein bock | kein cello",
      "kein gesang | kein horn | kein instrument | kein klavier | kein kontrabass | kein saxophon",
      "kein schlagzeug | kein üben | keine bratsche | keine flöte | keine geige | keine gitarre",
      "keine klarinette | keine lust | keine oboe | keine orgel | keine posaune | keine trompete | keine übung",
      "nicht dazu gekommen | nicht gespielt | nicht geübt | nichts | nichts gemacht | nichts gespielt",
      "nichts geübt | nix | null bock | pause | pausentag | pausiert | ruhetag | tag frei | vergessen zu üben",
      "übefrei | übepause",
    ),
    away: joined(
      "auf reisen | dienstreise | feiertag | ferien | im urlaub | klassenfahrt | urlaub | verreist",
      "wochenende weg",
    ),
    "no time": joined(
      "keine zeit | keine zeit gehabt | keine zeit zum üben | zu müde zum üben | zu spät zum üben",
      "zu viel arbeit",
    ),
    ill: joined(
      "corona | erkältet | erkältung | fieber | grippe | husten | immer noch krank | kopfschmerzen | kopfweh",
      "krank | krank im bett | krankgeschrieben | magen darm | migräne | noch krank | schnupfen",
    ),
  },
  "set-work": {
    "set work": joined(
      "auf | auf nächste woche | aufgabe | aufgaben | aufgegeben | bis dienstag | bis donnerstag | bis freitag",
      "bis mittwoch | bis montag | bis nächste woche | bis nächstes mal | bis samstag | bis sonntag",
      "bis zum nächsten mal | bis zum unterricht | bis zur nächsten stunde | bis zur stunde | für den unterricht",
      "für die nächste stunde | für die stunde | für dienstag | für donnerstag | für freitag | für mittwoch",
      "für montag | für nächste stunde | für nächste woche | für nächstes mal | für samstag | für sonntag | ha",
      "hausaufgabe | hausaufgaben | hausi | hausis | hausübung | hausübungen | nächste woche | zu dienstag",
      "zu donnerstag | zu freitag | zu mittwoch | zu montag | zu samstag | zu sonntag | zu üben",
      "zum nächsten mal | zum nächsten unterricht | zum unterricht | zur nächsten stunde | übeauftrag",
    ),
  },
  "set-work-with-sign": {
    "set work": "auf",
  },
  "teacher-verb": {
    "says or wants": joined(
      "bat | betont | betonte | empfahl | empfiehlt | erinnert | erinnerte | erklärt | erklärte | fand | findet",
      "fordert | hat empfohlen | hat gemeint | hat gesagt | hat gezeigt | lobt | lobte | meint | meinte | möchte",
      "riet | rät | sagt | sagte | sagte mir | schlug vor | schlägt vor | verlangt | will | wollte | wünscht",
      "zeigt | zeigte",
    ),
  },
  "before-teacher": {
    "before the teacher": "der | die | mein | meine",
  },
  teacher: {
    teacher: joined(
      "cellolehrer | cellolehrerin | chorleiter | chorleiterin | coach | dirigent | dirigentin | dozent",
      "dozentin | flötenlehrer | flötenlehrerin | geigenlehrer | geigenlehrerin | gesangslehrer | gesangslehrerin",
      "gitarrenlehrer | gitarrenlehrerin | kapellmeister | klavierlehrer | klavierlehrerin | korrepetitor",
      "lehrer | lehrerin | lehrkraft | mein lehrer | meine lehrerin | musiklehrer | musiklehrerin",
      "orchesterleiter | prof | professor | professorin | registerführer | stimmführer",
    ),
  },
  title: {
    "form of address": "fr | frau | herr | hr",
  },
  question: {
    question: joined(
      "frage | frage an | frage für | frage zu | fragen | fragen an | fragen für | fragen zu | lehrer fragen",
      "lehrerin fragen | nachfragen | rückfrage | zu fragen | zu klären",
    ),
  },
  "same-as-above": {
    same: joined(
      "das gleiche | dasselbe | dasselbe stück | derselbe | dieselbe | dieselbe übung | dieselben | dito",
      "dito nochmal | ebenso | genauso | gleiche stelle | gleiche übung | gleiches stück | idem | selbe stelle",
      "selbe übung | selbes stück | wie eben | wie oben | wie vorher | wie zuvor",
    ),
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
      "akkordeon | alphorn | alt | altblockflöte | altflöte | baritonsaxophon | bassblockflöte | bassgitarre",
      "blockflöte | bratsche | cello | cembalo | e-bass | e-gitarre | euphonium | fagott | flöte | flügelhorn",
      "gambe | geige | gesang | gitarre | hackbrett | harfe | horn | klarinette | klavichord | klavier",
      "kontrabass | laute | mandoline | mundharmonika | oboe | orgel | pauken | percussion | posaune | querflöte",
      "saxofon | saxophon | schlagzeug | sopranblockflöte | steirische | stimme | tenorflöte | tenorhorn",
      "tenorsaxophon | theorbe | traversflöte | trompete | tuba | ukulele | vibraphon | viola | violine",
      "waldhorn | xylophon | zither",
    ),
  },
  scope: {
    "all majors": "alle dur skalen | alle dur tonleitern | alle durtonarten | alle durtonleitern",
    "all minors": "alle moll skalen | alle molltonarten | alle molltonleitern",
    "all keys": joined(
      "alle arpeggien | alle dreiklänge | alle skalen | alle tonarten | alle tonleitern | durch alle tonarten",
      "in allen tonarten",
    ),
    "circle of fifths": "quintenzirkel",
  },
};
