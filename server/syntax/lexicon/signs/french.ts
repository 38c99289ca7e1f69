import { joined } from "../joined.ts";
import { FRENCH_AMOUNT_SIGNS } from "./amounts/french.ts";
import { FRENCH_BODY_SIGNS } from "./body/french.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in French: common practice, no source. */
export const FRENCH_SIGNS: SignTable = {
  ...FRENCH_BODY_SIGNS,
  ...FRENCH_AMOUNT_SIGNS,
  "sentence-sign": {
    verb: joined(
      "a | a été | acheté | ai | ai eu | aimait | aime | aimerais | allais | allait | allé | allée | arrive",
      "arrivé | attends | attendu | avaient | avais | avait | avez | avons | cherche | commence | commençait",
      "comprends | compris | crois | croit | devait | devient | disait | dit | dois | doit | doivent | dormi",
      "entends | entendu | espère | est | eu | faisait | fait | fallait | faudra | faudrait | faut | font | fut",
      "mangé | manquait | manque | mets | neige | ont | oublié | parlé | pense | perds | peut | peux | pleut",
      "pouvait | prends | pris | rentré | rentrée | ressens | reste | revenait | revient | reçu | sais | sait",
      "savais | semblait | semble | sens | senti | sonnait | sonne | sont | suis | trouve | trouvé | va | vais",
      "venait | venu | veulent | veut | veux | vient | vois | voit | vont | voudrais | voulais | vu | étaient",
      "étais | était | été",
    ),
    pronoun: joined(
      "c'est | c'était | ce | elle | elles | eux | il | il y a | ils | j' | j'ai | j'ai eu | j'aime | j'avais",
      "j'étais | je | l'ai | leur | leurs | lui | m'a | m'ont | ma | mes | moi | mon | n'a | n'ai | n'est",
      "n'était | nos | notre | nous | on | personne | qu'elle | qu'il | qu'on | quelqu'un | quelque chose | s'est",
      "sa | ses | t'as | ta | tes | toi | tout le monde | tu | vos | votre | vous | y a | ça | ça a",
    ),
    conjunction: joined(
      "afin | car | comment | dont | est ce | est ce que | lorsque | malgré | où | parce qu'il | parce que",
      "pourquoi | pourtant | puisque | quand | que | quel | quelle | qui | quoi | si | tandis",
    ),
  },
  intention: {
    intention: joined(
      "acheter | apporter | après demain | demain | devrais | dois | il faudra | il faudrait | il faut",
      "j'aimerais | je devrais | je dois | je vais | je veux | la prochaine fois | ne pas | ne pas oublier",
      "objectif | on devrait | penser à | prochaine fois | prévoir | rappel | se rappeler | à acheter",
      "à faire demain",
    ),
  },
  filler: {
    filler: joined(
      "après | au | au métronome | aussi | avec | avec drone | avec l'accordeur | avec le click",
      "avec le métronome | avec métronome | avec tuner | avec un métronome | bien sûr | ce | ces | cette | d'",
      "dans | de | de nouveau | des | du | en | encore | encore un peu | ensuite | et | juste | l' | la | le",
      "les | mais | par | par coeur | par cœur | plus | plusieurs | puis | puis encore | quelques",
      "sans partition | seulement | sur | surtout | toujours | tout | toute | très | un | un petit peu | un peu",
      "une | à | à nouveau | également",
    ),
  },
  "practice-verb": {
    practice: joined(
      "apprentissage de | apprentissage du | attaqué | au début | bossé | bossé le | bossé sur | chanté",
      "commencé | commencé avec | commencé par | continué | continué avec | d'abord | déchiffré",
      "encore un peu de | ensuite | essayé | fait un peu de | fini avec | fini par | fini sur | j'ai bossé",
      "j'ai commencé avec | j'ai commencé par | j'ai fait un peu de | j'ai joué | j'ai repris | j'ai revu",
      "j'ai révisé | j'ai travaillé | joué | joué encore | joué un peu | joué un peu de | lecture de",
      "mis en place | passé du temps sur | pour commencer | pour finir | pour terminer | puis | puis encore",
      "puis un peu de | quelques | refait | rejoué | relu | repris | repris la | repris le | retravaillé | revu",
      "répété | révision | révision de | révisions | révisé | terminé avec | terminé par | tout d'abord | travail",
      "travail de | travail sur | travaillé | travaillé la | travaillé le | travaillé les | travaillé sur",
      "travaillé un peu | un peu | un peu de",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "air | allemande | an dro | arabesque | bagatelle | ballade | barcarolle | berceuse | blues | boogie",
      "bourrée | bourrées | branle | bransle | canon | cantate | cantique | caprice | chaconne | chanson",
      "chansons | chant | chant de noël | chants | choral | choro | complainte | comptine | concertino | concerto",
      "contredanse | courante | danse | divertissement | duo | esquisse | exercice | fantaisie | fugue",
      "gaillarde | galop | gavotte | gavottes | gigue | gymnopédie | générique | hanter dro | humoresque | hymne",
      "impromptu | intermezzo | invention | java | laridé | loure | madrigal | marche | mazurka | menuet",
      "menuets | messe | morceau | morceau d'examen | motet | musette | musique de film | mélodie | mélodies",
      "nocturne | noël | ouverture | passacaille | passepied | pastorale | pastourelle | pavane | pièce | pièces",
      "plinn | polka | polonaise | prélude | préludes | psaume | quadrille | quatuor | quintette | requiem",
      "rhapsodie | ridée | rigaudon | romance | romance sans paroles | rondeau | rondo | rêverie | samba",
      "sarabande | scherzo | schottische | scottish | sicilienne | solo | sonate | sonatine | suite | symphonie",
      "tambourin | tango | tarentelle | thème et variations | toccata | tombeau | trait d'orchestre",
      "traits d'orchestre | trio | valse | valses | variations | villanelle | élégie | étude | études",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "cahier | duo | et | exercice | invention | leçon | livre | morceau | n | no | num | numéro | n° | op",
      "opus | pièce | prélude | psaume | sonate | sonatine | tome | valse | vol | volume | étude",
    ),
  },
  "title-end": {
    "end of a title": joined(
      "avec | de nouveau | encore | encore une fois | mais | par | sans | sans partition | seulement | à nouveau",
    ),
  },
  "title-joint": {
    "inside a title": "au | de | des | du | en | et | la | le | les | sur | à",
  },
  "title-lead": {
    "before a title": "de | la | le | les | sur",
  },
  "verb-behind": {
    verb: "est | sonne | sont | était",
  },
  "before-time": {
    "before a time": joined(
      "après | au bout de | avant | dans | depuis | derniers | dernières | pendant | premiers | premières | vers",
    ),
  },
  heading: {
    sitting: joined(
      "1re séance | 2e séance | après l'école | après le travail | après midi | avant l'école | ce matin",
      "ce soir | cet après midi | dans la soirée | deuxième séance | dimanche | début d'après midi | en soirée",
      "fin de journée | jeudi | le matin | le soir | lundi | mardi | matin | mercredi | midi | première séance",
      "samedi | seconde séance | soir | séance | séance 1 | séance 2 | vendredi",
    ),
    lesson: joined(
      "au cours | cours | cours avec | cours d'alto | cours d'orgue | cours de batterie | cours de chant",
      "cours de clarinette | cours de flûte | cours de guitare | cours de hautbois | cours de piano",
      "cours de saxo | cours de trompette | cours de violon | cours de violoncelle | cours en ligne | leçon",
      "leçon de flûte | leçon de guitare | leçon de musique | leçon de piano | leçon de violon | notes du cours",
      "pendant le cours",
    ),
    pieces: joined(
      "chansons | mes morceaux | mes pièces | morceau | morceaux | morceaux d'examen | morceaux de concert",
      "oeuvres | pièce | pièces | programme | programme d'examen | programme du concert | répertoire | œuvres",
    ),
    scales: "arpèges et gammes | gammes | gammes & arpèges | gammes arpèges | gammes et arpèges | mes gammes",
    studies: "étude | études",
    technique: joined(
      "bases | exercices | exercices techniques | fondamentaux | gymnastique | mécanique | partie technique",
      "routine | son | technique | technique et gammes | technique pure | travail technique",
    ),
    "warm-up": joined(
      "chauffe | chauffer | mise en doigts | mise en lèvres | mise en route | mise en train | mise en voix",
      "réchauffement | s'échauffer | échauffement | échauffement vocal | échauffements",
    ),
  },
  rest: {
    rest: joined(
      "aucun travail | aucune pratique | jour de repos | jour off | journée de repos | journée off | pas chanté",
      "pas d'instrument | pas de batterie | pas de chant | pas de clarinette | pas de flûte | pas de guitare",
      "pas de hautbois | pas de musique | pas de piano | pas de pratique | pas de saxo | pas de travail",
      "pas de trompette | pas de violon | pas de violoncelle | pas envie | pas joué | pas pratiqué | pas pu",
      "pas répété | pas touché | pas touché au piano | pas touché au violon | pas touché l'instrument",
      "pas touché la flûte | pas travaillé | relâche | repos | repos aujourd'hui | repos complet | repos forcé",
      "rien | rien aujourd'hui | rien ce soir | rien du tout | rien fait | rien joué | rien pratiqué",
      "rien travaillé | séance sautée",
    ),
    away: "absent | absente | congé | en déplacement | en vacances | en voyage | férié | jour férié | vacances",
    ill: joined(
      "angine | covid | encore malade | enrhumé | enrhumée | fièvre | gastro | grippe | grippé | grippée | malade",
      "malade au lit | migraine | rhume | souffrant | souffrante | toujours malade",
    ),
    "no time": joined(
      "manque de temps | pas de temps | pas eu le temps | pas eu une minute | pas le temps",
      "pas le temps aujourd'hui | pas trouvé le temps | trop de travail | trop fatigué | trop fatiguée",
    ),
  },
  "set-work": {
    "set work": joined(
      "consignes | devoir | devoirs | devoirs pour | pour demain | pour dimanche | pour jeudi",
      "pour jeudi prochain | pour la prochaine fois | pour la prochaine séance | pour la répétition",
      "pour la semaine | pour la semaine prochaine | pour le cours | pour le cours de | pour le prochain cours",
      "pour lundi | pour lundi prochain | pour mardi | pour mardi prochain | pour mercredi",
      "pour mercredi prochain | pour mon cours | pour mon prochain cours | pour samedi | pour samedi prochain",
      "pour vendredi | pour vendredi prochain | prochain cours | semaine prochaine | travail de la semaine",
      "travail pour | travail à faire | à apprendre | à bosser | à faire | à préparer | à répéter | à travailler",
      "à travailler pour | à étudier",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "a conseillé | a demandé | a dit | a expliqué | a insisté | a montré | a proposé | a rappelé | a recommandé",
      "a suggéré | aimerait | conseille | demande | disait | dit | dit que | estime | explique | insiste",
      "m'a conseillé | m'a demandé | m'a dit | m'a expliqué | m'a fait | m'a montré | montre | pense | propose",
      "préfère | rappelle | recommande | remarque | souhaite | suggère | trouve | veut | voudrait | voulait",
    ),
  },
  "before-teacher": {
    "before the teacher": "la | le | ma | mon",
  },
  teacher: {
    teacher: joined(
      "chef | chef d'orchestre | chef de chœur | chef de pupitre | cheffe | cheffe de chœur | coach | directeur",
      "directrice | enseignant | enseignante | la prof | le prof | ma prof | ma professeure | maître de chapelle",
      "mon maître | mon prof | mon professeur | prof | prof de chant | prof de flûte | prof de guitare",
      "prof de piano | prof de violon | professeur | professeure",
    ),
  },
  title: {
    "form of address": "m | madame | mlle | mme | monsieur",
  },
  question: {
    question: joined(
      "demander | demander au prof | demander à | demander à la prof | poser la question | question",
      "question pour | question à | questions | questions pour | questions à | à demander | à voir avec",
    ),
  },
  "same-as-above": {
    same: joined(
      "comme avant | comme ci-dessus | comme plus haut | ditto | idem | itou | la même | la même chose | le même",
      "le même morceau | les mêmes | même | même chose | même chose encore | même exercice | même gamme",
      "même morceau | même passage | même étude | mêmes gammes | pareil | pareil qu'avant",
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
      "accordéon | alto | bandonéon | basse | basson | batterie | bugle | chant | clarinette | clavecin | clavier",
      "contrebasse | cor | cor anglais | cornemuse | cornet | cornet à pistons | euphonium | flûte | flûte à bec",
      "guitare | guitare basse | harmonica | harpe | hautbois | luth | mandoline | marimba | orgue | percussions",
      "piano | piccolo | saxhorn | saxo | saxophone | théorbe | timbales | traversière | trombone | trompette",
      "tuba | ukulélé | vibraphone | vielle | viole | viole de gambe | violon | violoncelle | voix | xylophone",
      "épinette",
    ),
  },
  scope: {
    "circle of fifths": "cycle des quintes",
    "all majors": "gammes majeures | toutes les gammes majeures | toutes les majeures",
    "all keys": joined(
      "dans tous les tons | les 12 gammes | les douze gammes | tous les arpèges | toutes les gammes",
      "toutes les tonalités | toutes mes gammes",
    ),
    "all minors": "gammes mineures | toutes les gammes mineures | toutes les mineures",
    "circle of fourths": "cycle des quartes",
  },
};
