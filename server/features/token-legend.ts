// placeholder
// By itself, so that `initialize` can be answered before the rest of the core is loaded.
export const TOKEN_TYPES: readonly string[] = [];
export const TOKEN_MODIFIERS: readonly string[] = [];
