import { fileURLToPath, pathToFileURL } from "node:url";
import type { FileReader, FileText } from "../file-reader.ts";
import { Slices } from "../time-slices.ts";
import { canonicalUri } from "../uri.ts";
import { readFileText } from "./read-file.ts";
import { readTree } from "./read-tree.ts";

/** Reads `file:` URIs from this machine's disks. */
export const diskReader: FileReader = {
  async list(folder, signal) {
    const found: string[] = [];
    const path = pathOf(folder);
    const slices = new Slices();
    for (const step of path === undefined ? [] : readTree(path)) {
      if (signal.aborted) break;
      if (step.type === "file") found.push(canonicalUri(pathToFileURL(step.path).href));
      else await slices.pause();
    }
    return found;
  },

  async read(uri): Promise<FileText> {
    const path = pathOf(uri);
    return path === undefined
      ? { ok: false, reason: "Its address is not a file on this computer." }
      : readFileText(path);
  },
};

function pathOf(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    return undefined;
  }
}
