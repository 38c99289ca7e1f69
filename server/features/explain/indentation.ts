/** One step of indentation, as formatting has it. */
export const INDENT = "  ";
