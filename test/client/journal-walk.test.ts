import { expect, test } from "vitest";
import { journalText, walkJournals } from "../../client/journal-walk.ts";

/** A folder's entries by path; a string stands for what is neither file nor folder to us: a link to a folder. */
interface Tree {
  readonly [name: string]: Tree | "file" | "link to a folder";
}

async function check(tree: Tree, expected: readonly string[]): Promise<void> {
  const found = await walkJournals(
    { path: "", tree },
    {
      join: ({ path, tree }, name) => ({ path: `${path}/${name}`, tree: tree[name] as Tree }),
      entries: async ({ tree }) =>
        Object.entries(tree).map(([name, node]) => ({
          name,
          isFile: node === "file",
          isFolder: typeof node === "object",
        })),
    },
  );
  expect(found.map(({ path }) => path).sort()).toEqual(expected);
}

test("journals at every depth, and nothing else", async () => {
  await check(
    { "week.practice": "file", "notes.md": "file", practice: "file", old: { deep: { "a.practice": "file" } } },
    ["/old/deep/a.practice", "/week.practice"],
  );
});

test("dot folders, node_modules and links to folders are skipped", async () => {
  await check(
    {
      ".git": { "a.practice": "file" },
      node_modules: { "b.practice": "file" },
      loop: "link to a folder",
      "c.practice": "file",
    },
    ["/c.practice"],
  );
});

test("a folder that is called like a journal is a folder", async () => {
  await check({ "noor.practice": { "week.practice": "file" } }, ["/noor.practice/week.practice"]);
});

test("an empty folder", () => check({}, []));

test("text: the byte order mark goes, what is not UTF-8 or holds a NUL is no text", () => {
  expect(journalText(new TextEncoder().encode("F♯ major"))).toBe("F♯ major");
  expect(journalText(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]))).toBe("a");
  expect(journalText(new Uint8Array([0x61, 0xff]))).toBeNull();
  expect(journalText(new Uint8Array([0x61, 0x00]))).toBeNull();
  expect(journalText(new Uint8Array())).toBe("");
});
