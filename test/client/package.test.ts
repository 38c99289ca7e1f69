import { readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { join, posix } from "node:path";
import { runInNewContext } from "node:vm";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildInto } from "../../build.mjs";
import { vsixOf } from "../../client/packaging/vsix.mjs";
import { contentTypes, vsixManifest } from "../../client/packaging/vsix-manifest.mjs";
import manifest from "../../package.json";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { parseNote } from "../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../server/music/notes/note-names.ts";
import { kindById } from "../../server/music/scales/kinds.ts";
import { drawStaves } from "../../server/notation/drawing/draw-staff.ts";
import { exerciseStaff } from "../../server/notation/exercise-staff.ts";
import type { Staff } from "../../server/notation/staff.ts";
import type { StaffDrawer } from "../../server/notation/staff-look.ts";
import { INITIALIZED, speakProtocol } from "../cli/protocol-process.ts";
import reference from "../reference/vsix.json";
import { temporaryFolder } from "../support/temporary-folder.ts";

const DRAWN = [
  ["C#", "major", "clarinet in Bb", [1, 16], "staccato"],
  ["Cb", "major", "viola", [1, 32], "tenuto"],
  ["G#", "melodic minor", "cello", [1, 8], "marcato"],
  ["Fb", "harmonic minor", "bass recorder", [1, 12], "staccatissimo"],
  ["D", "melodic minor", "tenor voice", [3, 8], "slurred"],
  ["A", "chromatic", "soprano recorder", [1, 24], "portato"],
  ["B", "blues", "tenor viol", [1, 2], "slur 2+1+1"],
  ["E", "major", "double bass", [1, 1], "tongued"],
  ["F", "whole-tone", "alto recorder", [1, 4], "slur 3"],
] as const;
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
}, 60_000); // a machine may be busy
afterAll(() => rmSync(DIST, { recursive: true, force: true }));

describe("the package", () => {
  test("holds the bundles, what package.json names and the pages, and nothing else: nothing of the command line", () => {
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
      "extension/client/media/care.nls.de.md",
      "extension/client/media/day.md",
      "extension/client/media/day.nls.de.md",
      "extension/client/media/journal.md",
      "extension/client/media/journal.nls.de.md",
      "extension/client/media/scales.md",
      "extension/client/media/scales.nls.de.md",
      "extension/client/media/weeks.svg",
      "extension/dist/THIRD-PARTY-NOTICES.txt",
      "extension/dist/client/extension.js",
      "extension/dist/client/extension.web.js",
      "extension/dist/client/preview.css",
      "extension/dist/client/preview.de.js",
      "extension/dist/client/preview.js",
      "extension/dist/client/pupils.css",
      "extension/dist/client/pupils.de.js",
      "extension/dist/client/pupils.js",
      "extension/dist/server/handlers.js",
      "extension/dist/server/main.browser.js",
      "extension/dist/server/main.js",
      "extension/dist/server/notation.js",
      "extension/dist/server/texts.de.js",
      "extension/l10n/bundle.l10n.de.json",
      "extension/package.json",
      "extension/package.nls.de.json",
      "extension/package.nls.json",
      "extension/readme.md",
      "extension/samples/quickstart/2026-02.practice",
      "extension/samples/quickstart/journal.practice",
      "extension/samples/quickstart/week.practice",
      "extension/syntaxes/COMMANDS.md",
      "extension/syntaxes/DIAGNOSTICS.md",
      "extension/syntaxes/EXPORT.md",
      "extension/syntaxes/FORMAT.md",
      "extension/syntaxes/PLAN.md",
      "extension/syntaxes/SETTINGS.md",
      "extension/syntaxes/SOUND.md",
      "extension/syntaxes/language-configuration.json",
      "extension/syntaxes/practice-journal.tmLanguage.json",
    ]);
  });

  test("holds every file that its package.json names", () => {
    const packaged = JSON.parse(texts["extension/package.json"]!);
    const named = pathsIn(packaged);
    expect(named).toContain("dist/client/extension.js");
    expect(named).toContain("client/media/weeks.svg");
    const isThere = (path: string) => Object.keys(texts).some((file) => `${file}/`.startsWith(`extension/${path}/`));
    expect(named).toContain("l10n"); // a folder
    expect(named.filter((path) => !isThere(path))).toEqual([]);
    expect(Object.keys(packaged)).toEqual(
      Object.keys(manifest).filter(
        (field) => !["private", "scripts", "devDependencies", "bin", "files", "man"].includes(field),
      ),
    );
  });

  test("shows a gallery words, and no keys of them", () => {
    const shown = texts["extension.vsixmanifest"]!;
    expect(shown).toContain(`<Description xml:space="preserve">${manifest.description}</Description>`);
    expect(shown).toContain("PracticeJournal,");
    expect(shown).not.toMatch(/%[\w.]+%/);
  });

  test("has pages whose links lead to files that are in it", () => {
    const pages = Object.keys(texts).filter((path) => path.endsWith(".md"));
    expect(pages.length).toBeGreaterThan(5);
    for (const page of pages) {
      const links = [...texts[page]!.matchAll(/\]\(([^)\s#]+)/g)].map((match) => match[1]!);
      const within = links.filter((to) => !to.includes("://")).map((to) => posix.join(posix.dirname(page), to));
      expect(within.filter((path) => !(path in texts))).toEqual([]);
      expect(texts[page]).not.toMatch(/<picture>|<img |client\/pictures/);
      // What only a checkout can do is left out.
      expect(texts[page]).not.toMatch(/\bnpm\b|checkout -->|\ba checkout\b/);
    }
    expect(texts["extension/readme.md"]).toContain("](syntaxes/DIAGNOSTICS.md)");
    expect(texts["extension/readme.md"]).toMatch(
      /^# Daystave\n\nDaystave is a practice diary[\s\S]*## Licence\n\n\[MIT\]/,
    );
    expect(texts["extension/readme.md"]).not.toContain("DEVELOPERS.md");
    expect(texts["extension/syntaxes/DIAGNOSTICS.md"]).toContain("](FORMAT.md#scale-note)");
    expect(texts["extension/syntaxes/FORMAT.md"]).toContain("[README](../readme.md)");
  });

  test("is smaller than a megabyte, and the same bytes for the same build", () => {
    expect(vsix.bytes.length).toBeLessThan(1_000_000);
    expect(Buffer.compare(vsixOf(DIST).bytes, vsix.bytes)).toBe(0);
  });

  test("has a server that runs where it was unpacked, with no package beside it", async () => {
    const folder = temporaryFolder(unzipSync(vsix.bytes));
    const server = join(folder, "extension/dist/server/main.js");
    expect(await speakProtocol(process.execPath, [server, "--stdio"], folder)).toEqual({
      status: 0,
      answer: expect.stringMatching(INITIALIZED),
    });
    // What else it does it loads from its core when it is asked for.
    const core = createRequire(server)("./handlers.js");
    expect(Object.keys(core).sort()).toEqual(Object.keys(await import("../../server/lsp/handlers.ts")).sort());
  });

  test("has the protocol's library in what starts the server alone: the core takes its types", () => {
    expect(texts["extension/dist/server/main.js"]).toContain("jsonrpc");
    expect(texts["extension/dist/server/handlers.js"]).not.toContain("jsonrpc");
  });

  test("has a server in ASCII alone, which V8 holds in one byte a character", () => {
    const bundles = Object.keys(texts).filter((path) => /^extension\/dist\/server\/.*\.js$/.test(path));
    expect(bundles).toContain("extension/dist/server/handlers.js");
    expect(bundles.filter((path) => /[^\x00-\x7f]/.test(texts[path]!))).toEqual([]);
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
      expect.arrayContaining(["vscode-jsonrpc", "simple-statistics", "minimatch"]),
    );
    expect(bundled.filter(({ licence }) => !MAY_BE_PASSED_ON.includes(licence))).toEqual([]);
  });

  test("are in the package, word for word", () => {
    const notices = texts["extension/dist/THIRD-PARTY-NOTICES.txt"]!;
    const licence = readFileSync("node_modules/simple-statistics/LICENSE", "utf8").trim();
    expect(notices).toContain(licence);
    for (const { name } of bundled) expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(`, "m"));
  });
});

describe("what draws staves", () => {
  /** Everything that is drawn anywhere: each clef, accidental, value and articulation. */
  const staves = DRAWN.flatMap(([tonic, kind, on, value, articulation]): Staff[] => {
    const instrument = INSTRUMENTS.find(({ id }) => id === on)!;
    const subject = { type: "scale", tonic: parseNote(tonic)!, kind: kindById(kind)! } as const;
    const [numerator, denominator] = value;
    const asked = {
      title: tonic,
      names: ENGLISH_NAMES,
      instrument,
      articulation,
      noteValue: { numerator, denominator },
    };
    const reading = exerciseStaff({ ...asked, input: { subject, instrument }, fingerings: true });
    return reading.ok ? [reading.staff] : [];
  });

  test("draws the same in its bundle, which has the signs alone that are drawn, for Node and for a web worker", () => {
    const look = { width: 500, scale: 1, id: "staff" };
    const path = join(DIST, "server/notation.js");
    const inNode: StaffDrawer = createRequire(path)(path);
    const worker: { daystaveNotation?: StaffDrawer } = {};
    runInNewContext(readFileSync(path, "utf8"), worker);
    expect(staves).toHaveLength(DRAWN.length);
    for (const staff of staves) {
      const { svg } = drawStaves([staff], look);
      expect(inNode.drawStaves([staff], look).svg).toBe(svg);
      expect(worker.daystaveNotation!.drawStaves([staff], look).svg).toBe(svg);
    }
    expect(readFileSync(path, "utf8").length).toBeLessThan(300_000);
  });

  test("brings the licence of its music font", () => {
    const notices = texts["extension/dist/THIRD-PARTY-NOTICES.txt"]!;
    expect(notices).toMatch(/^vexflow \d/m);
    expect(notices).toContain(readFileSync("client/packaging/music-font-licence.txt", "utf8").trim());
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
