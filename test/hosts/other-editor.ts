import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import { chmodSync, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { expect } from "vitest";
import { bundleServer } from "../lsp/server-bundle.ts";
import scales from "../reference/scales.json";
import { type Files, temporaryFolder } from "../support/temporary-folder.ts";

/** Milliseconds. */
const LIMIT = 40_000;

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const SHARP = scales.major.find(({ tonic }) => tonic === "F#")!.scales.major.up.map((note) => note.replace(/\d$/, ""));

/** Invented. The declaration stands in the folder above, which a recipe must find: else the piece is not known either. */
const JOURNAL = {
  "journal.practice": 'instrument alto recorder\npiece "Ground in G" as Ground: G minor, 64 bars\n',
  "2026/week.practice": `2026-03-02 Mon
  ${["F# major:", ...SHARP.slice(0, 6), "F", "F#"].join(" ")}
  Ground, bars 1-8, at 54 clean
  D melodic minor, thirds, 8ths at 66 clean
`,
};

/** A page's recipe, word for word, as the file that is the editor's whole configuration. */
export function recipeIn(language: keyof typeof RECIPES): Recipe {
  const page = readFileSync("syntaxes/OTHER-EDITORS.md", "utf8");
  const [, text] = new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(page)!;
  return { name: RECIPES[language], text: text! };
}

const RECIPES = {
  lua: "init.lua",
  elisp: "init.el",
  xml: "DATA/org.kde.syntax-highlighting/syntax/practice-journal.xml",
  json: "CONFIG/kate/lspclient/settings.json",
} as const;

interface Recipe {
  readonly name: string;
  readonly text: string;
}

/** What a command answers to `--version`; undefined where it is not installed. */
export function versionOf(command: string, environment: NodeJS.ProcessEnv = {}): string | undefined {
  const env = { ...process.env, ...environment };
  return spawnSync(command, ["--version"], { encoding: "utf8", env }).stdout?.split("\n")[0];
}

/**
 * Lets an editor open the journal's week, with `daystave` on its path and a home of its own.
 *
 * @param argumentsWith what to call it with, given the recipe's file. Its script leaves its result, as JSON, in the
 *   file that DAYSTAVE_RESULT names.
 */
export async function inEditor(
  command: string,
  recipe: Recipe,
  argumentsWith: (file: string) => string[],
): Promise<unknown> {
  const folder = folderWith({ [recipe.name]: recipe.text, "bin/daystave": { linkTo: await bundledCommand() } });
  const result = join(folder, "result.json");
  const ran = spawnSync(command, argumentsWith(join(folder, recipe.name)), {
    cwd: folder,
    encoding: "utf8",
    timeout: LIMIT,
    env: { ...environmentIn(folder), DAYSTAVE_RESULT: result },
  });
  return existsSync(result) ? JSON.parse(readFileSync(result, "utf8")) : { failure: saidBy(ran) };
}

/** The command line, built for this test. */
export async function bundledCommand(): Promise<string> {
  const daystave = (await bundleServer("node")).replace(/main\.js$/, "cli.js");
  chmodSync(daystave, 0o755);
  return daystave;
}

/** A folder with the journal and more files. */
export function folderWith(files: Files): string {
  return temporaryFolder({ ...JOURNAL, ...files });
}

/** A home of its own in a folder, and the commands in `bin` before all others. */
export function environmentIn(folder: string): NodeJS.ProcessEnv {
  return {
    ...process.env,
    PATH: [join(folder, "bin"), process.env["PATH"]].join(delimiter),
    HOME: folder,
    ...Object.fromEntries(["CONFIG", "DATA", "STATE", "CACHE"].map((kind) => [`XDG_${kind}_HOME`, join(folder, kind)])),
  };
}

/** What an editor's own script, beside its test, should have met there. */
export const EVERYTHING = {
  /** What the editor took the file for. */
  type: expect.stringMatching(/^practice-journal(-mode)?$/),
  diagnostic: { message: expect.stringContaining("F# major has E#, not F"), line: 2 },
  /** What was offered to mend it, and the line after that was taken. */
  actions: ["Change F to E#", 'Respell as "Gb major"'],
  mended: `  F# major: ${SHARP.join(" ")}`,
  /** On the exercise of the last line. */
  hover: expect.stringContaining("D E F G A B C# D, down C Bb A G F E D; one flat."),
  /** After `Eb major, thi`. */
  completion: expect.arrayContaining(["thirds"]),
  /** With what the editor makes a remark. */
  remark: "-- %s",
  /** The last line after each of the two keys: today's, and the exercise with a tempo, which bears on the day of the test. */
  begun: expect.stringMatching(/^\d{4}-\d{2}-\d{2} \w{3}$/),
  faster: expect.stringMatching(/^ *D melodic minor, thirds, 8ths at \d+$/),
};

function saidBy({ stdout, stderr, error }: SpawnSyncReturns<string>): string {
  return `${error?.message ?? ""}\n${stdout}${stderr}`;
}
