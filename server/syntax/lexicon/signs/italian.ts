import { joined } from "../joined.ts";
import { ITALIAN_AMOUNT_SIGNS } from "./amounts/italian.ts";
import { ITALIAN_BODY_SIGNS } from "./body/italian.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Italian: from memory, no source. */
export const ITALIAN_SIGNS: SignTable = {
  ...ITALIAN_BODY_SIGNS,
  ...ITALIAN_AMOUNT_SIGNS,
  "sentence-sign": {
    pronoun: joined(
      "c'era | c'è | ce n'è | ci sono | gli ho | io | le ho | lei | loro | lui | me lo | me ne | mi ha",
      "mi sembra | mi sento | mi sono | mi è | mia | mie | miei | mio | nessuno | noi | non mi | nostra | nostri",
      "nostro | ognuno di | qualcosa | qualcuno | quella | quello | questa | questo | questo è | si è | sua | sue",
      "suo | suoi | tu | tua | tuo | tuoi | tutti | voi | vostra | vostro",
    ),
    verb: joined(
      "abbiamo | accorta | accorto | andata | andato | andava | arrivato | ascoltavo | aspettato | aspetto",
      "avete | aveva | avevano | avevo | avuto | capisco | capito | chiesto | comincia | comprato | conosco",
      "credevo | credo | dato | detto | deve | devo | dice | diceva | dicono | dimenticato | diventa | dormito",
      "dovevo | dovrei | dovuto | era | erano | ero | faccio | fanno | fu | ha | hai | hanno | ho | lasciato",
      "manca | mangiato | messo | mi piace | nevica | pare | parlato | pensavo | penso | piace | piove | posso",
      "possono | potevo | potrebbe | potrei | potuto | preso | può | resta | ricevuto | riesce | riesco | rimane",
      "rimasto | ritrovato | sapevo | saputo | sarebbe | sarà | sembra | sembrano | sembrava | sentito | sentivo",
      "sento | siamo | siete | so | sono | spero | sta | stai | stava | sto | suona | suonava | tornata | tornato",
      "trovato | trovo | va | vado | vanno | vedo | veniva | venuto | viene | visto | voglio | volevo | voluto",
      "vorrei | vuoi | vuole | è",
    ),
    conjunction: joined(
      "affinché | anche se | benché | che | chi | cioè | come | cosa | così che | dopo che | dove | dunque",
      "invece | mentre | perché | perciò | però non | poiché | prima che | quando | se | sebbene | siccome",
    ),
  },
  intention: {
    intention: joined(
      "bisogna | comprare | da fare | devo | devo ancora | domani | dopodomani | dovrei | ho bisogno di",
      "la prossima volta | non dimenticare | non scordare | obiettivo | ordinare | più attenzione | più tempo su",
      "portare | prossima volta | ricorda | ricordare | ricordarmi | ricordarsi | voglio | vorrei",
    ),
  },
  filler: {
    filler: joined(
      "a memoria | adesso | al metronomo | alcune | alcuni | anche | anche oggi | ancora | ancora un po'",
      "col click | col metronomo | con | con accordatore | con drone | con il click | con il metronomo",
      "con metronomo | da | dal | dei | del | della | delle | di | di nuovo | di più | dopo | e | ed | già | gli",
      "i | il | in | infine | inoltre | l' | la | le | lo | ma | molto | nel | nella | oggi | ora | per | poi",
      "pure | qualche | quindi | sempre | senza spartito | solamente | solo | soprattutto | su | sul | sulla | un",
      "un paio di | un po' | un pochino | un poco | un' | un'altra volta | una | uno | varie",
    ),
  },
  "practice-verb": {
    practice: joined(
      "all'inizio | approfondito | cantato | cominciato con | concluso con | continuato con | dopo | e poi",
      "esercitato | finito con | ho cominciato con | ho finito con | ho iniziato con | ho lavorato su",
      "ho provato | ho ripassato | ho ripreso | ho studiato | ho suonato | imparato | in seguito | infine",
      "iniziato | iniziato con | innanzitutto | lavorato | lavorato ancora su | lavorato su | lavorato sui",
      "lavorato sul | lavorato sulla | lavoro su | lavoro sul | lavoro sulla | letto | lettura del | lettura di",
      "partito con | partito da | per cominciare | per finire | per iniziare | poi | poi ancora | poi solo",
      "prima | prima un po' di | proseguito con | provato | provato ancora | qualche | quindi | rifatto",
      "ripassato | ripasso | ripasso di | ripetizione di | ripetuto | ripreso | rivisto | studiato | suonato",
      "un po' di",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "allemanda | aria | arietta | bagatella | ballata | ballo | barcarola | berceuse | blues | bourrée | brano",
      "brano d'esame | canone | cantata | canto | canto di natale | canzoncina | canzone | canzonetta | capriccio",
      "ciaccona | colonna sonora | concertino | concerto | corale | corali | corrente | danza | danze",
      "divertimento | duetto | elegia | esercizio | fantasia | filastrocca | fuga | fughetta | gagliarda",
      "galoppo | gavotta | giga | impromptu | improvviso | inno | intermezzo | invenzione | invenzioni",
      "madrigale | marcetta | marcia | mazurca | mazurka | melodia | minuetti | minuetto | mottetto | ninna nanna",
      "notturni | notturno | ouverture | passacaglia | passi d'orchestra | passo d'orchestra | pastorale | pavana",
      "pezzetto | pezzo | pizzica | polacca | polca | polka | preludi | preludio | quartetto | quintetto",
      "rapsodia | requiem | romanza | romanze | rondeau | rondo | rondò | salmo | saltarello | sarabanda",
      "scherzo | serenata | sestetto | siciliana | sinfonia | solo | sonata | sonate | sonatina | sonatine",
      "stornello | studietto | studio | suite | tammurriata | tango | tarantella | tema con variazioni | toccata",
      "trio | valzer | valzerino | variazione | variazioni | villanella | walzer",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "brano | canto | capriccio | duetto | esercizio | invenzione | lezione | libro | minuetto | n | no | num",
      "numero | n° | op | opus | pezzo | preludio | sonata | sonatina | studio | tomo | valzer | vol | volume",
    ),
  },
  "title-end": {
    "end of a title": "a memoria | ancora | con | di nuovo | ma | senza | senza spartito | solo | un'altra volta",
  },
  "title-joint": {
    "inside a title": "a | con | da | del | della | di | e | il | in | la",
  },
  "title-lead": {
    "before a title": "i | il | la | le | su",
  },
  "verb-behind": {
    verb: "era | suona | è",
  },
  "before-time": {
    "before a time": "dopo | durante | entro | per | prima | primi | ultimi | verso",
  },
  heading: {
    "warm-up": joined(
      "riscaldamenti | riscaldamento | riscaldamento vocale | riscaldarsi | scaldarmi | scaldarsi | scaldata",
      "warm up",
    ),
    technique: joined(
      "basi | esercizi | esercizi di tecnica | esercizi quotidiani | esercizi tecnici | fondamentali | fondamenti",
      "meccanica | parte tecnica | routine | suono | tecnica | tecnica pura",
    ),
    scales: "arpeggi e scale | le scale | scale | scale & arpeggi | scale arpeggi | scale e arpeggi",
    studies: "studi | studio",
    pieces: joined(
      "brani | brani da concerto | brano | canzoni | i miei brani | miei brani | musica | nuovi brani | pezzi",
      "pezzi d'esame | pezzo | programma | programma d'esame | programma del concerto | repertorio",
    ),
    reading: "lettura | lettura a prima vista",
    lesson: joined(
      "a lezione | appunti di lezione | dopo la lezione | in lezione | lezione | lezione con",
      "lezione di batteria | lezione di canto | lezione di chitarra | lezione di clarinetto | lezione di flauto",
      "lezione di piano | lezione di pianoforte | lezione di tromba | lezione di violino | lezione di violoncello",
      "lezione oggi | lezione online",
    ),
    sitting: joined(
      "a pranzo | di mattina | di sera | domenica | dopo cena | dopo il lavoro | dopo pranzo | dopo scuola",
      "giovedì | in mattinata | in serata | lunedì | martedì | mattina | mattinata | mattino | mercoledì",
      "oggi pomeriggio | pomeriggio | prima del lavoro | prima di cena | prima di pranzo | prima sessione",
      "sabato | seconda sessione | sera | serata | sessione 1 | sessione 2 | stamattina | stasera",
      "tarda mattinata | tardo pomeriggio | venerdì",
    ),
  },
  rest: {
    rest: joined(
      "giornata di riposo | giorno di riposo | giorno libero | giorno off | libero | nessuno studio | niente",
      "niente chitarra | niente clarinetto | niente di niente | niente flauto | niente musica | niente oggi",
      "niente piano | niente pianoforte | niente pratica | niente studio | niente tromba | niente violino",
      "niente violoncello | non ho studiato | non ho suonato | non studiato | non suonato | nulla | nulla oggi",
      "oggi niente | oggi nulla | pausa | riposato | riposo | riposo forzato | riposo oggi | saltato",
      "senza suonare",
    ),
    ill: joined(
      "a letto malato | ammalata | ammalato | ancora malata | ancora malato | covid | emicrania | febbre",
      "influenza | influenzata | influenzato | mal di testa | malata | malato | raffreddata | raffreddato",
      "raffreddore",
    ),
    away: "ferie | fuori città | in ferie | in gita | in vacanza | in viaggio | vacanza | vacanze | via",
    "no time": joined(
      "mancanza di tempo | niente tempo | niente tempo oggi | non ho avuto tempo | poco tempo | senza tempo",
      "troppo impegnata | troppo impegnato | troppo lavoro | troppo stanca | troppo stanco",
      "troppo tardi per suonare",
    ),
  },
  "set-work": {
    "set work": joined(
      "assegnati | assegnato | compiti | compiti a casa | compito | compito per casa | da fare | da imparare",
      "da preparare | da preparare per | da ripassare | da studiare | da studiare per | entro la prossima lezione",
      "per casa | per domenica | per giovedì | per la lezione | per la lezione di | per la prossima",
      "per la prossima lezione | per la prossima settimana | per la prossima volta | per la settimana prossima",
      "per lunedì | per martedì | per mercoledì | per sabato | per venerdì | prossima lezione",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "chiede | consiglia | dice | dice che | diceva | disse | ha chiesto | ha consigliato | ha detto",
      "ha detto che | ha insistito | ha mostrato | ha proposto | ha raccomandato | ha spiegato | ha suggerito",
      "ha voluto | insiste | mi ha chiesto | mi ha consigliato | mi ha detto | mi ha fatto | mi ha mostrato",
      "mostra | pensa | preferisce | propone | raccomanda | ricorda | spiega | suggerisce | trova | voleva",
      "vorrebbe | vuole",
    ),
  },
  "before-teacher": {
    "before the teacher": "il | la",
  },
  teacher: {
    teacher: joined(
      "capofila | direttore | direttore d'orchestra | direttrice | docente | il direttore | il maestro",
      "il mio insegnante | il mio maestro | il prof | insegnante | insegnante di piano | insegnante di violino",
      "la maestra | la mia insegnante | la mia maestra | la prof | maestra | maestro | maestro di coro",
      "mia maestra | mio maestro | preparatore | prof | professore | professoressa",
    ),
  },
  title: {
    "form of address": "maestra | maestro | prof | sig | sig.ra | signor | signora",
  },
  question: {
    question: joined(
      "chiedere | chiedere a | chiedere al | chiedere al maestro | chiedere alla | da chiedere | da domandare",
      "domanda | domanda per | domande | domande al maestro | domande per | dubbi | dubbio",
    ),
  },
  "same-as-above": {
    same: joined(
      "come prima | come sopra | idem | idem come sopra | la stessa | la stessa cosa | lo stesso | stessa",
      "stessa cosa | stessa scala | stesse battute | stesso | stesso brano | stesso esercizio | stesso passaggio",
      "stesso pezzo | stesso studio | uguale",
    ),
    again: "ancora | di nuovo",
  },
  negation: {
    negation: "mai | nessun | nessuna | nessuno | no | non | senza",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "capitolo | capotasto | corda | dito | posizione | tasto | traccia",
  },
  repetitions: {
    times: "volta | volte | x",
  },
  instrument: {
    instrument: joined(
      "arpa | basso elettrico | batteria | bombardino | canto | chitarra | chitarra classica | chitarra elettrica",
      "clarinetto | clarinetto basso | clavicembalo | clavicordo | contrabbasso | cornetta | corno",
      "corno inglese | eufonio | fagotto | fisarmonica | flauto | flauto basso | flauto contralto | flauto dolce",
      "flauto soprano | flauto tenore | flauto traverso | flicorno | ghironda | liuto | mandolino | marimba",
      "oboe | organetto | organo | ottavino | percussioni | piano | pianoforte | sassofono | sax | sax baritono",
      "sax contralto | sax tenore | saxofono | tastiera | tiorba | traversiere | tromba | trombone | tuba",
      "ukulele | vibrafono | viola | viola da gamba | violino | violoncello | voce | xilofono | zampogna",
    ),
  },
  scope: {
    "all keys": joined(
      "in tutte le tonalità | tutte le mie scale | tutte le scale | tutte le tonalità | tutti gli arpeggi",
      "tutti i toni",
    ),
    "all majors": "le scale maggiori | tutte le maggiori | tutte le scale maggiori",
    "all minors": "le scale minori | tutte le minori | tutte le scale minori",
    "circle of fifths": "ciclo delle quinte | circolo delle quinte",
    "circle of fourths": "ciclo delle quarte | circolo delle quarte",
  },
};
