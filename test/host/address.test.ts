import { expect, test } from "vitest";
import { canonicalUri, folderOf, isWalked, journalRoot } from "../../server/host/address.ts";

// How editors write URIs: RFC 3986 (percent-encoding, section 2.1; case, section 6.2.2.1). The spelling chosen is the one
// that the editor itself sends, observed from vscode-languageclient.

test.each([
  ["file:///home/noor/journal.practice", "file:///home/noor/journal.practice"],
  ["FILE:///home/noor/a%2db.practice", "file:///home/noor/a-b.practice"],
  ["file:///home/noor/été (neu).practice", "file:///home/noor/%C3%A9t%C3%A9%20%28neu%29.practice"],
  ["file:///C:/Users/Noor/x.practice", "file:///c%3A/Users/Noor/x.practice"],
  ["file:///c%3A/Users/Noor/x.practice", "file:///c%3A/Users/Noor/x.practice"],
  ["vscode-remote://SSH-remote%2Bhost/x.practice", "vscode-remote://ssh-remote%2bhost/x.practice"],
  ["untitled:Untitled-1", "untitled:Untitled-1"],
  ["sample:/quickstart/week.practice", "sample:/quickstart/week.practice"],
  ["file:///100%.practice", "file:///100%25.practice"],
  ["not a uri", "not a uri"],
])("%s is known as %s", (uri, canonical) => {
  expect(canonicalUri(uri)).toBe(canonical);
  expect(canonicalUri(canonical)).toBe(canonical);
});

test("a file lies in a folder, and the top in none", () => {
  expect(folderOf("file:///a/b.practice")).toBe("file:///a");
  expect(folderOf("file:///b.practice")).toBeUndefined();
  expect(folderOf("untitled:Untitled-1")).toBeUndefined();
});

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
