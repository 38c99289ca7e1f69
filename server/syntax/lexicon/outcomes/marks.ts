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

/** Words that lead to how it went and say nothing of it: `84 and steady`. */
export const LEADS_TO_OUTCOME: readonly string[] =
  "is | was | and | now | just | jetzt | und | noch | nu | et | ora".split(" | ");

/** Of which tempo it is said, which is the last in any case: `72, 76 - the last no good`. */
export const NAMES_THE_LAST: readonly string[] = (
  "the last one is | the last one was | the last one | the last | last one | die letzte | der letzte | letzte | " +
  "de laatste | laatste | la dernière fois | la dernière | le dernier | l'ultima | l'ultimo | la última | el último"
).split(" | ");
