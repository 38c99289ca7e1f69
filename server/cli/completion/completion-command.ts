import type { Command } from "../command.ts";
import { GENERAL } from "../options.ts";
import { SHELLS } from "./shells.ts";

export const COMPLETION: Command = {
  name: "completion",
  summary: "print what completes commands in your shell",
  usage: [`completion ${SHELLS.join("|")}`],
  about: [
    "Prints a script for a shell, with which the tab key completes commands, options, their values, and .practice files. It is made from the same tables as this help; after an update print it again.",
    "bash: into ~/.local/share/bash-completion/completions/daystave, or into a file that ~/.bashrc reads. zsh: into a file named _daystave in a folder of $fpath. fish: into ~/.config/fish/completions/daystave.fish. A new shell has it then.",
  ],
  options: GENERAL,
  examples: [
    {
      line: "daystave completion bash > ~/.local/share/bash-completion/completions/daystave",
      does: "for bash, from its next start on",
    },
    { line: 'eval "$(daystave completion bash)"', does: "for this bash alone" },
    { line: "daystave completion fish > ~/.config/fish/completions/daystave.fish", does: "for fish" },
  ],
  most: 1,
  offers: SHELLS,
  load: async () => (await import("./completion.ts")).completion,
};
