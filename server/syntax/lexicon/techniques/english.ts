import { BRASS_TECHNIQUES } from "./english/brass.ts";
import { GENERAL_TECHNIQUES } from "./english/general.ts";
import { KEYBOARD_TECHNIQUES } from "./english/keyboard.ts";
import { PERCUSSION_TECHNIQUES } from "./english/percussion.ts";
import { PLUCKED_TECHNIQUES } from "./english/plucked.ts";
import { STRINGS_TECHNIQUES } from "./english/strings.ts";
import { VOICE_TECHNIQUES } from "./english/voice.ts";
import { WIND_TECHNIQUES } from "./english/wind.ts";
import type { TechniqueTable } from "./technique-table.ts";

/** English techniques: common practice, no source. */
export const ENGLISH_TECHNIQUES: TechniqueTable = {
  general: GENERAL_TECHNIQUES,
  wind: WIND_TECHNIQUES,
  brass: BRASS_TECHNIQUES,
  strings: STRINGS_TECHNIQUES,
  keyboard: KEYBOARD_TECHNIQUES,
  plucked: PLUCKED_TECHNIQUES,
  voice: VOICE_TECHNIQUES,
  percussion: PERCUSSION_TECHNIQUES,
};
