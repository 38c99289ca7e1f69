import { joined } from "../joined.ts";
import { SPANISH_AMOUNT_SIGNS } from "./amounts/spanish.ts";
import { SPANISH_BODY_SIGNS } from "./body/spanish.ts";
import type { SignTable } from "./sign-table.ts";

/** What tells the kinds of lines in Spanish: from memory, no source. */
export const SPANISH_SIGNS: SignTable = {
  ...SPANISH_BODY_SIGNS,
  ...SPANISH_AMOUNT_SIGNS,
  "sentence-sign": {
    pronoun: joined(
      "algo que | alguien | alguno | conmigo | contigo | ella | ellas | ello | ellos | eso | eso es | esto | le",
      "les | me | me la | me lo | mis | mí | mía | mío | nadie | nos | nosotras | nosotros | nuestra | nuestras",
      "nuestro | nuestros | se me | su | sus | suyo | te | todos | tu | tus | tú | usted | ustedes | vuestra",
      "vuestro | yo | él",
    ),
    verb: joined(
      "andaba | aprendí que | busqué | cené | cogí | comimos | compré | comí | conozco | costó | creo | creía",
      "cuesta | daba | dan | debería | debo | dice | dieron | digo | dijo | dimos | dio | dormí | empezó",
      "empieza | encontré | encuentro | entendí | entiendo | era | eran | eres | es | escribí | espero | estaba",
      "estaban | estamos | estoy | estuve | estuvo | está | están | falta | fue | fueron | fui | gusta | gusto de",
      "gustó | ha | hablé | había | hacía | hago | haría | he | hemos | hice | hizo | hubo | iba | iban | llamé",
      "llamó | llegué | llegó | llovió | llueve | mandó | me gusta | necesita | necesito | nieva | noto | noté",
      "olvidé | oí | parece | pareció | parecía | pasó | pensé | perdimos | perdí | pienso | podría | podía",
      "pude | puede | puedo | puse | queda | quedé | quedó | quería | quiere | quiero | quise | recibí | recuerdo",
      "sabe | sabía | sale | salió | salí | sentí | será | serán | sería | siento | sigue siendo | somos | son",
      "sonaba | soy | suena | supe | sé | tenemos | tengo | tenía | tiene | traje | tuve | tuvimos | tuvo | va",
      "vamos | van | vemos | veo | viene | vine | vino | volví | voy | vuelvo",
    ),
    conjunction: joined(
      "así que | aunque | cual | cuando | cómo | donde | dónde | entonces | mientras | para que | por eso",
      "por qué | porque | pues | puesto que | que | quien | quién | qué | si es | si no | ya que",
    ),
  },
  intention: {
    intention: joined(
      "a ver si | acordarme | acordarse | comprar | debería | debo | debo practicar | hace falta | hay que",
      "la próxima vez | llevar | mañana | me gustaría | más tiempo en | no olvidar | no olvidarme | objetivo",
      "pasado mañana | pedir cuerdas | pendiente | próxima vez | quiero | quisiera | recordar | tengo que",
      "tengo que practicar | traer",
    ),
  },
  filler: {
    filler: joined(
      "a | además | ahora | al | algunas | algunos | aún | con | con afinador | con click | con drone",
      "con el click | con el metrónomo | con metrónomo | de | de memoria | de nuevo | del | después | e | el | en",
      "esta | este | finalmente | hoy | igualmente | la | las | lo | los | luego | muy | más | otra vez | para",
      "pero | por | rato de | sin partitura | sobre | sobre todo | solamente | solo | sólo | también | todavía",
      "un | un par de | un pelín | un poco | un poquito | un rato de | una | unas | unas cuantas | unos",
      "unos cuantos | varias | varios | y | ya",
    ),
  },
  "practice-verb": {
    practice: joined(
      "a continuación | acabé con | aprendido | aprendí | cantado | canté | continuado con | continué con",
      "dedicado a | dedicado al | después | después solo | empecé con | empecé por | empezado | empezado por",
      "empezamos con | ensayado | ensayé | estudiado | estudié | estudié un poco | estuve con | finalmente",
      "he ensayado | he estudiado | he practicado | he repasado | he tocado | he trabajado | lectura de | leí",
      "leído | luego | luego solo | luego un poco de | más tarde | para acabar | para empezar | para terminar",
      "por último | practicado | practiqué | practiqué un poco | primero | primero un poco de | probé | repasado",
      "repaso | repaso de | repaso del | repasé | repasé un poco | repetido | revisado | revisé | seguido de",
      "seguí con | sigo con | terminé con | tocado | toqué | toqué el | toqué la | toqué un poco | trabajado",
      "trabajo de | trabajo en | trabajé | trabajé el | trabajé en | trabajé la | trabajé las | trabajé los",
      "un poco de | un rato de | volví a tocar | y después | y luego",
    ),
  },
  "title-kind": {
    "kind of piece": joined(
      "alegrías | alemanda | aria | arreglo | bagatela | barcarola | blues | bolero | bourrée | bulería",
      "bulerías | cancioncilla | canciones populares | canción | canon | cantata | canto | capricho | chacarera",
      "chacona | chotis | concertino | concierto | copla | coral | cuarteto | cueca | cumbia | danza | danzas",
      "dueto | dúo | ejercicio | elegía | estudio | extracto | fandango | fandangos | fantasía | farruca | folía",
      "fuga | gavota | giga | granaína | guajira | habanera | himno | impromptu | intermedio | intermezzo",
      "invención | joropo | jota | jotas | malagueña | marcha | marchas | mazurca | melodía | milonga | minueto",
      "minuetos | minué | motete | musette | muñeira | nana | nocturno | obertura | obra | obra obligada",
      "pasacalle | pasaje orquestal | pasajes orquestales | pasodoble | passacaglia | pastoral | pavana",
      "petenera | pieza | polca | polonesa | preludio | preludios | quinteto | rapsodia | romance | romanza",
      "romanzas | rondeña | rondó | rumba | réquiem | salmo | saltarello | samba | sardana | scherzo | seguidilla",
      "serenata | sevillanas | siciliana | sinfonía | soleares | soleá | solo | sonata | sonatas | sonatina",
      "suite | tango | tangos | taranta | tema con variaciones | tocata | toccata | tonada | tonadilla | trío",
      "vals | vals venezolano | valses | variaciones | villancico | villancicos | zamba | zapateado | zarabanda",
      "zarzuela | zortziko",
    ),
  },
  "title-number": {
    "number of a title": joined(
      "canción | capricho | capítulo | dúo | ejercicio | estudio | invención | lección | libro | minueto | n | no",
      "n° | nº | núm | número | obra | op | opus | pieza | preludio | salmo | sonata | sonatina | tomo | vals",
      "vol | volumen",
    ),
  },
  "title-end": {
    "end of a title": joined(
      "con | de memoria | de nuevo | otra vez | pero | sin | sin partitura | solo | sólo | una vez más",
    ),
  },
  "title-joint": {
    "inside a title": "a | con | de | del | el | en | la | y",
  },
  "title-lead": {
    "before a title": "el | en | la | las | los",
  },
  "verb-behind": {
    verb: "era | es | suena",
  },
  "before-time": {
    "before a time": "antes | desde | después | durante | hasta | primeros | sobre | últimos",
  },
  heading: {
    "warm-up": joined(
      "calentamiento | calentamiento vocal | calentamientos | calentando | calentar | calentar dedos",
      "calentar la voz | calentar labios",
    ),
    technique: joined(
      "base | básicos | ejercicios | ejercicios de técnica | ejercicios diarios | ejercicios técnicos",
      "fundamentos | mecánica | parte técnica | rutina | sonido | técnica | técnica pura",
    ),
    scales: "arpegios y escalas | escalas | escalas & arpegios | escalas arpegios | escalas y arpegios | mis escalas",
    studies: "estudio | estudios",
    pieces: joined(
      "canciones | mis obras | mis piezas | música | obra | obras | obras nuevas | pieza | piezas",
      "piezas de examen | programa | programa de examen | programa del concierto | repertorio",
    ),
    reading: "lectura | lectura a primera vista | repentización",
    lesson: joined(
      "apuntes de clase | clase | clase con | clase de | clase de batería | clase de canto | clase de chelo",
      "clase de clarinete | clase de flauta | clase de guitarra | clase de piano | clase de trompeta",
      "clase de violín | clase hoy | clase online | después de clase | en clase | en la clase | lección",
    ),
    sitting: joined(
      "al mediodía | antes de cenar | antes de comer | de noche | después de cenar | después de comer",
      "después del cole | después del trabajo | domingo | esta mañana | esta noche | esta tarde | jueves | lunes",
      "martes | mañana | mediodía | miércoles | noche | por la mañana | por la noche | por la tarde",
      "primera hora | primera sesión | segunda sesión | sesión 1 | sesión 2 | sábado | tarde | viernes",
      "última hora",
    ),
  },
  rest: {
    rest: joined(
      "descanso | descanso hoy | descansé | día de descanso | día de pausa | día de reposo | día libre",
      "día sin práctica | día sin tocar | hoy nada | hoy no estudié | hoy no toqué | libre | nada | nada de nada",
      "nada de práctica | nada hoy | no estudié | no he estudiado | no he practicado | no he tocado",
      "no practiqué | no toqué | pausa | sin estudiar | sin flauta | sin guitarra | sin instrumento | sin piano",
      "sin práctica | sin tocar | sin trompeta | sin violín",
    ),
    ill: joined(
      "con fiebre | constipada | constipado | covid | dolor de cabeza | enferma | enfermo | fiebre",
      "gastroenteritis | gripe | migraña | resfriada | resfriado | sigo enferma | sigo enfermo | todavía enfermo",
    ),
    away: "de vacaciones | de viaje | día festivo | festivo | fuera | fuera de casa | puente | vacaciones",
    "no time": joined(
      "cero tiempo | demasiado cansada | demasiado cansado | demasiado trabajo | falta de tiempo | mucho trabajo",
      "no hubo tiempo | no tuve tiempo | poco tiempo | sin tiempo | sin tiempo hoy",
    ),
  },
  "set-work": {
    "set work": joined(
      "a preparar | antes de la próxima clase | asignado | deberes | deberes para | encargo | para casa",
      "para clase | para el domingo | para el jueves | para el lunes | para el martes | para el miércoles",
      "para el sábado | para el viernes | para estudiar en casa | para la clase | para la clase de",
      "para la próxima | para la próxima clase | para la próxima semana | para la próxima vez | para preparar",
      "para repasar | por estudiar | por hacer | próxima clase | tarea | tareas | trabajo para casa",
    ),
  },
  "teacher-verb": {
    "says or wants": joined(
      "aconseja | aconsejó | comentó | cree | dice | dice que | dijo | dijo que | enseña | explica | explicó",
      "ha dicho | ha dicho que | ha explicado | ha mostrado | ha pedido | ha propuesto | ha recomendado | insiste",
      "insistió | me dijo | me enseñó | me ha dicho | me pidió | mostró | pide | pidió | piensa | prefiere",
      "propone | quería | quiere | recomendó | recomienda | recuerda | sugiere | sugirió",
    ),
  },
  "before-teacher": {
    "before the teacher": "el | la",
  },
  teacher: {
    teacher: joined(
      "director | directora | docente | el director | el profe | el profesor | jefe de cuerda | jefe de sección",
      "la directora | la profe | la profesora | maestra | maestro | mi director | mi maestra | mi maestro",
      "mi profe | mi profesor | mi profesora | profe | profesor | profesor de guitarra | profesor de piano",
      "profesor de violín | profesora | profesora de piano | profesora de violín",
    ),
  },
  title: {
    "form of address": "don | doña | maestra | maestro | señor | señora | sr | sra",
  },
  question: {
    question: joined(
      "duda | dudas | dudas para | por preguntar | pregunta | pregunta para | preguntar | preguntar a",
      "preguntar al | preguntar en clase | preguntas | preguntas al profe | preguntas para",
    ),
  },
  "same-as-above": {
    same: joined(
      "como antes | como arriba | el mismo | idem | igual | igual que antes | la misma | la misma pieza",
      "lo mismo | lo mismo otra vez | lo mismo que antes | misma | misma escala | misma pieza | mismo",
      "mismo ejercicio | mismo estudio | mismo pasaje | mismos compases | ídem",
    ),
    again: "de nuevo | otra vez",
  },
  negation: {
    negation: "nada | ninguna | ninguno | ningún | no | nunca | sin",
  },
  "not-a-tempo-after": {
    "number that is no tempo": "capítulo | cejilla | cuerda | dedo | pista | posición | traste",
  },
  repetitions: {
    times: "veces | vez | x",
  },
  instrument: {
    instrument: joined(
      "acordeón | arpa | bajo | bajo eléctrico | bandoneón | bandurria | batería | bombardino | cajón | canto",
      "charango | chelo | clarinete | clarinete bajo | clave | clavecín | contrabajo | corno inglés | fagot",
      "fiscorno | flauta | flauta de pico | flauta dulce | flauta travesera | flautín | gaita | guitarra",
      "guitarra eléctrica | guitarra española | laúd | mandolina | marimba | oboe | percusión | piano | saxo",
      "saxo alto | saxo barítono | saxo tenor | saxofón | teclado | timbales | tiorba | traverso | trombón",
      "trompa | trompeta | tuba | ukelele | vibráfono | vihuela | viola | viola da gamba | violonchelo | violín",
      "voz | xilófono | zanfona | órgano",
    ),
  },
  scope: {
    "all keys": joined(
      "en todas las tonalidades | en todos los tonos | todas las escalas | todas las tonalidades",
      "todas mis escalas | todos los arpegios",
    ),
    "all majors": "las escalas mayores | todas las escalas mayores | todas las mayores",
    "all minors": "las escalas menores | todas las escalas menores | todas las menores",
    "circle of fifths": "ciclo de quintas | círculo de quintas",
    "circle of fourths": "ciclo de cuartas | círculo de cuartas",
  },
};
