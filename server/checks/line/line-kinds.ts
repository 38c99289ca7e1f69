import type { Line } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import type { LineContext } from "../context.ts";
import { type Finding, finding, quoted, replacement } from "../finding.ts";

/** Lines that are no part of a journal's language, or are where they cannot be. */
export function checkLineKind(line: Line, { text, head }: Pick<LineContext, "text" | "head">): readonly Finding[] {
  switch (line.type) {
    case "prose":
      return [prose(line, text)];
    case "conflict marker":
      return [
        finding(
          "conflict-marker",
          line,
          "Keep the lines that are right and delete the markers: two versions of this journal were merged, and this marker was left behind.",
        ),
      ];
    case "too long":
      return [
        finding(
          "line-too-long",
          { start: 0, end: line.length },
          `Break this line into several: it has ${line.length} characters and was not read. A line can have at most ${LONGEST_LINE}.`,
        ),
      ];
    case "near declaration": {
      const message = `"${quoted(line.word.meaning.words)}" is not a declaration. Did you mean \`${line.nearest}\`?`;
      return [
        finding("unknown-declaration", line.word, message, [
          replacement(`Change to "${line.nearest}"`, line.word, line.nearest),
        ]),
      ];
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
  return finding("prose", line, "Kept as written, not counted. A remark begins with `--`.", [
    { title: "Make it a remark", safe: false, edits: [{ start, end: start, text: "-- " }] },
  ]);
}

function noDay(line: { readonly start: number; readonly end: number }): Finding {
  return finding(
    "no-day",
    line,
    "There is no date above this line. Write one, in the form year-month-day, as in `2026-03-02`.",
  );
}
