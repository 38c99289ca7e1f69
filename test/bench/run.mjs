// npm run bench [-- --rounds N] [--only servers|commands|editor]: what Daystave costs beside a language server that does
// nothing, beside ledger, and in an editor's window. Reports, never fails.
import { spawnSync } from "node:child_process";
import { closeSync, existsSync, mkdtempSync, openSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { bundleAll } from "./bundle.mjs";
import { measureEditor } from "./editor.mjs";
import { journalText, ledgerText } from "./journal.mjs";
import { median, rounds } from "./measure.mjs";

const TEN_YEARS = 44_000;
const ONE_YEAR = 4_400;
const { rounds: wanted, only } = parseArgs({
  options: { rounds: { type: "string", default: "5" }, only: { type: "string" } },
}).values;
const count = Math.max(5, Number(wanted) || 5);
const has = (part) => only === undefined || only === part;

const bundles = await bundleAll();
const table = [];

if (has("servers")) {
  await compareServers();
  await compareDiagnostics();
}
if (has("commands")) compareCommandLine();
if (has("editor")) await compareEditor();
print();

async function compareServers() {
  const ten = journalText({ lines: TEN_YEARS, wrong: 100 });
  const one = journalText({ lines: ONE_YEAR, wrong: 10, from: "2025-01-06" });
  const { ours, empty, year } = await rounds(count, [
    { name: "ours", bundle: bundles.daystave, text: ten },
    { name: "empty", bundle: bundles.empty, text: ten },
    { name: "year", bundle: bundles.daystave, text: one },
  ]);
  console.log(
    `Ten years: ${TEN_YEARS} lines, ${ours.count} diagnostics. One year: ${ONE_YEAR} lines, ${year.count} diagnostics. Medians of ${count} rounds.`,
  );
  row("keystroke to diagnostics, ten years, beside the empty server", ours.keystroke, empty.keystroke, 1.0);
  row("keystroke to diagnostics, ten years beside one year", ours.keystroke, year.keystroke, 1.5);
  row("start to initialize, beside the empty server", ours.start, empty.start, 1.3);
  row("first diagnostics of the whole file, beside the empty server", ours.first, empty.first, 4);
  row("completion after a keystroke, beside the empty server", ours.completion, empty.completion, 1.5);
  row("hover once the history is read, beside the empty server", ours.hover, empty.hover, 2);
  row("peak memory, beside the empty server", ours.memory, empty.memory, 2, "MiB");
}

async function compareDiagnostics() {
  for (const wrong of [0, 500, 1000]) {
    const text = journalText({ lines: TEN_YEARS, wrong });
    const { ours, empty } = await rounds(3, [
      { name: "ours", bundle: bundles.daystave, text },
      { name: "empty", bundle: bundles.empty, text },
    ]);
    row(
      `keystroke, ${wrong} wrong lines (${ours.count} diagnostics), beside the empty server`,
      ours.keystroke,
      empty.keystroke,
      1.0,
    );
  }
}

/** The whole of a command: reading as many lines and saying what they hold. */
function compareCommandLine() {
  const ledger = ["/usr/bin/ledger", "/usr/local/bin/ledger", "/opt/homebrew/bin/ledger"].find(existsSync);
  if (!ledger) {
    note("check beside ledger: left out, ledger is not installed");
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), "daystave-bench-"));
  try {
    const journal = join(folder, "journal.practice");
    const accounts = join(folder, "accounts.ledger");
    writeFileSync(journal, journalText({ lines: TEN_YEARS, wrong: 100 }));
    writeFileSync(accounts, ledgerText(TEN_YEARS));
    const times = { ours: [], ledger: [] };
    for (let round = 0; round < count; round++) {
      times.ours.push(timeOf(process.execPath, [bundles.cli, "check", journal], folder));
      times.ledger.push(timeOf(ledger, ["-f", accounts, "bal"], folder));
    }
    row(`check beside ledger, ${TEN_YEARS} lines each`, median(times.ours), median(times.ledger), 1.5);
    const history = Array.from({ length: count }, () =>
      timeOf(process.execPath, [bundles.cli, "history", journal, "--json"], folder),
    );
    row(`history --json, ${TEN_YEARS} lines, beside a second`, median(history), 1000, 1);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A part that breaks, as where an editor does not start, is named in the table; the rest is reported all the same. */
async function compareEditor() {
  await measureEditor(count, { tell: lone, note }).catch((error) =>
    note(`in an editor: ended early, ${error.message}`),
  );
}

/** What it prints goes into a file: to take 30 MB from a pipe would be our own time. */
function timeOf(command, args, folder) {
  const output = openSync(join(folder, "output"), "w");
  try {
    const began = performance.now();
    const { status, stderr } = spawnSync(command, args, { stdio: ["ignore", output, "pipe"], encoding: "utf8" });
    const time = performance.now() - began;
    if (status === null || status > 1) note(`${command} ended with ${status}: ${stderr.slice(0, 200)}`);
    return time;
  } finally {
    closeSync(output);
  }
}

function row(what, ours, other, target, unit = "ms") {
  table.push([
    what,
    `${figure(ours)} ${unit}`,
    `${figure(other)} ${unit}`,
    figure(ours / other),
    `≤ ${target}`,
    ours / other <= target ? "pass" : "miss",
  ]);
}

/** A figure with a target of its own, or with none; another one may stand beside it. */
function lone(what, value, { unit = "", target, other }) {
  const withUnit = (of) => (unit ? `${figure(of)} ${unit}` : String(of));
  const verdict = target === undefined ? "" : value <= target ? "pass" : "miss";
  const aim = target === undefined ? "" : `≤ ${`${target} ${unit}`.trim()}`;
  table.push([what, withUnit(value), other === undefined ? "" : withUnit(other), "", aim, verdict]);
}

function note(what) {
  table.push([what]);
}

function figure(value) {
  return value.toFixed(value < 10 ? 2 : 0);
}

function print() {
  const rows = [["", "Daystave", "other", "ratio", "target", ""], ...table];
  const figures = rows.filter((cells) => cells.length > 1);
  const widths = figures[0].map((_, column) => Math.max(...figures.map((cells) => cells[column].length)));
  for (const cells of rows) {
    console.log(
      cells.map((cell, column) => (column ? cell.padStart(widths[column]) : cell.padEnd(widths[column]))).join("  "),
    );
  }
}
