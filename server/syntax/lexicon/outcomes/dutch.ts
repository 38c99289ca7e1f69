import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `bijna schoon`, `nog niet in de maat`. */
const GOOD = joined(
  "foutloos | gelijk | goed | in de maat | in tempo | netjes | perfect | schoon | soepel | stabiel | vloeiend | zeker | zuiver",
);

const FAULT = joined(
  "fout | foutje | hapering | misser | slip | stop | struikeling | uitglijder | valse noot | verkeerde noot",
);
const FAULTS = joined(
  "fouten | foutjes | haperingen | missers | slips | stops | struikelingen | uitglijders | valse noten | verkeerde noten",
);

/**
 * How it went, in Dutch: from memory. A single word that also stands in what is said of a pain is none: `lekker`.
 */
export const DUTCH_OUTCOMES: OutcomeWords = {
  reached: `
    aardig goed | alle noten goed | alles goed | als een trein | beter dan gisteren | bijna perfect goed |
    duidelijk beter | een makkie | eindelijk | eitje | fantastisch | feilloos | foutloos | foutloos gespeeld | gaaf |
    gaat goed | gaat lekker | gaat makkelijk | gaat nu goed | gaat prima | gaat vanzelf | geen enkele fout |
    geen fout | geen fouten | geen foutje | geen foutjes | geen haperingen | geen missers | geen probleem |
    geen problemen | gelijkmatig | gelukkig goed | gelukt | gemakkelijk | geslaagd | geweldig | ging goed |
    ging lekker | ging prima | ging super | goed | goed gelukt | goed genoeg | goed in de vingers | goed in tempo |
    goed onder controle | goede intonatie | goede klank | goede toon | heel goed | helder | helemaal gelukt |
    helemaal goed | hoera | in de maat | in de vingers | in orde | in tempo | in één keer | in één keer goed | ja |
    ja hoor | joepie | keurig | klinkt goed | klinkt lekker | klinkt mooi | klinkt prima | klonk goed | klonk mooi |
    lekker los | loopt goed | loopt lekker | loopt soepel | lukt | lukt goed | lukt nu | lukt prima | makkelijk |
    makkelijk zat | moeiteloos | mooi | mooi gelijk | mooi in de maat | mooie klank | mooie toon | netjes |
    niet slecht | niet verkeerd | nul fouten | ok | oké | onder controle | onder de knie | ontspannen en gelijk |
    op tempo | perfect | piekfijn | prachtig | precies goed | prima | puik | rustig en schoon | schoon |
    schoon en gelijk | schoon in tempo | soepel | soepeltjes | solide | staat als een huis | stabiel | stuk beter |
    top | toppie | uitstekend | veel beter | veel gelijker | veel makkelijker | veel schoner | veel soepeler |
    vlekkeloos | vloeiend | vlot | voldaan | voor elkaar | was goed | yes | zeker | zeker genoeg | zit erin |
    zit goed | zit in de vingers | zit lekker | zonder fout | zonder fouten | zonder haperen | zonder hapering |
    zonder moeite | zonder problemen | zonder stoppen | zuiver | zuiver en gelijk |
    ${combined("geen | geen enkele | zonder", FAULT)} |
    ${combined("0 | geen | nul | zonder", FAULTS)}
  `,
  nearly: `
    acceptabel | af en toe | begint te komen | begint te lopen | beter | beter dan eerst | beter dan vorige week |
    beter maar langzaam | bijna | bijna foutloos | bijna gelukt | bijna goed | bijna perfect | bijna schoon |
    een paar fouten | een paar foutjes | een paar keer fout | fout | fouten | foutje | foutje hier en daar | foutjes |
    gaat al beter | gaat steeds beter | gaat vooruit | gaat wel | gaat wel weer | gaat zo zo | gemengd |
    goed maar langzaam | half goed | halfjes | het begint te komen | het komt | hier en daar een foutje |
    hmm gaat wel | kan beter | kan netter | kan schoner | klein foutje | kleine foutjes | komt eraan | komt wel |
    langzaam beter | langzaam maar goed | langzaam maar schoon | langzaam maar zeker | langzaam ok | matig | meestal |
    meestal goed | meestal schoon | met een foutje | met foutjes | middelmatig | mwa | mwah | net niet |
    niet helemaal | niet helemaal schoon | niet helemaal zuiver | niet perfect | nog iets onzeker |
    nog niet helemaal | nog niet perfect | nog niet zeker | nog wat rommelig | nog wat stroef | nét niet |
    ok maar langzaam | oké maar langzaam | onzeker | op de goede weg | op een haar na | op weg | paar foutjes |
    redelijk | soms goed | stapje vooruit | steeds beter | valt mee | van alles wat | vooruitgang | wankel |
    wat beter | weinig fouten | wiebelig | wiebelt | wisselend | wordt beter | zit er bijna in | zo zo |
    ${combined("bijna | niet altijd | niet helemaal | nog niet helemaal | redelijk | soms | vrijwel", GOOD)} |
    ${combined("1 | één | een | maar één | maar een | slechts één | slechts een", FAULT)} |
    ${combined("2 | een paar | enkele | paar | twee | weinig", FAULTS)}
  `,
  not: `
    afgebroken | afgehaakt | afschuwelijk | allemaal fout | bagger | belabberd | chaos | chaotisch | drama |
    dramatisch | echt niet | er nog niet | erg vals | fouten genoeg | gaat niet | geen controle | geen klank |
    geen lucht | geen ritme | gehaast | gehakkel | geraffeld | gestruikeld | ging fout | ging mis | ging niet |
    ging slecht | hakkelig | hakkelt | haperde | hapering | haperingen | hapert | hopeloos | horkerig | houterig |
    inkakken | kan ik niet | kan niet | klinkt nergens naar | klinkt niet | klinkt slecht | klinkt vals |
    klonk slecht | klonk vals | knoeien | knoeierig | knullig | komt niet | kraakt | kraakte | kruipt | kwijt |
    lastig | lukt niet | lukt nog niet | lukte niet | mis | misgegaan | mislukt | misser | missers | moeilijk |
    moeizaam | nee | niet goed | niet schoon | niet zuiver | nog lang niet | nog lang niet goed | nog niet |
    nog niet goed | nog niet in de vingers | nog niet schoon | nog niet zuiver | nog steeds fout | nog steeds niet |
    nope | oef | onbeholpen | onduidelijk | ongelijk | ongelijk en gehaast | onregelmatig | onrustig | onspeelbaar |
    onzuiver | op niks | piept | piepte | prut | rammelig | rammelt | ramp | rampzalig | rommelig | rot | schel |
    schril | slecht | slordig | slordig en snel | stom | stopte | stotterig | stottert | stroef | struikel |
    struikelde | struikelen | te gehaast | te hard | te hoog | te laag | te laat | te langzaam | te lastig |
    te moeilijk | te slordig | te snel | te veel fouten | te vroeg | te zacht | te zwaar | tempo kwijt |
    uit de bocht | uit de maat | uit tempo | vals | valt stil | valt uit elkaar | vastgelopen | veel fouten |
    veel te hard | veel te langzaam | veel te snel | verkeerd | verkeerde noten | verknald | verloren | verprutst |
    verschrikkelijk | versneld | versnelt | viel stil | viel uit elkaar | vreselijk | waardeloos | warrig | wollig |
    zakt in | zwabbert |
    ${combined("nauwelijks | niet | nog niet | nooit", GOOD)} |
    ${combined("3 | 4 | 5 | drie | heel veel | meerdere | te veel | veel", FAULTS)}
  `,
  intensifiers: joined(
    "behoorlijk | best | compleet | echt | een beetje | eigenlijk | eindelijk | erg | gewoon | heel | helemaal",
    "meestal | nog | nogal | nu | redelijk | steeds | totaal | vandaag | vrij | zo",
  ),
  negations: "niet | geen | nooit | nauwelijks | maar | behalve",
};
