import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in French: common practice, no source. */
export const FRENCH_SIGNS: SignTable = {
  "sentence-sign": {
    verb: joined(
      "a | ai | aime | avais | avait | commence | crois | devient | dois | est | fait | faut | manque | ont",
      "pense | peut | peux | reste | sais | semble | sens | sonne | sont | suis | trouve | va | veut | vient",
      "était",
    ),
    pronoun: joined(
      "c'est | c'était | ce | elle | il | ils | j' | j'ai | j'aime | je | ma | mes | moi | mon | nous | on | tu",
      "ça",
    ),
    conjunction: "comment | est ce | pourquoi | quand | que | qui | si",
  },
  intention: {
    intention: "demain | devrais | dois | il faut | ne pas oublier | penser à | prochaine fois",
  },
  filler: {
    filler: joined(
      "au | aussi | avec | avec l'accordeur | avec le métronome | avec métronome | d' | dans | de | des | du",
      "en | encore | et | l' | la | le | les | mais | par | par coeur | par cœur | plus | puis | sur | toujours",
      "tout | toute | très | un | un peu | une | à",
    ),
  },
  "practice-verb": {
    practice: joined(
      "commencé par | déchiffré | j'ai joué | j'ai travaillé | joué | puis | repris | révisé | travail",
      "travail de | travail sur | travaillé",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "air | berceuse | bourrée | canon | chaconne | chanson | concerto | danse | duo | exercice | fantaisie",
      "fugue | gavotte | gigue | marche | menuet | morceau | musette | ouverture | pièce | prélude | rigaudon",
      "romance | rondeau | sonate | sonatine | suite | tambourin | valse | variations | étude",
    ),
  },
  "title-number": {
    "number of a title": "n° | n | et | no | num | numéro | op | opus | étude | exercice | cahier | volume",
  },
  "title-end": { "end of a title": "par | avec | sans | encore | seulement | mais | de nouveau" },
  "title-joint": { "inside a title": "à | en | de | du | des | la | le | les | et | sur | au" },
  "title-lead": { "before a title": "la | le | les | sur | de" },
  "verb-behind": { verb: "est | était | sont | sonne" },
  "before-time": { "before a time": "après | avant | pendant | dans" },
  heading: {
    sitting: "après midi | le matin | le soir | matin | soir",
    lesson: "cours | cours avec | leçon",
    pieces: "morceau | morceaux | pièce | pièces | répertoire",
    scales: "gammes",
    studies: "étude | études",
    technique: "exercices | son | technique | technique pure",
    "warm-up": "chauffe | mise en train | échauffement | échauffements",
  },
  rest: {
    rest: joined(
      "aucune pratique | jour de repos | pas d'instrument | pas de flûte | pas de musique | pas de pratique",
      "pas de travail | pas joué | pas pu | pas touché | pas touché la flûte | pas travaillé | relâche | repos",
      "repos complet | rien | rien fait",
    ),
    away: "congé | vacances",
    ill: "grippe | malade | migraine",
    "no time": "pas de temps | pas eu le temps | pas le temps",
  },
  "body-part": {
    "arm or leg": joined(
      "auriculaire | bras | coude | doigt | doigts | main | mains | poignet | pouce | poignets | pouces | coudes | avant bras",
      "bout des doigts | genou | genoux | jambe | jambes | petit doigt | hanche",
    ),
    ear: "oreille | oreilles | audition | acouphène | acouphènes",
    "part of the body": joined(
      "cou | dos | gorge | langue | lèvre | lèvres | mâchoire | nuque | tête | épaule | épaules | omoplate | omoplates | tendon",
      "tendons | ventre | poitrine | dent | dents | yeux | mâchoires | trapèze | trapèzes",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "crampe | crampes | douleur | douleurs | douloureux | douloureuse | engourdi | engourdie | fait mal",
      "font mal | mal au | mal aux | mal à | picotements | fourmillements | enflé | enflée | vertige",
      "vertiges | courbatures | tendinite | enroué | enrouée | aphone | mal de dos | mal de tête | maux de tête | mal de gorge",
      "mal de cou | fourmille | fourmillent | engourdis | engourdies | engourdissement | torticolis",
      "lumbago | enflés | enflées | gonflé | gonflée | gonflés | gonflées | endolori | endolorie | endoloris | canal carpien",
      "tendinites | crampé | lancine | lancinant | élancements | foulure | entorse | courbature | sciatique",
    ),
    sore: joined(
      "mal | raide | raideur | brûle | brûlure | faible | tremble | tremblement | acouphènes | acouphène",
      "ampoule | ampoules | siffle | sifflent | bourdonne | bourdonnent | bourdonnement | sifflement | tire | tirent | pique",
      "piquent | bloqué | bloquée | coincé | coincée | gercé | gercée | gercées | irrité | irritée | brûlent | fichu | morte",
      "à vif | raides | me lance",
    ),
    tight: "crispé | crispée | crispés | crispées | contracté | contractée | noué | nouée | contracture | contractures",
    tense: "tendu",
    tired: "fatigué | fatiguée | fatiguées | fatigués | épuisé | épuisée",
    cold: "lourd | froid | froides",
  },
  eased: { eased: "mieux | passé", free: "indolore" },
  total: {
    total: "tot | tot. | totale | au total | en tout | temps total | total",
  },
  "beside-total": {
    "beside a total": joined(
      "au total | aujourd'hui | de flûte | de travail | durée | en tout | environ | fait | j'ai joué | pas plus",
      "seulement | temps total | total | à peine | à peu près | à tout casser",
    ),
  },
  "set-work": {
    "set work": joined(
      "devoir | devoirs | pour jeudi | pour jeudi prochain | pour la prochaine fois | pour la semaine",
      "pour la semaine prochaine | pour le cours | pour le prochain cours | pour lundi | pour mardi",
      "pour mercredi | pour samedi | pour vendredi | prochain cours | semaine prochaine | à faire | à préparer",
      "à travailler",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "a dit | conseille | demande | dit | insiste | m'a dit | pense | propose | rappelle | suggère | trouve",
      "veut | voudrait",
    ),
  },
  "before-teacher": { "before the teacher": "le | la | mon | ma" },
  teacher: {
    teacher: "chef | la prof | le prof | ma prof | mon prof | prof | professeur",
  },
  title: {
    "form of address": "m | madame | mlle | mme | monsieur",
  },
  question: {
    question: "demander | question | question pour | questions | questions pour",
  },
  "same-as-above": {
    same: joined(
      "comme avant | idem | la même | la même chose | le même | même | même chose | même exercice | même gamme",
      "pareil",
    ),
    again: "de nouveau",
  },
  negation: {
    negation: "aucun | aucune | ne | non | pas | sans",
  },
  repetitions: {
    times: "fois",
  },
  instrument: {
    instrument: joined(
      "alto | clarinette | clavecin | flûte | flûte à bec | guitare | hautbois | orgue | piccolo | traversière",
      "trompette | violon | violoncelle",
    ),
  },
  scope: {
    "circle of fifths": "cycle des quintes",
    "all majors": "gammes majeures | toutes les gammes majeures",
    "all keys": "toutes les gammes",
  },
};
