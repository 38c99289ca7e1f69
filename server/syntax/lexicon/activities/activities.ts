import { joined } from "../joined.ts";
import type { LexiconLanguage } from "../language.ts";

/** What is done beside playing exercises and pieces, in English: rows as `"a | b | c"`, the first its name. */
export const ENGLISH_ACTIVITIES: readonly string[] = [
  joined(
    "sight-reading | sight reading | sightreading | sight read | reading practice | sight reading practice",
    "sight read something | sight reading book | sight reading exercise | sight reading exercises",
    "sight reading test | sight reading tests | reading at sight | sight playing",
  ),
  joined(
    "improvising | improvisation | improv | improvised | jamming | noodling | free improv | free improvisation",
    "free playing | improv practice | jam session | jammed along | noodle | noodled | noodling about",
    "made up a song | made up a tune | made up my own song | made up my own tune | making up songs | making up tunes",
    "noodling around | soloing",
  ),
  "tuning | tuning up | retuning",
  "breathing",
  joined(
    "listening | listened | listened back | listened to the recording | listened to recording | listening back",
    "listening to recordings | listening to the recording",
  ),
  joined(
    "score study | marking bowings | marking fingerings | score reading | score work | studied the score",
    "studying score | studying the score",
  ),
  "run-through | dress run | mock audition | mock concert | mock exam | mock performance | mock recital",
  joined(
    "rehearsal | rehearsing | reh | band practice | band rehearsal | band night | choir practice | choir rehearsal",
    "group practice | orchestra rehearsal | orchestra practice | quartet rehearsal | ensemble rehearsal | wind band",
    "big band | big band rehearsal | brass band | brass band practice | chamber music | chamber group | choir",
    "choir reh | concert band | concert band rehearsal | consort practice | dress rehearsal | duo rehearsal",
    "ensemble practice | full rehearsal | jazz band | jazz band rehearsal | orch | orch reh | orch rehearsal",
    "orchestra | pipe band | pipe band practice | pit rehearsal | quartet practice | section rehearsal | sectional",
    "sectionals | string quartet rehearsal | trad session | trio practice | trio rehearsal | tune session",
    "wind band rehearsal | worship practice | youth orchestra | band reh | quartet reh | quintet reh",
    "quintet rehearsal | trio reh | duo reh | consort reh | consort rehearsal | group rehearsal",
  ),
  "sight-singing | sight singing",
  joined(
    "aural | aural training | aural practice | ear training | aural exercises | aural skills | aural test",
    "aural tests | aural work | chord recognition | ear practice | ear work | interval ear training",
    "interval recognition | interval training | melodic dictation | rhythm dictation | rhythmic dictation | sol-fa",
    "solfa | solfege | tonic solfa",
  ),
  joined(
    "clapping | clapping rhythms | rhythm practice | rhythm clapping | clap rhythms | clap and count",
    "clapped rhythms | clapping practice | counting aloud | counting out loud",
  ),
  "duets | playing duets | played duets | duets with",
  joined(
    "gig | concert | recital | busking | audition | performance | busked | concerts | gigs | grade exam | music exam",
    "open mic | open mike | performing | wedding gig",
  ),
  joined(
    "playing along | play along | played along | playing along with the recording | backing track | backing tracks",
    "jam track | jam tracks | played along with | playing along to the recording | play along tracks",
  ),
  joined(
    "playing by ear | learned by ear | learning by ear | learnt by ear | picked out by ear | picking out tunes",
    "working out by ear",
  ),
  joined(
    "recording | recorded myself | recording myself | filming myself | recorded a video | self recording",
    "videoed myself",
  ),
  joined(
    "theory | theory work | music theory | counterpoint | counterpoint exercises | harmony exercises",
    "music theory homework | note flashcards | note naming | note reading | rhythm flashcards | theory book",
    "theory exercises | theory homework | theory paper | theory papers | theory practice | theory revision",
    "theory workbook | theory worksheet | theory worksheets",
  ),
  "analysis | harmonic analysis | analysing | analyzing | score analysis | form analysis",
  joined(
    "memorising | memorizing | memory work | learning by heart | memorisation | memorization | memory practice",
    "memory test | playing from memory",
  ),
  joined(
    "mental practice | mental rehearsal | shadow practice | silent practice | visualisation | visualization",
    "air bowing | air practice",
  ),
  "transposing | transposition",
  "composing | composition | song writing | songwriting",
  "arranging",
  "transcribing | transcription | solo transcription | transcribed solo | transcribing solo | transcribing solos",
];

/**
 * The same in other languages, by the English name. German and French by common practice, no source; Dutch, Italian and
 * Spanish from memory.
 */
export const ACTIVITIES: Readonly<Record<Exclude<LexiconLanguage, "english">, Readonly<Record<string, string>>>> = {
  german: {
    "sight-reading": joined(
      "Blattlesen | Blattspiel | Vomblattspiel | vom Blatt spielen | prima vista",
      "vom Blatt lesen | Blattspielübung | Blattspielen",
    ),
    improvising: joined(
      "Improvisieren | Improvisation | improvisiert | Impro | frei improvisiert | freies Improvisieren | Jammen",
      "gejammt | frei gespielt",
    ),
    listening: "Hören | Anhören | angehört | Aufnahme angehört | Aufnahmen angehört | Aufnahme gehört",
    aural: joined(
      "Gehörbildung | Gehörtraining | Gehörübung | Gehörübungen | Intervalle hören | Solfège | Musikdiktat",
      "Rhythmusdiktat",
    ),
    duets: "Duette | Duett",
    rehearsal: joined(
      "Probe | Orchesterprobe | Ensembleprobe | Quartettprobe | Chorprobe | Bandprobe | Kammermusik",
      "Zusammenspiel | Registerprobe | Satzprobe | Stimmprobe | Generalprobe | Hauptprobe | Orchester | Chor",
      "Big Band | Bigband | Blasorchester | Posaunenchor | Musikverein | Spielkreis | Duoprobe | Trioprobe",
      "Blockflötenensemble | Streicherprobe | Bläserprobe | Jugendorchester",
    ),
    "playing along": joined(
      "mitspielen | mitgespielt | mit Aufnahme | mit Playback | zur Aufnahme gespielt | mit der Aufnahme",
    ),
    theory: "Theorie | Musiktheorie | Harmonielehre | Theorieaufgaben | Theorieübungen | Kontrapunkt | Theorieheft",
    "score study": joined(
      "Notenstudium | Partiturstudium | Noten studiert | Partitur gelesen | Fingersätze eingetragen",
      "Striche eingetragen | Noten eingerichtet",
    ),
    tuning: "Stimmen | Einstimmen | Intonation",
    gig: joined(
      "Konzert | Auftritt | Vorspiel | Konzerte | Schülervorspiel | Klassenvorspiel | Vorspielabend",
      "Prüfungsvorspiel",
    ),
    clapping: "Rhythmus klatschen | klatschen | Rhythmen klatschen | geklatscht",
    memorising: "Auswendiglernen | auswendig gelernt | Auswendigspiel",
    transposing: "Transponieren | transponiert",
    composing: "Komponieren | komponiert | Songwriting | Komposition",
    analysis: "Analyse | Werkanalyse | Formanalyse",
    "mental practice": "mentales Üben | Mentales Training | mental geübt | stummes Üben",
    recording: "Aufnahme gemacht | mich aufgenommen",
    transcribing: "Transkribieren | transkribiert | Transkription | Heraushören",
    "playing by ear": "nach Gehör spielen | nach Gehör gespielt",
  },
  french: {
    "sight-reading": joined(
      "déchiffrage | déchiffrer | lecture | lecture à vue | déchiffré | lecture de notes | lecture à première vue",
    ),
    improvising: "improvisation | impro | improviser | improvisé | improvisations | impro libre | bœuf",
    listening: "écoute | écoutes | écoute d'enregistrements | écoute de l'enregistrement | écouté l'enregistrement",
    aural: joined(
      "formation musicale | solfège | dictée | dictée musicale | dictée rythmique | travail de l'oreille",
      "formation de l'oreille | lecture chantée",
    ),
    duets: "duos | duo avec",
    rehearsal: joined(
      "répétition | répèt | répétition d'orchestre | orchestre | musique de chambre | répétition d'harmonie",
      "répétition de chorale | chœur | répétition de chœur | répétition générale | répétition d'ensemble | répète",
      "répétitions | big band | répétition de quatuor | répétition de groupe",
    ),
    "playing along": joined(
      "jouer avec l'enregistrement | joué avec l'enregistrement | play-back | joué sur l'enregistrement",
      "sur la bande son | avec l'enregistrement",
    ),
    theory: joined(
      "théorie | devoirs de solfège | solfège écrit | harmonie écrite | exercices de solfège | théorie musicale",
      "contrepoint",
    ),
    analysis: "analyse",
    tuning: "accordage | accord de l'instrument | justesse",
    gig: "audition | concert | auditions | concerts | récital | représentation",
    transposing: "transposition",
    composing: "composition",
    memorising: "mémorisation | mémoriser | apprentissage par cœur",
    recording: "enregistrement | m'enregistrer | je me suis enregistré",
    clapping: "frapper les rythmes | rythmes frappés",
    "mental practice": "travail mental | lecture mentale",
    transcribing: "relever un solo | relevé de solo | repiquage",
    "score study": "lecture de partition | étude de la partition",
  },
  dutch: {
    "sight-reading": joined(
      "van blad lezen | bladlezen | van blad spelen | prima vista | van blad gelezen | van blad gespeeld",
      "a prima vista | bladspel",
    ),
    improvising: "improviseren | improvisatie | geïmproviseerd | vrij improviseren | jammen | gejamd | impro",
    listening: "luisteren | opname beluisterd | opnames geluisterd | opname terugluisteren",
    aural: "gehoortraining | solfège | gehoorvorming | muziekdictee | intervallen herkennen",
    duets: "duetten | duetten gespeeld",
    rehearsal: joined(
      "repetitie | orkest | orkestrepetitie | koorrepetitie | bandrepetitie | samenspel | kamermuziek | koor",
      "harmonie repetitie | bigband | big band | groepsrepetitie | generale repetitie | sectierepetitie",
      "partijrepetitie | kwartetrepetitie | ensemblerepetitie | samenspelen",
    ),
    "playing along": "meespelen | meegespeeld | met opname meespelen | met de opname mee",
    theory: joined(
      "theorie | muziektheorie | theorie huiswerk | theorieles | theorieboek | muzieklezen | notenlezen",
      "harmonieleer",
    ),
    tuning: "stemmen",
    gig: "concert | optreden | voorspeelavond | optredens | concerten | voorspeelmiddag | examenconcert",
    clapping: "ritme klappen | ritmes klappen | geklapt",
    memorising: "uit het hoofd leren | memoriseren",
    composing: "componeren | gecomponeerd | liedjes schrijven",
    recording: "opname gemaakt | mezelf opgenomen",
    transposing: "transponeren | getransponeerd",
    analysis: "analyseren",
    "mental practice": "mentaal oefenen | mentale oefening",
    "score study": "partituur gelezen | partituurstudie | vingerzettingen ingevuld",
    transcribing: "transcriberen | uitzoeken op gehoor",
  },
  italian: {
    "sight-reading": "lettura a prima vista | prima vista | letto a prima vista | lettura di note",
    improvising: "improvvisazione | improvvisare | improvvisato | improvvisazioni",
    listening: "ascolto | ascolti | ascoltato la registrazione | ascolto registrazione",
    aural: "solfeggio | dettato | dettato melodico | dettato ritmico | solfeggio cantato | solfeggio parlato",
    duets: "duetti | duetti con",
    rehearsal: joined(
      "prove | prova d'orchestra | prove d'orchestra | musica da camera | musica d'insieme | prove coro",
      "prove del coro | prova del coro | prova generale | orchestra | coro | banda | prova di banda",
      "prove della banda | prove con il gruppo | prove di gruppo | big band",
    ),
    theory: "teoria | compiti di teoria | armonia | teoria musicale | contrappunto",
    tuning: "accordatura",
    gig: "concerto | saggio | concerti | saggi | esibizione | audizione | concerto di classe",
    analysis: "analisi",
    "playing along": "suonato con la base | con la base | suonare sulla base | suonato sulla registrazione",
    composing: "composizione",
    memorising: "memorizzazione | memorizzare | studio a memoria",
    recording: "registrazione | mi sono registrato | registrarmi",
    clapping: "battere il ritmo | ritmo con le mani",
    "mental practice": "studio mentale",
    transposing: "trasposizione",
    "score study": "studio della partitura | lettura della partitura",
  },
  spanish: {
    "sight-reading": joined(
      "lectura a primera vista | repentización | leído a primera vista | lectura a vista | leer a primera vista",
    ),
    improvising: "improvisación | improvisar | improvisado | improvisé | improvisaciones",
    listening: "escucha | audición activa | escuchar grabaciones | escuchado la grabación | escuchar la grabación",
    aural: joined(
      "solfeo | dictado | entrenamiento auditivo | dictado rítmico | dictado melódico | lenguaje musical",
      "educación auditiva | ritmos y solfeo",
    ),
    duets: "dúos | duetos | dúos con",
    rehearsal: joined(
      "ensayo | ensayo de orquesta | ensayo de banda | orquesta | música de cámara | ensayos | ensayo de coro",
      "ensayo general | ensayo parcial | banda | coro | ensayo de cuarteto | ensayo de grupo",
      "ensayo con la orquesta | big band | música de conjunto | ensayo de cámara",
    ),
    theory: "teoría | deberes de teoría | armonía | teoría musical | contrapunto",
    tuning: "afinación",
    gig: "concierto | actuación | conciertos | audición | actuaciones",
    analysis: "análisis",
    "playing along": "tocar con la grabación | tocado con la grabación | con la base | tocar sobre la base",
    composing: "composición",
    memorising: "memorización | memorizar",
    recording: "grabación | me grabé | grabarme",
    clapping: "palmear ritmos",
    "mental practice": "estudio mental | práctica mental",
    transposing: "transposición",
  },
};
