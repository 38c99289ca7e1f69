// Runs inside an editor, as the test bundle that it starts with: prints when what happened while our extension was
// activated.
const { extensions, Uri, window, workspace } = require("vscode");

const EXTENSION = "daystave-dev.daystave";
/** So long after the window's own start there is little left of it, in milliseconds. */
const REST = 4_000;
const LIMIT = 30_000;

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
  console.log(`[bench] ${JSON.stringify(Object.fromEntries(marks()))}`);
};

/**
 * Names and times in milliseconds. In Node the editor keeps its marks itself, in whole milliseconds; in a browser,
 * where everybody does.
 */
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
