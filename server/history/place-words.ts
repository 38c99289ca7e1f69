import { placeTexts } from "./place-texts.ts";

/** As places are kept in records (`server/syntax/words/place-words.ts`): a noun, and which of them. */
const NUMBERED = /^(bars?|lines|page|var|letter|section|part|verse|phrase|strain|upbeat to) ([^,]*\d.*|[A-Z].*)$/s;

/** A place in a piece, as a record has it: `bars 17-32`, `from the top`. What has no known noun stays as written. */
export function placeInWords(where: string): string {
  if (where === "from the top") return placeTexts.fromTheTop;
  const [, noun, which] = NUMBERED.exec(where) ?? [];
  return noun === undefined || which === undefined ? where : placeTexts.place(noun, which);
}

/** A movement, as a record has it: `mvt 2`. */
export function movementInWords(movement: string): string {
  const [, which] = /^mvt (.+)$/s.exec(movement) ?? [];
  return which === undefined ? movement : placeTexts.movement(which);
}
