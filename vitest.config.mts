import { configDefaults, defineConfig } from "vitest/config";

const HOSTS = "test/hosts/**/*.test.ts";
const PROTOCOL = "test/lsp/**/*.test.ts";

export default defineConfig({
  test: {
    projects: [
      /** Everything that needs no build: `npm run check`. */
      {
        test: {
          name: "core",
          include: ["test/**/*.test.ts"],
          exclude: [...configDefaults.exclude, HOSTS, PROTOCOL],
        },
      },
      /** The built server with a real client over stdio. */
      { test: { name: "lsp", include: [PROTOCOL], testTimeout: 20_000, hookTimeout: 20_000 } },
      /** Real editors, one at a time: two at once starve each other of processor time and miss their limits. */
      {
        test: {
          name: "hosts",
          include: [HOSTS],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
