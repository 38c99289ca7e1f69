import type { ambitusTexts as english } from "./ambitus-texts.ts";

const INTERVALS = [
  ...["Prime", "Sekunde", "Terz", "Quarte", "Quinte", "Sexte", "Septime"],
  ...["Oktave", "None", "Dezime", "Undezime", "Duodezime", "Tredezime"],
];

const MODES: Readonly<Record<string, string>> = {
  ionian: "ionisch",
  dorian: "dorisch",
  phrygian: "phrygisch",
  lydian: "lydisch",
  mixolydian: "mixolydisch",
  aeolian: "äolisch",
  locrian: "lokrisch",
};

export const ambitusTexts: typeof english = {
  hypo: (mode) => `hypo${MODES[mode] ?? mode}`,
  noRange: (hypo) =>
    `Es kann authentisch sein, bis zur Oktave des Schlusstons hinauf, oder plagal (${hypo}), von einer Quarte darunter bis zu einer Quinte darüber: Mit einem festgelegten Umfang lässt es sich sagen.`,
  lastNoteOutside: (low, high) =>
    `Der Umfang, ${low} bis ${high}, enthält den Schlusston nicht, deshalb ist nicht klar, ob es authentisch oder plagal ist.`,
  severalLastNotes: (low, high, name, final, hypo) =>
    `Der Umfang, ${low} bis ${high}, enthält mehr als ein ${name}: Die Oktave des Schlusstons, wie in \`last note ${final}\`, sagt, ob es authentisch oder plagal (${hypo}) ist.`,
  range: ([low, high], { last, below, above }, form, hypo) => {
    const from = below === 0 ? `von ${last}` : `von ${ofInterval(below)} unter ${last}`;
    const extent = above === 0 ? `${from} bis dorthin` : `${from} bis zu ${ofInterval(above)} darüber`;
    return `Der Umfang, ${low} bis ${high}, reicht ${extent}: ${FORMS[form](hypo)}.`;
  },
};

const FORMS: Readonly<Record<"authentic" | "plagal" | "mixed" | "undecided", (hypo: string) => string>> = {
  authentic: () => "authentisch, denn die Melodie liegt über dem Schlusston",
  plagal: (hypo) => `plagal (${hypo}), denn die Melodie liegt um den Schlusston herum`,
  mixed: (hypo) => `sowohl der authentische als auch der plagale Umfang (${hypo})`,
  undecided: (hypo) => `authentisch und plagal (${hypo}) sind beide möglich, denn diese Töne haben sie gemeinsam`,
};

/** The name of an interval by its staff steps, in the dative. */
function ofInterval(steps: number): string {
  if (steps === 14) return "zwei Oktaven";
  const name = INTERVALS[steps];
  return name === undefined ? `${steps} Tonschritten` : `einer ${name}`;
}
