/** Request, client to server: what a line sounds like. Types only: the server reads the line, the page plays it. */
export type SoundMethod = "daystave/sound";

export interface SoundParams {
  readonly uri: string;
  /** The line of the document that it is heard beside, from 0. */
  readonly line: number;
  /** `click at 52, 60`. */
  readonly text: string;
}

/** One sound of a passage. */
export interface Tone {
  /** Seconds after the passage, or its round, begins. */
  readonly at: number;
  /** Seconds. */
  readonly length: number;
  readonly hertz: number;
  /** A click is over at once, a tone is held for its length. */
  readonly type: "click" | "tone";
  /** From 0 to 1, of what the listener has set. */
  readonly level: number;
}

/** What is heard in one go: after it nothing sounds until the player goes on. */
export interface Passage {
  /** `at 60`, `pure`. */
  readonly label: string;
  /** Beats a minute, where it has a tempo. */
  readonly bpm?: number;
  /** Seconds of one round. */
  readonly round: number;
  /** How often it is heard: never without end. */
  readonly rounds: number;
  /** Those of one round, in time order. */
  readonly tones: readonly Tone[];
}

/** What a line is to sound like, or why it cannot. */
export type Sound =
  | { readonly ok: true; readonly passages: readonly Passage[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly reason: string };
