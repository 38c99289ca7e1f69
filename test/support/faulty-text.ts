/** Numbers from 0 to 1, the same in every run (Park and Miller, Communications of the ACM 31, 1988). */
function* randomNumbers(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 48_271) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}

const WORDS = "quarz lomber vintel bruska teffan orwin palder senk mirol dovan ketrin ulmer hasp wendel foxter".split(
  " ",
);
const TONICS = "C D E F G A B Bb Eb Ab F# C# H# X".split(" ");

/**
 * A journal of so many characters in which nearly every line has something to it: unknown titles, free words, wrong
 * notes, words with slips. Invented, and the same for the same seed.
 */
export function faultyText(length: number, seed = 1): string {
  const random = randomNumbers(seed);
  const one = (list: readonly string[]): string => list[Math.floor(random.next().value * list.length)]!;
  const number = (most: number): number => Math.floor(random.next().value * most);
  const lines: readonly (() => string)[] = [
    () => `  ${one(WORDS)} ${one(WORDS)} ${one(WORDS)}, 8ths at ${60 + number(60)} clean`,
    () => `  ${one(WORDS)} ${number(90_000)} ${one(WORDS)}, 8ths at 72 nearly, ${one(WORDS)}`,
    () => `  ${one(TONICS)} major: C D E F G A B C, 8ths at 60 clean`,
    () => `  D melodic minor, thirdz, ${one(WORDS)} ${one(WORDS)}, 8ths at 66 clean`,
    () => "  G major, 2 sharps, slured, 16ths at 80 cleen",
    () => `  F major, thirds, thirds, slurred tongued, at 60 at 70, ${one(WORDS)}`,
    () => `  ${one(WORDS)} ${one(WORDS)}`,
    () => "  Groundwrk, 15 minuts",
    () => `> ${one(WORDS)} ${one(WORDS)} ${one(WORDS)}`,
  ];
  const parts: string[] = ["player Noor\ninstrument alto recordr\n\n"];
  let size = parts[0]!.length;
  for (let day = Date.UTC(1900, 0, 1); size < length; day += 86_400_000) {
    const date = new Date(day).toISOString().slice(0, 10);
    const below = Array.from({ length: 10 + number(8) }, () => lines[number(lines.length)]!());
    const text = `${number(5) === 0 ? date.replaceAll("-", "/") : `${date} Mon`}\n${below.join("\n")}\n\n`;
    parts.push(text);
    size += text.length;
  }
  return parts.join("");
}
