import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in English: common practice, no source. */
export const ENGLISH_SIGNS: SignTable = {
  "sentence-sign": {
    verb: joined(
      "am | are | aren't | arrived | be | became | been | believe | bites | bought | broke | came | can | can't",
      "cant | changed | comes | complained | could | couldn't | didn't | didnt | died | doesn't | doesnt",
      "don't | dont | dreaming | dreamt | enjoyed | feel | feeling | feels | fell | felt | finally | fix",
      "forgot | found | gets | goes | got | guess | had | happened | has | hate | hated | have | heard | helped",
      "helps | hope | hoping | is | isn't | keeps | kept | knew | know | left | let | like | liked | likes",
      "looking forward | love | loved | made | makes | means | met | must | need | needs | noticed | realised",
      "realized | remember | said | saw | says | see | seemed | seems | should | snapped | sounded | sounds",
      "start | starts | stayed | stuck | surprised | takes | tells | think | thinking | thinking about",
      "thought | told | took | try | trying | want | wanted | wants | was | wasn't | went | were | will | wish",
      "won't | wonder | wondering | worked | works | would | wrote",
    ),
    conjunction: "because | cos | how | if | what | when | whether | who | why",
    pronoun: joined(
      "everyone | everything | he | her | him | his | i | i'd | i'll | i'm | i've | im | it's | its | me | mine",
      "my | myself | nobody | our | she | somebody | someone | that's | them | there's | they | us | we | you",
      "your",
    ),
  },
  intention: {
    intention: joined(
      "bring | buy | don't forget | dont forget | goal | going to | got to | have to | more time on | must",
      "must remember | need to | next time | note to self | ought to | plan | practise more | remember",
      "remember to | should | should have | todo | tomorrow | try to | want to | work more on",
    ),
  },
  filler: {
    filler: joined(
      "& | a | a bit | again | also | an | and | as | bit | both | but | by ear | by heart | for | from memory",
      "in | it | just | little | more | now | of | on | only | plus | same again | so | some | still | that",
      "the | then | this | today | too | very | w | w/o | with | with drone | with metronome | with music",
      "with the metronome | with the tuner | with tuner",
    ),
  },
  "practice-verb": {
    practice: joined(
      "a bit of | also | also did | back to | began on | began with | bit of | did | did my | did some | did the | drilled | ended with | finished with",
      "first | i did | run | read | read through | played through | run through | had a go at | ended on | i played | i played through | i practised | i tried | i went over | i worked on",
      "i took | learned | learning | learnt | looked at | more | next | next the | played | played my | polished | practice | practiced | practise",
      "practised | practised my | pushed | quick | ran | ran through | repeated | reviewed | revised | run through of | some | spent",
      "spent some time on | start with | started | started on | started with | starting with | tackled | then | then the | tried | try",
      "warm up with | warmed up on | warmed up with | went over | went through | work on | worked at",
      "worked on | working on",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "adagio | air | allegro | allemande | andante | anthem | aria | ballad | ballade | barcarolle | berceuse",
      "boogie | bossa | bourree | bourrée | canon | cantata | capriccio | caprice | carol | chaconne | chorale",
      "concerto | courante | dance | divertimento | duet | elegy | etd | etude | ex | exercise | exx | fanfare",
      "fantasia | fantasy | folia | folía | fugue | galliard | gavotte | giga | gigue | ground | habanera",
      "hornpipe | humoresque | hymn | impromptu | intermezzo | invention | jig | lament | largo | lied",
      "lullaby | madrigal | march | mass | mazurka | medley | menuet | minuet | moderato | motet | musette",
      "nocturne | number | overture | partita | passacaglia | pastorale | pavane | piece | polka | polonaise",
      "prelude | presto | psalm | quartet | rag | reel | rhapsody | romance | rondeau | rondo | saltarello",
      "samba | sarabande | scherzo | serenade | shanty | siciliana | siciliano | slip jig | solo | sonata",
      "sonatina | song | strathspey | study | suite | symphony | tango | tarantella | toccata | trio | tune",
      "variations | vivace | waltz | étude | exc | exc. | exer | bagatelle | arabesque | rigaudon | passepied | loure | canzona | canzone | ricercar",
      "ostinato | estudio | sonatine | aubade | cavatina | schottische | slow air | choro | milonga | fandango | bolero | malagueña",
      "et | etuden | vocalise | zamba | vals | valse | hora | csardas | csárdás | chanson | ayre | ländler | landler | ritornello | entrée | contredanse | gallop",
      "galop | cancion | canción | sinfonia | villanelle | anglaise | polacca | bransle | basse danse | pavan | planxty",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "bk | book | et | grade | no | nr | exc | exer | number | op | opus | vol | study | étude | etude | exercise | ex | caprice",
      "hymn | psalm | lesson | track | unit | volume | nos | numbers",
    ),
  },
  "title-end": {
    "end of a title": joined(
      "con | con sord | again | same | from | w | with | only | still | but | now | without | w/o | by memory",
      "by heart | over and over | cont | contd | next | tonight",
    ),
  },
  "title-joint": {
    "inside a title": "at | in | on | the | a | an | from | of | and | with | to | all | just | very | only | for",
  },
  "title-lead": { "before a title": "on | at | with | through | the | my" },
  "title-origin": { "where a piece is from": "from the | from my | from our" },
  "verb-behind": { verb: "is | was | are | were | sounds | feels | seems | sounded | felt" },
  "before-time": { "before a time": "after | before | in | within | until | till | for | every" },
  heading: {
    sitting: joined(
      "after dinner | after lunch | after school | after tea | afternoon | before school | before work",
      "cool down | evening | fri | friday | later | mon | monday | morning | sat | saturday | second session",
      "session | session 1 | session 2 | sun | sunday | thu | thursday | tue | tuesday | wed | wednesday",
    ),
    lesson: "lesson | lesson day | my lesson",
    pieces: "concert pieces | exam pieces | music | piece | pieces | rep | repertoire | songs | tunes",
    reading: "reading",
    scales: joined(
      "scale work | scales | scales & arpeggios | scales + arps | scales and arpeggios | scales and arps",
      "scales/arps",
    ),
    studies: "etude | etudes | studies | study | études",
    technique: joined(
      "articulation | basics | exercises | fundamentals | groundwork | sound | tech | technical",
      "technical work | technique | tone | tone work | tonguing work",
    ),
    "warm-up": "wup | w/u | warm up | warm ups | warm-up | warming up | warmup",
  },
  rest: {
    away: "away | bank holiday | holiday | on holiday | traveling | travelling",
    rest: joined(
      "day of rest | day off | did not practice | did not practise | didn't play | didn't practice",
      "didn't practise | didnt play | didnt practice | didnt practise | had a day off | missed | nada | nil",
      "no bass | no cello | no clarinet | no flute | no guitar | no horn | no instrument | no music today",
      "no piano | no playing | no practice | no practicing | no practise | no practising | no recorder | no sax",
      "no session | no singing | no trumpet | no violin | none | not played | nothing | nothing today | nowt",
      "nowt today | off | rest | rest day | rested | skipped | took the day off | zero",
    ),
    ill: "flu | ill | migraine | sick | cold | unwell | poorly | not well",
    "no time": "no chance to practise | no time | too tired",
  },
  "rest-or-sentence": { "rest or sentence": "off | nothing | away | rest | missed | none" },
  "body-part": {
    "arm or leg": joined(
      "arm | arms | elbow | finger | fingers | fingertips | forearm | hand | hands | knee | knuckle",
      "left hand | pinky | right hand | thumb | thumbs | wrist | wrists | little finger | index finger",
      "middle finger | ring finger | 4th finger | 5th finger | knees | leg | legs | hip | hips | shins",
      "wrist bone | palm | palms | elbows | forearms | fingertip | finger tip | finger tips | knuckles | thumb joint",
      "wrist joint | bicep | biceps | tricep | triceps | shin | ankle | ankles",
    ),
    ear: "ear | ears | hearing | tinnitus",
    "part of the body": joined(
      "back | chest | chop | chops | embouchure | eyes | gums | head | jaw | lip | lips | neck | shoulder",
      "shoulders | teeth | throat | tongue | voice | spine | lower back | upper back | tendon | tendons",
      "vocal cords | cheek | cheeks | tooth | shoulder blade | shoulder blades | collarbone | ribs | tendons | nerve | nerves",
      "muscle | muscles | eye | mouth | diaphragm | vocal folds | chin",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "ache | ached | aches | aching | cramp | cramping | cramps | hurt | hurting | hurts | numb | numbness",
      "pain | pains | painful | sore | soreness | swollen | tingles | tingling | throbbing | throbs",
      "tremor | dizzy | light-headed | lightheaded | rsi | sprained | inflamed | spasm | twinge | twinges",
      "twinged | cramped | hoarse | lost my voice | voice lost | lost voice | no voice | pins and needles | pins & needles",
      "backache | headache | earache | toothache | jaw ache | neck ache | stomach ache | achy | achey | cramps up",
      "tendinitis | tendonitis | tenosynovitis | carpal tunnel | spasms | tremors | swelling",
    ),
    sore: joined(
      "blister | blisters | bruised | burning | burns | dead | giving out | gone | raw | shot | stiff",
      "stiffness | strained | trembling | weak | weakness | locked | locks | locks up | will not obey",
      "won't obey | ringing | rings | ring | buzzing | muffled | dull | bleeding | tinnitus | knotted | in knots | seized up",
      "seizes up | chapped | tender | puffy | asleep | stinging | stings | killing me",
      "flared up | flaring up | acting up | playing up",
    ),
    tight: "tight | tightness | too tight",
    tense: "tense",
    tired: "exhausted | tired | fatigued | worn out",
    cold: "cold",
  },
  rhythm: { rhythm: "beat | rhythm | rhythms | ensemble | pulse | groove" },
  eased: { eased: "better | gone", free: "pain free | painless | free of pain" },
  total: {
    total: joined(
      "tot | tot. | ttl | grand total | all in | all together | all told | altogether | in all | in total | overall | sum | total",
      "total practice | total time",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "a | about | all in | all up | call it | all together | all told | almost | altogether | and | day | did | done | for today",
      "good | in all | in total | it | just | long | maybe | nearly | of practice | only | or so | overall",
      "played for | practice | practice time | practiced | practise | practised | roughly | session | short",
      "i think | i guess | i reckon | incl | incl. | including | break | breaks | with breaks | w/ breaks | reh | rehearsal |",
      "so | sum | that's | think | time | tired | today | total | total practice | total time",
    ),
  },
  "set-work": {
    "set work": joined(
      "also for next week | assignment | before next lesson | bring | by next week | for friday | for lesson",
      "for monday | for next lesson | for next time | for next week | for the lesson | for thursday",
      "for tuesday | for wednesday | homework | hw | next lesson | next week | set | this week's work",
      "till next lesson | to do | todo | until next week | hmwk | hmwrk | h/w | nxt wk | nxt week | nxt lesson | due",
      "due mon | due tue | due wed | due thu | due fri | due sat | due sun | due monday | due tuesday | due wednesday",
      "due thursday | due friday | due saturday | due sunday | due next week | due next lesson",
    ),
  },
  "set-work-with-sign": { "set work": "set | due | todo | next week | next lesson", bring: "bring" },
  "teacher-verb": {
    said: "said",
    "says or wants": joined(
      "advised | advises | asked me | corrected | explained | insists | liked | likes | mentioned | noticed",
      "pointed out | reckons | recommends | reminded me | says | showed me | shows | suggested",
      "suggests | sez | tells me | thinks | told | told me | wanted | wants | warned | wrote",
    ),
  },
  "before-teacher": { "before the teacher": "the | my" },
  teacher: {
    teacher: "coach | conductor | my teacher | prof | professor | teacher | told | tutor",
  },
  title: {
    "form of address": "dr | miss | mr | mrs | ms | prof | sir",
  },
  question: {
    question: "ask | ask about | must ask | question | question for | questions | questions for | to ask",
  },
  "same-as-above": {
    same: joined(
      "as above | ditto | idem | same | same again | same but | same thing but | same one | same tune | same as above | same exercise | same passage | same piece",
      "same place | same scale | same thing",
    ),
    again: "again",
  },
  negation: {
    negation: "didn't | doesn't | don't | isn't | never | no | not | wasn't | without",
  },
  "not-a-tempo-after": {
    "number that is no tempo": joined(
      "capo | ch | chapter | fing | finger | fret | frets | pos | position | str | string | track | valve",
      "valves",
    ),
  },
  repetitions: {
    times: "goes | reps | rounds | takes | time | times | x | ×",
  },
  instrument: {
    instrument: joined(
      "acoustic | alto | alto recorder | alto sax | banjo | bass | bass guitar | bass recorder | bassoon",
      "cello | clarinet | classical guitar | cornet | descant | double bass | drums | electric | fiddle | flute",
      "guitar | harp | harpsichord | horn | hpschd | hpsd | keyboard | lute | mandolin | oboe | organ | piano",
      "piccolo | recorder | sax | saxophone | soprano | soprano recorder | tenor | tenor recorder | tenor sax",
      "treble | trombone | trumpet | tuba | ukulele | viola | violin | voice",
    ),
  },
  scope: {
    "all keys": joined(
      "all 12 keys | all 24 scales | all arpeggios | all arps | all keys | all major and minor scales",
      "all my scales | all scales | all the scales | all twelve keys",
    ),
    "all majors": "all 12 majors | all major keys | all major scales | all majors | all twelve majors",
    "all minors": "all 12 minors | all minor scales | all minors",
    "circle of fourths": "circle of 4ths | circle of fourths | cycle of 4ths | cycle of fourths",
    "circle of fifths": "circle of 5ths | circle of fifths | cycle of 5ths | cycle of fifths | round the cycle",
  },
};
