import { afterAll, beforeAll, expect, test } from "vitest";
import { serveWorkbench, type WorkbenchServer } from "../../client/workbench/serve.mjs";

let server: WorkbenchServer;
beforeAll(async () => {
  server = await serveWorkbench({ port: 0, sample: "test/hosts/journals/hostile", open: "week.practice" });
});
afterAll(() => server.close());

async function check(path: string, status: number, type: string): Promise<Response> {
  const answer = await fetch(new URL(path, server.url));
  expect([path, answer.status, answer.headers.get("content-type")]).toEqual([path, status, type]);
  return answer;
}

test("the page, the workbench, the extension and the sample are served", async () => {
  await check("/", 200, "text/html; charset=utf-8");
  await check("/out/vs/loader.js", 200, "text/javascript");
  await check("/ext/package.json", 200, "application/json");
  await check("/sample-folder/package.json", 200, "application/json");
  const words = await (await check("/ext/package.nls.json", 200, "application/json")).json();
  expect(words["command.newDay"]).toBe("New Day");
  const sample = await (await check("/sample.json", 200, "application/json")).json();
  expect(Object.keys(sample)).toEqual(["hostile/week.practice"]);
});

test("dot folders, dependencies and everything outside the checkout are not", async () => {
  await check("/ext/.git/config", 403, "text/plain");
  await check("/ext/.gitignore", 403, "text/plain");
  await check("/ext/node_modules/tonal/package.json", 403, "text/plain");
  await check("/ext/%2e%2e%2f%2e%2e%2f%2e%2e%2fetc/passwd", 403, "text/plain");
  await check("/ext/..%2f", 403, "text/plain");
});

test("what is not there, and what is no address, is not found", async () => {
  await check("/ext/client/nothing.js", 404, "text/plain");
  await check("/ext/client", 404, "text/plain");
  await check("/%E0%A4%A", 404, "text/plain");
});

test("translations that an extension does not have are empty, so that the console stays clean", async () => {
  const answer = await check("/sample-folder/package.nls.json", 200, "application/json");
  expect(await answer.json()).toEqual({});
});

test("the webview page may start on the editor's own origin, and its policy names the changed script", async () => {
  const page = await (
    await check("/out/vs/workbench/contrib/webview/browser/pre/index.html", 200, "text/html; charset=utf-8")
  ).text();
  expect(page).toContain("if (parentOrigin === location.origin) { return start(parentOrigin); }");
  const script = page.match(/<script async type="module">([\s\S]*?)<\/script>/)![1]!;
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(script));
  expect(page).toContain(`'sha256-${Buffer.from(digest).toString("base64")}'`);
});

test("only our own webviews' origins may read across", async () => {
  const ask = async (origin: string) =>
    (await fetch(server.url, { headers: { origin } })).headers.get("access-control-allow-origin");
  const webview = `http://${"0".repeat(52)}.localhost:3000`;
  expect(await ask(webview)).toBe(webview);
  expect(await ask("http://example.com")).toBeNull();
});

test("a port that is taken is said so", async () => {
  await expect(serveWorkbench({ port: server.port })).rejects.toMatchObject({ code: "EADDRINUSE" });
});
