import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { describe, expect, test } from "vitest";
import { bundleServer } from "../lsp/server-bundle.ts";
import scales from "../reference/scales.json";
import { temporaryFolder } from "../support/temporary-folder.ts";

/** The recipe, word for word. */
const RECIPE = /```lua\n([\s\S]*?)```/.exec(readFileSync("README.md", "utf8"))![1]!;
const VERSION = /^NVIM v(\d+)\.(\d+)/.exec(spawnSync("nvim", ["--version"], { encoding: "utf8" }).stdout ?? "");
const IS_OLD = VERSION?.[1] === "0" && Number(VERSION[2]) < 8;

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const SHARP = scales.major.find(({ tonic }) => tonic === "F#")!.scales.major.up.map((note) => note.replace(/\d$/, ""));

/** Invented. The declaration stands in the folder above, which the recipe must find. */
const JOURNAL = {
  "journal.practice": 'instrument alto recorder\npiece "Ground in G" as Ground: G minor, 64 bars\n',
  "2026/week.practice": `2026-03-02 Mon
  ${["F# major:", ...SHARP.slice(0, 6), "F", "F#"].join(" ")}
  Ground, bars 1-8, at 54 clean
  D melodic minor, thirds, 8ths at 66 clean
`,
};

interface Result {
  readonly failure?: string;
  readonly filetype: string;
  readonly diagnostic: { readonly code: string; readonly line: number };
  readonly actions: readonly string[];
  readonly mended: string;
  readonly hover: string;
  readonly completion: readonly string[];
}

/** Opens the journal's week in Neovim with the recipe as its whole configuration, and tells what `neovim.lua` met there. */
async function inNeovim(): Promise<Result> {
  const server = await bundleServer("node");
  const folder = temporaryFolder({
    ...JOURNAL,
    "init.lua": RECIPE,
    "bin/daystave": { linkTo: commandLineBeside(server) },
  });
  const here = import.meta.dirname;
  const before = IS_OLD ? ["--cmd", `luafile ${here}/neovim-0.7.lua`] : [];
  const configuration = ["-u", join(folder, "init.lua"), "-i", "NONE"];
  const { stdout, stderr } = spawnSync(
    "nvim",
    ["--headless", ...before, ...configuration, "-c", `luafile ${here}/neovim.lua`, "2026/week.practice"],
    {
      cwd: folder,
      encoding: "utf8",
      timeout: 40_000,
      env: {
        ...process.env,
        PATH: [join(folder, "bin"), process.env["PATH"]].join(delimiter),
        HOME: folder,
        XDG_CONFIG_HOME: join(folder, "config"),
        XDG_DATA_HOME: join(folder, "data"),
        XDG_STATE_HOME: join(folder, "state"),
        XDG_CACHE_HOME: join(folder, "cache"),
        DAYSTAVE_RESULT: join(folder, "result.json"),
      },
    },
  );
  const result = join(folder, "result.json");
  return existsSync(result) ? JSON.parse(readFileSync(result, "utf8")) : { failure: stdout + stderr };
}

function commandLineBeside(server: string): string {
  const path = server.replace(/main\.js$/, "cli.js");
  chmodSync(path, 0o755);
  return path;
}

describe.skipIf(!VERSION)(`Neovim, ${VERSION?.[0] ?? "which is not installed: nvim is not on the path"}`, () => {
  test("with the README's recipe checks, mends, explains and completes", async () => {
    const { failure, filetype, diagnostic, actions, mended, hover, completion } = await inNeovim();
    expect(failure).toBeUndefined();
    expect(filetype).toBe("practice-journal");
    expect(diagnostic).toMatchObject({ code: "scale-spelling", line: 2 });
    expect(actions[0]).toContain("E#");
    expect(mended).toBe(`  F# major: ${SHARP.join(" ")}`);
    expect(hover).toContain("8ths at 66");
    expect(completion).toContain("thirds");
  });
});
