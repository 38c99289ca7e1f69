// The lines of invented players (test/reference/README.md) that are not read as they were meant, or the shares that are.
//   node test/reference-journals/misses.mjs                     the shares, for each player and for all
//   node test/reference-journals/misses.mjs a3                  the misses of one player, or of a, b, all, new
//   node test/reference-journals/misses.mjs new read tempos     of some figures alone
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const [asked = "", ...figures] = process.argv.slice(2);
const here = import.meta.dirname;
const folder = mkdtempSync(join(tmpdir(), "misses-"));
try {
  const outfile = join(folder, "misses.mjs");
  await build({
    entryPoints: [join(here, "natural/misses.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
  const { missesText } = await import(pathToFileURL(outfile).href);
  process.stdout.write(missesText(asked, figures, join(here, "../reference")));
} finally {
  rmSync(folder, { recursive: true });
}
