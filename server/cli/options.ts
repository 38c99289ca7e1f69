import { NOTE_NAMES } from "../music/notes/note-names.ts";
import type { Option } from "./command.ts";

type Options = Readonly<Record<string, Option>>;

/** Of every command. */
export const GENERAL: Options = {
  help: { type: "boolean", short: "h", help: "show this help" },
  version: { type: "boolean", short: "V", help: "show the version" },
};

export const JSON_OPTION: Options = {
  json: { type: "boolean", help: "print one JSON document for scripts, and nothing else, on standard output" },
};

/** Of commands that know a day. */
export const COMMON: Options = {
  ...JSON_OPTION,
  today: { type: "string", value: "YYYY-MM-DD", help: "use this day as today" },
  ...GENERAL,
};

const CONVENTIONS = NOTE_NAMES.map(({ id }) => id);

/** An option that names a language of note names. */
export function namesOption(help: string): Option {
  return { type: "string", value: "CONVENTION", help: `${help}: ${CONVENTIONS.join(", ")}`, offers: CONVENTIONS };
}

export const NAMES: Option = namesOption("the language of note names, in reading and in the answer");

/** Of commands that may read text from standard input. */
export const STDIN_PATH: Options = {
  "stdin-path": {
    type: "string",
    value: "PATH",
    help: "with - as PATH: read standard input as if it were this file, beside the rest of its journal",
    offers: "journals",
  },
};

/** @param help what is left out */
export function quietOption(help: string): Options {
  return { quiet: { type: "boolean", short: "q", help } };
}

export const PATHS =
  "PATH is a file, a folder, or - for standard input. A folder is searched for .practice files, but not the dot folders and node_modules in it. Without a PATH it is the current folder.";
