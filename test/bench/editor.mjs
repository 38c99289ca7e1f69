// The editor's part of the benchmark: what the extension costs in a window of the browser workbench that `npm start`
// serves, and in an editor that runs extensions in Node. Figures of a machine with other work to do differ much:
// hence medians.
import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { isBuilt } from "../../client/workbench/built.mjs";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { serveWorkbench } from "../../client/workbench/serve.mjs";
import { activation, browserHost, extensionAlone, nodeHost } from "./activation.mjs";
import { journalText } from "./journal.mjs";
import { median } from "./measure.mjs";
import { TimedWindow } from "./window.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const SAMPLE = "out/bench/ten-years";
const LINES = 44_000;
const WEEK = 7 * 86_400_000;
/** What is typed: 43 characters. */
const TYPED = ", 88 clean, 92 nearly, 96 clean, 100 slips";

/**
 * Measures all of it and gives the figures to `tell`, one row each: what, a figure, its unit, its target if there is
 * one, and a figure beside it if there is one.
 */
export async function measureEditor(count, { tell, note }) {
  const executablePath = findChromium();
  if (!executablePath) return note("in an editor: left out, there is no Chromium");
  if (!isBuilt() && spawnSync(process.execPath, ["build.mjs"], { cwd: ROOT, stdio: "inherit" }).status !== 0)
    return note("in an editor: left out, the extension does not build");
  const browser = await chromium.launch({ executablePath, args: launchArguments });
  try {
    await activations(browser, count, { tell, note });
    await windows(browser, count, tell);
  } finally {
    await browser.close();
  }
}

/**
 * Once the window has come to rest, and while it starts, when the extension shares the processor with everything else.
 */
async function activations(browser, count, report) {
  const extension = await extensionAlone();
  for (const [where, start] of [
    ["browser", browserHost],
    ["Node", nodeHost],
  ]) {
    for (const [when, open] of [
      ["in a window at rest", "other.txt"],
      ["while the window starts", "week.practice"],
    ]) {
      const host = await start(open);
      const other = host && (await start(open, extension));
      if (!host) {
        report.note("activation in Node: left out, .hosts/ holds no such editor (test/hosts/install-hosts.sh)");
        break;
      }
      const all = { ours: [], alone: [] };
      try {
        for (let round = 0; round < count; round++) {
          const order = [
            [all.ours, host],
            [all.alone, other],
          ];
          for (const [of, each] of round % 2 ? order.reverse() : order) of.push(await activation(browser, each));
        }
      } finally {
        await Promise.all([host.close(), other.close()]);
      }
      tellActivation(`${where}, ${when}`, all, report);
    }
  }
}

function tellActivation(where, { ours, alone }, { tell, note }) {
  const medianOf = (all, figure) => median(all.map((each) => each[figure]));
  const of = (figure) => medianOf(ours, figure);
  tell(`activation beyond the server's start, ${where}`, of("total"), { unit: "ms", target: 100 });
  const whole = (all) => median(all.map(({ total, waiting }) => total + waiting));
  const ratio = (one, other) => (one / other).toFixed(2);
  note(
    `  beside the language client alone: all of it with the server's start ${ratio(whole(ours), whole(alone))} ` +
      `(${whole(ours).toFixed(0)} and ${whole(alone).toFixed(0)} ms; 1.15 wanted), without ` +
      `${ratio(of("total"), medianOf(alone, "total"))} (${medianOf(alone, "total").toFixed(0)} ms alone)`,
  );
  const part = (what, time) => `${what} ${time.toFixed(0)} ms`;
  const parts = [
    part("reading and running the code", of("reading") + of("loading")),
    part("up to the question to the server", of("before")),
    part("from its answer on", of("after")),
  ];
  const beside = [part("the server's start", of("waiting")), part("the code's way over HTTP", of("fetching"))];
  note(`  of that ${parts.join(", ")}; not in that ${beside.join(", ")}`);
}

/**
 * The preview drawn, and typing: with it, without it, and in the same text as plain text, where nothing of ours runs.
 */
async function windows(browser, count, tell) {
  const { line } = writeSample();
  const serve = (file) => serveWorkbench({ port: 0, sample: SAMPLE, open: [file] });
  const hosts = { journal: await serve("ten-years.practice"), plain: await serve("ten-years.txt") };
  const all = { preview: [], closed: [], plain: [] };
  const measure = {
    preview: (window) => withPreview(window, line),
    closed: (window) => typing(window, line),
    plain: (window) => typing(window, line),
  };
  try {
    for (let round = 0; round < count; round++) {
      const order = Object.keys(all);
      for (const kind of round % 2 ? order.reverse() : order) {
        const window = await TimedWindow.open(browser, hosts[kind === "plain" ? "plain" : "journal"].url);
        all[kind].push(await measure[kind](window).finally(() => window.close()));
      }
    }
  } finally {
    await Promise.all(Object.values(hosts).map((host) => host.close()));
  }
  const of = (kind, figure) => median(all[kind].map((each) => each[figure]));
  tell("preview of ten years drawn, history not read yet", of("preview", "cold"), { unit: "ms", target: 1_500 });
  tell("preview of ten years drawn again", of("preview", "warm"), { unit: "ms", target: 1_500 });
  for (const { figure, what, ...options } of [
    { figure: "during", what: "long tasks while typing", target: 0 },
    { figure: "longest", what: "the longest of those", unit: "ms" },
    { figure: "after", what: "long tasks in 1.5 s after it" },
  ]) {
    const other = of("plain", figure);
    tell(`${what}, preview open, beside plain text`, of("preview", figure), { ...options, other });
    tell(`${what}, preview closed, beside plain text`, of("closed", figure), { ...options, other });
  }
  tell("long tasks of the preview's page while typing", of("preview", "ofPage"), { target: 0 });
}

async function withPreview(window, line) {
  const cold = await window.timeToPreview(() => window.diagnosed());
  await window.rested();
  await window.closePreview();
  await window.rested();
  const warm = await window.timeToPreview();
  await window.rested();
  return { cold, warm, ...(await typing(window, line)) };
}

/**
 * Long tasks, of 50 ms and more: how many, the longest of them in milliseconds, and how many were the preview page's.
 */
async function typing(window, line) {
  const { during, after } = await window.tasksWhileTyping(line, TYPED);
  return {
    during: during.length,
    longest: Math.max(0, ...during.map(({ duration }) => duration)),
    after: after.length,
    ofPage: during.filter(({ name }) => name === "same-origin-descendant").length,
  };
}

/** Ten years up to this week, as a journal and as plain text. Returns the last exercise line, counted from 1. */
function writeSample() {
  const early = journalText({ lines: LINES, wrong: 100 });
  const last = Date.parse(early.match(/^\d{4}-\d\d-\d\d/gm).at(-1));
  const first = Date.parse(early.match(/^\d{4}-\d\d-\d\d/m)[0]);
  const from = new Date(first + Math.floor((Date.now() - last) / WEEK) * WEEK).toISOString().slice(0, 10);
  const text = journalText({ lines: LINES, wrong: 100, from });
  mkdirSync(join(ROOT, SAMPLE), { recursive: true });
  for (const file of ["ten-years.practice", "ten-years.txt"]) writeFileSync(join(ROOT, SAMPLE, file), text);
  return { line: text.split("\n").findLastIndex((each) => /^ {2}[A-G][#b]? m.* at \d/.test(each)) + 1 };
}
