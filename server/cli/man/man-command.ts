import type { Command } from "../command.ts";
import { GENERAL } from "../options.ts";

export const MAN: Command = {
  name: "man",
  summary: "print the manual page",
  usage: ["man"],
  about: [
    "Prints the manual page, which has the help of every command, as man(1) reads it. In a folder of manual pages it is what “man daystave” shows.",
  ],
  options: GENERAL,
  examples: [
    { line: "daystave man | man -l -", does: "read it" },
    { line: "daystave man > ~/.local/share/man/man1/daystave.1", does: "from now on: man daystave" },
  ],
  most: 0,
  load: async () => (await import("./man.ts")).man,
};
