import type { Io, Status } from "./io.ts";

/** A command's arguments, checked against what the command takes. */
export interface Arguments {
  /** What is no option, in order. */
  readonly positionals: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
}

export interface Option {
  readonly type: "boolean" | "string";
  readonly short?: string;
  /** What stands for the value in the help. */
  readonly value?: string;
  readonly help: string;
}

export type Run = (args: Arguments, io: Io) => Promise<Status>;

/** A command as its help, the reading of its arguments and the table of the pages know it. */
export interface Command {
  readonly name: string;
  /** One line. */
  readonly summary: string;
  /** What stands after `daystave`. */
  readonly usage: readonly string[];
  /** What it does and when one wants it, in paragraphs. */
  readonly about: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** What it prints, name by name, under a heading. */
  readonly prints?: { readonly heading: string; readonly rows: Readonly<Record<string, string>> };
  readonly examples: readonly { readonly line: string; readonly does: string }[];
  /** How many arguments that are no options it takes at most. */
  readonly most: number;
  /** Reads the command's own modules only when it is run. */
  readonly load: () => Promise<Run>;
}
