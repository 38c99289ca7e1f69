import type { Passage, Sound, Tone } from "../../shared/sound.ts";
import { type Check, either, isCount, isNumber, isText, list, object, only } from "./shapes.ts";

const isTone: Check<Tone> = object<Tone>({
  at: isNumber,
  length: isNumber,
  hertz: isNumber,
  type: only("click", "tone"),
  level: isNumber,
});
const isPassage: Check<Passage> = object<Passage>({
  label: isText,
  bpm: (value): value is number | undefined => value === undefined || isNumber(value),
  round: isNumber,
  rounds: isCount,
  tones: list(isTone),
});
type SoundOf<Ok extends boolean> = Extract<Sound, { readonly ok: Ok }>;

/** What a line sounds like, or why it cannot. */
export const isSound: Check<Sound> = either(
  object<SoundOf<true>>({ ok: only(true), passages: list(isPassage), notes: list(isText) }),
  object<SoundOf<false>>({ ok: only(false), reason: isText }),
);
