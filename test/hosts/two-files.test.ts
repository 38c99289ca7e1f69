import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { renamedAndDeleted, writtenByOthers } from "./removed-files.ts";
import { serverIsKilled } from "./server-restart.ts";
import { followsTheme } from "./theme.ts";
import { chooseTheme } from "./window.ts";
import { describeNodeHost, describeWorkbench } from "./workbench.ts";

const NAME = "a journal of two files";
const TWO_FILES = { sample: "test/hosts/journals/two-files", open: "march.practice" };

describeWorkbench(NAME, TWO_FILES, (inWindow) => {
  inWindow("another theme is taken by preview and hover alike, chosen by keyboard", (window) =>
    followsTheme(window, () => chooseTheme(window, "Dark Modern")),
  );
  renamedAndDeleted(inWindow);
});

// What only files on disk and a server that is a process of its own can meet, and what the disk tells otherwise.
describeNodeHost(NAME, TWO_FILES, (inWindow, host) => {
  serverIsKilled(inWindow, host);
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
