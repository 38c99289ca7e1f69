import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, onTestFinished, test } from "vitest";
import { bundledCommand, environmentIn, folderWith, recipeIn, versionOf } from "./other-editor.ts";

/** Such as `kate 22.12.3`. */
const VERSION = versionOf("kate", { QT_QPA_PLATFORM: "offscreen" });

/** Milliseconds; on a busy machine its window takes a while. */
const LIMIT = 40_000;

describe.skipIf(!VERSION)(`Kate, ${VERSION ?? "which is not installed"}`, () => {
  test("with our recipe takes a file for a journal, in the right folder, and is told what is wrong in it", async () => {
    const { folder, sent, answered } = await opened();
    await expect.poll(answered, { timeout: LIMIT }).toContain("textDocument/publishDiagnostics");
    expect(sent()).toContain('"languageId":"practice-journal"');
    expect(sent()).toContain(`"rootUri":"${pathToFileURL(folder).href}"`);
    // One alone: in another folder the piece would not be known.
    expect(answered().match(/"message":"[^"]*"/g)).toEqual([
      '"message":"F# major has E#, not F: its seventh degree takes the letter E."',
    ]);
  });
});

/** Kate with the journal's week, no window to see, and `daystave` between two files that keep what is said. */
async function opened() {
  const [highlighting, servers] = [recipeIn("xml"), recipeIn("json")];
  const folder = folderWith({ [highlighting.name]: highlighting.text, [servers.name]: servers.text });
  const command = join(folder, "bin/daystave");
  const script = `#!/bin/sh\ntee "$HOME/sent" | "${process.execPath}" "${await bundledCommand()}" "$@" | tee "$HOME/answered"\n`;
  mkdirSync(join(folder, "bin"));
  writeFileSync(command, script, { mode: 0o755 });
  writeFileSync(join(folder, "CONFIG/katerc"), allowing(command));
  mkdirSync(join(folder, "run"), { mode: 0o700 });
  const editor = spawn("kate", ["--startanon", "2026/week.practice"], {
    cwd: folder,
    stdio: "ignore",
    env: { ...environmentIn(folder), XDG_RUNTIME_DIR: join(folder, "run"), QT_QPA_PLATFORM: "offscreen" },
  });
  const ended = new Promise((resolve) => editor.on("close", resolve));
  onTestFinished(async () => {
    editor.kill("SIGKILL");
    await ended;
  });
  const said = (file: string) => (existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8") : "");
  return {
    folder,
    sent: () => said("sent").replaceAll('": ', '":'),
    answered: () => said("answered"),
  };
}

/** What Kate keeps once somebody has said yes to its question. */
function allowing(command: string): string {
  return `[lspclient]\nAllowedServerCommandLines=${command} lsp --stdio\n`;
}
