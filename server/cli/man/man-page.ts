import { ABOUT, TOP_OPTIONS } from "../about.ts";
import type { Command, Option } from "../command.ts";
import { VERSION_TEXT } from "../version.ts";
import { bold, roff, shown, synopsis, tagged } from "./roff.ts";

/** The manual page, in the macros of man(7). */
export function manPage(commands: readonly Command[]): string {
  const lines = [
    '.\\" Made by: daystave man',
    `.TH DAYSTAVE 1 "" "Daystave ${VERSION_TEXT.trim()}" "User Commands"`,
    ".SH NAME",
    `daystave \\- ${roff(ABOUT.what)}`,
    ".SH SYNOPSIS",
    `${bold("daystave")} ${synopsis("COMMAND [OPTION…] [PATH…]")}`,
    ".SH DESCRIPTION",
    roff(`${ABOUT.journal} ${ABOUT.begin}`),
    ...shown(ABOUT.day),
    ".PP",
    roff(ABOUT.check),
    ".SH OPTIONS",
    "Before a command or after it:",
    ...TOP_OPTIONS.flatMap(({ names, help }) => tagged(names.map(bold).join(", "), sentence(help))),
    ".SH COMMANDS",
    ...commands.flatMap(commandLines),
    ".SH EXIT STATUS",
    ...ABOUT.statuses.flatMap(([status, meaning]) => tagged(bold(status), sentence(meaning))),
    ".SH ENVIRONMENT",
    ...tagged(bold("NO_COLOR"), "Where this is set to anything, nothing is printed in colour."),
    ...tagged(bold("TERM"), "Nor is it where this is “dumb”."),
    ".SH FILES",
    ...tagged(bold("journal.practice"), "What holds for the whole journal: who plays, on what, pieces, aims."),
    ...tagged(bold("*.practice"), "The days of a journal, in as many files and folders as you like."),
  ];
  return `${lines.join("\n")}\n`;
}

function commandLines({ name, summary, usage, about, options, prints, examples }: Command): readonly string[] {
  return [
    `.SS ${name}`,
    roff(sentence(summary)),
    ...usage.flatMap((line) => [".PP", `${bold("daystave")} ${synopsis(line)}`]),
    ...about.flatMap((paragraph) => [".PP", roff(paragraph)]),
    ...Object.entries(options).filter(isOwn).flatMap(optionLines),
    ...(prints ? [".PP", roff(`${prints.heading}:`), ...printed(prints.rows)] : []),
    ".PP",
    examples.length === 1 ? "Example:" : "Examples:",
    ...examples.flatMap(({ line, does }) => [...shown([line]), ".RS 8", roff(sentence(does)), ".RE"]),
  ];
}

/** Options of all commands have their section. */
function isOwn([name]: readonly [string, Option]): boolean {
  return !TOP_OPTIONS.some(({ names }) => names[0] === `--${name}`);
}

function optionLines([name, { short, value, help }]: readonly [string, Option]): readonly string[] {
  const names = [`--${name}`, ...(short === undefined ? [] : [`-${short}`])].map(bold).join(", ");
  return tagged(value === undefined ? names : `${names} \\fI${roff(value)}\\fR`, sentence(help));
}

function printed(rows: Readonly<Record<string, string>>): readonly string[] {
  return Object.entries(rows).flatMap(([name, holds]) => tagged(bold(name), sentence(holds)));
}

/** With a capital and a full stop, as a manual page has what a help has without. */
function sentence(text: string): string {
  const begun = text[0]!.toUpperCase() + text.slice(1);
  return /[.?!…]$/.test(begun) ? begun : `${begun}.`;
}
