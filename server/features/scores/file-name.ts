/** In UTF-16 units, without an ending. */
const LONGEST = 80;

/**
 * A name of a file for an exercise, a journal or a day, which every file system takes: letters, digits, spaces, commas,
 * dots within and hyphens; a sharp is a word.
 */
export function fileNameFor(title: string): string {
  const words = title
    .replace(/[#♯]/g, " sharp")
    .replace(/♭/g, " flat")
    .replace(/[^\p{L}\p{M}\p{N} ,.-]+/gu, " ")
    .replace(/\s+/g, " ")
    .slice(0, LONGEST)
    .replace(/^[\s,.-]+|[\s,.-]+$/g, "");
  return words === "" ? "exercise" : words;
}
