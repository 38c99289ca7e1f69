import { fifthsOf, type NoteName, nameAtFifths } from "../notes/note.ts";
import { ENGLISH_NAMES, type NoteNames } from "../notes/note-names.ts";
import { type Ambitus, ambitusOf, type CompassOf } from "./ambitus.ts";
import type { ScaleKind } from "./kind.ts";
import { kindById } from "./kinds.ts";
import { likelyScaleTexts } from "./likely-scale-texts.ts";
import { signatureAccidentals } from "./signature.ts";

/** One scale that a piece may be in. */
export interface LikelyScale {
  readonly tonic: NoteName;
  readonly kind: ScaleKind;
  /** Why, in one or two sentences to a player. */
  readonly reason: string;
}

export interface LikelyScales {
  /** The likeliest first; never empty. */
  readonly readings: readonly [LikelyScale, ...LikelyScale[]];
  /** How the tune lies about its last note; undefined where that is not the tonic of the likeliest scale. */
  readonly ambitus?: Ambitus;
}

/**
 * What scale a piece is likely in, by its last note and its key signature. The scale that has its tonic on the last
 * note and all its notes in the signature comes first: a major key, a natural minor one or a mode, seven in all, as the
 * last note is one of the signature's seven. Then come those that are written with the signature by another custom:
 * modes with that of the major or minor key on their tonic, and keys with a modal signature, as older music often has
 * them; then pieces that end open, on the fifth degree. A last note outside the signature may be the raised third of a
 * minor key. Finals of the modes, and these customs: common practice, no source.
 *
 * @param last the last note of the lowest part, with its octave where that is known
 * @param fifths the signature: sharps, or flats where negative
 * @param compass the lowest and the highest note, where both are known
 * @param names how notes are called in the reasons
 */
export function likelyScales(
  last: NoteName & { octave?: number },
  fifths: number,
  compass?: CompassOf,
  names: NoteNames = ENGLISH_NAMES,
): LikelyScales {
  const readings = (READINGS[fifths - fifthsOf(last)] ?? outside)({ last, fifths, names });
  const [first] = readings;
  const isFinal = first.tonic.letter === last.letter && first.tonic.alter === last.alter;
  return isFinal ? { readings, ambitus: ambitusOf(last, first.kind, compass, names) } : { readings };
}

type Readings = readonly [LikelyScale, ...LikelyScale[]];

type Key = "major" | "minor";
type Changed = Parameters<typeof likelyScaleTexts.byAccidentals>[1];
type Degree = Parameters<typeof likelyScaleTexts.asOlderMusic>[1];
const SCALE_OF: Readonly<Record<Key, string>> = { major: "major", minor: "natural minor" };

/** How far the minor key of a signature stands from its major key on the line of fifths. */
const MINOR = 3;
/** Where the signature of a minor key stands from its raised third. */
const RAISED_THIRD = -7;

/** A last note and a signature. */
interface Ending {
  readonly last: NoteName;
  readonly fifths: number;
  readonly names: NoteNames;
}

/** The note so many fifths from the last one. */
function noteAt({ last }: Ending, places: number): NoteName {
  return nameAtFifths(fifthsOf(last) + places);
}

function nameAt(ending: Ending, places: number): string {
  return ending.names.name(noteAt(ending, places));
}

function keyAt(ending: Ending, places: number, words: string): string {
  return ending.names.key(noteAt(ending, places), words);
}

/** A scale on the last note, or so many fifths from it. */
function scale(ending: Ending, id: string, reason: string, places = 0): LikelyScale {
  return { tonic: noteAt(ending, places), kind: kindById(id)!, reason };
}

/** The mode whose own signature this is. */
function mode(ending: Ending, id: string): LikelyScale {
  const name = nameAt(ending, 0);
  const accidentals = signatureAccidentals(ending.fifths)
    .map((each) => ending.names.name(each))
    .join(" ");
  return scale(ending, id, likelyScaleTexts.mode(ending.fifths, accidentals, name, keyAt(ending, 0, id)));
}

/**
 * A mode written with the signature of the key on its tonic; `degree` lies so many fifths off, and needs accidentals.
 */
function byAccidentals(ending: Ending, id: string, key: Key, degree: Changed, places: number): LikelyScale {
  return scale(ending, id, likelyScaleTexts.byAccidentals(keyAt(ending, 0, key), degree, nameAt(ending, places)));
}

/** A key written with a modal signature; `degree` lies so many fifths off, and needs accidentals. */
function asOlderMusic(ending: Ending, key: Key, degree: Degree, places: number): LikelyScale {
  const reason = likelyScaleTexts.asOlderMusic(keyAt(ending, 0, key), degree, nameAt(ending, places));
  return scale(ending, SCALE_OF[key], reason);
}

/** A key that the piece would end in on its fifth degree. */
function endingOpen(ending: Ending, key: Key): LikelyScale {
  return scale(ending, SCALE_OF[key], likelyScaleTexts.endingOpen(ending.fifths, keyAt(ending, -1, key)), -1);
}

/** A key of this signature that does not end as a key does. */
function bySignature(ending: Ending, key: Key, why: string): LikelyScale {
  const place = ending.fifths + (key === "minor" ? MINOR : 0);
  const reason = likelyScaleTexts.hasSignature(why, ending.names.key(nameAtFifths(place), key));
  return scale(ending, SCALE_OF[key], reason, place - fifthsOf(ending.last));
}

/** A key that ends on its tonic. */
function endingOnTonic(ending: Ending, of: Key): LikelyScale {
  const opening = likelyScaleTexts.endingOnTonic(ending.fifths, keyAt(ending, 0, of));
  if (of === "major") return scale(ending, SCALE_OF[of], opening);
  return scale(ending, SCALE_OF[of], opening + likelyScaleTexts.raised(nameAt(ending, 5), nameAt(ending, 3)));
}

/** By the place of the signature, counted in fifths from the last note: what each comes to. */
const READINGS: Readonly<Record<number, (ending: Ending) => Readings>> = {
  0: (ending) => [
    endingOnTonic(ending, "major"),
    byAccidentals(ending, "mixolydian", "major", "lowered seventh", -2),
    byAccidentals(ending, "lydian", "major", "raised fourth", 6),
  ],
  [-3]: (ending) => [
    endingOnTonic(ending, "minor"),
    byAccidentals(ending, "dorian", "minor", "major sixth", 3),
    byAccidentals(ending, "phrygian", "minor", "lowered second", -5),
  ],
  [-2]: (ending) => [mode(ending, "dorian"), asOlderMusic(ending, "minor", "sixth", -4)],
  [-1]: (ending) => [
    mode(ending, "mixolydian"),
    asOlderMusic(ending, "major", "seventh", 5),
    endingOpen(ending, "major"),
  ],
  1: (ending) => [mode(ending, "lydian"), asOlderMusic(ending, "major", "fourth", -1)],
  [-4]: (ending) => [mode(ending, "phrygian"), endingOpen(ending, "minor")],
  [-5]: (ending) => {
    const why = likelyScaleTexts.seldomLocrian(nameAt(ending, 0));
    return [mode(ending, "locrian"), bySignature(ending, "major", why), bySignature(ending, "minor", why)];
  },
  [RAISED_THIRD]: (ending) => [
    scale(ending, "natural minor", raisedThird(ending), -4),
    bySignature(ending, "major", notAmong(ending)),
  ],
};

function raisedThird(ending: Ending): string {
  return likelyScaleTexts.raisedThird(nameAt(ending, 0), keyAt(ending, -4, "minor"));
}

/** Neither among the notes of the signature nor a raised third. */
function outside(ending: Ending): Readings {
  const why = likelyScaleTexts.undecided(notAmong(ending));
  return [bySignature(ending, "major", why), bySignature(ending, "minor", why)];
}

function notAmong(ending: Ending): string {
  return likelyScaleTexts.notAmong(nameAt(ending, 0), ending.fifths);
}
