import type { Sound, SoundParams } from "../../shared/sound.ts";
import { soundAt } from "../features/sound/sound.ts";
import type { Place } from "./session.ts";

/** The longest line of words that is read, in characters. */
const LONGEST = 200;

/** Undefined where it is of another shape than the protocol's. */
export function readSoundParams(value: unknown): SoundParams | undefined {
  const { uri, line, text } = (value ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof uri !== "string" || typeof text !== "string") return undefined;
  return typeof line === "number" && Number.isInteger(line) ? { uri, line, text: text.slice(0, LONGEST) } : undefined;
}

export function sound({ session, journal, uri }: Place, { line, text }: SoundParams): Sound {
  return soundAt(journal, uri, line, { text, today: session.dayOf(uri) });
}
