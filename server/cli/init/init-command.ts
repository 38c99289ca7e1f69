import type { Command } from "../command.ts";
import { GENERAL, JSON_OPTION, namesOption, quietOption } from "../options.ts";

export const INIT: Command = {
  name: "init",
  summary: "begin a journal: a folder with its journal.practice",
  usage: ["init [FOLDER] [--instrument NAME] [--player NAME] [--names CONVENTION] [--quiet] [--json]"],
  about: [
    "Makes a folder, where it is not there yet, and in it journal.practice, which says who plays, on what, and how notes are called. Without a FOLDER it is the current one. On a terminal, and without --instrument and --player, it asks for both; what you leave out can be written into the file at any time.",
    "A journal.practice that is there already stays as it is; the exit status is 2 then.",
  ],
  options: {
    instrument: {
      type: "string",
      value: "NAME",
      help: "the instrument, as “alto recorder”; daystave list instruments has them all",
      offers: "instruments",
    },
    player: { type: "string", value: "NAME", help: "who plays" },
    names: namesOption("the language in which you name notes, if not English"),
    ...quietOption("say nothing where all went well"),
    ...JSON_OPTION,
    ...GENERAL,
  },
  prints: { heading: "The document of --json", rows: { path: "the file that was made", text: "what is in it" } },
  examples: [
    { line: "daystave init", does: "in the current folder, by two questions" },
    { line: 'daystave init music --instrument "alto recorder" --player Noor', does: "without questions" },
  ],
  most: 1,
  offers: "folders",
  load: async () => (await import("./init.ts")).init,
};
