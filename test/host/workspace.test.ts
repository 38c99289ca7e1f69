import { expect, test } from "vitest";
import type { FileReader } from "../../server/host/file-reader.ts";
import { canonicalUri } from "../../server/host/uri.ts";
import { Workspace } from "../../server/host/workspace.ts";
import { createDocument, textOf } from "../../server/syntax/document/document.ts";

/** A disk in memory. Tests change `files` as other programs would. */
class Disk implements FileReader {
  readonly reads: string[] = [];
  constructor(readonly files: Map<string, string>) {}

  async list(folder: string) {
    return [...this.files.keys()].filter((uri) => uri.startsWith(`${folder}/`)).sort();
  }

  async read(uri: string) {
    this.reads.push(uri);
    const text = this.files.get(uri);
    return text === undefined
      ? { ok: false as const, reason: "There is no such file." }
      : { ok: true as const, text, bom: false };
  }
}

function workspaceOf(files: Record<string, string>, folders = ["file:///w"]) {
  const disk = new Disk(new Map(Object.entries(files)));
  const changes: string[] = [];
  const workspace = new Workspace(disk, {
    changed: ({ cause, journals }) => changes.push(`${cause} ${[...journals].sort().join(" ")}`),
    skipped: (uri) => changes.push(`skipped ${uri}`),
  });
  workspace.setFolders(folders);
  let version = 0;
  const open = (uri: string, text: string) => {
    version++;
    workspace.edited({ uri, key: canonicalUri(uri), version, document: createDocument(text) });
  };
  return { disk, workspace, changes, open };
}

/** Every journal with the texts of its files. */
function check(workspace: Workspace, expected: Record<string, Record<string, string>>) {
  const journals = [...workspace.journals].map(({ root, files }) => {
    const texts = Object.fromEntries(
      [...files].map(([uri, document]) => [uri.slice(uri.lastIndexOf("/") + 1), textOf(document)]),
    );
    return [root, texts] as const;
  });
  expect(Object.fromEntries(journals)).toEqual(expected);
}

const PUPILS = {
  "file:///w/anna/journal.practice": "player Anna",
  "file:///w/anna/march.practice": "a",
  "file:///w/ben/journal.practice": "player Ben",
  "file:///w/ben/march.practice": "b",
  "file:///w/notes.practice": "n",
};

test("a walk sorts every file into its journal, and says so once", async () => {
  const { workspace, changes } = workspaceOf(PUPILS);
  await workspace.walk();
  check(workspace, {
    "file:///w/anna": { "journal.practice": "player Anna", "march.practice": "a" },
    "file:///w/ben": { "journal.practice": "player Ben", "march.practice": "b" },
    "file:///w": { "notes.practice": "n" },
  });
  expect(changes).toEqual(["files file:///w file:///w/anna file:///w/ben"]);
});

test("for a first answer only the markers above a file are read", async () => {
  const { workspace, disk, open } = workspaceOf(PUPILS);
  open("file:///w/anna/march.practice", "typed");
  await workspace.ready("file:///w/anna/march.practice");
  expect(disk.reads.sort()).toEqual(["file:///w/anna/journal.practice", "file:///w/journal.practice"]);
  check(workspace, { "file:///w/anna": { "journal.practice": "player Anna", "march.practice": "typed" } });
  expect(workspace.ready("file:///w/anna/march.practice")).toBeUndefined();
});

test("the copy on disk of an open file is never read", async () => {
  const { workspace, disk, open } = workspaceOf(PUPILS);
  open("file:///w/anna/journal.practice", "player Annabel");
  await workspace.ready("file:///w/anna/journal.practice");
  await workspace.walk();
  await workspace.filesChanged(["file:///w/anna/journal.practice"]);
  expect(disk.reads).not.toContain("file:///w/anna/journal.practice");
  expect(
    textOf(workspace.journalOf("file:///w/anna/march.practice")!.files.get("file:///w/anna/journal.practice")!),
  ).toBe("player Annabel");
});

test("an edit makes one new journal and leaves the others the same", async () => {
  const { workspace, changes, open } = workspaceOf(PUPILS);
  await workspace.walk();
  const [anna, ben] = ["file:///w/anna/march.practice", "file:///w/ben/march.practice"].map((uri) =>
    workspace.journalOf(uri),
  );
  const versions = () => ["file:///w/anna", "file:///w/ben"].map((root) => workspace.versionOf(root));
  const [annasBefore, bensBefore] = versions();
  open("file:///w/anna/march.practice", "typed");
  expect(workspace.journalOf("file:///w/anna/march.practice")).not.toBe(anna);
  expect(workspace.journalOf("file:///w/ben/march.practice")).toBe(ben);
  const [annas, bens] = versions();
  expect(annas).toBeGreaterThan(Math.max(annasBefore!, bensBefore!)); // a version is never another journal's
  expect(bens).toBe(bensBefore);
  expect(changes.at(-1)).toBe("edit file:///w/anna");
});

test("a document that is closed without being saved is what its file says again", async () => {
  const { workspace, open } = workspaceOf({ "file:///w/a.practice": "saved" });
  await workspace.walk();
  open("file:///w/a.practice", "never saved");
  await workspace.closed("file:///w/a.practice");
  check(workspace, { "file:///w": { "a.practice": "saved" } });
});

test("a document whose file is gone is gone when it is closed", async () => {
  const { workspace, disk, open } = workspaceOf({ "file:///w/a.practice": "saved" });
  await workspace.walk();
  open("file:///w/a.practice", "still here");
  disk.files.clear();
  await workspace.filesChanged(["file:///w/a.practice"]);
  check(workspace, { "file:///w": { "a.practice": "still here" } });
  await workspace.closed("file:///w/a.practice");
  check(workspace, {});
});

test("a document that is opened again while its file is read keeps what was typed", async () => {
  const { workspace, open } = workspaceOf({ "file:///w/a.practice": "saved" });
  await workspace.walk();
  open("file:///w/a.practice", "first");
  const closed = workspace.closed("file:///w/a.practice");
  open("file:///w/a.practice", "second");
  await closed;
  check(workspace, { "file:///w": { "a.practice": "second" } });
});

test("a document outside every folder stands alone and leaves nothing behind", async () => {
  const { workspace, disk, open } = workspaceOf({
    "file:///x/a.practice": "saved",
    "file:///x/journal.practice": "player X",
  });
  open("file:///x/a.practice", "typed");
  await workspace.ready("file:///x/a.practice");
  check(workspace, { "file:///x/a.practice": { "a.practice": "typed" } });
  await workspace.closed("file:///x/a.practice");
  check(workspace, {});
  expect(disk.reads).toEqual([]);
});

test("files that come, change and go are followed", async () => {
  const { workspace, disk, changes } = workspaceOf({ "file:///w/a.practice": "a", "file:///w/b.practice": "b" });
  await workspace.walk();
  disk.files.set("file:///w/a.practice", "A").set("file:///w/c.practice", "c").delete("file:///w/b.practice");
  await workspace.filesChanged(["a", "b", "c", ".git/d", "e"].map((name) => `file:///w/${name}.practice`));
  check(workspace, { "file:///w": { "a.practice": "A", "c.practice": "c" } });
  expect(changes).toEqual(["files file:///w", "files file:///w"]);
});

test("a file that was touched but says the same changes nothing", async () => {
  const { workspace, changes } = workspaceOf({ "file:///w/a.practice": "a" });
  await workspace.walk();
  const before = workspace.journalOf("file:///w/a.practice");
  await workspace.filesChanged(["file:///w/a.practice"]);
  expect(workspace.journalOf("file:///w/a.practice")).toBe(before);
  expect(changes).toHaveLength(1);
});

test("a deleted folder takes its files along", async () => {
  const { workspace, disk } = workspaceOf(PUPILS);
  await workspace.walk();
  for (const uri of [...disk.files.keys()]) if (uri.startsWith("file:///w/anna/")) disk.files.delete(uri);
  await workspace.filesChanged(["file:///w/anna"]);
  check(workspace, {
    "file:///w/ben": { "journal.practice": "player Ben", "march.practice": "b" },
    "file:///w": { "notes.practice": "n" },
  });
});

test("a marker that comes or goes sorts the files anew", async () => {
  const { workspace, disk } = workspaceOf({ "file:///w/a/x.practice": "x", "file:///w/y.practice": "y" });
  await workspace.walk();
  check(workspace, { "file:///w": { "x.practice": "x", "y.practice": "y" } });
  disk.files.set("file:///w/a/journal.practice", "player A");
  await workspace.filesChanged(["file:///w/a/journal.practice"]);
  check(workspace, {
    "file:///w/a": { "journal.practice": "player A", "x.practice": "x" },
    "file:///w": { "y.practice": "y" },
  });
  disk.files.delete("file:///w/a/journal.practice");
  await workspace.filesChanged(["file:///w/a/journal.practice"]);
  check(workspace, { "file:///w": { "x.practice": "x", "y.practice": "y" } });
});

test("a folder that is added or removed brings and takes its journals", async () => {
  const { workspace } = workspaceOf({ "file:///w/a.practice": "a", "file:///v/b.practice": "b" });
  await workspace.walk();
  workspace.setFolders(["file:///w", "file:///v/"]);
  await workspace.walk();
  check(workspace, { "file:///w": { "a.practice": "a" }, "file:///v": { "b.practice": "b" } });
  workspace.setFolders(["file:///v"]);
  check(workspace, { "file:///v": { "b.practice": "b" } });
});

test("a folder counts once, however often and in whichever spelling it is named", async () => {
  const { workspace } = workspaceOf({}, ["file:///w/%C3%A9tudes", "file:///w/étude%73/"]);
  expect(workspace.folders).toEqual(["file:///w/%C3%A9tudes"]);
  expect(workspace.folderOf("file:///w/%C3%A9tudes/a.practice")).toBe("file:///w/%C3%A9tudes");
  expect(workspace.folderOf("file:///w/%C3%A9tudes")).toBe("file:///w/%C3%A9tudes");
  expect(workspace.folderOf("file:///w/a.practice")).toBeUndefined();
});

test("looking again finds what nobody told of", async () => {
  const { workspace, disk } = workspaceOf({ "file:///w/a.practice": "a", "file:///w/b.practice": "b" });
  await workspace.lookAgain();
  check(workspace, {});
  await workspace.walk();
  const unchanged = workspace.journalOf("file:///w/a.practice")!.files.get("file:///w/a.practice");
  disk.files.delete("file:///w/b.practice");
  disk.files.set("file:///w/c.practice", "c");
  await workspace.lookAgain();
  check(workspace, { "file:///w": { "a.practice": "a", "c.practice": "c" } });
  expect(workspace.journalOf("file:///w/a.practice")!.files.get("file:///w/a.practice")).toBe(unchanged);
});

test("a file that cannot be read is left out, and told", async () => {
  const { workspace, disk, changes } = workspaceOf({ "file:///w/a.practice": "a", "file:///w/b.practice": "b" });
  const read = disk.read.bind(disk);
  disk.read = async (uri) => (uri.endsWith("b.practice") ? { ok: false, reason: "It is a binary file." } : read(uri));
  await workspace.walk();
  check(workspace, { "file:///w": { "a.practice": "a" } });
  expect(changes).toEqual(["skipped file:///w/b.practice", "files file:///w"]);
});

test("a document that is edited while the walk goes on keeps what was typed", async () => {
  const { workspace, open } = workspaceOf({ "file:///w/a.practice": "a", "file:///w/b.practice": "b" });
  const walk = workspace.walk();
  open("file:///w/a.practice", "typed");
  await walk;
  check(workspace, { "file:///w": { "a.practice": "typed", "b.practice": "b" } });
});

test("a marker with `shared` lends to the journals below it, as long as it says so", async () => {
  const files = {
    ...PUPILS,
    "file:///w/journal.practice": "shared\nnames german",
    "file:///w/ben/journal.practice": "names dutch",
  };
  const { workspace, open } = workspaceOf(files);
  const names = () => ["w", "w/anna", "w/ben"].map((root) => workspace.journal(`file:///${root}`)?.names.id);
  await workspace.walk();
  expect(names()).toEqual(["german", "german", "dutch"]);
  open("file:///w/journal.practice", "shared\nnames french");
  expect(names()).toEqual(["french", "french", "dutch"]);
  open("file:///w/anna/march.practice", "typed");
  expect(names()).toEqual(["french", "french", "dutch"]);
  open("file:///w/journal.practice", "names french");
  expect(names()).toEqual(["french", "english", "dutch"]);
  open("file:///w/journal.practice", "names french\nshared");
  expect(names()).toEqual(["french", "french", "dutch"]);
  expect(workspace.journal("file:///w/anna")?.files.has("file:///w/journal.practice")).toBe(false);
});
