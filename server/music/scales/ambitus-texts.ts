import { degreeTexts } from "./degree-texts.ts";

type Form = "authentic" | "plagal" | "mixed" | "undecided";

/** How a tune lies about its last note; `hypo` is the plagal name of its mode, distances are in staff steps. */
export const ambitusTexts = {
  hypo: (mode: string) => `hypo${mode}`,
  noRange: (hypo: string) =>
    `It may be authentic, going up to the octave of its last note, or plagal (${hypo}), from a fourth below it to a fifth above: a declared range says which.`,
  lastNoteOutside: (low: string, high: string) =>
    `Its range, ${low} to ${high}, does not have its last note, so it is not clear whether it is authentic or plagal.`,
  severalLastNotes: (low: string, high: string, name: string, final: string, hypo: string) =>
    `Its range, ${low} to ${high}, has more than one ${name}: the octave of the last note, as in \`last note ${final}\`, says whether it is authentic or plagal (${hypo}).`,
  /** From so many steps below the last note to so many above it. */
  range: (
    [low, high]: readonly [string, string],
    { last, below, above }: { readonly last: string; readonly below: number; readonly above: number },
    form: Form,
    hypo: string,
  ) => {
    const from = below === 0 ? `from ${last}` : `from ${interval(below)} below ${last}`;
    const extent = above === 0 ? `${from} up to it` : `${from} to ${interval(above)} above it`;
    return `Its range, ${low} to ${high}, goes ${extent}: ${FORMS[form](hypo)}.`;
  },
};

const FORMS: Readonly<Record<Form, (hypo: string) => string>> = {
  authentic: () => "authentic, as it lies above its last note",
  plagal: (hypo) => `plagal (${hypo}), as it lies about its last note`,
  mixed: (hypo) => `both the authentic range and the plagal one (${hypo})`,
  undecided: (hypo) => `authentic and plagal (${hypo}) are both possible, as they share these notes`,
};

/** The name of an interval by its staff steps. */
function interval(steps: number): string {
  if (steps === 7) return "an octave";
  if (steps === 14) return "two octaves";
  return `${steps === 10 || steps === 17 ? "an" : "a"} ${degreeTexts.ordinal(steps + 1)}`;
}
