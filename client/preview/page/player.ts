import type { Passage } from "../../../shared/sound.ts";
import { schedule } from "./sounding.ts";

/** Seconds before the first sound, so that none comes late. */
const LEAD = 0.1;
/** Sounds are put on the audio clock so many seconds ahead, and looked after so many milliseconds apart. */
const AHEAD = 0.6;
const LOOK = 150;
/** Loudness at which one starts, and the most there is: parts of what the machine is set to. */
export const QUIET_START = 0.12;
export const LOUDEST = 0.4;

/** What a player is doing, for the page to say. */
export type Playing =
  | { readonly type: "silent" }
  | { readonly type: "sounding"; readonly passage: number }
  /** A passage is over, and the next waits for the player. */
  | { readonly type: "waiting"; readonly next: number };

/** Plays passages one after the other; after each it stops until it is told to go on. */
export class Player {
  readonly #changed: (playing: Playing) => void;
  #context: AudioContext | undefined;
  #output: GainNode | undefined;
  #loudness = QUIET_START;
  #passages: readonly Passage[] = [];
  #playing: Playing = { type: "silent" };
  readonly #sounding = new Set<OscillatorNode>();
  #looking: ReturnType<typeof setInterval> | undefined;

  constructor(changed: (playing: Playing) => void) {
    this.#changed = changed;
  }

  /** Only by an act of the player's: a page may make no sound by itself. */
  play(passages: readonly Passage[]): void {
    this.stop();
    this.#passages = passages;
    this.#begin(0);
  }

  goOn(): void {
    if (this.#playing.type === "waiting") this.#begin(this.#playing.next);
  }

  stop(): void {
    clearInterval(this.#looking);
    for (const oscillator of this.#sounding) {
      oscillator.stop();
      oscillator.disconnect();
    }
    this.#sounding.clear();
    this.#passages = [];
    this.#change({ type: "silent" });
  }

  /** @param loudness from 0 to `LOUDEST` */
  set loudness(loudness: number) {
    this.#loudness = Math.min(Math.max(loudness, 0), LOUDEST);
    if (this.#output && this.#context)
      this.#output.gain.setTargetAtTime(this.#loudness, this.#context.currentTime, 0.02);
  }

  #begin(passage: number): void {
    const playing = this.#passages[passage];
    if (!playing) return;
    const { context, output } = this.#ready();
    const from = context.currentTime + LEAD;
    let index = 0;
    const look = () => {
      while (index < playing.rounds && from + index * playing.round < context.currentTime + AHEAD)
        this.#keep(schedule(context, output, { passage: playing, index: index++, from }));
      if (context.currentTime >= from + playing.rounds * playing.round) this.#end(passage);
    };
    clearInterval(this.#looking);
    this.#looking = setInterval(look, LOOK);
    look();
    this.#change({ type: "sounding", passage });
  }

  #end(passage: number): void {
    clearInterval(this.#looking);
    if (passage + 1 < this.#passages.length) this.#change({ type: "waiting", next: passage + 1 });
    else this.stop();
  }

  /** Until they are over. */
  #keep(oscillators: readonly OscillatorNode[]): void {
    for (const oscillator of oscillators) {
      this.#sounding.add(oscillator);
      oscillator.onended = () => this.#sounding.delete(oscillator);
    }
  }

  #ready(): { readonly context: AudioContext; readonly output: GainNode } {
    this.#context ??= new AudioContext();
    if (!this.#output) {
      this.#output = this.#context.createGain();
      this.#output.gain.value = this.#loudness;
      this.#output.connect(this.#context.destination);
    }
    void this.#context.resume();
    return { context: this.#context, output: this.#output };
  }

  #change(playing: Playing): void {
    this.#playing = playing;
    this.#changed(playing);
  }
}
