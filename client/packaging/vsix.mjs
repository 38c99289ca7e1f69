import { deflateRawSync } from "node:zlib";
import { Zip, ZipPassThrough } from "fflate";
import { packageContents, shownManifest } from "./contents.mjs";
import { contentTypes, vsixManifest } from "./vsix-manifest.mjs";

/** The same build gives the same bytes: every file carries the earliest time that a zip can say. */
const TIME = new Date(1980, 0, 1);
const UNIX = 3;
/** Permissions as Unix has them, in the upper half of what a zip says of a file. */
const readable = { os: UNIX, attrs: 0o100644 << 16 };

/**
 * The extension as a package that an editor installs.
 *
 * @param {string} dist the folder that a build was made in
 * @returns {{ name: string, bytes: Uint8Array }} the file's name, and a zip
 */
export function vsixOf(dist) {
  const manifest = shownManifest();
  const files = Object.fromEntries(
    Object.entries(packageContents(dist)).map(([path, bytes]) => [`extension/${path}`, [bytes, readable]]),
  );
  const text = (content) => [new TextEncoder().encode(content), readable];
  const parts = {
    "extension.vsixmanifest": text(vsixManifest(manifest)),
    "[Content_Types].xml": text(contentTypes(["extension.vsixmanifest", ...Object.keys(files)])),
    ...files,
  };
  return { name: `${manifest.name}-${manifest.version}.vsix`, bytes: zipOf(parts) };
}

/** Files and what a zip says of each, by their names, in that order. */
function zipOf(parts) {
  const chunks = [];
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    chunks.push(chunk);
  });
  for (const [name, [bytes, attributes]] of Object.entries(parts)) {
    const file = Object.assign(new Deflated(name), attributes, { mtime: TIME });
    zip.add(file);
    file.push(bytes, true);
  }
  zip.end();
  return Buffer.concat(chunks);
}

/** A file that is given in one piece. Node's own compression is some 3 % tighter than the library's. */
class Deflated extends ZipPassThrough {
  compression = 8;

  process(bytes, final) {
    this.ondata(null, deflateRawSync(bytes, { level: 9 }), final);
  }
}
