import type { PreviewPlace } from "../../shared/preview.ts";
import type { PupilShown, PupilsShown, PupilsUnchanged } from "../../shared/pupils.ts";
import { isLine, isLink, isPlace } from "../preview/messages.ts";
import { type Check, either, isCount, isNumber, isText, list, object, only, orNull } from "../preview/shapes.ts";

/**
 * Messages between the editor's side of the page of pupils and the page. Neither trusts the other: both check the shape
 * first.
 */

/** To the page. */
export type ToPupils =
  | { readonly type: "pupils"; readonly shown: PupilsShown }
  /** They cannot be had, with a sentence that says so. */
  | { readonly type: "unavailable"; readonly message: string };

/** From the page. */
export type FromPupils =
  /** The page is drawn and shows nothing yet. */
  { readonly type: "ready" } | { readonly type: "reveal"; readonly uri: string; readonly line: number };

/** What the page keeps across a restart of the editor. */
export interface PupilsState {
  /** Pixels from the top. */
  readonly scroll: number;
}

const isPupil: Check<PupilShown> = object<PupilShown>({
  key: isText,
  name: isText,
  folder: isText,
  place: isPlace,
  last: orNull(isLink),
  lesson: orNull(isLink),
  set: list(isLine),
  ask: list(isLine),
  body: list(isLine),
});

export const isPupilsShown: Check<PupilsShown> = object<PupilsShown>({ version: isCount, pupils: list(isPupil) });
export const isPupilsUnchanged: Check<PupilsUnchanged> = object<PupilsUnchanged>({ unchanged: only(true) });

type ToPupilsOf<Type extends ToPupils["type"]> = Extract<ToPupils, { readonly type: Type }>;
const isShown = object<ToPupilsOf<"pupils">>({ type: only("pupils"), shown: isPupilsShown });
const isUnavailable = object<ToPupilsOf<"unavailable">>({ type: only("unavailable"), message: isText });
export const isToPupils: Check<ToPupils> = either(isShown, isUnavailable);

type FromPupilsOf<Type extends FromPupils["type"]> = Extract<FromPupils, { readonly type: Type }>;
const isReady = object<FromPupilsOf<"ready">>({ type: only("ready") });
const isReveal = object<FromPupilsOf<"reveal">>({ type: only("reveal"), uri: isText, line: isCount });
export const isFromPupils: Check<FromPupils> = either(isReady, isReveal);

export const isPupilsState: Check<PupilsState> = object<PupilsState>({ scroll: isNumber });

/** Every line that the page leads to. */
export function placesOf({ pupils }: PupilsShown): readonly PreviewPlace[] {
  return pupils.flatMap(({ place, last, lesson, set, ask, body }) => [
    place,
    ...[last, lesson].flatMap((link) => (link ? [link.place] : [])),
    ...[...set, ...ask, ...body].map((line) => line.place),
  ]);
}
