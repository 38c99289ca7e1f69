import { Note as Tonal } from "tonal";
import reference from "../../reference/instrument-ranges.json" with { type: "json" };

/** Names of test/reference/instrument-ranges.json that are not ours but for the word `recorder`. */
const IDS: Readonly<Record<string, string>> = {
  "soprano/descant": "soprano recorder",
  "alto/treble": "alto recorder",
  "voice flute (tenor in D)": "voice flute",
  "alto in G": "alto recorder in G",
};

export function recorderId(name: string): string {
  return IDS[name] ?? `${name} recorder`;
}

/** A recorder as the reference has it. */
export interface RecorderRow {
  readonly id: string;
  /** Sounding. */
  readonly lowest: string;
  /** From the lowest note to the highest. */
  readonly semitones: number;
  /** How many octaves lower than it sounds it is written: the first where several are in use. */
  readonly octavesLower: number;
}

/** Every recorder; the range of the alto in G, which the reference leaves open, is the alto's a tone up. */
export function recordersOf(): readonly RecorderRow[] {
  const alto = reference.recorders.find(({ name }) => name === "alto/treble")!;
  return reference.recorders.map(({ name, lowest, full, written_lower_by }) => {
    const [low, high] = (full ?? alto.full!).replace(/ .*/, "").split("-");
    return {
      id: recorderId(name),
      lowest,
      semitones: Tonal.midi(high!)! - Tonal.midi(low!)!,
      octavesLower: Number(/^\d/.exec(written_lower_by)![0]),
    };
  });
}
