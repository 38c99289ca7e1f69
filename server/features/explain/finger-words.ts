import { listTexts } from "../../checks/list-texts.ts";
import type { HardStep, Movement } from "../../music/fingering/finger-change.ts";
import { type Fingering, printFingering, whyUnfingered } from "../../music/fingering/fingering.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { fingerTexts } from "./finger-texts.ts";

/** `E5 to F5, 0 1-- ---- to 0 -2- ----: 2 fingers, in contrary motion`; `mark` sets a fingering off from the words. */
export function stepInWords(step: HardStep, names: NoteNames, mark: (fingering: string) => string = String): string {
  const [from, to] = step.fingerings;
  return fingerTexts.step(
    [noteText(step.from, names), noteText(step.to, names)],
    [mark(printFingering(from)), mark(printFingering(to))],
    movementInWords(step),
  );
}

/** What moves: `2 fingers, in contrary motion`. */
export function movementInWords({
  fingers,
  contrary,
  thumb,
  halfHoles,
  register,
  thirdRegister,
  bell,
}: Movement): string {
  const moved = [
    ...(fingers > 0 ? [fingerTexts.fingers(fingers)] : []),
    ...(thumb ? [fingerTexts.theThumb] : []),
    ...(bell ? [fingerTexts.theBell] : []),
  ];
  return [
    fingerTexts.moved(moved),
    ...(contrary ? [fingerTexts.contrary] : []),
    ...(halfHoles > 0 ? [fingerTexts.halfHoles(halfHoles)] : []),
    ...(thirdRegister ? [fingerTexts.thirdRegister] : register ? [fingerTexts.otherRegister] : []),
  ].join(", ");
}

/**
 * What is closed: `thumb, 1, 2, 4 and 5`, `thumb pinched, 1, 3, 4, 6 and the bell`, `thumb, 1, 2, 3, 4, 5, 6 and half
 * of 7`.
 */
export function fingeringInWords({ thumb, holes, bell }: Fingering): string {
  const fingers = holes.flatMap((cover, i) =>
    cover === "open" ? [] : cover === "half" ? fingerTexts.halfOf(i + 1) : `${i + 1}`,
  );
  return listTexts.and([fingerTexts.thumbs[thumb], ...fingers, ...(bell ? [fingerTexts.theBell] : [])]);
}

/** For each note of a step on whose fingering charts do not agree, a clause that says so. */
export function doubtsOf({ from, to, confidence }: HardStep, names: NoteNames): readonly string[] {
  return [from, to].flatMap((note, i) => {
    if (confidence[i] === "high") return [];
    const name = noteText(note, names);
    return [confidence[i] === "medium" ? fingerTexts.otherFingerings(name) : fingerTexts.uncertainFingering(name)];
  });
}

/**
 * `easier with 0 -23 ---- for E5: 1 finger (from the Recorder Home Page and a blog's chart)`, where a chart has such a
 * fingering; `mark` sets it off from the words.
 */
export function easierInWords(
  { easier }: Pick<HardStep, "easier">,
  names: NoteNames,
  mark: (fingering: string) => string = String,
): readonly string[] {
  if (!easier) return [];
  const { movement, instead } = easier;
  const others = instead.map(({ note, fingering }) =>
    fingerTexts.fingeringFor(mark(printFingering(fingering)), noteText(note, names)),
  );
  const charts = [...new Set(instead.flatMap(({ fingering }) => fingering.charts))];
  return [fingerTexts.easier(listTexts.and(others), movementInWords(movement), listTexts.and(charts))];
}

/** Why finger changes are not told of a recorder; undefined where they are, and for any other instrument. */
export function unknownFingering(instrument: Pick<Instrument, "family" | "fingering">): string | undefined {
  return whyUnfingered(instrument) === "german fingering" ? fingerTexts.noGermanFingering : undefined;
}
