import type { Line } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import type { LineContext } from "../context.ts";
import { type Finding, finding, quoted, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { lineTexts } from "./line-texts.ts";

/** Lines that are no part of a journal's language, or are where they cannot be. */
export function checkLineKind(line: Line, { text, head }: Pick<LineContext, "text" | "head">): readonly Finding[] {
  switch (line.type) {
    case "prose":
      return [prose(line, text)];
    case "conflict marker":
      return [finding("conflict-marker", line, lineTexts.conflictMarker)];
    case "too long": {
      const { length } = line;
      return [finding("line-too-long", { start: 0, end: length }, lineTexts.tooLong(length, LONGEST_LINE))];
    }
    case "near declaration": {
      const { word, nearest } = line;
      const message = lineTexts.notADeclaration(quoted(word.meaning.words)) + fixTexts.didYouMean([`\`${nearest}\``]);
      const fix = replacement(fixTexts.changeTo(fixTexts.quoted(nearest)), word, nearest);
      return [finding("unknown-declaration", word, message, [fix])];
    }
    case "entry":
    case "phase":
    case "session":
    case "break":
      return head ? [noDay(line)] : [];
    default:
      return [];
  }
}

function prose(line: { readonly start: number; readonly end: number }, text: string): Finding {
  const start = text.length - text.trimStart().length;
  return finding("prose", line, lineTexts.kept, [
    { title: fixTexts.makeRemark, safe: false, edits: [{ start, end: start, text: "-- " }] },
  ]);
}

function noDay(line: { readonly start: number; readonly end: number }): Finding {
  return finding("no-day", line, lineTexts.noDay);
}
