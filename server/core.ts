// Everything but the two ways in, the language server's and the command line's: one bundle, `core.js`, for a package
// that has both (see `loadBundle`).
export { run } from "./cli/program.ts";

/** What the server needs, made ready only when it is asked for. */
export const handlers = () => import("./lsp/handlers.ts");
