import { spawnSync } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { join, posix } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildInto } from "../../build.mjs";
import { vsixOf } from "../../client/packaging/vsix.mjs";
import { contentTypes, vsixManifest } from "../../client/packaging/vsix-manifest.mjs";
import manifest from "../../package.json";
import reference from "../reference/vsix.json";
import { temporaryFolder } from "../support/temporary-folder.ts";

const DIST = join(import.meta.dirname, `../../out/package/${process.pid}`);

/** The package, built for this test, and each of its files' text; pictures come out as nonsense. */
let vsix: { readonly name: string; readonly bytes: Uint8Array };
let texts: Readonly<Record<string, string>>;
let bundled: readonly { readonly name: string; readonly licence: string }[];

beforeAll(async () => {
  bundled = await buildInto(DIST);
  vsix = vsixOf(DIST);
  texts = Object.fromEntries(
    Object.entries(unzipSync(vsix.bytes)).map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]),
  );
});
afterAll(() => rmSync(DIST, { recursive: true, force: true }));

describe("the package", () => {
  test("holds the bundles, what package.json names and the pages, and nothing else", () => {
    expect(vsix.name).toBe(`daystave-${manifest.version}.vsix`);
    expect(readFileSync("README.md", "utf8")).toContain(`\`code --install-extension ${vsix.name}\``);
    expect(Object.keys(texts).sort()).toEqual([
      "[Content_Types].xml",
      "extension.vsixmanifest",
      "extension/LICENSE.txt",
      "extension/changelog.md",
      "extension/client/icon.png",
      "extension/client/icon.svg",
      "extension/client/media/care.md",
      "extension/client/media/day.md",
      "extension/client/media/journal.md",
      "extension/client/media/scales.md",
      "extension/client/media/weeks.svg",
      "extension/dist/THIRD-PARTY-NOTICES.txt",
      "extension/dist/client/extension.js",
      "extension/dist/client/extension.web.js",
      "extension/dist/client/preview.css",
      "extension/dist/client/preview.js",
      "extension/dist/server/cli.js",
      "extension/dist/server/core.js",
      "extension/dist/server/main.browser.js",
      "extension/dist/server/main.js",
      "extension/package.json",
      "extension/readme.md",
      "extension/syntaxes/COMMAND-LINE.md",
      "extension/syntaxes/DIAGNOSTICS.md",
      "extension/syntaxes/FORMAT.md",
      "extension/syntaxes/OTHER-EDITORS.md",
      "extension/syntaxes/language-configuration.json",
      "extension/syntaxes/practice-journal.tmLanguage.json",
    ]);
  });

  test("holds every file that its package.json names", () => {
    const packaged = JSON.parse(texts["extension/package.json"]!);
    const named = pathsIn(packaged);
    expect(named).toContain("dist/client/extension.js");
    expect(named).toContain("client/media/weeks.svg");
    expect(named.filter((path) => !(`extension/${path}` in texts))).toEqual([]);
    expect(Object.keys(packaged)).toEqual(
      Object.keys(manifest).filter((field) => !["private", "scripts", "devDependencies"].includes(field)),
    );
  });

  test("has pages whose links lead to files that are in it", () => {
    const pages = Object.keys(texts).filter((path) => path.endsWith(".md"));
    expect(pages.length).toBeGreaterThan(5);
    for (const page of pages) {
      const links = [...texts[page]!.matchAll(/\]\(([^)\s#]+)/g)].map((match) => match[1]!);
      const within = links.filter((to) => !to.includes("://")).map((to) => posix.join(posix.dirname(page), to));
      expect(within.filter((path) => !(path in texts))).toEqual([]);
      expect(texts[page]).not.toContain("<picture>");
    }
    expect(texts["extension/readme.md"]).toContain("](syntaxes/DIAGNOSTICS.md)");
    expect(texts["extension/readme.md"]).toContain("to it: DEVELOPERS.md.");
    expect(texts["extension/syntaxes/DIAGNOSTICS.md"]).toContain("](FORMAT.md#scale-note)");
    expect(texts["extension/syntaxes/FORMAT.md"]).toContain("[README](../readme.md)");
  });

  test("is no larger than a megabyte, and the same bytes for the same build", () => {
    expect(vsix.bytes.length).toBeLessThan(1_000_000);
    expect(Buffer.compare(vsixOf(DIST).bytes, vsix.bytes)).toBe(0);
  });

  test("runs where it was unpacked, with no package beside it", () => {
    const folder = temporaryFolder(unzipSync(vsix.bytes));
    const command = join(folder, "extension", manifest.bin.daystave);
    const { status, stdout } = spawnSync(process.execPath, [command, "check", "--today", "2026-03-10"], {
      cwd: "samples/quickstart",
      encoding: "utf8",
    });
    // As the page of the command line has it.
    expect({ status, last: stdout.trim().split("\n").at(-1) }).toEqual({
      status: 1,
      last: "3 files: 1 error, 1 warning.",
    });
  });

  test("names no folder of the computer that built it", () => {
    const root = join(import.meta.dirname, "../..");
    expect(Object.keys(texts).filter((path) => texts[path]!.includes(root))).toEqual([]);
  });
});

describe("the licences of what is bundled", () => {
  const MAY_BE_PASSED_ON = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0", "BlueOak-1.0.0"];

  test("may all be passed on, also those of packages that packages bring", () => {
    expect(bundled.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["vscode-jsonrpc", "d3-array", "minimatch"]),
    );
    expect(bundled.filter(({ licence }) => !MAY_BE_PASSED_ON.includes(licence))).toEqual([]);
  });

  test("are in the package, word for word", () => {
    const notices = texts["extension/dist/THIRD-PARTY-NOTICES.txt"]!;
    const licence = readFileSync("node_modules/d3-array/LICENSE", "utf8").trim();
    expect(notices).toContain(licence);
    for (const { name } of bundled) expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(`, "m"));
  });
});

/** Against the editor's own packaging tool; see the reference's provenance. */
describe("the parts beside the extension, as the editor's own tool writes them", () => {
  test("extension.vsixmanifest", () => {
    expect(spaced(vsixManifest(reference.package))).toBe(spaced(reference.manifest));
  });

  test("[Content_Types].xml", () => {
    const files = reference.files.filter((path) => path !== "[Content_Types].xml");
    expect(spaced(contentTypes(files))).toBe(spaced(reference.contentTypes));
  });

  test("an ending whose media type is not known is refused", () => {
    expect(() => contentTypes(["extension/dist/server/core.0a.code"])).toThrow('".code"');
  });
});

describe("for a gallery, package.json", () => {
  test("has an icon of at least 128 by 128 pixels", () => {
    const png = readFileSync(manifest.icon);
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    // Width and height stand first in the first chunk: PNG specification, 11.2.1.
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([256, 256]);
  });

  test("is complete, and names no home before there is one", () => {
    const { categories, keywords, galleryBanner, license, capabilities, extensionKind } = manifest;
    expect({ galleryBanner, license, capabilities, extensionKind }).toEqual({
      galleryBanner: { color: "#1f4e5f", theme: "dark" },
      license: "MIT",
      capabilities: { virtualWorkspaces: true, untrustedWorkspaces: { supported: true } },
      extensionKind: ["workspace"],
    });
    expect(readFileSync("client/icon.svg", "utf8")).toContain(galleryBanner.color);
    expect(categories).toContain("Programming Languages");
    expect(keywords.length).toBeLessThanOrEqual(30); // the most that the gallery takes; from memory
    expect(Object.keys(manifest)).not.toContain("repository");
  });
});

/** Every value in a manifest that names a file: an icon or a step's picture or page, and whatever begins with "./". */
function pathsIn(value: unknown, field = ""): string[] {
  if (typeof value === "object" && value !== null)
    return Object.entries(value).flatMap(([key, each]) => pathsIn(each, key));
  if (typeof value !== "string" || value.startsWith("$(")) return []; // one of the editor's own icons
  return value.startsWith("./") || /^(?:icon|markdown|svg)$/.test(field) ? [value.replace("./", "")] : [];
}

/** XML without the white space between its elements. */
function spaced(xml: string): string {
  return xml.replace(/\s+/g, " ").replace(/ ?\/>/g, "/>").replace(/> </g, "><").trim();
}
