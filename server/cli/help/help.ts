import type { Command } from "../command.ts";
import { WIDTH, wrapped } from "../wrapped.ts";

/** What `daystave --help` prints. */
export function programHelp(commands: readonly Command[]): string {
  const rows = commands.map(({ name, summary }) => [name, summary] as const);
  return [
    "Daystave: a practice diary in plain text that checks your scales and remembers",
    "what got faster.",
    "",
    "Usage: daystave COMMAND [OPTION…] [PATH…]",
    "",
    "Commands:",
    ...list(rows),
    "",
    "Options:",
    ...list([
      ["--help, -h", "show this help; after a command, that command’s"],
      ["--version", "show the version"],
    ]),
    "",
    "A journal is a folder of .practice files; journal.practice at its top names the",
    "player, the instrument and the pieces. To begin, write a day into a file:",
    "",
    "    2026-03-02 Mon, 20 min",
    "    D minor, slurred, 8ths at 60 clean",
    "",
    "and run `daystave check`. Colours are left out when NO_COLOR is set.",
    "Exit status: 0 done, 1 something was found, 2 it could not run.",
    "",
  ].join("\n");
}

/** What `daystave COMMAND --help` prints. */
export function commandHelp(command: Command): string {
  const options = Object.entries(command.options).map(([name, { short, value, help }]) => {
    const long = `--${name}${value ? ` ${value}` : ""}`;
    return [short ? `${long}, -${short}` : long, help] as const;
  });
  return [
    `daystave ${command.name}: ${command.summary}`,
    "",
    ...command.usage.map((usage, i) => `${i === 0 ? "Usage:" : "      "} daystave ${usage}`),
    ...command.about.flatMap((paragraph) => ["", ...wrapped(paragraph, WIDTH)]),
    "",
    "Options:",
    ...list(options),
    ...(command.prints ? ["", `${command.prints.heading}:`, ...list(Object.entries(command.prints.rows))] : []),
    "",
    "Examples:",
    ...command.examples.flatMap(({ line, does }) => [`  ${line}`, `      ${does}`]),
    "",
  ].join("\n");
}

/** Terms and what they mean, in two columns. */
function list(rows: readonly (readonly [string, string])[]): string[] {
  const column = Math.max(...rows.map(([term]) => term.length)) + 4;
  return rows.flatMap(([term, meaning]) =>
    wrapped(meaning, WIDTH - column).map(
      (line, i) => (i === 0 ? `  ${term}`.padEnd(column) : " ".repeat(column)) + line,
    ),
  );
}
