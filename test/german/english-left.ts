/**
 * Words of English that no German text has, and that hardly an English sentence is without. Left out are those that
 * German has as well (`in`, `an`, `so`, `am`, `was`, `her`, `man`, `die`, `minute`, `note`), and names of notes (`do`).
 */
const ENGLISH = new Set(
  (
    "the and of is are not with at to for from you your it its this that these those which when where what who has " +
    "have had been be or no nothing than more by as if only each all there than then they them their does done did " +
    "could would should can cannot may week weeks day days minutes above below after before between on yet " +
    "last first once twice notes bar bars degree step steps key sharp sharps flat flats scale exercise piece " +
    "reached today yesterday ago up down again here line lines"
  ).split(" "),
);

/** Text that is code, a picture's address, or quoted: it is shown as it is typed. */
const AS_TYPED = /`[^`]*`|„[^“]*“|"[^"]*"|\(data:[^)]*\)/g;

/** The English words in what is shown of a journal; those that the journal has itself are its own. */
export function englishLeft(shown: string, journal: string): readonly string[] {
  const own = new Set(wordsIn(journal));
  const left = wordsIn(shown.replace(AS_TYPED, " ")).filter((word) => ENGLISH.has(word) && !own.has(word));
  return [...new Set(left)];
}

function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}’']+/gu) ?? [];
}
