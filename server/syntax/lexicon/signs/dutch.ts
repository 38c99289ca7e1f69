import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Dutch: from memory, no source. */
export const DUTCH_SIGNS: SignTable = {
  "sentence-sign": {
    pronoun: joined(
      "ik | jij | je | hij | zij | ze | wij | we | jullie | mij | me | mijn | m'n | jouw | hem | haar | ons",
      "onze | het is | dat is | iedereen | iemand | niemand | alles wat | u",
    ),
    verb: joined(
      "ben | bent | is | zijn | was | waren | heb | hebt | heeft | had | hadden | moet | moest | kan | kon",
      "wil | wilde | wou | zou | zal | ga | gaat | ging | kom | komt | kwam | klinkt | klonk | voelt | voelde",
      "vind | vindt | vond | denk | dacht | weet | wist | merk | merkte | geloof | hoop | houd | hou | lijkt",
      "leek | blijft | bleef | wordt | werd | lukt | lukte | gekocht | gekregen | vergeten | gehoord | gezien",
    ),
    conjunction: "omdat | dat | als | of ik | wanneer | waarom | hoe | wie | wat | want | toen | doordat",
  },
  intention: {
    intention: joined(
      "morgen | volgende keer | moet | moeten | niet vergeten | onthouden | denk aan | eraan denken | van plan",
      "gaan we | nog doen | kopen | meenemen | meer tijd aan",
    ),
  },
  filler: {
    filler: joined(
      "de | het | een | en | met | in | op | van | voor | naar | nog | ook | weer | dan | toen | nu | maar",
      "heel | erg | een beetje | iets | wat | alleen | alleen maar | al | te | om | door | uit het hoofd",
      "met metronoom | met stemapparaat | vandaag | opnieuw | nog een keer",
    ),
  },
  "practice-verb": {
    practice: joined(
      "gespeeld | geoefend | gestudeerd | doorgespeeld | begonnen | begonnen met | gewerkt aan | herhaald",
      "eerst | daarna | dan | verder met | ik heb gespeeld | ik speelde | geprobeerd | gelezen",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "stuk | stukje | lied | liedje | etude | oefening | sonate | sonatine | menuet | mars | wals | dans",
      "suite | concert | prelude | fuga | gavotte | bourrée | gigue | sarabande | allemande | courante | rondo",
      "romance | fantasie | canon | psalm | gezang | koraal | duet | trio | aria | variaties | invention",
      "inventie | ouverture | polka | tango | melodie",
    ),
  },
  "title-number": {
    "number of a title": "nr | nummer | no | op | opus | boek | deel | etude | oefening | psalm | gezang | les",
  },
  "title-end": { "end of a title": "nog | met | zonder | alleen | weer | maar" },
  "title-joint": { "inside a title": "in | op | de | het | een | en | van | met | bij | tot" },
  "title-lead": { "before a title": "de | het | aan | op" },
  "verb-behind": { verb: "is | was | klinkt | klonk" },
  "before-time": { "before a time": "na | voor | tot | binnen" },
  heading: {
    "warm-up": "inspelen | warming-up | opwarmen | inzingen",
    technique: "techniek | toonoefeningen | oefeningen | klank | toon | basis",
    scales: "toonladders | ladders | gamma's",
    studies: "etudes | etude | studies",
    pieces: "stukken | stuk | repertoire | liedjes",
    reading: "van blad | prima vista | bladlezen",
    lesson: "les | muziekles | pianoles | vioolles | fluitles | gitaarles | les met",
    sitting: joined(
      "'s ochtends | ochtend | 's middags | middag | 's avonds | avond | maandag | dinsdag | woensdag",
      "donderdag | vrijdag | zaterdag | zondag",
    ),
  },
  rest: {
    rest: joined(
      "rust | rustdag | vrij | niet gespeeld | niet geoefend | niets | niks | niets gedaan | niks gedaan",
      "pauze | dag vrij | overgeslagen",
    ),
    ill: "ziek | griep | verkouden | hoofdpijn | migraine",
    away: "vakantie | weg | op reis",
    "no time": "geen tijd | te moe",
  },
  "body-part": {
    "arm or leg": joined(
      "arm | armen | duim | duimen | vinger | vingers | hand | handen | pols | polsen | elleboog | knie",
      "pink | wijsvinger | middelvinger | ringvinger | onderarm | linkerhand | rechterhand | onderarmen | vingertop",
      "vingertoppen | ellebogen | knieën | been | benen | heup | voet",
    ),
    ear: "oor | oren | gehoor | oorsuizen",
    "part of the body": joined(
      "schouder | schouders | nek | rug | hoofd | lip | lippen | kaak | tong | keel | stem | embouchure",
      "borst | ogen | kaken | schouderblad | pees | pezen | gewricht | gewrichten | spier | spieren | tand | tanden | buik | wang",
      "onderrug | bovenlip | onderlip",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "pijn | doet pijn | deed pijn | doen pijn | pijnlijk | doet zeer | kramp | krampen | gevoelloos",
      "tintelt | tintelingen | gezwollen | duizelig | hees | tintelen | tintelende | verdoofd | opgezwollen | zwelling",
      "peesontsteking | muisarm | rsi | slapende vingers | doen zeer | deed zeer | stem kwijt",
    ),
    sore: "zeer | stijf | steekt | steken | trekt | kapot | ontstoken | geïrriteerd | geblesseerd | verrekt | slaapt | gekneusd | speelt op | brandt | branderig | trilt | zwak | oorsuizen | blaar | blaren | overbelast | rauw | suizen | suist | piepen | dof",
    tight: "verkrampt | verkrampte | verkramping",
    tense: "gespannen",
    tired: "moe | vermoeid | uitgeput",
    cold: "koud | zwaar",
  },
  "body-trouble-ending": { hurts: "pijn | kramp | krampen | ontsteking" },
  eased: { eased: "beter | weg", free: "pijnvrij | pijnloos" },
  total: {
    total:
      "tot | tot. | total | tot. | totaal | in totaal | alles bij elkaar | bij elkaar | samen | opgeteld | alles samen",
  },
  "beside-total": {
    "beside a total": joined(
      "totaal | in totaal | alles bij elkaar | bij elkaar | samen | vandaag | ongeveer | circa | zo'n",
      "geoefend | gespeeld | gedaan | klaar | alleen | maar | slechts | bijna | oefentijd",
    ),
  },
  "set-work": {
    "set work": joined(
      "huiswerk | voor volgende week | voor volgende les | tegen volgende week | volgende les | volgende week",
      "opdracht | opgave | te doen | voor de les",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "zegt | zei | vindt | vond | wil | wilde | adviseert | raadt aan | stelt voor | vraagt | vroeg | denkt",
      "merkte op | legde uit",
    ),
  },
  "before-teacher": { "before the teacher": "de | mijn" },
  teacher: {
    teacher: joined(
      "docent | docente | leraar | lerares | juf | meester | dirigent | mijn docent | mijn lerares",
      "mijn leraar",
    ),
  },
  title: {
    "form of address": "meneer | mevrouw | mevr | dhr | juf | meester",
  },
  question: {
    question: "vraag | vragen | vraag aan | vragen aan | navragen",
  },
  "same-as-above": {
    same: "zelfde | hetzelfde | dezelfde | idem | dito | zoals boven",
    again: "nog eens | opnieuw | nog een keer",
  },
  negation: {
    negation: "niet | geen | nooit | zonder | niets",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "positie | snaar | vinger | fret | hoofdstuk | ventiel",
  },
  repetitions: {
    times: "keer | maal | x",
  },
  instrument: {
    instrument: joined(
      "blokfluit | altblokfluit | sopraanblokfluit | tenorblokfluit | dwarsfluit | fluit | viool | altviool",
      "cello | contrabas | gitaar | piano | klavecimbel | orgel | klarinet | hobo | fagot | saxofoon | trompet",
      "hoorn | trombone | tuba | harp | luit | accordeon | zang | stem",
    ),
  },
  scope: {
    "all keys": "alle toonsoorten | alle toonladders",
    "all majors": "alle grote tertstoonladders | alle majeur toonladders",
    "all minors": "alle kleine tertstoonladders | alle mineur toonladders",
    "circle of fifths": "kwintencirkel",
  },
};
