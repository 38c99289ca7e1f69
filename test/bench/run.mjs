// npm run bench [-- --rounds N] [--only PART,…] [--hands NAME,…]: what Daystave costs beside a language server that
// does nothing, beside ledger, with very many files and edits, and in an editor's window. Reports, never fails.
import { parseArgs } from "node:util";
import { bundleAll } from "./bundle.mjs";
import { compareCommands, compareFiles } from "./commands.mjs";
import { measureEditor } from "./editor.mjs";
import { compareLongDay, heapAfterEdits } from "./edits.mjs";
import { WRITERS } from "./journal.mjs";
import { measureLarge } from "./large.mjs";
import { compareDiagnostics, compareServers } from "./servers.mjs";
import { Table } from "./table.mjs";

const { values } = parseArgs({
  options: { rounds: { type: "string", default: "5" }, only: { type: "string" }, hands: { type: "string" } },
});
const count = Math.max(1, Math.floor(Number(values.rounds)) || 5);
const table = new Table();
const hands = namesIn(values.hands, Object.keys(WRITERS));
const bundles = await bundleAll();
const measured = { bundles, count, hands, table };

const PARTS = {
  servers: () => compareServers(measured),
  diagnostics: () => compareDiagnostics(measured),
  commands: () => compareCommands(measured),
  files: () => compareFiles(measured),
  day: () => compareLongDay(measured),
  large: () => measureLarge(measured),
  edits: () => heapAfterEdits(measured),
  editor: () => measureEditor(count, { tell: (...row) => table.lone(...row), note: (what) => table.note(what) }),
};

for (const part of namesIn(values.only, Object.keys(PARTS))) {
  // A part that breaks, as where an editor does not start, is named in the table; the rest is reported all the same.
  await PARTS[part]().catch((error) => table.note(`${part}: ended early, ${error.message}`));
}
console.log(`Medians of ${count} rounds.`);
console.log(String(table));

/** Those that are asked for, in their usual order; all where none is. What there is not is told, and left out. */
function namesIn(asked, known) {
  if (asked === undefined) return known;
  const wanted = asked.split(",");
  const unknown = wanted.filter((name) => !known.includes(name));
  if (unknown.length > 0) table.note(`not known: ${unknown.join(", ")}; there are ${known.join(", ")}`);
  return known.filter((name) => wanted.includes(name));
}
