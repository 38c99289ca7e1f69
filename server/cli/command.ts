import type { Io, Status } from "./io.ts";

/** A command's arguments, checked against what the command takes. */
export interface Arguments {
  /** What is no option, in order. */
  readonly positionals: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
}

/**
 * What may be offered for a value or an argument: words, or what is found when it is asked for: `.practice` files and
 * folders, folders alone, any file, names of instruments.
 */
export type Offers = readonly string[] | "journals" | "folders" | "files" | "instruments";

export interface Option {
  readonly type: "boolean" | "string";
  readonly short?: string;
  /** What stands for the value in the help. */
  readonly value?: string;
  readonly help: string;
  /** What completion offers for the value. */
  readonly offers?: Offers;
}

/** @param commands all there are, for what tells of them */
export type Run = (args: Arguments, io: Io, commands: readonly Command[]) => Promise<Status>;

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
  /** What completion offers for them. */
  readonly offers?: Offers;
  /** Reads the command's own modules only when it is run. */
  readonly load: () => Promise<Run>;
}
