import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Italian: from memory, no source. */
export const ITALIAN_SIGNS: SignTable = {
  "sentence-sign": {
    pronoun: joined(
      "io | tu | lui | lei | noi | voi | loro | mi sono | mi è | mio | mia | miei | mie | suo | sua | questo è",
      "tutti | qualcuno | nessuno",
    ),
    verb: joined(
      "sono | è | era | erano | ho | hai | ha | abbiamo | avevo | aveva | devo | deve | dovevo | dovrei | posso",
      "può | potevo | voglio | vuole | volevo | vado | va | andava | viene | veniva | sembra | sembrava | suona",
      "suonava | sento | sentivo | penso | pensavo | credo | spero | trovo | riesco | riesce | capisco | so",
      "sapevo | mi piace | piace | manca | comincia | resta | diventa | comprato",
    ),
    conjunction: "perché | che | quando | se | come | chi | cosa | dove | poiché",
  },
  intention: {
    intention: joined(
      "domani | la prossima volta | prossima volta | devo | dovrei | bisogna | non dimenticare | ricordare",
      "ricordarsi | ricorda | da fare | comprare | portare",
    ),
  },
  filler: {
    filler: joined(
      "il | lo | la | i | gli | le | l' | un | uno | una | un' | e | ed | con | di | del | della | dei | delle",
      "in | nel | nella | su | sul | sulla | per | da | dal | ancora | anche | poi | ora | adesso | ma | molto",
      "un po' | un poco | solo | solamente | già | a memoria | col metronomo | con il metronomo | con metronomo",
      "con accordatore | oggi | di nuovo",
    ),
  },
  "practice-verb": {
    practice: joined(
      "suonato | studiato | esercitato | ripassato | lavorato | lavorato su | iniziato | iniziato con",
      "cominciato con | provato | letto | poi | prima | ho suonato | ho studiato | ripetuto | ripreso",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "brano | pezzo | canzone | canto | studio | esercizio | sonata | sonatina | minuetto | marcia | valzer",
      "danza | suite | concerto | preludio | fuga | gavotta | bourrée | giga | sarabanda | allemanda | corrente",
      "rondò | romanza | fantasia | canone | corale | duetto | trio | aria | variazioni | invenzione",
      "ouverture | polca | tango | toccata | notturno | ninna nanna | tarantella | siciliana",
    ),
  },
  "title-number": {
    "number of a title":
      "n | n° | num | numero | no | op | opus | libro | volume | vol | studio | esercizio | lezione | capriccio",
  },
  "title-end": { "end of a title": "con | senza | solo | ancora | ma" },
  "title-joint": { "inside a title": "di | in | a | da | il | la | e | del | della | con" },
  "title-lead": { "before a title": "la | il | le | i | su" },
  "verb-behind": { verb: "è | era | suona" },
  "before-time": { "before a time": "dopo | prima | entro | per" },
  heading: {
    "warm-up": "riscaldamento",
    technique: "tecnica | suono | esercizi | fondamentali",
    scales: "scale | scale e arpeggi",
    studies: "studi | studio",
    pieces: "brani | pezzi | brano | pezzo | repertorio | canzoni",
    reading: "lettura | lettura a prima vista",
    lesson: "lezione | lezione con",
    sitting: joined(
      "mattina | mattino | pomeriggio | sera | lunedì | martedì | mercoledì | giovedì | venerdì | sabato",
      "domenica",
    ),
  },
  rest: {
    rest: joined(
      "riposo | giorno di riposo | niente | nulla | niente oggi | non suonato | non studiato | pausa | libero",
      "giorno libero | saltato",
    ),
    ill: joined(
      "malato | malata | influenza | raffreddore | raffreddato | raffreddata | febbre | mal di testa",
      "emicrania",
    ),
    away: "vacanza | vacanze | ferie | via | in viaggio",
    "no time": "niente tempo | senza tempo | non ho avuto tempo | troppo stanco | troppo stanca",
  },
  "body-part": {
    "arm or leg": joined(
      "braccio | braccia | pollice | pollici | dito | dita | mano | mani | polso | polsi | gomito",
      "gomiti | ginocchio | mignolo | indice | medio | anulare | avambraccio | mano sinistra",
      "mano destra | polpastrello | polpastrelli | avambracci | ginocchia | gamba | gambe | anca",
    ),
    ear: "orecchio | orecchie | udito | acufene | acufeni",
    "part of the body": joined(
      "spalla | spalle | collo | schiena | testa | labbro | labbra | mascella | mandibola | lingua | gola",
      "voce | imboccatura | petto | occhi | scapola | scapole | tendine | tendini | nuca | denti | dente | trapezio | pancia",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "dolore | dolori | dolente | fa male | fanno male | male al | male alla | male ai | mal di | crampo",
      "crampi | intorpidito | intorpidita | formicolio | gonfio | gonfia | vertigini | indolenzito",
      "indolenzita | roco | rauco | roca | rauca | tendinite | tendiniti | intorpidite | intorpiditi | intorpidimento",
      "formicolano | formicola | formicolii | gonfi | gonfie | gonfiore | indolenziti | indolenzite | mal di schiena",
      "mal di testa | mal di gola | mi duole | duole | dolgono | torcicollo | dolorante | doloranti | tunnel carpale",
      "senza voce | cervicale | slogato | slogata",
    ),
    sore: joined(
      "rigido | rigida | rigidità | brucia | bruciore | trema | tremore | debole | debolezza | acufene",
      "vescica | vesciche | acufeni | fischia | fischiano | fischio | ronza | ronzano | ronzio | tira | tirano | bloccato",
      "bloccata | infiammato | infiammata | infiammazione | screpolate | screpolato | bruciano | tremano | rigidi | rigide | fitta | fitte",
    ),
    tight: "contratto | contratta | contratti | contratte | contrattura | contratture | irrigidito | irrigidita",
    tense: "teso | tesa",
    tired: "stanco | stanca | stanchi | stanche | affaticato | affaticata | esausto | esausta",
    cold: "freddo | fredde | pesante",
  },
  eased: { eased: "meglio", free: "indolore" },
  total: {
    total: "tot | tot. | totale | in totale | in tutto | tempo totale | complessivamente",
  },
  "beside-total": {
    "beside a total": joined(
      "totale | in totale | in tutto | tempo totale | oggi | circa | fatto | fatti | studiato | suonato | solo",
      "appena | quasi | scarsa | scarso | scarsi | abbondante | abbondanti | o poco più | di studio",
    ),
  },
  "set-work": {
    "set work": joined(
      "compiti | compito | per la prossima lezione | per la prossima settimana | per la prossima volta",
      "prossima lezione | da fare | da preparare | da studiare | per lunedì | per martedì | per mercoledì",
      "per giovedì | per venerdì | per sabato",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "dice | ha detto | vuole | consiglia | ha consigliato | suggerisce | pensa | trova | chiede | ha chiesto",
      "propone | insiste | vorrebbe | spiega",
    ),
  },
  "before-teacher": { "before the teacher": "il | la" },
  teacher: {
    teacher: joined(
      "maestro | maestra | insegnante | prof | professore | professoressa | direttore | il maestro | la maestra",
      "il mio insegnante | la mia insegnante",
    ),
  },
  title: {
    "form of address": "signor | signora | sig | sig.ra | maestro | maestra | prof",
  },
  question: {
    question: "domanda | domande | domande per | chiedere | da chiedere",
  },
  "same-as-above": {
    same: joined(
      "uguale | stesso | stessa | lo stesso | la stessa | idem | come sopra | stessa cosa | stesso esercizio",
    ),
    again: "di nuovo | ancora",
  },
  negation: {
    negation: "non | no | mai | senza | nessun | nessuno | nessuna",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "posizione | corda | dito | tasto | capitolo | capotasto | traccia",
  },
  repetitions: {
    times: "volte | volta | x",
  },
  instrument: {
    instrument: joined(
      "flauto dolce | flauto | flauto traverso | flauto contralto | flauto soprano | violino | viola",
      "violoncello | contrabbasso | chitarra | pianoforte | clavicembalo | organo | clarinetto | oboe | fagotto",
      "sassofono | tromba | corno | trombone | tuba | arpa | liuto | fisarmonica | mandolino | canto | voce",
    ),
  },
  scope: {
    "all keys": "tutte le scale | tutte le tonalità | tutti gli arpeggi",
    "all majors": "tutte le scale maggiori | tutte le maggiori",
    "all minors": "tutte le scale minori | tutte le minori",
    "circle of fifths": "circolo delle quinte | ciclo delle quinte",
  },
};
