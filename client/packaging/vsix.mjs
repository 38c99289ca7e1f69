import { zipSync } from "fflate";
import { packageContents, packagedManifest } from "./contents.mjs";
import { contentTypes, vsixManifest } from "./vsix-manifest.mjs";

/** The same build gives the same bytes: every file carries the earliest time that a zip can say. */
const TIME = new Date(1980, 0, 1);
const UNIX = 3;
/** Permissions as Unix has them, in the upper half of what a zip says of a file. */
const readable = { os: UNIX, attrs: 0o100644 << 16 };
const executable = { os: UNIX, attrs: 0o100755 << 16 };

/**
 * The extension as a package that an editor installs.
 *
 * @param {string} dist the folder that a build was made in
 * @returns {{ name: string, bytes: Uint8Array }} the file's name, and a zip
 */
export function vsixOf(dist) {
  const manifest = packagedManifest();
  const commands = Object.values(manifest.bin).map((path) => path.replace("./", ""));
  const files = Object.fromEntries(
    Object.entries(packageContents(dist)).map(([path, bytes]) => [
      `extension/${path}`,
      [bytes, commands.includes(path) ? executable : readable],
    ]),
  );
  const text = (content) => [new TextEncoder().encode(content), readable];
  const parts = {
    "extension.vsixmanifest": text(vsixManifest(manifest)),
    "[Content_Types].xml": text(contentTypes(["extension.vsixmanifest", ...Object.keys(files)])),
    ...files,
  };
  return { name: `${manifest.name}-${manifest.version}.vsix`, bytes: zipSync(parts, { level: 9, mtime: TIME }) };
}
