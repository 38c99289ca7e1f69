import type { Passage, Tone } from "../../../shared/sound.ts";

/** Seconds in which a tone rises and falls, so that it does not crack. */
const EDGE = 0.012;
/** Seconds in which a click rises. */
const CLICK_EDGE = 0.001;
/** How loud the partials of a tone are, the fundamental first: soft, and with some edge to tune by. Our own choice. */
const PARTIALS = [0, 1, 0.35, 0.18, 0.08];

/** When the sounds of one round of a passage begin and end, on the clock of a context. */
export interface Round {
  readonly passage: Passage;
  /** From 0. */
  readonly index: number;
  /** Seconds, when the passage began. */
  readonly from: number;
}

/** Puts the sounds of one round on the audio clock, and gives what makes them, so that it can be stopped. */
export function schedule(context: BaseAudioContext, output: AudioNode, round: Round): readonly OscillatorNode[] {
  const { passage, index, from } = round;
  const begin = from + index * passage.round;
  const share = 1 / Math.max(1, together(passage.tones));
  return passage.tones.map((tone) =>
    sound(context, output, { ...tone, at: begin + tone.at, level: share * tone.level }),
  );
}

function sound(context: BaseAudioContext, output: AudioNode, { at, length, hertz, type, level }: Tone): OscillatorNode {
  const oscillator = context.createOscillator();
  const loudness = context.createGain();
  oscillator.frequency.value = hertz;
  if (type === "tone") oscillator.setPeriodicWave(waveOf(context));
  const edge = type === "click" ? CLICK_EDGE : Math.min(EDGE, length / 4);
  const { gain } = loudness;
  gain.setValueAtTime(0, at);
  gain.linearRampToValueAtTime(level, at + edge);
  if (type === "tone") gain.setValueAtTime(level, at + length - edge);
  gain.linearRampToValueAtTime(0, at + length);
  oscillator.connect(loudness).connect(output);
  oscillator.start(at);
  oscillator.stop(at + length);
  return oscillator;
}

function waveOf(context: BaseAudioContext): PeriodicWave {
  return context.createPeriodicWave(new Float32Array(PARTIALS.length), new Float32Array(PARTIALS));
}

/** How many tones begin at once at most: together they are no louder than one. */
function together(tones: readonly Tone[]): number {
  const counts = new Map<number, number>();
  for (const { at, type } of tones) if (type === "tone") counts.set(at, (counts.get(at) ?? 0) + 1);
  return Math.max(1, ...counts.values());
}
