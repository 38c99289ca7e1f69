import type { TechniqueTable } from "./technique-table.ts";

/** Spanish techniques: from memory, no source. */
export const SPANISH_TECHNIQUES: TechniqueTable = {
  general: [
    "ejercicios de sonido | ejercicio de sonido",
    "ejercicios de dedos | ejercicio de dedos",
    "ejercicio de vibrato",
    "armónicos",
    "adornos | ornamentos",
    "saltos de octava",
    "ejercicio de afinación",
    "dinámica | dinámicas",
    "notas repetidas",
    "cadencias",
  ],
  wind: [
    "ejercicios de respiración | ejercicio de respiración | respiración",
    "columna de aire",
    "ataques",
    "embocadura",
    "frulato",
    "golpes de lengua",
  ],
  brass: ["flexibilidad | ejercicios de flexibilidad", "notas pedal"],
  strings: [
    "cuerdas al aire | cuerda al aire",
    "cambios de posición | cambio de posición",
    "cambios de cuerda | cambio de cuerda",
    "cambios de arco",
    "dobles cuerdas",
    "arcos largos | arcos lentos",
    "golpes de arco",
  ],
  keyboard: ["paso del pulgar | pasos del pulgar", "bajo continuo"],
  plucked: [
    "cejilla | cejillas",
    "cambios de acorde | cambios de acordes",
    "rasgueo | rasgueos",
    "arpegios mano derecha",
  ],
  voice: ["vocalizaciones | vocalización", "sirenas", "vocales"],
};
