import type { FileReader, FileText } from "./file-reader.ts";
import { Slices } from "./time-slices.ts";

/**
 * Reads every `.practice` file of the folders, in slices between which other work goes on. The map is in the order of
 * the folders and of their sorted lists, without the files that are not `wanted`.
 */
export async function loadFolders(
  folders: readonly string[],
  reader: FileReader,
  wanted: (key: string) => boolean,
  signal: AbortSignal,
): Promise<ReadonlyMap<string, FileText>> {
  const found = new Map<string, FileText>();
  const slices = new Slices();
  for (const folder of folders) {
    for (const key of await reader.list(folder, signal)) {
      if (signal.aborted) return found;
      if (!found.has(key) && wanted(key)) found.set(key, await reader.read(key));
      await slices.pause();
    }
  }
  return found;
}
