import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in Spanish: from memory, no source. */
export const SPANISH_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "antebrazo | antebrazo derecho | antebrazo izquierdo | antebrazos | anular | brazo | brazo derecho",
      "brazo izquierdo | brazos | bíceps | cadera | caderas | codo | codos | dedo | dedo gordo",
      "dedos | gemelos | mano | mano derecha | mano izquierda | manos | meñique | muslo | muslos | muñeca",
      "muñeca derecha | muñeca izquierda | muñecas | nudillo | nudillos | palma | palmas de las manos | pie",
      "pierna | piernas | pies | pulgar | pulgar derecho | pulgar izquierdo | pulgares | rodilla",
      "rodillas | tobillo | tobillos | tríceps | uña | uñas | yema | yemas | índice",
    ),
    ear: "acúfenos | oreja | orejas | oído | oídos | tímpano",
    "part of the body": joined(
      "abdomen | articulación | barriga | boca | cabeza | cervical | cervicales | clavícula | costilla",
      "costillas | cuello | cuerdas vocales | cóccix | diafragma | diente | dientes | embocadura | encías",
      "espalda | espalda baja | estómago | frente | garganta | hombro | hombros | labio | labio inferior",
      "labio superior | labios | laringe | lengua | lumbar | lumbares | mandíbula | manguito rotador | mejilla",
      "mejillas | mentón | muela | músculo | músculos | nariz | nervio | nuca | ojo | ojos | omóplato | omóplatos",
      "pecho | pelvis | riñones | sien | sienes | tendones | tendón | trapecio | trapecios | voz | vértebra",
      "vértebras",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "adormecida | adormecidas | adormecido | adormecidos | afonía | afónica | afónico | agujetas | artritis",
      "artrosis | calambrazo | calambre | calambres | ciática | codo de tenista | contractura muscular",
      "contusión | desgarro | distonía | dolió | dolor | dolor de cabeza | dolor de cuello | dolor de espalda",
      "dolor de garganta | dolor de hombro | dolor de muelas | dolor de muñeca | dolorcillo | dolorida",
      "doloridas | dolorido | doloridos | dolorosa | doloroso | doloroso al tocar | dolía | dolían | dolían mucho",
      "duele | duelen | entumecida | entumecidas | entumecido | entumecidos | entumecimiento | epicondilitis",
      "esguince | fractura | hernia | hinchada | hinchadas | hinchado | hinchados | hinchazón | hormiguea",
      "hormiguean | hormigueo | hormigueos | inflamación | lumbago | luxación | mareada | mareado | mareo",
      "me duele | mucho dolor | nervio pinzado | náuseas | pinzamiento | punzada | punzadas | ronca | ronco",
      "ronquera | se me duerme | se me duermen | sin voz | tendinitis | tirón muscular | tortícolis",
      "túnel carpiano | vértigo",
    ),
    sore: joined(
      "acúfenos | agarrotamiento | agrietados | ampolla | ampollas | ardor | bloqueada | bloqueado | cargada",
      "cargado | cargados | debilidad | dolores | débil | escozor | escuece | escuecen | fastidiado | hecha polvo",
      "hecho polvo | inflamada | inflamadas | inflamado | inflamados | irritada | irritado | molesta | molestan",
      "molestia | molestias | pincha | pinchan | pinchazo | pinchazos | pitan | pitido | pulsa | quema | quemazón",
      "resentida | resentido | rigidez | rígida | rígidas | rígido | rígidos | sangra | temblor | tiembla",
      "tiemblan | tira | tirante | tirantez | torcida | torcido | zumba | zumban | zumbido",
    ),
    tight: joined(
      "acalambrado | agarrotada | agarrotadas | agarrotado | agarrotados | contractura | contracturada",
      "contracturado | contracturas",
    ),
    tense: "tensa | tensas | tensiones | tensión | tenso | tensos",
    tired: joined(
      "agotada | agotado | agotados | cansada | cansadas | cansado | cansados | cansancio | fatiga | fatigada",
      "fatigado | fatigados | muerta de sueño | muerto de sueño | reventada | reventado",
    ),
    cold: "frío | fríos | pesado",
  },
  eased: {
    eased: "mejor",
    free: "indoloro",
  },
};
