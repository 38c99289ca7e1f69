import { expect, test } from "vitest";
import { canonicalUri, folderOf, isBelow, isBelowAny } from "../../server/host/uri.ts";

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

test("a file lies below one of some folders as it lies below each", () => {
  const folders = ["file:///w", "file:///w/a", "file:///w/ab", "file:///w/a/b/c", "vscode-vfs://github/x"];
  const files = ["file:///w/a.practice", "file:///w/a/b/x.practice", "file:///v/a/x", "vscode-vfs://github/x/y/z"];
  for (const file of [...folders, ...files]) {
    const above = folders.filter((folder) => isBelow(folder, file));
    for (const folder of folders) expect(isBelowAny(new Set([folder]), file)).toBe(above.includes(folder));
    expect(isBelowAny(new Set(folders), file)).toBe(above.length > 0);
  }
});
