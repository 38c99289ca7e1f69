import type { Io } from "./io.ts";
import { printable } from "./printable.ts";
import { WIDTH, wrapped } from "./wrapped.ts";

/** The columns for running text: those of a narrow terminal; without end in a pipe, where a sentence is one line. */
export function roomOf({ isTerminal, columns }: Pick<Io, "isTerminal" | "columns">): number {
  return isTerminal ? Math.min(columns?.() || WIDTH, WIDTH) : Number.POSITIVE_INFINITY;
}

/** Text with words of a journal in lines of so many columns, each indented. */
export function paragraph(text: string, room: number, indent: string): string[] {
  return wrapped(printable(text), room - indent.length).map((line) => indent + line);
}
