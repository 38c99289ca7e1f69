/** What stands beside lines of a journal, and where they lead; tables of them. */
export const lineTexts = {
  set: "set",
  said: "said",
  ask: "ask",
  workedLast: "worked last",
  goToLine: (what: string) => `${what}: go to its line`,
  ofDay: (what: string, day: string) => `${what}, ${day}`,
  goToLastLine: "Go to the last line",
  goToLastLineOf: (name: string) => `Go to the last line: ${name}`,
  /** The button that shows all rows of a table, whose first column has this head: `week of` makes weeks. */
  allRows: (count: number, head: string) => `All ${count} ${head.split(" ")[0]}s`,
};
