import { listed } from "../../checks/listed.ts";
import type { HardStep, Movement } from "../../music/fingering/finger-change.ts";
import { type Fingering, printFingering, whyUnfingered } from "../../music/fingering/fingering.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";

/** `E5 to F5, 0 1-- ---- to 0 -2- ----: 2 fingers, in contrary motion`; `mark` sets a fingering off from the words. */
export function stepInWords(step: HardStep, names: NoteNames, mark: (fingering: string) => string = String): string {
  const [from, to] = step.fingerings.map((fingering) => mark(printFingering(fingering)));
  return `${noteText(step.from, names)} to ${noteText(step.to, names)}, ${from} to ${to}: ${movementInWords(step)}`;
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
    ...(fingers > 0 ? [`${fingers} ${fingers === 1 ? "finger" : "fingers"}`] : []),
    ...(thumb ? ["the thumb"] : []),
    ...(bell ? ["the bell"] : []),
  ];
  return [
    moved.join(" and "),
    ...(contrary ? ["in contrary motion"] : []),
    ...(halfHoles > 0 ? [halfHoles === 1 ? "with a half hole" : `with ${halfHoles} half holes`] : []),
    ...(thirdRegister ? ["over the edge of the third register"] : register ? ["into the other register"] : []),
  ].join(", ");
}

const THUMBS = { closed: "thumb", half: "thumb pinched", open: "thumb off" } as const;

/**
 * What is closed: `thumb, 1, 2, 4 and 5`, `thumb pinched, 1, 3, 4, 6 and the bell`, `thumb, 1, 2, 3, 4, 5, 6 and half
 * of 7`.
 */
export function fingeringInWords({ thumb, holes, bell }: Fingering): string {
  const fingers = holes.flatMap((cover, i) =>
    cover === "open" ? [] : `${cover === "half" ? "half of " : ""}${i + 1}`,
  );
  return listed([THUMBS[thumb], ...fingers, ...(bell ? ["the bell"] : [])]);
}

/** For each note of a step on whose fingering charts do not agree, a clause that says so. */
export function doubtsOf({ from, to, confidence }: HardStep, names: NoteNames): readonly string[] {
  return [from, to].flatMap((note, i) => {
    if (confidence[i] === "high") return [];
    return confidence[i] === "medium"
      ? [`${noteText(note, names)} has other fingerings too`]
      : [`the fingering of ${noteText(note, names)} is uncertain and differs by maker`];
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
  const others = instead.map(
    ({ note, fingering }) => `${mark(printFingering(fingering))} for ${noteText(note, names)}`,
  );
  const charts = [...new Set(instead.flatMap(({ fingering }) => fingering.charts))];
  return [`easier with ${listed(others)}: ${movementInWords(movement)} (from ${listed(charts)})`];
}

/** Why finger changes are not told of a recorder; undefined where they are, and for any other instrument. */
export function unknownFingering(instrument: Pick<Instrument, "family" | "fingering">): string | undefined {
  return whyUnfingered(instrument) === "german fingering" ? "not available for German fingering yet" : undefined;
}
