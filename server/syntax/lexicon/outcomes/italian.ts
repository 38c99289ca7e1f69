import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `quasi pulito`, `non ancora a tempo`. */
const GOOD = joined(
  "a posto | a tempo | bene | fluido | intonata | intonato | perfetto | precisa | preciso | pulita | pulito | regolare",
  "sicura | sicuro | stabile | uniforme",
);

const FAULT = "errore | inciampo | intoppo | sbaglio";
const FAULT_FEMININE = "esitazione | fermata | imprecisione | incertezza | nota falsa | nota sbagliata | stecca";
const FAULTS = "errori | inciampi | intoppi | sbagli";
const FAULTS_FEMININE = "esitazioni | fermate | imprecisioni | incertezze | note false | note sbagliate | stecche";

/**
 * How it went, in Italian: from memory. A single word that also stands in what is said of a pain is none: `va`.
 */
export const ITALIAN_OUTCOMES: OutcomeWords = {
  reached: `
    a posto | a tempo | abbastanza bene | accettato | al primo colpo | alla grande | alla perfezione | bel suono |
    bellissima | bellissimo | ben fatto | ben intonata | ben intonato | bene | benissimo | benone | brava | bravo |
    brillante | buon ritmo | buon suono | buona | buona intonazione | buono | ce l'ho fatta | centrato | chiara |
    chiaro | comoda | comodo | convincente | corretta | corretto | decisamente meglio | eccellente | esatto | evviva |
    facile | facilissimo | fantastica | fantastico | fila liscio | finalmente | finalmente pulito | fluida | fluido |
    funziona bene | impeccabile | in ordine | in tempo | intonata | intonato | liscia | liscio | liscio come l'olio |
    magnifica | magnifico | meglio di ieri | memorizzata | memorizzato | molto bene | molto meglio |
    neanche un errore | nelle dita | nemmeno un errore | nessun errore | nessun problema | nessuno sbaglio |
    niente male | non male | ok | ok ora | omogenea | omogeneo | ottima | ottimo | per niente male | perfetta |
    perfetto | precisa | preciso | pulita | pulito | pulito e regolare | quasi perfetto finalmente | regolare |
    rilassato e pulito | riuscita | riuscito | riuscito bene | scorre bene | scorrevole | senza difficoltà |
    senza errori | senza esitazioni | senza fermarmi | senza fermate | senza intoppi | senza problemi | senza sbagli |
    senza sbagliare | senza sforzo | sereno | sicura | sicuro | sicuro ora | solida | solido | sotto controllo |
    suona bene | suonava bene | superato | sì | tranquillo | tutto a posto | tutto bene | tutto giusto |
    tutto in ordine | tutto ok | tutto pulito | una meraviglia | uniforme | va alla grande | va bene | va benissimo |
    va ora | vittoria | zero errori |
    ${combined("nemmeno un | nessun | senza un", FAULT)} |
    ${combined("nemmeno una | nessuna | senza una", FAULT_FEMININE)} |
    ${combined("0 | senza | zero", joined(FAULTS, FAULTS_FEMININE))}
  `,
  nearly: `
    a metà | a posto ma lento | a tratti | a volte | abbastanza | accettabile | altalenante | alterno |
    ancora incerto | ancora un po' lento | bene ma lento | buono ma lento | ci siamo quasi | comincia a venire |
    comincia ad andare | cosi così | così così | discontinuo | discreta | discreto | due o tre errori | errori |
    in lavorazione | in miglioramento | incerta | incerto | insomma | lento ma pulito | lento ma sicuro | mah |
    mediocre | meglio | meglio della volta scorsa | meglio di prima | meglio ma lento | migliora | migliorato |
    non ancora perfetto | non ancora pulito del tutto | non ancora sicuro | non del tutto | non perfetto |
    non sempre | passabile | per poco | piccoli errori | piccolo errore | più o meno | più pulito | più sicuro |
    pochi errori | progressi | pulito ma lento | qualche errore | qualche esitazione | qualche imprecisione |
    qualche intoppo | qualche progresso | qualche sbaglio | qualche stecca | quasi | quasi a posto | quasi bene |
    quasi perfetta | quasi perfetto | quasi pronto | quasi pulito | quasi sempre | quasi tutto | rivedibile |
    si può migliorare | sta venendo | sufficiente | tutto sommato bene | un errore | un po' incerto |
    un po' insicuro | un po' meglio | una volta su due | va così così | va meglio | viene piano piano |
    ${combined("a volte | non ancora del tutto | non del tutto | non sempre | quasi", GOOD)} |
    ${combined("1 | qualche | solo un | un | un piccolo", FAULT)} |
    ${combined("1 | qualche | solo una | una | una piccola", FAULT_FEMININE)} |
    ${combined("2 | alcuni | due | pochi", FAULTS)} |
    ${combined("2 | alcune | due | poche", FAULTS_FEMININE)}
  `,
  not: `
    a pezzi | a scatti | affrettata | affrettato | arruffato | brutta | brutto | brutto suono | calante | caos |
    caotico | catastrofe | confusa | confusionario | confuso | crolla | di corsa | di corsa e sporco | difficile |
    disastro | disastroso | faccio fatica | fallita | fallito | frettolosa | frettoloso | fuori ritmo | fuori tempo |
    gratta | grattato | impossibile | imprecisa | impreciso | inceppato | incerto e lento | incespicato | incespico |
    inciampato | ingolfato | insicuro e lento | instabile | irregolare | mah no | male | malino | malissimo |
    mi blocco | mi fermo | mi impappino | mi perdo | molti errori | molto male | nervoso | no | non a tempo |
    non ancora | non bene | non ce la faccio | non ci siamo | non esce | non fila | non funziona |
    non funziona ancora | non mi viene | non pulita | non pulito | non pulito ancora | non regge | non riesce |
    non riesco | non riuscito | non sicuro | non suona | non tiene | non va | non va ancora | non va bene |
    non viene | non viene ancora | note false | note sbagliate | orrendo | orribile | pasticciata | pasticciato |
    pasticcio | peggio | peggio di ieri | perso | perso il tempo | pesante e lento | pessima | pessimo | precipitata |
    precipitato | rallentato | sbagliata | sbagliato | scomposto | scoordinato | scorretto | scricchiola |
    singhiozzante | slegato e sporco | sporca | sporchissimo | sporco | stecca | stecche | stentato | stonata |
    stonatissimo | stonato | stridulo | strozzato | tanti errori | tempo perso | terribile | tesa | teso | tremendo |
    troppi errori | troppo difficile | troppo forte | troppo lento | troppo pesante | troppo piano | troppo presto |
    troppo tardi | troppo veloce | tutto sbagliato | un disastro | un pasticcio | vuoto di memoria | zoppica |
    zoppicante |
    ${combined("mai | non | per niente | poco", GOOD)} |
    ${combined("3 | 4 | 5 | tre | molti | parecchi | tanti | troppi", FAULTS)} |
    ${combined("3 | 4 | 5 | tre | molte | parecchie | tante | troppe", FAULTS_FEMININE)}
  `,
  intensifiers: joined(
    "abbastanza | adesso | ancora | completamente | così | davvero | decisamente | finalmente | molto | oggi | ora",
    "ormai | parecchio | per lo più | piuttosto | proprio | sempre | totalmente | un po'",
  ),
  negations: "non | nessun | mai | senza | ma | tranne",
};
