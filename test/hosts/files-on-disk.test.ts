import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe } from "vitest";
import { IN_FULL } from "../support/random-runs.ts";
import { eveningInNode } from "./evening.ts";
import { renamedAndDeleted, writtenByOthers } from "./removed-files.ts";
import { serverIsKilled } from "./server-restart.ts";
import { followsTheme } from "./theme.ts";
import { describeNodeHost } from "./workbench.ts";

const TWO_FILES = { sample: "test/hosts/journals/two-files", open: "march.practice" };

// What only files on disk and a server that is a process of its own can meet, and what the disk tells otherwise.
describeNodeHost("a journal of two files", TWO_FILES, (inWindow, host) => {
  describe.skipIf(!IN_FULL)("in full", () => {
    serverIsKilled(inWindow, host);
    eveningInNode(inWindow);
  });
  inWindow("another theme is taken by preview and hover alike, written into the folder's settings", (window) =>
    followsTheme(window, async () => {
      const settings = join(host().folder, ".vscode/settings.json");
      mkdirSync(dirname(settings));
      writeFileSync(settings, JSON.stringify({ "workbench.colorTheme": "Default Dark Modern" }));
    }),
  );
  writtenByOthers(inWindow, host);
  renamedAndDeleted(inWindow);
});
