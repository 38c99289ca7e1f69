import fc from "fast-check";
import { expect, test } from "vitest";
import type { FileReader } from "../../server/host/file-reader.ts";
import { Workspace } from "../../server/host/workspace.ts";
import { createDocument, textOf } from "../../server/syntax/document/document.ts";
import { MANY } from "../support/random-runs.ts";

// However the files came to be as they are, the journals are those of a workspace that is opened now.

type Step =
  | { readonly type: "open" | "write"; readonly uri: string; readonly text: string }
  | { readonly type: "close" | "delete"; readonly uri: string }
  | { readonly type: "folders"; readonly folders: readonly string[] };

const uri = fc.constantFrom(
  ...["w/a", "w/b", "w/journal", "w/x/a", "w/x/journal", "w/x/y/a", "v/a", "v/journal", "out/a"].map(
    (path) => `file:///${path}.practice`,
  ),
);
const text = fc.constantFrom("", "player Noor", "2026-03-02\n  G major");
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ type: fc.constant("open" as const), uri, text }) },
  { weight: 3, arbitrary: fc.record({ type: fc.constant("write" as const), uri, text }) },
  { weight: 3, arbitrary: fc.record({ type: fc.constantFrom("close" as const, "delete" as const), uri }) },
  {
    weight: 1,
    arbitrary: fc.record({
      type: fc.constant("folders" as const),
      folders: fc.subarray(["file:///w", "file:///v", "file:///w/x"]),
    }),
  },
);

class Editor {
  readonly files = new Map<string, string>();
  readonly opened = new Map<string, string>();
  folders: readonly string[] = ["file:///w"];
  #version = 0;
  #reads = 0;

  readonly reader: FileReader = {
    list: async (folder) => [...this.files.keys()].filter((each) => each.startsWith(`${folder}/`)).sort(),
    read: async (each) => {
      const found = this.files.get(each);
      for (let turns = (this.#reads++ * 5) % 7; turns > 0; turns--) await undefined; // a slow reading may end after a later one
      return found === undefined ? { ok: false, reason: "There is none." } : { ok: true, text: found, bom: false };
    },
  };

  /** A workspace with this editor's folders, into which its open documents are opened and its files read. */
  async workspace(): Promise<Workspace> {
    const workspace = new Workspace(this.reader, { changed() {}, skipped() {} });
    workspace.setFolders(this.folders);
    for (const [each, content] of this.opened) this.edit(workspace, each, content);
    await workspace.walk();
    return workspace;
  }

  edit(workspace: Workspace, key: string, content: string): void {
    this.opened.set(key, content);
    workspace.edited({ uri: key, key, version: ++this.#version, document: createDocument(content) });
  }

  async take(workspace: Workspace, step: Step): Promise<void> {
    if (step.type === "open") this.edit(workspace, step.uri, step.text);
    else if (step.type === "close") {
      if (this.opened.delete(step.uri)) await workspace.closed(step.uri);
    } else if (step.type === "folders") {
      this.folders = step.folders;
      workspace.setFolders(step.folders);
      await workspace.walk();
    } else {
      if (step.type === "write") this.files.set(step.uri, step.text);
      else this.files.delete(step.uri);
      await workspace.filesChanged([step.uri]);
    }
  }
}

function shown(workspace: Workspace): unknown {
  const journals = [...workspace.journals].map(({ root, files }) => [
    root,
    [...files].map(([each, document]) => `${each}: ${textOf(document)}`).sort(),
  ]);
  return journals.sort();
}

test("after any series of events the journals are those of a workspace opened now", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 15 }), async (steps) => {
      const editor = new Editor();
      const workspace = await editor.workspace();
      for (const each of steps) await editor.take(workspace, each);
      expect(shown(workspace)).toEqual(shown(await editor.workspace()));
    }),
    { seed: 11, numRuns: MANY },
  );
});

test("nor does it matter whether one event is over when the next comes", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 15 }), async (steps) => {
      const editor = new Editor();
      const workspace = await editor.workspace();
      await Promise.all(steps.map((each) => editor.take(workspace, each)));
      expect(shown(workspace)).toEqual(shown(await editor.workspace()));
    }),
    { seed: 12, numRuns: MANY },
  );
});
