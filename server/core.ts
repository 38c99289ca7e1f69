// Everything but the two ways in, the language server's and the command line's: one bundle for both, `core.js`, which
// stands beside theirs (see `loadBundle`).
export { run } from "./cli/program.ts";
export * from "./lsp/handlers.ts";
