import { joined } from "../joined.ts";
import { DUTCH_AMOUNT_SIGNS } from "./amounts/dutch.ts";
import { DUTCH_BODY_SIGNS } from "./body/dutch.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Dutch: from memory, no source. */
export const DUTCH_SIGNS: SignTable = {
  ...DUTCH_BODY_SIGNS,
  ...DUTCH_AMOUNT_SIGNS,
  "sentence-sign": {
    pronoun: joined(
      "alles wat | dat is | dat was | die van | elkaar | er is | er was | er zijn | haar | hem | hen | het ging",
      "het is | het was | hij | hun | ieder | iedereen | iemand | iets wat | ik | je | jij | jou | jouw | jullie",
      "m'n | me | men | mezelf | mij | mijn | niemand | niks meer | ons | onszelf | onze | u | we | wij | ze",
      "zich | zichzelf | zij",
    ),
    verb: joined(
      "bedoelt | begrijp | belde | ben | bent | bleef | blijft | bracht | dacht | dachten | deden | denk | denkt",
      "doe | doet | duurde | ga | gaat | gaf | gebeurde | geeft | gegaan | gehad | gehoord | gekocht | gekomen",
      "gekregen | geloof | gevonden | geweest | gezegd | gezien | ging | gingen | had | hadden | heb | hebt",
      "heeft | hield | hielp | hoop | hoopte | hoor | hoorde | hou | houd | is | kan | klinkt | klonk | kocht",
      "kom | komt | kon | kreeg | krijg | krijgt | kunnen | kwam | kwamen | laat | lag | leek | liet | ligt",
      "lijkt | lukt | lukte | mag | merk | merkte | mocht | moest | moesten | moet | moeten | nam | neem",
      "probeer | reed | regent | riep | schijnt | schreef | snap | snapte | sneeuwt | sprak | stond | vergat",
      "vergeten | verloor | vertelde | vind | vindt | voelde | voelen | voelt | vond | vraagt | vroeg | wacht",
      "wachtte | waren | was | weet | werd | weten | wil | wilde | wilden | wint | wist | won | wordt | wou | zag",
      "zal | zat | zeg | zegt | zei | zie | ziet | zijn | zou | zouden | zullen",
    ),
    conjunction: joined(
      "als | dat | doordat | hoe | hoewel | maar het | maar ik | mits | nadat | of ik | omdat | sinds dat",
      "tenzij | terwijl | toch | toen | voordat | waar | waarbij | waarin | waarom | wanneer | want | wat | welke",
      "wie | zodat | zodra",
    ),
  },
  intention: {
    intention: joined(
      "aandacht voor | bestellen | denk aan | doel | eraan denken | eraan werken | ga ik | gaan we | ik ga",
      "ik moet | ik wil | kopen | meebrengen | meenemen | meer oefenen | meer tijd aan | moet | moet nog | moeten",
      "morgen | niet vergeten | nog doen | nog oefenen | onthouden | overmorgen | proberen te | van plan",
      "volgende keer | volgende keer meer | wil ik | zou moeten",
    ),
  },
  filler: {
    filler: joined(
      "al | alleen | alleen maar | beetje | daarna | dan | de | door | een | een beetje | een paar | en | erg",
      "eventjes | extra | flink | heel | het | iets | in | maar | met | met de metronoom | met drone | met klik",
      "met metronoom | met stemapparaat | met tuner | naar | nog | nog een keer | nog wat | nu | om | ook",
      "ook nog | op | opnieuw | paar | steeds | te | toen | uit het hoofd | van | van papier | vandaag | verder",
      "voor | vooral | wat | wat meer | weer | zonder bladmuziek",
    ),
  },
  "practice-verb": {
    practice: joined(
      "aan de slag met | afgesloten met | als laatste | begonnen | begonnen aan | begonnen met | daarna",
      "daarna alleen | daarna nog | dan | dan nog | doorgelopen | doorgenomen | doorgespeeld | een beetje",
      "een stukje van | eerst | eerst wat | even | gelezen | geoefend | geprobeerd | gerepeteerd | gespeeld",
      "gestart met | gestudeerd | gewerkt aan | gewerkt op | gezeten op | gezongen | geëindigd met | heb geoefend",
      "heb gespeeld | herhaald | herhaling | herhaling van | ik heb geoefend | ik heb gespeeld",
      "ik heb gestudeerd | ik oefende | ik speelde | ik studeerde | ingespeeld met | ingestudeerd | ingezongen",
      "later nog | nog een keer | nog eens | nog even | nog wat | nogmaals | om te beginnen | opgefrist",
      "opgehaald | ten eerste | ten slotte | tot slot | verder aan | verder gewerkt aan | verder met | vooral",
      "wat",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "allemande | aria | bagatelle | ballade | blues | boogie | bourree | bourrée | canon | cantate | capriccio",
      "chaconne | concert | concertino | courante | dans | dansen | dansje | deuntje | duet | duetten | etude",
      "examenstuk | fantasie | filmmuziek | fuga | galliarde | gavotte | gezang | gigue | hymne | impromptu",
      "inventie | invention | kerstlied | kinderliedje | koorstuk | koraal | kwartet | kwartetten | kwintet",
      "lied | liederen | liedje | lofzang | mars | marsen | mazurka | melodie | melodietje | menuet | motet",
      "musette | nocturne | nummer | nummertje | oefening | oefenstuk | orgelstuk | orkestpartij | ouverture",
      "passacaglia | pavane | pianostuk | polka | popliedje | popnummer | prelude | preludium | psalm | psalmen",
      "requiem | rigaudon | romance | rondo | sarabande | scherzo | schottisch | serenade | shanty | smartlap",
      "solo | sonate | sonates | sonatine | speelstuk | studie | stuk | stukje | suite | symfonie | tango",
      "thema met variaties | toccata | trio | variaties | volksdans | volkslied | volksliedje | voordrachtstuk",
      "voorspelstuk | wals | walsje | wiegelied | wijsje",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "bladmuziek | boek | deel | duet | etude | gezang | invention | les | lied | liedje | menuet | no | nr",
      "nummer | oefening | oefeningen | op | opus | prelude | psalm | sonate | sonatine | stuk | stukje | wals",
    ),
  },
  "title-end": {
    "end of a title": "alleen | maar | met | nog | nog een keer | opnieuw | uit het hoofd | weer | zonder",
  },
  "title-joint": {
    "inside a title": "bij | de | een | en | het | in | met | op | tot | van",
  },
  "title-lead": {
    "before a title": "aan | de | het | op",
  },
  "verb-behind": {
    verb: "is | klinkt | klonk | was",
  },
  "before-time": {
    "before a time": "binnen | eerste | laatste | na | over | sinds | tijdens | tot | voor",
  },
  heading: {
    "warm-up": joined(
      "inblazen | inspeeloefeningen | inspelen | inzingen | losspelen | opwarmen | opwarming | warmblazen",
      "warming-up | warmspelen",
    ),
    technique: joined(
      "basis | basisoefeningen | basistechniek | dagelijkse oefeningen | fundament | klank | oefeningen | routine",
      "techniek | techniekoefeningen | technische oefeningen | toon | toonoefeningen",
    ),
    scales: joined(
      "gamma's | ladders | ladders en drieklanken | toonladders | toonladders en akkoorden",
      "toonladders en arpeggio's | toonladders en drieklanken | toonladderwerk",
    ),
    studies: "etude | etudes | studies",
    pieces: joined(
      "bandnummers | concertprogramma | concertstukken | examenstukken | koorstukken | liedjes | mijn stukken",
      "muziek | nieuwe stukken | nummers | orkeststukken | programma | repertoire | stuk | stukken",
      "voorspeelstukken",
    ),
    reading: "bladlezen | prima vista | van blad",
    lesson: joined(
      "fluitles | gitaarles | in de les | les | les gehad | les met | les vandaag | muziekles | na de les",
      "online les | pianoles | uit de les | vioolles",
    ),
    sitting: joined(
      "'s avonds | 's middags | 's morgens | 's ochtends | avond | dinsdag | donderdag | eerste sessie | later",
      "maandag | middag | na het eten | na het werk | na school | namiddag | ochtend | sessie 1 | sessie 2",
      "tussen de middag | tweede sessie | vanavond | vanmiddag | vanmorgen | vanochtend | voor het eten",
      "voor het werk | voor school | voormiddag | vrijdag | woensdag | zaterdag | zaterdagochtend | zondag",
      "zondagochtend",
    ),
  },
  rest: {
    rest: joined(
      "dag vrij | geen cello | geen fluit | geen gitaar | geen hoorn | geen klarinet | geen muziek",
      "geen oefening | geen piano | geen trompet | geen viool | geen zin | geskipt | helemaal niets",
      "helemaal niks | niet aan toegekomen | niet geblazen | niet geoefend | niet gespeeld | niet gestudeerd",
      "niet gezongen | niet toegekomen | niets | niets gedaan | niets vandaag | niks | niks gedaan | niks vandaag",
      "overgeslagen | pauze | rust | rust vandaag | rustdag | snipperdag | vandaag niet | vandaag niets",
      "vandaag niks | vergeten te oefenen | vrij | vrije dag",
    ),
    ill: joined(
      "buikgriep | corona | griep | grieperig | hoofdpijn | koorts | migraine | misselijk in bed",
      "nog steeds ziek | nog ziek | snipverkouden | verkouden | ziek | ziek in bed | ziek thuis",
    ),
    away: joined(
      "op kamp | op reis | op schoolreis | op vakantie | schoolreis | vakantie | weekend weg | weekendje weg",
      "weg",
    ),
    "no time": joined(
      "geen tijd | geen tijd gehad | geen tijd om te oefenen | te druk | te laat thuis | te moe",
      "te moe om te oefenen | te weinig tijd",
    ),
  },
  "set-work": {
    "set work": joined(
      "huisw | huiswerk | hw | oefenen voor | opdracht | opdrachten | opgave | opgegeven | te doen | te oefenen",
      "te studeren | tegen de volgende les | tegen volgende les | tegen volgende week | thuis oefenen",
      "volgende les | volgende week | voor de komende week | voor de les | voor de volgende keer",
      "voor de volgende les | voor dinsdag | voor donderdag | voor komende les | voor maandag",
      "voor volgende keer | voor volgende les | voor volgende week | voor vrijdag | voor woensdag | voor zaterdag",
      "voor zondag",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "adviseert | benadrukt | benadrukte | complimenteerde | dacht | denkt | heeft gezegd | laat zien",
      "legde uit | legt uit | liet horen | liet zien | merkt op | merkte op | raadde aan | raadt aan",
      "stelde voor | stelt voor | vertelde | vindt | vond | vraagt | vroeg | waarschuwde | wees op | wijst op",
      "wil | wilde | zegt | zegt dat | zei | zei dat",
    ),
  },
  "before-teacher": {
    "before the teacher": "de | mijn",
  },
  teacher: {
    teacher: joined(
      "aanvoerder | celloleraar | coach | dirigent | dirigente | docent | docente | fluitdocent | fluitjuf",
      "gitaarleraar | juf | koordirigent | leraar | lerares | meester | mijn docent | mijn docente | mijn juf",
      "mijn leraar | mijn lerares | mijn meester | muziekleraar | muzieklerares | pianojuf | pianoleraar",
      "pianolerares | repetitor | viooljuf | vioolleraar | vioollerares | zangdocent | zangjuf | zanglerares",
    ),
  },
  title: {
    "form of address": "dhr | juf | meester | meneer | mevr | mevrouw",
  },
  question: {
    question: joined(
      "juf vragen | meester vragen | navragen | te vragen | vraag | vraag aan | vraag voor | vraagje | vraagjes",
      "vragen | vragen aan | vragen over | vragen voor",
    ),
  },
  "same-as-above": {
    same: joined(
      "als boven | dezelfde | dito | hetzelfde | hetzelfde stuk | hetzelfde weer | idem | idem dito | zelfde",
      "zelfde ladder | zelfde maten | zelfde oefening | zelfde passage | zelfde stuk | zelfde stukje",
      "zoals boven",
    ),
    again: "nog een keer | nog eens | opnieuw",
  },
  negation: {
    negation: "geen | niet | niets | nooit | zonder",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "fret | hoofdstuk | positie | snaar | ventiel | vinger",
  },
  repetitions: {
    times: "keer | maal | x",
  },
  instrument: {
    instrument: joined(
      "accordeon | altblokfluit | altsax | altsaxofoon | altviool | baritonsax | basblokfluit | basgitaar",
      "basklarinet | blokfluit | bugel | cello | contrabas | doedelzak | draailier | drums | drumstel",
      "dwarsfluit | euphonium | fagot | fluit | gamba | gitaar | harp | hobo | hoorn | keyboard | klarinet",
      "klavecimbel | luit | mandoline | marimba | mondharmonica | orgel | orgel en piano | pauken | percussie",
      "piano | sax | saxofoon | slagwerk | sopraanblokfluit | stem | tenorblokfluit | tenorsax | theorbe",
      "traverso | trekzak | trombone | trompet | tuba | ukelele | ukulele | vibrafoon | viool | xylofoon | zang",
    ),
  },
  scope: {
    "all keys": joined(
      "alle arpeggio's | alle drieklanken | alle ladders | alle toonladders | alle toonsoorten",
      "in alle toonsoorten",
    ),
    "all majors": "alle grote ladders | alle grote tertstoonladders | alle majeur toonladders | alle majeurladders",
    "all minors": "alle kleine ladders | alle kleine tertstoonladders | alle mineur toonladders | alle mineurladders",
    "circle of fifths": "kwintencirkel",
    "circle of fourths": "kwartencirkel",
  },
};
