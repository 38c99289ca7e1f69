// What the package holds, and nothing else: the bundles, what package.json names, its texts in each language, and the
// pages for whoever installs it.
import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { fileURLToPath } from "node:url";
import { PACKAGED } from "../../build.mjs";
import { inWords } from "./texts.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
/**
 * The pages at the top, and what they are called in a package. There each file needs an ending, which says its media
 * type.
 */
const PAGES = { "README.md": "readme.md", "CHANGELOG.md": "changelog.md", LICENSE: "LICENSE.txt" };
/**
 * Folders whose files go in, but those that are about the command line; folders in them have its schemas. The sample is
 * what the walkthrough goes by.
 */
const FOLDERS = ["client/media", "l10n", "samples/quickstart", "syntaxes"];
const OF_COMMAND_LINE = /^(?:COMMAND-LINE\.md|OTHER-EDITORS\.md|.*\.1)$/;
const ICONS = ["client/icon.png", "client/icon.svg"];
/** The texts of package.json, in English and in each other language. */
const TEXTS = /^package\.nls(?:\.[\w-]+)?\.json$/;

/**
 * The files of the extension, by their paths in it.
 *
 * @param dist the folder that a build was made in
 * @returns {Record<string, Uint8Array>}
 */
export function packageContents(dist) {
  const paths = [...ICONS, ...readdirSync(ROOT).filter((name) => TEXTS.test(name)), ...FOLDERS.flatMap(filesIn)];
  const read = (path) => readFileSync(join(ROOT, path));
  const contents = {
    "package.json": text(`${JSON.stringify(packagedManifest(), undefined, 2)}\n`),
    ...Object.fromEntries(paths.map((path) => [path, read(path)])),
    ...Object.fromEntries(PACKAGED.map((file) => [`dist/${file}`, readFileSync(join(dist, file))])),
  };
  const pages = { ...PAGES, ...Object.fromEntries(paths.filter(isPage).map((path) => [path, path])) };
  const inside = [...Object.keys(contents), ...Object.values(PAGES)];
  for (const [page, name] of Object.entries(pages))
    contents[name] = text(packagedPage(read(page).toString(), page, inside));
  return contents;
}

function filesIn(folder) {
  return readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter((entry) => entry.isFile() && !OF_COMMAND_LINE.test(entry.name))
    .map(({ name }) => `${folder}/${name}`);
}

/** package.json without what only a checkout can do, and what npm's own package alone has. */
function packagedManifest() {
  const {
    private: _,
    scripts,
    devDependencies,
    bin,
    files,
    man,
    ...manifest
  } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  return manifest;
}

/** The same in English words, as a gallery shows it. */
export function shownManifest() {
  return inWords(packagedManifest(), JSON.parse(readFileSync(join(ROOT, "package.nls.json"), "utf8")));
}

function isPage(path) {
  return path.endsWith(".md");
}

/**
 * A page without pictures, and without what is true of a checkout alone, between its marks. Its links lead to where a
 * file is in the package, or have become plain words where it is not in it.
 */
function packagedPage(page, path, inside) {
  const kept = page
    .replace(/<!-- checkout -->[\s\S]*?<!-- \/checkout -->\n\n?/g, "")
    .replace(/<picture>[\s\S]*?<\/picture>\n\n?/g, "");
  return `${kept.trimEnd()}\n`.replace(/\[([^\]]*)\]\(([\w./-]+)(#[^)\s]*)?\)/g, (_, words, to, anchor = "") => {
    const target = posix.join(posix.dirname(path), to);
    const packaged = PAGES[target] ?? target;
    return inside.includes(packaged) ? `[${words}](${posix.relative(posix.dirname(path), packaged)}${anchor})` : words;
  });
}

function text(content) {
  return new TextEncoder().encode(content);
}
