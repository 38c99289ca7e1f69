import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { NodeHost } from "./node-host.ts";
import { complaintIn, exerciseIn, tempoIn } from "./preview-page.ts";
import { processBelow } from "./processes.ts";
import type { InWindow } from "./workbench.ts";

/** In milliseconds: a server has to be started, and to read everything anew. */
const RESTART_LIMIT = 60_000;

/** For each time that the server is killed: a tempo that is typed at once, and a note that there is not, typed later. */
const ROUNDS = [
  { tempo: 72, missing: "H#" },
  { tempo: 76, missing: "J#" },
];

// Only in Node is the server a process that can be ended from outside. In a browser it is a worker of the extension host's,
// which lives and ends with that: nothing but the extension host itself can stop it, and no event would tell of it.
export function serverIsKilled(inWindow: InWindow, host: () => NodeHost): void {
  inWindow(
    "a language server that is killed comes back with all that was typed before, meanwhile and since",
    async ({ page, editor, goToEndOf, showPreview }) => {
      await editor.locator(".squiggly-warning").first().waitFor();
      const preview = await showPreview();
      const thirds = exerciseIn(preview, "D natural minor, thirds");
      await thirds.waitFor();
      await goToEndOf("D minor, thirds");
      await page.keyboard.type(", 69 clean"); // never saved: the editor alone knows of it
      await tempoIn(thirds, 69).waitFor();

      for (const [before, { tempo, missing }] of ROUNDS.entries()) {
        const killed = await serverOf(host());
        process.kill(killed, "SIGKILL");
        await page.keyboard.type(`, ${tempo} clean`);
        await expect.poll(() => serverOf(host()), { timeout: RESTART_LIMIT }).not.toBe(killed);
        await tempoIn(thirds, tempo).waitFor({ timeout: RESTART_LIMIT });
        await expect.poll(() => complaintIn(preview).textContent()).toBe("");
        const wrong = editor.locator(".squiggly-info");
        await expect.poll(() => wrong.count()).toBe(before);
        await page.keyboard.insertText(`\n  ${missing} major`);
        await expect.poll(() => wrong.count(), { timeout: RESTART_LIMIT }).toBe(before + 1);
        await page.keyboard.press("ArrowUp");
        await page.keyboard.press("End");
      }
      for (const line of [
        /^\s+D.minor,.thirds,.8ths.at.60.clean,.66.slips,.69.clean,.72.clean,.76.clean$/,
        /^\s+J#.major$/,
        /^\s+H#.major$/,
      ])
        await editor.locator(".view-line", { hasText: line }).waitFor();
      expect(readFileSync(join(host().folder, "march.practice"), "utf8")).not.toContain("69");
    },
  );
}

/** The process of the language server, once it runs. */
async function serverOf({ pid }: NodeHost): Promise<number> {
  let server: number | undefined;
  await expect
    .poll(() => (server = processBelow(pid, "dist/server/main.js")), { timeout: RESTART_LIMIT })
    .toBeDefined();
  return server!;
}
