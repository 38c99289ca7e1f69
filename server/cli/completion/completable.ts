import { INSTRUMENTS } from "../../music/instruments/instruments.ts";
import { TOP_OPTIONS } from "../about.ts";
import type { Command, Offers } from "../command.ts";

/** What a shell is to offer: words, or names of files of a kind. */
export type Offered =
  | { readonly type: "words"; readonly words: readonly string[] }
  | { readonly type: "journals" | "folders" | "files" }
  /** Whatever is typed. */
  | { readonly type: "nothing" };

/** An option, as shells know it. */
export interface CompletableOption {
  /** `--names`. */
  readonly long: string;
  /** `-q`. */
  readonly short?: string;
  readonly help: string;
  /** What its value is called, and what may stand there; undefined for one without a value. */
  readonly value?: { readonly called: string; readonly offered: Offered };
}

/** A command, as shells know it. */
export interface Completable {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly CompletableOption[];
  readonly most: number;
  readonly offered: Offered;
}

/** All commands, and `help`, which takes any of them. */
export function completable(commands: readonly Command[]): readonly Completable[] {
  const own = commands.map(({ name, summary, options, most, offers }) => ({
    name,
    summary,
    options: Object.entries(options).map(([long, { type, short, value, help, offers: words }]) => ({
      long: `--${long}`,
      ...(short && { short: `-${short}` }),
      help,
      ...(type === "string" && { value: { called: value ?? "VALUE", offered: offeredOf(words) } }),
    })),
    most,
    offered: offeredOf(offers),
  }));
  const help: Completable = {
    name: "help",
    summary: "show the help of a command",
    options: [],
    most: 1,
    offered: { type: "words", words: own.map(({ name }) => name) },
  };
  return [...own, help];
}

function offeredOf(offers: Offers | undefined): Offered {
  if (offers === undefined) return { type: "nothing" };
  if (offers === "instruments") return { type: "words", words: INSTRUMENTS.map(({ names }) => names[0]!) };
  return typeof offers === "string" ? { type: offers } : { type: "words", words: offers };
}

/** Options before any command. */
export const OPTIONS_ALONE: readonly CompletableOption[] = TOP_OPTIONS.map(({ names: [long, short], help }) => ({
  long,
  short,
  help,
}));

/** An option's names, the long one first. */
export function namesOf({ long, short }: CompletableOption): readonly string[] {
  return short === undefined ? [long] : [long, short];
}
