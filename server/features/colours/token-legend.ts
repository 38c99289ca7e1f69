// By itself, so that `initialize` can be answered before the rest of the core is loaded.

/** Token types of the protocol's own list (LSP 3.17, `SemanticTokenTypes`): every theme colours them. */
export const TOKEN_TYPES = [
  "comment",
  "namespace",
  "keyword",
  "type",
  "variable",
  "function",
  "parameter",
  "decorator",
  "number",
  "enumMember",
  "string",
  "property",
  "class",
  "operator",
] as const;

/**
 * `declaration` is the protocol's own, on a name where it is declared. `planned` is ours, on what counts for nothing
 * yet: a legend may hold any name, and an editor that does not know one leaves it out.
 */
export const TOKEN_MODIFIERS = ["declaration", "planned"] as const;

export type TokenType = (typeof TOKEN_TYPES)[number];
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];
