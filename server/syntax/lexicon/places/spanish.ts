import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in Spanish: from memory, no source. */
export const SPANISH_PLACES: PlaceTable = {
  numbered: {
    bars: "compás | compases | cc | comp",
    lines: "línea | líneas | sistema | sistemas | pentagrama",
    page: "página | páginas | pág",
    mvt: "movimiento | movimientos | mov",
    var: "variación | variaciones",
    letter: "letra | número de ensayo | letras",
    section: "sección | secciones",
    verse: "estrofa | estrofas",
    phrase: "frase | frases",
    part: "parte | partes",
  },
  short: {
    bars: "c",
    page: "p",
  },
  ordinals: joined(
    "primer/primero/primera/primeros/primeras | segundo/segunda | tercer/tercero/tercera | cuarto/cuarta",
    "quinto/quinta",
  ),
  likeOrdinals: "último | última | últimos | últimas | siguiente | penúltimo | penúltima | central",
  parts: "mitad | repetición | tema | vez | casilla | casillas | frase | pasaje | pasajes",
  articles: "el | la | los | las",
  from: "desde | del | de",
  to: "a | al | hasta | hasta el | hasta la",
  onwards: "en adelante",
  end: "final | el final | fin | final de la página | fin de la obra | final de página",
  before: "antes de",
  after: "después de",
  whole: joined(
    "desde el principio | desde el comienzo | entero | entera | completo | completa | toda la pieza",
    "toda la obra | de principio a fin | de arriba abajo | de cabo a rabo | de corrido | de principio a final",
    "del tirón | la pieza entera | obra completa | pieza completa | pieza entera | toda la canción",
    "todo el estudio | todo entero | todo seguido",
  ),
  named: joined(
    "principio | el principio | comienzo | final | el final | coda | hasta el final | con repeticiones",
    "sin repeticiones | desarrollo | exposición | reexposición | tema | estribillo | introducción",
    "cadencia final | anacrusa | cambio de tono | codetta | desde la repetición | episodio | el tema",
    "el estribillo | estrofa | hasta la coda | hasta la repetición | interludio | la coda | modulación | parte A",
    "parte B | parte C | parte central | parte lenta | parte rápida | pasaje difícil | pasaje rápido",
    "pasajes difíciles | pasajes rápidos | primer tema | primera mitad | puente | segunda mitad | segundo tema",
    "solo el final | solo el principio | sección A | sección B | sección central | última línea | última página",
    "trío",
  ),
};
