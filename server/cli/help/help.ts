import { ABOUT, TOP_OPTIONS } from "../about.ts";
import type { Command } from "../command.ts";
import { type Row, twoColumns } from "../two-columns.ts";
import { columnsOf, type Screen, textWidth, wrapped } from "../wrapped.ts";

/** What `daystave --help` prints. */
export function programHelp(commands: readonly Command[], screen: Screen): string {
  const width = textWidth(screen);
  const { what, journal, begin, day, check, colours, statuses } = ABOUT;
  return [
    ...wrapped(`Daystave: ${what}.`, width),
    "",
    ...usageLines("Usage:", "COMMAND [OPTION…] [PATH…]", columnsOf(screen)),
    "",
    "Commands:",
    ...list(
      commands.map(({ name, summary }) => [name, summary]),
      width,
    ),
    "",
    "Options:",
    ...list(
      TOP_OPTIONS.map(({ names, help }) => [names.join(", "), help]),
      width,
    ),
    "",
    ...wrapped(`${journal} ${begin}`, width),
    "",
    ...day.map((line) => `    ${line}`),
    "",
    ...wrapped(`${check} ${colours}`, width),
    ...wrapped(`Exit status: ${statuses.map((status) => status.join(" ")).join(", ")}.`, width),
    "",
  ].join("\n");
}

/** What `daystave COMMAND --help` prints. */
export function commandHelp(command: Command, screen: Screen): string {
  const width = textWidth(screen);
  const options = Object.entries(command.options).map(([name, { short, value, help }]): Row => {
    const long = `--${name}${value ? ` ${value}` : ""}`;
    return [short ? `${long}, -${short}` : long, help];
  });
  return [
    ...wrapped(`daystave ${command.name}: ${command.summary}`, width),
    "",
    ...command.usage.flatMap((usage, i) => usageLines(i === 0 ? "Usage:" : "      ", usage, columnsOf(screen))),
    ...command.about.flatMap((paragraph) => ["", ...wrapped(paragraph, width)]),
    "",
    "Options:",
    ...list(options, width),
    ...(command.prints
      ? ["", ...wrapped(`${command.prints.heading}:`, width), ...list(Object.entries(command.prints.rows), width)]
      : []),
    "",
    "Examples:",
    ...command.examples.flatMap(({ line, does }) => [
      `  ${line}`,
      ...wrapped(does, width - 6).map((said) => `      ${said}`),
    ]),
    "",
  ].join("\n");
}

/** A usage is cut on a terminal alone, and within brackets or quotes only where they do not fit into a line. */
function usageLines(before: string, usage: string, columns: number | undefined): string[] {
  if (columns === undefined) return [`${before} daystave ${usage}`];
  const room = columns - before.length - 5;
  const whole = usage.replace(/"[^"]*"|\[[^[\]]*(?:\[[^\]]*\])?\]/g, (part) =>
    part.length > room ? part : part.replaceAll(" ", "\u00A0"),
  );
  return wrapped(`daystave ${whole}`, room).map((line, i) => {
    return `${i === 0 ? before : " ".repeat(before.length + 4)} ${line.replaceAll("\u00A0", " ")}`;
  });
}

/** Terms and what they mean, in two columns. */
function list(rows: readonly Row[], width: number): string[] {
  return twoColumns(rows, { column: Math.max(...rows.map(([term]) => term.length)) + 4, width });
}
