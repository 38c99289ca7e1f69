import { midi, type Note, type NoteName, staffStep } from "../notes/note.ts";
import { ENGLISH_NAMES, type NoteNames, noteText } from "../notes/note-names.ts";
import type { ScaleKind } from "./kind.ts";
import { ordinal } from "./scale.ts";

/** The lowest and the highest note of a piece, in either order. */
export interface CompassOf {
  readonly from: Note;
  readonly to: Note;
}

/**
 * How a tune lies about its last note. Authentic: from that note up to its octave. Plagal: about it, from a fourth
 * below to a fifth above. Mixed: it has both ranges. Undecided: nothing tells.
 */
export interface Ambitus {
  readonly form: "authentic" | "plagal" | "mixed" | "undecided";
  /** In a sentence or two to a player. */
  readonly sentence: string;
}

/**
 * A fourth below the last note begins the plagal range; an authentic tune goes at most a third below. In staff steps.
 */
const FOURTH = 3;
/** What goes up to the seventh or the octave has the authentic range; a plagal tune keeps to the sixth. */
const SEVENTH = 6;
/** A tune seldom lies further than a seventh below its last note, unless it goes well above it, too. */
const LOWEST = 6;
const WELL_ABOVE = 4;

/**
 * Whether a tune is authentic or plagal, by the usual bounds of the church modes with a note of licence (common
 * practice, no source).
 *
 * @param kind the scale that it is taken to be in, for the plagal name of a mode
 */
export function ambitusOf(
  last: NoteName & { octave?: number },
  kind: ScaleKind,
  compass?: CompassOf,
  names: NoteNames = ENGLISH_NAMES,
): Ambitus {
  const hypo = plagalName(kind);
  if (!compass) {
    const both = `authentic, going up to the octave of its last note, or plagal (${hypo}), from a fourth below it to a fifth above`;
    return { form: "undecided", sentence: `It may be ${both}: a declared range says which.` };
  }
  const [low, high] = midi(compass.from) <= midi(compass.to) ? [compass.from, compass.to] : [compass.to, compass.from];
  const range = `Its range, ${noteText(low, names)} to ${noteText(high, names)},`;
  const finals = finalsWithin(last, low, high);
  const [final] = finals;
  if (!final)
    return {
      form: "undecided",
      sentence: `${range} does not have its last note, so it is not clear whether it is authentic or plagal.`,
    };
  const forms = new Set(finals.map((each) => formOf(each, low, high)));
  if (forms.size > 1)
    return {
      form: "undecided",
      sentence: `${range} has more than one ${names.name(last)}: the octave of the last note, as in \`last note ${noteText(final, names)}\`, says whether it is authentic or plagal (${hypo}).`,
    };
  const form = formOf(final, low, high);
  return { form, sentence: `${range} goes ${extent(final, low, high, names)}: ${CLAUSES[form](hypo)}.` };
}

const CLAUSES: Readonly<Record<Ambitus["form"], (hypo: string) => string>> = {
  authentic: () => "authentic, as it lies above its last note",
  plagal: (hypo) => `plagal (${hypo}), as it lies about its last note`,
  mixed: (hypo) => `both the authentic range and the plagal one (${hypo})`,
  undecided: (hypo) => `authentic and plagal (${hypo}) are both possible, as they share these notes`,
};

/** `hypodorian`; a major or minor key goes by the name of its mode. */
function plagalName({ id }: ScaleKind): string {
  const mode = id === "major" ? "ionian" : id === "natural minor" ? "aeolian" : id;
  return `hypo${mode}`;
}

/** The octaves in which the last note may lie: the one that is said, or those in which a tune may end. */
function finalsWithin(last: NoteName & { octave?: number }, low: Note, high: Note): Note[] {
  const octaves = last.octave === undefined ? Array.from({ length: 10 }, (_, octave) => octave) : [last.octave];
  const within = octaves
    .map((octave): Note => ({ letter: last.letter, alter: last.alter, octave }))
    .filter((note) => midi(low) <= midi(note) && midi(note) <= midi(high));
  const likely = within.filter(
    (note) => staffStep(note) - staffStep(low) <= LOWEST || staffStep(high) - staffStep(note) >= WELL_ABOVE,
  );
  return likely.length > 0 ? likely : within;
}

function formOf(final: Note, low: Note, high: Note): Ambitus["form"] {
  const goesBelow = staffStep(final) - staffStep(low) >= FOURTH;
  const goesAbove = staffStep(high) - staffStep(final) >= SEVENTH;
  if (goesBelow) return goesAbove ? "mixed" : "plagal";
  return goesAbove ? "authentic" : "undecided";
}

/** `from a fifth below D5 to a tenth above it`. */
function extent(final: Note, low: Note, high: Note, names: NoteNames): string {
  const below = staffStep(final) - staffStep(low);
  const above = staffStep(high) - staffStep(final);
  const last = noteText(final, names);
  const from = below === 0 ? `from ${last}` : `from ${interval(below)} below ${last}`;
  return above === 0 ? `${from} up to it` : `${from} to ${interval(above)} above it`;
}

/** The name of an interval by its staff steps. */
function interval(steps: number): string {
  if (steps === 7) return "an octave";
  if (steps === 14) return "two octaves";
  return `${steps === 10 || steps === 17 ? "an" : "a"} ${ordinal(steps + 1)}`;
}
