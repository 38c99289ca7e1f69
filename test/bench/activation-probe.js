// Runs inside an editor, as the test bundle that it starts with: prints when what happened while our extension was activated.
const { extensions, Uri, window, workspace } = require("vscode");

const EXTENSION = "daystave-dev.daystave";
/** So long after the window's own start there is little left of it, in milliseconds. */
const REST = 4_000;
const LIMIT = 30_000;
const BARE_STARTS = 5;

/** Where no journal is open yet, one is opened once the window has come to rest. */
exports.run = async () => {
  const extension = extensions.getExtension(EXTENSION);
  if (window.activeTextEditor?.document.languageId !== "practice-journal") {
    await pause(REST);
    await window.showTextDocument(Uri.joinPath(workspace.workspaceFolders[0].uri, "week.practice"));
  }
  for (const until = Date.now() + LIMIT; !extension.isActive; await pause(20))
    if (Date.now() > until) throw new Error(`${EXTENSION} was not activated in ${LIMIT} ms.`);
  await pause(100); // the editor sets its last mark after it
  const told = Object.fromEntries(marks());
  await pause(REST);
  const bare = [];
  for (let i = 0; i < BARE_STARTS; i++) bare.push(await bareStart(extension.extensionUri));
  console.log(`[bench] ${JSON.stringify({ ...told, bare })}`);
};

/** From the call that starts another server like ours, and asks it at once, to its answer to `initialize`, in milliseconds. */
async function bareStart(extensionUri) {
  const started = performance.now();
  const server = globalThis.Worker ? inWorker(extensionUri) : inProcess(extensionUri);
  server.ask({
    jsonrpc: "2.0",
    id: 0,
    method: "initialize",
    params: { processId: null, rootUri: null, capabilities: {} },
  });
  await server.answered;
  const took = performance.now() - started;
  server.end();
  return took;
}

function inWorker(extensionUri) {
  const worker = new Worker(Uri.joinPath(extensionUri, "dist/server/main.browser.js").toString(true));
  const answered = new Promise((resolve) => {
    worker.onmessage = ({ data }) => data.id === 0 && "result" in data && resolve();
  });
  return { answered, ask: (message) => worker.postMessage(message), end: () => worker.terminate() };
}

function inProcess(extensionUri) {
  const module = Uri.joinPath(extensionUri, "dist/server/main.js").fsPath;
  const server = require("node:child_process").spawn(process.execPath, [module, "--stdio"]);
  const answered = new Promise((resolve) =>
    server.stdout.on("data", (data) => String(data).includes('"result"') && resolve()),
  );
  const ask = (message) => {
    const text = JSON.stringify(message);
    server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  };
  return { answered, ask, end: () => server.kill() };
}

/** Names and times in milliseconds. In Node the editor keeps its marks itself, in whole milliseconds; in a browser, where everybody does. */
function marks() {
  const { timeOrigin } = performance;
  const standard = performance
    .getEntriesByType("mark")
    .map(({ name, startTime }) => ({ name, time: timeOrigin + startTime }));
  const own = globalThis.MonacoPerformanceMarks?.getMarks() ?? [];
  return [...own.map(({ name, startTime }) => ({ name, time: startTime })), ...standard]
    .filter(({ name }) => name.startsWith("daystave/") || name.endsWith(`/${EXTENSION}`))
    .map(({ name, time }) => [name.split("/").findLast((part) => /^(will|did)/.test(part)), time]);
}

function pause(time) {
  return new Promise((resolve) => setTimeout(resolve, time));
}
