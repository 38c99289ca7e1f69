import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `fast sauber`, `noch nicht im Takt`. */
const GOOD =
  "fehlerfrei | flüssig | gleichmäßig | gut | im takt | im tempo | perfekt | rund | sauber | sicher | zusammen";

const FAULT = joined(
  "ausrutscher | aussetzer | falscher ton | fehler | hänger | kiekser | patzer | stolperer | verspieler | wackler",
);
const FAULTS = joined(
  "ausrutscher | aussetzer | falsche töne | fehler | hänger | kiekser | patzer | stolperer | verspieler | wackler",
);

/**
 * How it went, in German. Words: reference lexicon of practice words, class outcome, and from memory. A single word
 * that also stands in what is said of a pain is none: `regelmäßig`, `richtig`.
 */
export const GERMAN_OUTCOMES: OutcomeWords = {
  reached: `
    akkurat | alles da | alles gut | alles ok | alles richtig | alles sauber | angenehm | astrein | auf anhieb |
    auf den punkt | ausgezeichnet | beim ersten mal | beim ersten versuch | besser als gestern | bestens |
    bin zufrieden | deutlich besser | ein genuss | einwandfrei | endlich geschafft | erfreulich | erste sahne |
    famos | fehlerfrei | fein | fliesst | fließt | flüssig | ganz leicht | ganz ordentlich | gar nicht schlecht |
    gar nicht übel | geht | geht flüssig | geht gut | geht jetzt | geht leicht | geht locker | geht schon gut | geil |
    gelang | gelingt | gelungen | genial | geschafft | geschmeidig | ging gut | ging leicht | ging super | glatt |
    glatt durch | gleichmässig | gleichmäßig | glänzend | grandios | großartig | gut | gut drin | gut gelaufen |
    gut gelungen | gut geworden | gut hingekriegt | gut im griff | gut im tempo | gut in den fingern |
    gut in der hand | gute intonation | guter durchlauf | guter groove | guter klang | guter puls | guter sound |
    guter ton | hat funktioniert | hat geklappt | hat gesessen | hat gut geklappt | herrlich | hervorragend |
    hinbekommen | hingehauen | hingekriegt | hurra | im griff | im kasten | im takt | im tempo | in den fingern |
    in ordnung | ja | jawohl | jep | jo | juhu | jupp | kein aussetzer | kein fehler | kein hänger | kein patzer |
    kein problem | keine aussetzer | keine fehler | keine hänger | keine patzer | keine probleme | kinderleicht |
    klang gut | klang schön | klappt | klappt gut | klappt jetzt | klappt super | klappte | klappte gut | klingt gut |
    klingt schön | klingt super | komplett sauber | korrekt | leicht | leichter | lief gut | lief rund | lief super |
    lief wie geschmiert | liegt gut | locker | läuft | läuft gut | läuft jetzt | läuft rund | läuft super |
    läuft wie geschmiert | makellos | mit leichtigkeit | mühelos | nicht schlecht | nicht übel | null fehler |
    ohne aussetzer | ohne fehler | ohne hänger | ohne patzer | ohne probleme | ohne stocken | ohne stolpern | ok |
    ordentlich | passt | passt gut | passt jetzt | passt so | passte | perfekt | piccobello | prima | problemlos |
    prächtig | sattelfest | sauber | sauber durch | sauber im tempo | sauber und gleichmäßig | sauber und locker |
    schön | schöner klang | schöner ton | sehr gut | sehr schön | sehr zufrieden | sicher | sitzt | sitzt endlich |
    sitzt gut | sitzt jetzt | sitzt wie angegossen | souverän | stabil | stimmig | super | tadellos | tip top | toll |
    tonschön | top | traumhaft | treffsicher | unfallfrei | viel besser | viel gleichmäßiger | viel leichter |
    viel lockerer | viel sauberer | viel sicherer | vollkommen | wesentlich besser | wie am schnürchen |
    wie geschmiert | wie im schlaf | wunderbar | wunderschön |
    ${combined("kein", FAULT)} |
    ${combined("0 | keine | keinerlei | null | ohne", FAULTS)}
  `,
  nearly: `
    akzeptabel | annehmbar | ansatzweise | auf gutem weg | ausbaufähig | beinahe | beinahe gut | besser |
    besser aber langsam | besser als beim letzten mal | besser als letzte woche | besser als neulich | brauchbar |
    durchwachsen | ein bisschen besser | einigermassen | einigermaßen | es geht | es wird | es wird besser |
    etwas unsicher | fast | fast da | fast geschafft | fast gut | fast ohne fehler | fast richtig | fehler |
    ganz nett | ganz passabel | geht einigermaßen | geht halbwegs | geht schon besser | geht so | gemischt |
    gerade so | grad so | gut aber langsam | halb gut | halbwegs | im werden | in arbeit | klappt fast |
    klappt manchmal | klappt meistens | kleine fehler | kleine patzer | kleine wackler | kleiner fehler |
    kleiner patzer | knapp | knapp daneben | kommt langsam | könnte besser sein | könnte sauberer sein |
    langsam aber sauber | langsam aber sicher | langsam besser | langsam gut | langsam ok | langsam wirds |
    leicht unsauber | leicht wackelig | mal so mal so | manchmal | meistens | meistens gut | meistens ok |
    meistens sauber | mit kleinen fehlern | mit patzern | mittel | mittelgut | mittelmäßig | mittelprächtig | mässig |
    mäßig | na ja | nah dran | nahe dran | nicht ganz | nicht perfekt | noch ausbaufähig | noch etwas unsicher |
    noch nicht ganz | noch nicht perfekt | noch nicht sicher | noch unsicher | ok aber holprig | ok aber langsam |
    passabel | passt schon | patzer | schon besser | schwankend | so lala | stellenweise | stellenweise gut |
    stellenweise sauber | teils | teils gut | teils teils | teilweise | unbeständig | unsicher | verbesserungsfähig |
    verbesserungswürdig | viel besser aber langsam | wackelig | wacklig | wenige fehler | weniger fehler | wird |
    wird besser | wird langsam | wird langsam besser | wird schon | wird schon noch | wirds | zum teil | zur hälfte |
    ${combined("beinahe | einigermaßen | fast | halbwegs | manchmal | meistens | nicht ganz | noch nicht ganz", GOOD)} |
    ${combined("1 | ein | nur ein | ein kleiner", FAULT)} |
    ${combined("2 | ein paar | nur 2 | nur zwei | paar | wenige | zwei", FAULTS)}
  `,
  not: `
    abgebrochen | abgerutscht | abgestürzt | aus dem takt | aus dem tempo | ausgestiegen | blöd | chaos | chaotisch |
    daneben | desaster | doof | eierig | eiert | eilt | ein graus | ein kampf | falsch | falsche töne | falscher ton |
    furchtbar | fürchterlich | gar nicht | gar nicht gut | gehetzt | geht gar nicht | geht nicht | geht noch nicht |
    gehuddelt | gehudelt | gequietscht | gerannt | gerast | gescheitert | geschludert | geschmiert | gestockt |
    gestolpert | gestottert | grauenhaft | grauenvoll | grausam | grottenschlecht | grottig | gruselig | hakelig |
    hakt | hapert | hastig | haut nicht hin | hektisch | hetzt | hinkt | hoffnungslos | holpern | holpert | holprig |
    huddelig | hudelt | hängen geblieben | hängt | immer noch nicht | immer noch schlecht | katastrophal |
    katastrophe | kein klang | kein rhythmus | keine chance | keine kontrolle | keine luft | kickst | kiekser |
    kiekst | kippt | klang schlecht | klappt gar nicht | klappt nicht | klappt noch nicht | klappte nicht |
    klingt furchtbar | klingt schlecht | konfus | kratzig | kratzt | krumm | langsamer geworden | lief nicht |
    lief schlecht | läuft nicht | läuft noch nicht | matschig | mies | miserabel | misslungen | mist | murks |
    mühsam | nee | nein | nicht da | nicht geklappt | nicht geschafft | nicht gut | nicht im takt | nicht sauber |
    nicht schön | nicht sicher genug | nicht so gut | nicht so toll | nicht wirklich | nicht zusammen | noch nicht |
    noch viel arbeit | nö | ohje | oje | panik | peinlich | quietscher | quietschig | quietscht | quäkt | rauh |
    rausgeflogen | sackt ab | scheisse | scheiße | schief | schief gegangen | schlampig | schlecht | schleppt |
    schlimm | schludrig | schmiert | schrecklich | schrill | schwammig | schwer | schwerfällig | schwierig |
    sitzt nicht | sitzt noch nicht | stocken | stockt | stolperer | stolpert | stolprig | stotterig | stottert |
    stümperhaft | takt verloren | tempo verloren | unbefriedigend | uneben | ungenau | ungenügend | ungleich |
    ungleichmäßig | unmöglich | unregelmäßig | unrein | unrhythmisch | unruhig | unsauber | unter aller kanone |
    vergeigt | verhaspelt | verhauen | verhuddelt | verhudelt | verkackt | verpatzt | verrutscht | verschluckt |
    verspielt | verstimmt | verwackelt | verwaschen | viel zu langsam | viel zu laut | viel zu schnell |
    viel zu schwer | viele fehler | voll daneben | wackelt | wirr | zerfallen | zerfällt | zu früh | zu hart |
    zu hektisch | zu hoch | zu langsam | zu laut | zu leise | zu schnell | zu schwer | zu spät | zu tief |
    zu viel druck | zu viele fehler | zu wenig luft | zäh |
    ${combined("gar nicht | kaum | nicht | nie | noch nicht", GOOD)} |
    ${combined("3 | 4 | 5 | drei | mehrere | viele | zu viele", FAULTS)}
  `,
  intensifiers: joined(
    "absolut | echt | ein bisschen | endlich | etwas | ganz | heute | inzwischen | jetzt | komplett | meist",
    "mittlerweile | noch | recht | richtig | schon | sehr | so | völlig | wieder | wirklich | ziemlich | überraschend",
  ),
  negations: "nicht | kein | keine | nie | kaum | aber | außer | bis auf",
};
