import type { Note } from "../notes/note.ts";

/** How far an exercise goes. */
export type Reach =
  /** So many notes of the scale or chord: `five notes`. */
  | { readonly type: "degrees"; readonly count: number }
  | { readonly type: "octaves"; readonly count: number }
  /** An octave and a fifth, in a scale or chord of any size. */
  | { readonly type: "twelfth" }
  | { readonly type: "full range" }
  | { readonly type: "between"; readonly from: Note; readonly to: Note };

/** `down and up` is what the journal calls `top down`; `back and forth` is for figures, and plays as `up and down`. */
export type Direction = "up" | "down" | "up and down" | "down and up" | "back and forth";
