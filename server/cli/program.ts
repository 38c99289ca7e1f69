import { dayAsked, readArguments } from "./arguments.ts";
import type { Command } from "./command.ts";
import { COMMANDS } from "./commands.ts";
import { commandHelp, programHelp } from "./help/help.ts";
import { fail, type Io, STATUS, type Status } from "./io.ts";
import { nearest, offer } from "./nearest.ts";
import { printable } from "./printable.ts";
import { VERSION_TEXT, versionAsked } from "./version.ts";

/** Runs one command line, without `node` and the script's name. */
export async function run(argv: readonly string[], io: Io): Promise<Status> {
  const [first, ...rest] = argv;
  if (first === undefined) {
    io.stderr.write(programHelp(COMMANDS, io));
    return STATUS.failed;
  }
  if (first === "--help" || first === "-h" || (first === "help" && rest.length === 0))
    return show(io, programHelp(COMMANDS, io));
  const version = versionAsked(first);
  if (version !== undefined) return show(io, version);
  const [name, args] = first === "help" ? [rest[0]!, ["--help"]] : [first, rest];
  const command = COMMANDS.find((each) => each.name === name);
  if (command) return runCommand(command, args, io);
  return fail(io, name.startsWith("-") ? unknownOption(name) : unknownCommand(name));
}

async function runCommand(command: Command, argv: readonly string[], io: Io): Promise<Status> {
  const args = readArguments(argv, command);
  if (!args.ok) return fail(io, `${args.reason}\nFor more: daystave ${command.name} --help`);
  if (args.flags.has("help")) return show(io, commandHelp(command, io));
  if (args.flags.has("version")) return show(io, VERSION_TEXT);
  const today = dayAsked(args.values, "today");
  if (!today.ok) return fail(io, today.reason);
  const execute = await command.load();
  const progress = args.flags.has("quiet") ? undefined : io.progress;
  const { day } = today;
  return execute(args, { ...io, progress, ...(day !== undefined && { today: day, todayNow: () => day }) }, COMMANDS);
}

function show(io: Io, text: string): Status {
  io.stdout.write(text);
  return STATUS.done;
}

function unknownCommand(name: string): string {
  if (name.endsWith(".practice")) return `Put a command before the file: daystave check ${printable(name)}`;
  const names = COMMANDS.map((command) => command.name);
  return `There is no command “${printable(name)}”.${offer(nearest(name, names))} The commands are: ${names.join(", ")}.\nFor more: daystave --help`;
}

function unknownOption(name: string): string {
  const near = nearest(name.replace(/^-+/, ""), ["help", "version"]);
  return `Put the command first, then its options: daystave check --json, not “${printable(name)}”.${offer(near && `--${near}`)}`;
}
