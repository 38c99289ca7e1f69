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
    letter: "letra | número de ensayo",
    section: "sección | secciones",
    verse: "estrofa | estrofas",
    phrase: "frase | frases",
    part: "parte | partes",
  },
  short: { bars: "c", page: "p" },
  ordinals: joined(
    "primer/primero/primera/primeros/primeras | segundo/segunda | tercer/tercero/tercera | cuarto/cuarta",
    "quinto/quinta",
  ),
  likeOrdinals: "último | última | últimos | últimas | siguiente",
  parts: "mitad | repetición | tema | vez",
  articles: "el | la | los | las",
  from: "desde | del | de",
  to: "a | al | hasta | hasta el | hasta la",
  onwards: "en adelante",
  end: "final | el final | fin",
  before: "antes de",
  after: "después de",
  whole: joined(
    "desde el principio | desde el comienzo | entero | entera | completo | completa | toda la pieza",
    "toda la obra | de principio a fin",
  ),
  named: joined(
    "principio | el principio | comienzo | final | el final | coda | hasta el final | con repeticiones",
    "sin repeticiones | desarrollo | exposición | reexposición | tema | estribillo | introducción",
    "cadencia final | anacrusa",
  ),
};
