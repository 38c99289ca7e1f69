import { joined } from "../joined.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Spanish: from memory, no source. */
export const SPANISH_SIGNS: SignTable = {
  "sentence-sign": {
    pronoun: joined(
      "yo | tú | él | ella | nosotros | nosotras | ellos | ellas | usted | me | mí | mis | nuestro | nuestra",
      "te | nos | todos | alguien | nadie | eso es",
    ),
    verb: joined(
      "soy | es | era | eran | son | fue | está | estaba | estoy | estaban | he | ha | hemos | había | tengo",
      "tiene | tenía | tuve | debo | debería | puedo | puede | podía | pude | quiero | quiere | quería | quise",
      "voy | va | fui | iba | viene | parece | parecía | suena | sonaba | siento | sentí | pienso | creo",
      "espero | encuentro | sé | sabía | me gusta | gusta | falta | empieza | queda | quedó | cuesta | costó",
      "salió | sale | noto | noté | compré",
    ),
    conjunction: "porque | que | cuando | cómo | quién | qué | por qué | dónde | pues | si es",
  },
  intention: {
    intention: joined(
      "mañana | la próxima vez | próxima vez | debo | debería | hay que | tengo que | no olvidar | recordar",
      "acordarse | pendiente | comprar | traer | llevar",
    ),
  },
  filler: {
    filler: joined(
      "el | lo | la | los | las | un | una | unos | unas | y | e | con | de | del | en | sobre | por | para | a",
      "al | aún | todavía | también | luego | ahora | pero | muy | un poco | un poquito | solo | sólo",
      "solamente | ya | de memoria | con metrónomo | con el metrónomo | con afinador | hoy | otra vez",
      "de nuevo | más",
    ),
  },
  "practice-verb": {
    practice: joined(
      "toqué | tocado | estudié | estudiado | practiqué | practicado | repasé | repasado | repaso | trabajé",
      "trabajado | trabajo de | trabajo en | empecé con | empezado | probé | leído | luego | primero | después",
      "repetido | he tocado | he estudiado",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "pieza | obra | canción | canto | estudio | ejercicio | sonata | sonatina | minueto | minué | marcha",
      "vals | danza | suite | concierto | preludio | fuga | gavota | bourrée | giga | zarabanda | alemanda",
      "rondó | romanza | romance | fantasía | canon | coral | dueto | dúo | trío | aria | variaciones",
      "invención | obertura | polca | tango | nocturno | nana | villancico | jota | bolero | habanera",
      "malagueña | pavana | folía",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "n | n° | nº | núm | número | no | op | opus | libro | vol | volumen | estudio | ejercicio | lección",
      "capricho",
    ),
  },
  "title-end": { "end of a title": "con | sin | solo | sólo | otra vez | pero" },
  "title-joint": { "inside a title": "de | en | a | el | la | y | del | con" },
  "title-lead": { "before a title": "el | la | los | las | en" },
  "verb-behind": { verb: "es | era | suena" },
  "before-time": { "before a time": "después | antes | hasta | durante" },
  heading: {
    "warm-up": "calentamiento | calentar",
    technique: "técnica | sonido | ejercicios | fundamentos",
    scales: "escalas | escalas y arpegios",
    studies: "estudios | estudio",
    pieces: "piezas | pieza | obras | obra | repertorio | canciones",
    reading: "lectura | lectura a primera vista | repentización",
    lesson: "clase | lección | clase de | clase con",
    sitting: joined(
      "mañana | por la mañana | tarde | por la tarde | noche | por la noche | lunes | martes | miércoles",
      "jueves | viernes | sábado | domingo",
    ),
  },
  rest: {
    rest: joined(
      "descanso | día de descanso | nada | nada hoy | hoy nada | sin tocar | sin estudiar | no toqué",
      "no estudié | libre | día libre | pausa",
    ),
    ill: "enfermo | enferma | gripe | resfriado | resfriada | fiebre | migraña | dolor de cabeza",
    away: "vacaciones | fuera | de viaje | festivo | puente",
    "no time": "sin tiempo | no tuve tiempo | falta de tiempo | demasiado cansado | demasiado cansada",
  },
  "body-part": {
    "arm or leg": joined(
      "brazo | brazos | pulgar | pulgares | dedo | dedos | mano | manos | muñeca | muñecas | codo | codos",
      "rodilla | meñique | índice | anular | antebrazo | mano izquierda | mano derecha | yema | yemas | antebrazos",
      "rodillas | pierna | piernas | cadera",
    ),
    ear: "oído | oídos | oreja | orejas | acúfenos",
    "part of the body": joined(
      "hombro | hombros | cuello | espalda | cabeza | labio | labios | mandíbula | lengua | garganta",
      "voz | embocadura | pecho | ojos | nuca | omóplato | tendón | tendones | dientes | diente | lumbares | cervicales | barriga",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "dolor | duele | duelen | dolía | dolorido | dolorida | calambre | calambres | entumecido",
      "entumecida | hormigueo | hinchado | hinchada | mareo | mareado | mareada | ronco | ronca | afónico | afónica",
      "hormigueos | hormiguean | hormiguea | tendinitis | dolor de espalda | dolor de cabeza | dolor de cuello | doloridos",
      "doloridas | dolían | dolió | me duele | entumecidos | entumecidas | entumecimiento | adormecido | adormecida | adormecidos",
      "adormecidas | hinchados | hinchadas | hinchazón | tortícolis | lumbago | agujetas | túnel carpiano",
      "sin voz | esguince | doloroso | dolorosa",
    ),
    sore: joined(
      "dolores | rígido | rígida | rigidez | quema | ardor | escozor | tiembla | temblor | débil",
      "debilidad | zumbido | acúfenos | ampolla | ampollas | zumba",
      "zumban | pitan | pitido | quemazón | molesta | molestan | molestia | molestias | inflamado | inflamada | bloqueado",
      "bloqueada | agrietados | tira | rígidos | rígidas | tiemblan | pinchazo | pinchazos | fastidiado",
    ),
    tight:
      "contracturado | contracturada | contractura | contracturas | agarrotado | agarrotada | agarrotados | agarrotadas | acalambrado",
    tense: "tenso | tensa",
    tired: "cansado | cansada | cansados | cansadas | agotado | agotada | fatigado | fatiga",
    cold: "frío | fríos | pesado",
  },
  eased: { eased: "mejor", free: "indoloro" },
  total: {
    total: "tot | tot. | total | en total | en conjunto | tiempo total",
  },
  "beside-total": {
    "beside a total": joined(
      "total | en total | en conjunto | tiempo total | hoy | unos | aproximadamente | más o menos | hecho",
      "hechos | o así | o asi | por ahí | solo | sólo | apenas | casi | de estudio | de práctica",
    ),
  },
  "set-work": {
    "set work": joined(
      "deberes | tarea | tareas | para la próxima clase | para la próxima semana | para la próxima vez",
      "próxima clase | por hacer | para preparar | para el lunes | para el martes | para el miércoles",
      "para el jueves | para el viernes",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "dice | dijo | ha dicho | quiere | aconseja | recomienda | sugiere | piensa | cree | pide | pidió",
      "propone | insiste | explicó",
    ),
  },
  "before-teacher": { "before the teacher": "el | la" },
  teacher: {
    teacher: joined(
      "maestro | maestra | profe | profesor | profesora | director | directora | mi profe | mi profesor",
      "mi profesora | mi maestro | mi maestra",
    ),
  },
  title: {
    "form of address": "señor | señora | sr | sra | don | doña | maestro | maestra",
  },
  question: {
    question: "pregunta | preguntas | preguntas para | preguntar",
  },
  "same-as-above": {
    same: joined(
      "igual | mismo | misma | lo mismo | la misma | el mismo | ídem | idem | como arriba | mismo ejercicio",
    ),
    again: "otra vez | de nuevo",
  },
  negation: {
    negation: "no | nunca | sin | ningún | ninguno | ninguna | nada",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "posición | cuerda | dedo | traste | capítulo | cejilla | pista",
  },
  repetitions: {
    times: "veces | vez | x",
  },
  instrument: {
    instrument: joined(
      "flauta dulce | flauta | flauta de pico | flauta travesera | violín | viola | violonchelo | chelo",
      "contrabajo | guitarra | piano | clave | clavecín | órgano | clarinete | oboe | fagot | saxofón | saxo",
      "trompeta | trompa | trombón | tuba | arpa | laúd | acordeón | mandolina | canto | voz",
    ),
  },
  scope: {
    "all keys": "todas las escalas | todas las tonalidades | todos los arpegios",
    "all majors": "todas las escalas mayores | todas las mayores",
    "all minors": "todas las escalas menores | todas las menores",
    "circle of fifths": "círculo de quintas | ciclo de quintas",
  },
};
