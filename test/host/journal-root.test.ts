import { expect, test } from "vitest";
import { isWalked, journalRoot } from "../../server/host/journal-root.ts";

/** The root of the journal that a file belongs to, where the folders given hold a `journal.practice`. */
function check(uri: string, folders: string[], marked: string[], root: string) {
  expect(journalRoot(uri, folders, new Set(marked))).toBe(root);
}

test("a file belongs to the nearest marked folder at or above it", () => {
  check("file:///w/anna/2026/march.practice", ["file:///w"], ["file:///w/anna", "file:///w"], "file:///w/anna");
  check("file:///w/anna/journal.practice", ["file:///w"], ["file:///w/anna"], "file:///w/anna");
  check("file:///w/ben/march.practice", ["file:///w"], ["file:///w/anna", "file:///w"], "file:///w");
});

test("a name that only begins alike is another folder", () => {
  check("file:///w/anna-b/march.practice", ["file:///w"], ["file:///w/anna"], "file:///w");
  check("file:///w2/march.practice", ["file:///w"], [], "file:///w2/march.practice");
});

test("files under no marker form one journal for each workspace folder", () => {
  check("file:///w/a/b/c.practice", ["file:///w", "file:///v"], [], "file:///w");
  check("file:///v/c.practice", ["file:///w", "file:///v"], [], "file:///v");
});

test("a marker above the workspace folder does not count", () => {
  check("file:///w/anna/march.practice", ["file:///w/anna"], ["file:///w"], "file:///w/anna");
});

test("a file outside every folder stands alone, whatever lies beside it", () => {
  check("file:///x/march.practice", ["file:///w"], ["file:///x"], "file:///x/march.practice");
  check("untitled:Untitled-1", ["file:///w"], [], "untitled:Untitled-1");
});

test("of nested workspace folders the inner one has the file", () => {
  check("file:///w/anna/march.practice", ["file:///w", "file:///w/anna"], ["file:///w"], "file:///w/anna");
});

test("dot folders and node_modules are passed over, but not because the workspace folder lies in one", () => {
  expect(isWalked("file:///w/.git/x.practice", ["file:///w"])).toBe(false);
  expect(isWalked("file:///w/a/node_modules/b/x.practice", ["file:///w"])).toBe(false);
  expect(isWalked("file:///home/.notes/x.practice", ["file:///home/.notes"])).toBe(true);
  expect(isWalked("file:///w/.hidden.practice", ["file:///w"])).toBe(true);
  expect(isWalked("file:///w/notes.txt", ["file:///w"])).toBe(false);
});
