import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in French: common practice, no source. */
export const FRENCH_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "annulaire | auriculaire | avant bras | biceps | bout des doigts | bout du doigt | bras | cheville",
      "chevilles | coude | coudes | cuisse | cuisses | doigt | doigts | genou | genoux | hanche",
      "index | jambe | jambes | main | main droite | main gauche | mains | majeur gauche | mollet | mollets",
      "ongle | ongles | orteil | orteils | paume | paumes | petit doigt | phalange | phalanges | pied | pieds",
      "poignet | poignets | pouce | pouces | triceps",
    ),
    ear: "acouphène | acouphènes | audition | oreille | oreilles | tympan | tympans",
    "part of the body": joined(
      "articulation du pouce | bas du dos | bassin | cervicales | clavicule | coccyx | cordes vocales | cou",
      "côtes | dent | dents | diaphragme | dos | embouchure | estomac | front | gencives | gorge | haut du dos",
      "joue | joues | langue | larynx | lombaires | lèvre | lèvre du bas | lèvre du haut | lèvres | menton",
      "muscle | muscles | mâchoire | mâchoires | nez | nuque | oeil | omoplate | omoplates | poitrine | sinus",
      "tempes | tendon | tendons | trapèze | trapèzes | tête | ventre | vertèbre | vertèbres | voix | yeux",
      "épaule | épaules | œil",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "aphone | arthrose | canal carpien | claquage | contusion | courbature | courbatures | courbaturé",
      "courbaturée | crampe | crampes | crampé | crampé aux doigts | douleur | douleurs | douloureuse",
      "douloureuses | douloureux | dystonie | endolori | endolorie | endolories | endoloris | enflé | enflée",
      "enflées | enflés | engourdi | engourdie | engourdies | engourdis | engourdissement | enrouement | enroué",
      "enrouée | entorse | extinction de voix | fait mal | fait très mal | font mal | foulure | fourmille",
      "fourmillements | fourmillent | fracture | gonflé | gonflée | gonflées | gonflés | hernie | inflammation",
      "lancinant | lancine | lumbago | lumbagos | luxation | mal au | mal aux | mal aux doigts | mal d'oreille",
      "mal de cou | mal de dents | mal de dos | mal de gorge | mal de tête | mal partout | mal à | maux de tête",
      "migraine ophtalmique | nausée | nausées | nerf coincé | picotements | plus de voix | sans voix | sciatique",
      "tendinite | tendinites | tiraillement | tiraillements | torticolis | vertige | vertiges | voix cassée",
      "ça fait mal | élancements | élongation",
    ),
    sore: joined(
      "acouphène | acouphènes | ampoule | ampoules | ankylosé | ankylosée | bleu | bloqué | bloquée | bourdonne",
      "bourdonnement | bourdonnent | brûlant | brûlante | brûle | brûlent | brûlure | brûlures | coincé | coincée",
      "contusionné | craque | enflamme | enflammé | enflammée | faible | fichu | gercé | gercée | gercées",
      "gonfle | gêne | gêné | gênée | irrité | irritée | mal | me lance | morte | pique | piquent | pulse | raide",
      "raides | raideur | raidi | raidie | siffle | sifflement | sifflent | tiraille | tire | tirent | tremble",
      "tremblement | tremblements | tremblent | à vif",
    ),
    tight: joined(
      "contracture | contractures | contracté | contractée | crispé | crispée | crispées | crispés | noué | nouée",
    ),
    tense: "crispation | crispations | tendu | tension | tensions",
    tired: joined(
      "claqué | crevé | crevée | exténué | exténuée | fatigue | fatigué | fatiguée | fatiguées | fatigués",
      "lessivé | lessivée | naze | vidé | vidée | épuisé | épuisée",
    ),
    cold: "froid | froides | lourd",
  },
  eased: {
    eased: "mieux | passé",
    free: "indolore",
  },
};
