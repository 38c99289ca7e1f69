import stringWidth from "string-width";
import type { Severity } from "../../checks/codes.ts";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { printable } from "../printable.ts";
import { WIDTH, wrapped } from "../wrapped.ts";
import type { Explained, FoundInExample } from "./explanation.ts";

const INDENT = "    ";

const SEVERITIES: Readonly<Record<Severity, string>> = {
  error: "An error",
  warning: "A warning",
  information: "Advice, which never makes a check fail",
  hint: "A hint, shown in an editor with the cursor on the line and only counted by daystave check",
};

/** What is known of a code, for people. */
export function explainText(explained: Explained, io: Io): string {
  const { code, severity, meaning, example, found, why, whatToDo, further } = explained;
  const paint = painter(io);
  const paragraph = (text: string) => ["", ...wrapped(text, WIDTH, stringWidth)];
  const [plainWhy, plainDo] = [paragraph(`Why: ${why}`), paragraph(`What to do: ${whatToDo}`)];
  return [
    paint(code, "bold"),
    ...wrapped(`${SEVERITIES[severity]}. ${meaning}.`, WIDTH, stringWidth),
    "",
    "Example:",
    "",
    ...example
      .trimEnd()
      .split("\n")
      .map((line) => INDENT + cut(line)),
    "",
    ...found.flatMap(foundLines),
    ...plainWhy,
    ...plainDo,
    ...(further === null ? [] : further.split("\n\n").flatMap(paragraph)),
    "",
  ]
    .map((line) => line.trimEnd())
    .join("\n");
}

/** A line that is too long to show is told by its beginning. */
function cut(line: string): string {
  const most = WIDTH - INDENT.length;
  return stringWidth(line) <= most ? line : `${[...line].slice(0, most - 1).join("")}…`;
}

function foundLines({ line, column, message, fixes }: FoundInExample): readonly string[] {
  const said = wrapped(`Line ${line}, column ${column}: ${printable(message)}`, WIDTH, stringWidth);
  const offered = fixes.flatMap(({ title, safe }) =>
    wrapped(`Fix: ${printable(title)}${safe ? " (daystave check --fix does it)" : ""}`, WIDTH, stringWidth),
  );
  return [...said, ...offered];
}
