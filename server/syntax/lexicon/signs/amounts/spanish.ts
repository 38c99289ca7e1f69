import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in Spanish, or beside hours of the clock: from memory. */
export const SPANISH_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "duración total | en conjunto | en total | sumando todo | tiempo de estudio | tiempo total | tot | tot.",
      "total | total de hoy | total del día | total hoy",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "al menos | al piano | apenas | aproximadamente | casi | como mucho | con descansos | con pausas",
      "con una pausa | de ensayo | de estudio | de instrumento | de piano | de práctica | de violín",
      "en conjunto | en dos ratos | en total | escasos | esta mañana | esta noche | estudiados | estudiando",
      "hasta ahora | hecho | hechos | hoy | largos | más o menos | máximo | mínimo | netos | o asi | o así",
      "por ahí | practicados | sin contar pausas | sin la clase | sin pausas | solo | sólo | tiempo total",
      "tocando | total | unos",
    ),
  },
  "counted-with": {
    "what is in it": joined(
      "de ellos | de las cuales | de los cuales | excluyendo | incluida | incluido | incluyendo | más clase",
      "más la clase | sin contar",
    ),
  },
  "goes-on": {
    "goes on": "pero | y",
  },
  "longer-time": {
    "more than a day": "año | este año | este mes | esta semana | mes | semana | semana pasada",
  },
  meeting: {
    meeting: "banda | clase | coro | cuarteto | dúo | ensayo | grupo | música de cámara | orquesta | quinteto | trío",
  },
  "called-off": {
    "called off": "anulado | anulada | aplazado | aplazada | cancelada | cancelado | suspendida | suspendido",
  },
};
