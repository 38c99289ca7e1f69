// The command line: `check` beside ledger in each hand, `history --json`, and ten years in a file a day beside one
// file.
import { spawnSync } from "node:child_process";
import { closeSync, existsSync, mkdirSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { MeasuringClient } from "./client.mjs";
import { journalFiles, journalText, ledgerText, WRITERS } from "./journal.mjs";
import { rounds } from "./measure.mjs";
import { TEN_YEARS } from "./servers.mjs";

const LEDGERS = ["/usr/bin/ledger", "/usr/local/bin/ledger", "/opt/homebrew/bin/ledger"];
const PROBE = fileURLToPath(new URL("process-probe.js", import.meta.url));

/** The whole of a command, by the clock: reading as many lines and saying what they hold. */
export async function compareCommands({ bundles, count, hands, table }) {
  await inFolder(async (folder) => {
    const ledger = LEDGERS.find(existsSync);
    const commands = new Map(hands.map((hand) => [hand, checkOf(bundles, folder, hand)]));
    if (ledger) commands.set("ledger", ledgerOf(ledger, folder));
    else table.note("check beside ledger: left out, ledger is not installed");
    if (hands.includes("usual")) {
      const path = join(folder, "usual", "journal.practice");
      commands.set("history", [process.execPath, bundles.cli, "history", path, "--json"]);
    }
    const time = async (command) => ({ time: clockOf(command, folder, table) });
    const { history, ledger: other, ...checks } = await rounds(count, commands, time);
    for (const [hand, check] of Object.entries(checks)) tellCheck(table, hand, check, checks.usual, other);
    if (history) table.ratio(`history --json, ${TEN_YEARS.lines} lines, beside a second`, history.time, 1000, 1);
  });
}

function tellCheck(table, hand, check, usual, ledger) {
  const options = { hand, figure: "check" };
  if (ledger) {
    const target = hand === "usual" ? 3 : undefined;
    table.ratio(
      `check beside ledger, ${TEN_YEARS.lines} lines each, ${hand}`,
      check.time,
      ledger.time,
      target,
      options,
    );
  }
  if (usual && hand !== "usual")
    table.ratio(`check beside the usual hand, ${hand}`, check.time, usual.time, 1.5, {
      hand,
      figure: "check of usual",
    });
}

function checkOf({ cli }, folder, name) {
  const file = join(folder, name, "journal.practice");
  mkdirSync(join(folder, name));
  writeFileSync(file, journalText({ ...TEN_YEARS, hand: WRITERS[name] }));
  return [process.execPath, cli, "check", file];
}

function ledgerOf(ledger, folder) {
  const accounts = join(folder, "accounts.ledger");
  writeFileSync(accounts, ledgerText(TEN_YEARS.lines));
  return [ledger, "-f", accounts, "bal"];
}

/** Ten years in a file a day and in one file: what the processor is used for. */
export async function compareFiles({ bundles, count, table }) {
  await inFolder(async (folder) => {
    const [one, many] = ["one", "many"].map((name) => join(folder, name));
    const files = journalFiles(TEN_YEARS);
    writeFiles(one, new Map([["journal.practice", journalText(TEN_YEARS)]]));
    writeFiles(many, files);
    const what = `ten years in ${files.size} files beside one file, processor time`;
    const folders = new Map(Object.entries({ one, many }));
    const checks = await rounds(count, folders, async (journal) => ({
      time: processorTimeOf([bundles.cli, "check", journal], folder, table),
    }));
    table.ratio(`${what}: check`, checks.many.time, checks.one.time, 1.5);
    const last = [...files.keys()].at(-1);
    const opened = new Map([
      ["one", { folder: one, file: "journal.practice" }],
      ["many", { folder: many, file: last }],
    ]);
    const servers = await rounds(count, opened, (each) => workspaceLife(bundles.daystave, each));
    table.ratio(`${what}: server, all files asked for`, servers.many.time, servers.one.time, 1.5);
    table.ratio("  the same, peak memory", servers.many.memory, servers.one.memory, undefined, { unit: "MiB" });
    table.note(`  files with diagnostics or without: ${servers.many.files} and ${servers.one.files}`);
  });
}

function writeFiles(folder, files) {
  mkdirSync(folder);
  for (const [name, text] of files) writeFileSync(join(folder, name), text);
}

/** A file opened, the whole workspace asked for, and the history read. */
async function workspaceLife(bundle, { folder, file }) {
  const client = await MeasuringClient.start(bundle, { folder });
  const path = join(folder, file);
  await client.open(readFileSync(path, "utf8"), pathToFileURL(path).href);
  const files = await client.workspaceDiagnostics();
  await client.rested();
  const result = { time: client.processorTime(), memory: client.peakMemory(), files };
  await client.stop();
  return result;
}

/** By the clock. What it prints goes into a file: to take 30 MB from a pipe would be our own time. */
function clockOf([command, ...args], folder, table, env = process.env) {
  const output = openSync(join(folder, "output"), "w");
  try {
    const began = performance.now();
    const { status, stderr } = spawnSync(command, args, { stdio: ["ignore", output, "pipe"], encoding: "utf8", env });
    const time = performance.now() - began;
    if (status === null || status > 1) table.note(`${command} ended with ${status}: ${stderr.slice(0, 200)}`);
    return time;
  } finally {
    closeSync(output);
  }
}

function processorTimeOf(args, folder, table) {
  return usedBy(args, folder, table).time;
}

/** What a command took: processor time in milliseconds, and memory at its peak in mebibytes; none if it was ended. */
export function usedBy(args, folder, table) {
  const file = join(folder, "used");
  const env = { ...process.env, DAYSTAVE_BENCH_USED: file };
  clockOf([process.execPath, "--require", PROBE, ...args], folder, table, env);
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : { time: Number.NaN, memory: Number.NaN };
}

export async function inFolder(use) {
  const folder = mkdtempSync(join(tmpdir(), "daystave-bench-"));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
