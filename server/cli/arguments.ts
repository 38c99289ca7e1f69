import { parseArgs } from "node:util";
import { type DayNumber, parseIsoDate } from "../journal/calendar.ts";
import type { Arguments, Command, Option } from "./command.ts";
import { nearest, offer } from "./nearest.ts";
import { printable } from "./printable.ts";

export type ReadArguments = ({ readonly ok: true } & Arguments) | { readonly ok: false; readonly reason: string };

/** Reads what stands after the command's name. */
export function readArguments(argv: readonly string[], command: Command): ReadArguments {
  const types = Object.entries(command.options).map(([name, { type, short }]) => [
    name,
    { type, ...(short && { short }) },
  ]);
  const { tokens } = parseArgs({
    args: [...argv],
    options: Object.fromEntries(types),
    strict: false, // our own messages are plainer, and offer the nearest option
    allowPositionals: true,
    tokens: true,
  });
  const positionals: string[] = [];
  const flags = new Set<string>();
  const values = new Map<string, string>();
  for (const token of tokens) {
    if (token.kind === "positional") positionals.push(token.value);
    if (token.kind !== "option") continue;
    const option = Object.hasOwn(command.options, token.name) ? command.options[token.name] : undefined;
    if (!option) return { ok: false, reason: unknownOption(optionTyped(token.rawName, argv[token.index]!), command) };
    const reason = valueFault(token.rawName, token.value, token.inlineValue, option);
    if (reason) return { ok: false, reason };
    if (option.type === "boolean") flags.add(token.name);
    else values.set(token.name, token.value!);
  }
  if (positionals.length > command.most && !flags.has("help") && !flags.has("version"))
    return { ok: false, reason: tooMany(positionals, command) };
  return { ok: true, positionals, flags, values };
}

export type DayAsked =
  | { readonly ok: true; readonly day?: DayNumber }
  | { readonly ok: false; readonly reason: string };

/** The day that an option names; none where the option is not given. */
export function dayAsked(values: Arguments["values"], option: "since" | "until" | "today" | "date"): DayAsked {
  const text = values.get(option);
  const day = text === undefined ? undefined : parseIsoDate(text);
  if (text === undefined || day !== undefined) return { ok: true, day };
  const reason = `“--${option}” takes a date, year-month-day, such as 2026-03-02, not “${printable(text)}”.`;
  return { ok: false, reason };
}

/** `-json` is a word, not four letters of which the first is unknown. */
function optionTyped(rawName: string, word: string): string {
  return /^-\p{L}{2,}/u.test(word) ? word.replace(/=.*/s, "") : rawName;
}

function unknownOption(rawName: string, { name, options }: Command): string {
  const near = nearest(rawName.replace(/^-+/, ""), Object.keys(options));
  return `“${name}” has no option “${printable(rawName)}”.${offer(near && `--${near}`)} Its options: ${optionNames(options)}.`;
}

function optionNames(options: Readonly<Record<string, Option>>): string {
  return Object.keys(options)
    .map((option) => `--${option}`)
    .join(", ");
}

function valueFault(
  rawName: string,
  value: string | undefined,
  inline: boolean | undefined,
  option: Option,
): string | undefined {
  if (option.type === "boolean") return value === undefined ? undefined : `“${rawName}” takes no value.`;
  const missing = value === undefined || value === "" || (!inline && value.startsWith("--"));
  return missing ? `“${rawName}” needs a value: ${rawName} ${option.value ?? "VALUE"}.` : undefined;
}

function tooMany(positionals: readonly string[], { name, most }: Command): string {
  if (most === 0) return `“${name}” takes only options, not “${printable(positionals[0]!)}”.`;
  return `“${name}” takes ${most === 1 ? "one argument" : `${most} arguments`}, and ${positionals.length} were given. Put words that belong together in quotes: daystave ${name} "${printable(positionals.join(" "))}".`;
}
