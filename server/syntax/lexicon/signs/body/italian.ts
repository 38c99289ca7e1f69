import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in Italian: from memory, no source. */
export const ITALIAN_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "alluce | anca | anulare | avambracci | avambraccio | avambraccio sinistro | bicipite | braccia | braccio",
      "braccio destro | braccio sinistro | caviglia | caviglie | cosce | coscia | dita | dito | dito medio",
      "gamba | gambe | ginocchia | ginocchio | gomiti | gomito | indice | mani | mano | mano destra",
      "mano sinistra | medio | mignolo | nocca | nocche | palmo | piede | piedi | pollice | pollice destro",
      "pollice sinistro | pollici | polpacci | polpaccio | polpastrelli | polpastrello | polsi | polso",
      "polso destro | polso sinistro | tricipite | unghia | unghie",
    ),
    ear: "acufene | acufeni | orecchie | orecchio | timpano destro | timpano sinistro | udito",
    "part of the body": joined(
      "articolazione | articolazioni | bacino | bassa schiena | bocca | cervicali | clavicola | collo",
      "corde vocali | costole | cuffia dei rotatori | dente | denti | diaframma | fronte | gengive | gola",
      "guance | guancia | imboccatura | labbra | labbro | labbro inferiore | labbro superiore | laringe | lingua",
      "lombare | mandibola | mascella | mento | muscoli | muscolo | naso | nervo | nuca | occhi | occhio | pancia",
      "petto | reni | scapola | scapole | schiena | spalla | spalle | stomaco | tempie | tendine | tendini",
      "testa | trapezio | vertebra | vertebre | voce | zigomo",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "afona | afono | artrite | artrosi | capogiri | cervicale | contusione | crampi | crampo | distonia",
      "distorsione | dolente | dolgono | dolorante | doloranti | dolore | dolori | dolorini | dolorino | dolorosa",
      "doloroso | duole | epicondilite | ernia | fa male | faceva male | facevano male | fanno male | formicola",
      "formicolano | formicolii | formicolio | frattura | gonfi | gonfia | gonfie | gonfio | gonfiore",
      "indolenzita | indolenzite | indolenziti | indolenzito | intorpidimento | intorpidita | intorpidite",
      "intorpiditi | intorpidito | mal d'orecchio | mal di | mal di denti | mal di gola | mal di schiena",
      "mal di testa | male ai | male al | male alla | male le | mi duole | mi fa male | mi fanno male | nausea",
      "nervo infiammato | nervo schiacciato | rauca | raucedine | rauco | roca | roco | sciatica | senza più voce",
      "senza voce | slogata | slogato | stiramento | strappo muscolare | tendinite | tendiniti | torcicollo",
      "tunnel carpale | vertigini",
    ),
    sore: joined(
      "acciaccata | acciaccato | acufene | acufeni | affaticamento | anchilosata | anchilosato | bloccata",
      "bloccate | bloccati | bloccato | brucia | bruciano | bruciante | bruciore | debole | debolezza | dolenzia",
      "fastidi | fastidio | fischia | fischiano | fischio | fitta | fitte | infiammata | infiammate | infiammati",
      "infiammato | infiammazione | intirizzite | irritata | irritato | pizzica | pulsa | punge | rigida | rigide",
      "rigidi | rigidità | rigido | ronza | ronzano | ronzio | sanguina | screpolate | screpolato | spaccate",
      "spaccato | tira | tira ancora | tirano | trema | tremano | tremore | vescica | vesciche",
    ),
    tight: "contratta | contratte | contratti | contratto | contrattura | contratture | irrigidita | irrigidito",
    tense: "irrigidimento | tensione | tensioni | tesa | tese | tesi | teso",
    tired: joined(
      "affaticata | affaticato | distrutta | distrutto | esausta | esausto | sfinita | sfinito | spossata",
      "spossato | stanca | stanche | stanchezza | stanchi | stanco",
    ),
    cold: "fredde | freddo | pesante",
  },
  eased: {
    eased: "meglio",
    free: "indolore",
  },
};
