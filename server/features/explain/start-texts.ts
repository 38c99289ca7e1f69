/** Where to begin today; tempos in beats a minute as the player counts, printed. */
export const startTexts = {
  nothingReached: "No tempo reached yet. Start where it feels easy and note it: `at 60 clean`.",
  start: (tempo: string) => `Start at ${tempo}.`,
  startAndSteady: (tempo: string, steady: string) => `Start at ${tempo}. Steady at ${steady}.`,
  /** After a day whose remark asks for ease. */
  easy: (tempo: string, reason: "tired" | "body") =>
    `Start at ${tempo}, and stay there ${reason === "tired" ? "if you tire again" : "unless it feels easy"}.`,
};
