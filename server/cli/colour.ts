import type { Io } from "./io.ts";

/** SGR codes of ECMA-48. */
const CODES = { red: 31, yellow: 33, blue: 34, dim: 2, bold: 1 } as const;

export type Paint = (text: string, colour: keyof typeof CODES) => string;

/** Colours text on a terminal that takes colours, unless `NO_COLOR` (no-color.org) is set. */
export function painter({ isTerminal, env }: Io): Paint {
  const coloured = isTerminal && !env["NO_COLOR"] && env["TERM"] !== "dumb";
  return coloured ? (text, colour) => `\u001B[${CODES[colour]}m${text}\u001B[0m` : (text) => text;
}
