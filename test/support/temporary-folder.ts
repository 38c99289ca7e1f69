import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";

/** What to put where, by path: a text, bytes, or a link to another path. */
export type Files = Readonly<Record<string, string | Uint8Array | { readonly linkTo: string }>>;

/** A folder with these files that lasts as long as the test. Returns its path. */
export function temporaryFolder(files: Files = {}): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "daystave-test-")));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    if (typeof content === "string" || content instanceof Uint8Array) writeFileSync(path, content);
    else symlinkSync(content.linkTo, path);
  }
  return folder;
}
