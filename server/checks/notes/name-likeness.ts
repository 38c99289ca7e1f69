import { modulo, type NoteName, pitchClass, sameName } from "../../music/notes/note.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import { acceptsName } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import type { Likeness } from "./alignment.ts";
import { type ExpectedNote, type Reading, rungsIn } from "./claimed-exercise.ts";
import { noPlaces, type Places } from "./count-differences.ts";

type Subject = Reading["subject"];

/** A scale that is declared in cents is spelled by the nearest key; the other one beside it is as near as may be. */
function acceptsBesideCents(kind: ScaleKind, tonic: NoteName, degree: number, name: NoteName): boolean {
  const cents = kind.degrees[modulo(degree - 1, kind.degrees.length)]?.cents;
  return (
    cents !== undefined &&
    Math.abs(modulo(100 * (pitchClass(name) - pitchClass(tonic)) - cents + 600, 1200) - 600) < 100
  );
}

function compareName(subject: Subject, { note, degree, falling }: ExpectedNote, name: NoteName): Likeness {
  if (sameName(note, name)) return "same";
  const isSameKey = pitchClass(note) === pitchClass(name);
  // Three sharps or flats cannot be typed: the key is right by any name.
  if (isSameKey && Math.abs(note.alter) > 2) return "renamed";
  if (subject.type === "chord") return isSameKey ? "spelling" : "wrong";
  const { kind, tonic } = subject;
  if (acceptsBesideCents(kind, tonic, degree, name)) return "renamed";
  if (!isSameKey) return "wrong";
  return acceptsName(kind, tonic, degree, falling, name) ? "renamed" : "spelling";
}

/**
 * How note names compare with the notes of one scale or chord, each name with each degree once: lists ask for few of
 * them often.
 */
export class NameLikeness {
  private readonly known = new Map<number, Likeness>();
  private readonly size: number;

  constructor(private readonly subject: Subject) {
    this.size = rungsIn(subject, false).length;
  }

  /** A number for each degree within the octave, rising or falling, and one for a note of resolution. */
  rung({ degree, falling, resolves }: ExpectedNote): number {
    if (resolves) return 2 * this.size;
    return modulo(degree - 1, this.size) * 2 + (falling ? 1 : 0);
  }

  of(expected: ExpectedNote, name: NoteName | undefined): Likeness {
    if (!name) return "wrong";
    const key = this.rung(expected) * NAMES + numberOf(name);
    let likeness = this.known.get(key);
    if (likeness === undefined) {
      likeness = compareName(this.subject, expected, name);
      this.known.set(key, likeness);
    }
    return likeness;
  }

  /** For each typed note the places of those expected that it is right for by its name. */
  rightPlaces(notes: readonly ClaimedNote[], expected: readonly ExpectedNote[]): readonly Places[] {
    const none = noPlaces(expected.length);
    const rungs = new Map<number, { readonly expected: ExpectedNote; readonly places: Places }>();
    for (const [place, each] of expected.entries()) {
      const rung = this.rung(each);
      const known = rungs.get(rung) ?? { expected: each, places: noPlaces(expected.length) };
      known.places[place >> 5]! |= 1 << place;
      rungs.set(rung, known);
    }
    const byName = new Map<number, Places>();
    return notes.map(({ note }) => {
      if (!note) return none;
      const name = numberOf(note);
      const known = byName.get(name) ?? this.united([...rungs.values()], note, none);
      byName.set(name, known);
      return known;
    });
  }

  /** The places of all rungs that a name is right for. */
  private united(
    rungs: readonly { readonly expected: ExpectedNote; readonly places: Places }[],
    name: NoteName,
    none: Places,
  ): Places {
    const united = none.slice();
    for (const { expected, places } of rungs) {
      const likeness = this.of(expected, name);
      if (likeness === "same" || likeness === "renamed") for (const [i, word] of places.entries()) united[i]! |= word;
    }
    return united;
  }
}

const NAMES = 8 * 16;

function numberOf({ letter, alter }: NoteName): number {
  return "CDEFGAB".indexOf(letter) * 16 + alter + 8;
}
