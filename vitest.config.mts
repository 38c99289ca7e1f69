import { availableParallelism } from "node:os";
import { configDefaults, defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification, type VitestPluginContext } from "vitest/node";
import { textModules, vitePluginIn } from "./client/packaging/languages.mjs";

const HOSTS = "test/hosts/**/*.test.ts";
const PROTOCOL = "test/lsp/**/*.test.ts";
/** The core that speaks German. */
const GERMAN = "test/german/**/*.test.ts";
/** The built pages in German, filled by it. */
const GERMAN_PAGES = "test/german/page/**/*.test.ts";
/** What looks at very many cases and takes its time. */
const THOROUGH = [
  "test/properties/**/*.test.ts",
  "test/history/simulation/**/*.test.ts",
  "test/plan/simulation/**/*.test.ts",
  "test/checks/notes/note-list-*.test.ts",
  "test/reference-journals/hands.test.ts",
  "test/reference-journals/natural/shares.test.ts",
  "test/journal/without-body.test.ts",
  "test/history/whole-piece.test.ts",
  "test/plan/lesson.test.ts",
  "test/scores/music-xml.test.ts",
  "test/client/package.test.ts",
  "test/cli/list/list.test.ts",
  "test/cli/bundle.test.ts",
  "test/cli/installed.test.ts",
  "test/cli/schemas.test.ts",
  "test/cli/processes/**/*.test.ts",
  "test/features/ceiling.test.ts",
  "test/features/commands/{change-names,take-out-plan}.test.ts",
  "test/features/completion/completion.test.ts",
  "test/features/diagnostics/{counted,asked-fixes}.test.ts",
  "test/features/layout/formatting.test.ts",
  "test/features/preview/exercises.test.ts",
  "test/syntaxes/grammar.test.ts",
];

/**
 * Modules keep no state of their own (test/architecture/purity.test.ts), so that test files may share them: loading them for
 * each took most of the time. Said to each project, as a project takes nothing over from the whole.
 */
const SHARED_MODULES = { isolate: false };

/** Random properties are tried on more cases when this says so, and take as much longer. */
const TIMES = Math.max(1, Number(process.env["DAYSTAVE_RUNS"] ?? 1));
const RANDOM = { setupFiles: ["test/support/random-runs.ts"] };

/**
 * What Vite makes of a module is kept from run to run, by the module's text and the names of the plugins; in German it
 * depends on which texts there are in German as well.
 */
const KEPT = { experimental: { fsModuleCache: true } };
const texts = textModules(["server", "shared", "client"]).join();
const keptByTexts = {
  name: "kept-by-texts",
  configureVitest: (context: VitestPluginContext) => context.experimental_defineCacheKeyGenerator(() => texts),
};
const inGerman = [vitePluginIn("de"), keptByTexts];

/** What needs a browser or an editor: two at once, on two cores, as each waits for half of its time. */
const TWO_AT_A_TIME = {
  testTimeout: 240_000, // several waits in a row, of which each has a limit of its own
  hookTimeout: 120_000,
  maxWorkers: Math.min(2, availableParallelism()),
  expect: { poll: { timeout: 20_000 } }, // what an editor does shows a moment later, on a busy machine more than the usual second
  sequence: { groupOrder: 1 },
};

/** In full it takes two minutes by itself: begun last, all else would be done long before. */
const LONGEST = /test\/plan\/simulation\/twelve-weeks/;

/** As usual, but the longest first; how long a file took in its last run nobody knows on a clean clone. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLongest = ({ moduleId }: TestSpecification) => LONGEST.test(moduleId);
    return [...sorted.filter(isLongest), ...sorted.filter((file) => !isLongest(file))];
  }
}

export default defineConfig({
  test: {
    ...KEPT,
    maxWorkers: availableParallelism(),
    sequence: { sequencer: LongestFirst },
    projects: [
      /** Everything that needs no build: `npm run check`. */
      {
        test: {
          ...SHARED_MODULES,
          ...RANDOM,
          name: "core",
          include: ["test/**/*.test.ts"],
          exclude: [...configDefaults.exclude, HOSTS, PROTOCOL, GERMAN, ...THOROUGH],
          testTimeout: 60_000 * TIMES, // a machine may be busy: tests do not time
        },
      },
      {
        plugins: inGerman,
        test: {
          ...SHARED_MODULES,
          name: "german",
          include: [GERMAN],
          exclude: [...configDefaults.exclude, GERMAN_PAGES],
          testTimeout: 60_000 * TIMES,
        },
      },
      { test: { ...SHARED_MODULES, ...RANDOM, name: "thorough", include: THOROUGH, testTimeout: 60_000 * TIMES } },
      /** A real client, with the built server over stdio, or with one in its own process where that is not tested. */
      { test: { ...SHARED_MODULES, name: "lsp", include: [PROTOCOL], testTimeout: 20_000, hookTimeout: 20_000 } },
      /** Real editors, and pages alone. */
      { test: { ...SHARED_MODULES, ...TWO_AT_A_TIME, name: "hosts", include: [HOSTS] } },
      {
        plugins: inGerman,
        test: { ...SHARED_MODULES, ...TWO_AT_A_TIME, name: "german-pages", include: [GERMAN_PAGES] },
      },
    ],
  },
});
