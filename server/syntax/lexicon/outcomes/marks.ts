/**
 * Short marks for how a tempo went, right behind it or in a row as long as that of the tempos: `84 v, 92 x`,
 * `60/72 y n`. Elsewhere they are letters and signs like any other. Common practice, no source.
 */
export const OUTCOME_MARKS = {
  reached: "y | v | j | + | ++ | yes | ja | oui | si",
  nearly: "~ | ± | +- | +/-",
  not: "n | x | - | – | -- | no | not | nein | nee | non",
} as const;

/** Of those the ones that are told from other words behind a single tempo as well. */
export const MARKS_OF_ONE: readonly string[] = ["y", "v", "x", "n"];

/** Words that lead to how it went and say nothing of it: `72, 76 - the last no good`. */
export const LEADS_TO_OUTCOME: readonly string[] = (
  "the last one is | the last one was | the last one | the last | last one | is | was | and | now | just | die letzte | " +
  "der letzte | letzte | jetzt | und | noch | de laatste | laatste | nu | la dernière fois | la dernière | le dernier | " +
  "et | l'ultima | l'ultimo | ora | la última | el último"
).split(" | ");
