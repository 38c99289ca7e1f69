import { env, l10n, Uri, type Webview } from "vscode";
import { spokenIn } from "../../shared/languages.ts";

/** The folder whose files the page may load. */
export function pageFolder(extension: Uri): Uri {
  return Uri.joinPath(extension, "dist/client");
}

/** Which page: its script and its style sheet have this name. */
export type PageName = "preview" | "pupils";

const TITLES: Readonly<Record<PageName, string>> = {
  preview: l10n.t("Practice preview"),
  pupils: l10n.t("Pupils"),
};

/** The page before any figure: nothing of a journal stands in it, the script builds that from checked messages. */
export function pageHtml(webview: Webview, extension: Uri, page: PageName): string {
  const address = (file: string) => webview.asWebviewUri(Uri.joinPath(pageFolder(extension), file)).toString(true);
  const language = spokenIn(env.language);
  const nonce = randomNonce();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="${language ?? "en"}">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>${TITLES[page]}</title>
    <link rel="stylesheet" href="${address(`${page}.css`)}">
  </head>
  <body>
    <main></main>
    <script nonce="${nonce}" src="${address(`${page}${language ? `.${language}` : ""}.js`)}"></script>
  </body>
</html>`;
}

/** 128 bits from the system's generator, in hexadecimal. */
function randomNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
