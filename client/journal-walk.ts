/** What a folder holds. A link to a folder is neither: following it might never end. */
export interface FolderEntry {
  readonly name: string;
  readonly isFolder: boolean;
  readonly isFile: boolean;
}

export interface FolderReader<Place> {
  entries(folder: Place): Promise<readonly FolderEntry[]>;
  join(folder: Place, name: string): Place;
}

/**
 * Every `.practice` file below a folder; dot folders and `node_modules` are skipped, in whatever order the rest comes.
 */
export async function walkJournals<Place>(folder: Place, reader: FolderReader<Place>): Promise<Place[]> {
  const entries = await reader.entries(folder);
  const below = await Promise.all(
    entries.map(async ({ name, isFolder, isFile }) => {
      if (isFile && name.endsWith(".practice")) return [reader.join(folder, name)];
      const wanted = isFolder && !name.startsWith(".") && name !== "node_modules";
      return wanted ? walkJournals(reader.join(folder, name), reader) : [];
    }),
  );
  return below.flat();
}

/**
 * A file's text without byte order mark, or null where it is no text: a NUL among its first 8,000 bytes, or not UTF-8.
 */
export function journalText(bytes: Uint8Array): string | null {
  if (bytes.subarray(0, 8000).includes(0)) return null;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
