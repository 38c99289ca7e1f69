/**
 * What the side preview is told of the exercise under the cursor as a staff. Types only, as in `preview.ts`. It is a
 * question of its own: it goes by the page's width, and is asked only while the staff is unfolded.
 */

/** Request, client to server, with `StaffParams`; answers a `StaffResult`. */
export type StaffMethod = "daystave/staff";

export interface StaffParams {
  readonly textDocument: { readonly uri: string };
  readonly position: { readonly line: number; readonly character: number };
  /** In pixels, 160 to 4000. */
  readonly width: number;
  /** Whether recorder fingerings are drawn beneath the notes. */
  readonly fingerings: boolean;
}

/** Null where there is no exercise on the line. */
export type StaffResult = PreviewStaff | null;

export interface PreviewStaff {
  /**
   * As SVG text; empty where `sentence` says why there is none. Its notes have `data-note`, from 0; of two staves above
   * each other those of the lower one go on from those of the upper one.
   */
  readonly svg: string;
  /** What the drawing shows, in words. */
  readonly text: string;
  readonly notes: readonly PreviewNote[];
  /** Whether fingerings are known for some of the notes. */
  readonly fingered: boolean;
  readonly sentence: string;
}

/** What is said of a note that was chosen. */
export interface PreviewNote {
  /** `F#5`. */
  readonly name: string;
  /** `third degree`. */
  readonly degree: string;
  /** What stands beneath it where it is not right, or stands for one: `written F`; empty for all others. */
  readonly mark: string;
  /** `0 123 45--`, and the same in words; empty where none is known. */
  readonly fingering: string;
  readonly fingeringWords: string;
}
