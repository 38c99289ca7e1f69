import { midi, type Note, type NoteName, staffStep } from "../notes/note.ts";
import { ENGLISH_NAMES, type NoteNames, noteText } from "../notes/note-names.ts";
import { ambitusTexts } from "./ambitus-texts.ts";
import type { ScaleKind } from "./kind.ts";

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
  if (!compass) return { form: "undecided", sentence: ambitusTexts.noRange(hypo) };
  const [low, high] = midi(compass.from) <= midi(compass.to) ? [compass.from, compass.to] : [compass.to, compass.from];
  const range = [noteText(low, names), noteText(high, names)] as const;
  const finals = finalsWithin(last, low, high);
  const [final] = finals;
  if (!final) return { form: "undecided", sentence: ambitusTexts.lastNoteOutside(...range) };
  const forms = new Set(finals.map((each) => formOf(each, low, high)));
  if (forms.size > 1)
    return {
      form: "undecided",
      sentence: ambitusTexts.severalLastNotes(...range, names.name(last), noteText(final, names), hypo),
    };
  const form = formOf(final, low, high);
  const below = staffStep(final) - staffStep(low);
  const above = staffStep(high) - staffStep(final);
  return { form, sentence: ambitusTexts.range(range, { last: noteText(final, names), below, above }, form, hypo) };
}

/** `hypodorian`; a major or minor key goes by the name of its mode. */
function plagalName({ id }: ScaleKind): string {
  const mode = id === "major" ? "ionian" : id === "natural minor" ? "aeolian" : id;
  return ambitusTexts.hypo(mode);
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
