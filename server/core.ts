// Everything but the two ways in. The language server loads it once `initialize` is answered, the command line at once: one
// bundle for both, `core.js`, which stands beside theirs (see `loadBundle`).
export { run } from "./cli/program.ts";
export * from "./lsp/handlers.ts";
