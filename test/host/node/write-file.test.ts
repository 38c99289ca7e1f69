import {
  appendFileSync,
  chmodSync,
  chownSync,
  linkSync,
  lstatSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readFileText } from "../../../server/host/node/read-file.ts";
import { sweep } from "../../../server/host/node/temporary-files.ts";
import { writeByRename } from "../../../server/host/node/write-file.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";

/** Reads a file, lets something happen, and writes it. */
function write(path: string, text: string, meanwhile: () => void = () => {}) {
  const before = readFileText(path);
  if (!before.ok) throw new Error(before.reason);
  meanwhile();
  return writeByRename(path, before, text);
}

test("writing replaces the text, keeps the byte order mark and the permissions, and leaves nothing beside it", () => {
  const folder = temporaryFolder({ "a.practice": "\uFEFFold\r\n" });
  const path = join(folder, "a.practice");
  chmodSync(path, 0o640);
  expect(write(path, "new\r\n")).toEqual({ ok: true });
  expect(readFileSync(path, "utf8")).toBe("\uFEFFnew\r\n");
  expect(statSync(path).mode & 0o777).toBe(0o640);
  expect(readdirSync(folder)).toEqual(["a.practice"]);
});

test("a file that changed meanwhile is left alone", () => {
  const path = join(temporaryFolder({ "a.practice": "old" }), "a.practice");
  const written = write(path, "new", () => writeFileSync(path, "theirs"));
  expect(written).toEqual({ ok: false, reason: "It changed in the meantime, so it was left alone." });
  expect(readFileSync(path, "utf8")).toBe("theirs");
});

test("a link stays a link, and the file behind it is written", () => {
  const folder = temporaryFolder({ "real/a.practice": "old", "a.practice": { linkTo: "real/a.practice" } });
  expect(write(join(folder, "a.practice"), "new")).toEqual({ ok: true });
  expect(lstatSync(join(folder, "a.practice")).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(folder, "real/a.practice"), "utf8")).toBe("new");
});

test("whatever text is written is read again", () => {
  const path = join(temporaryFolder({ "a.practice": "" }), "a.practice");
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), (text) => {
      fc.pre(!text.includes("\0") && !text.startsWith("\uFEFF"));
      expect(write(path, text)).toEqual({ ok: true });
      expect(readFileText(path)).toEqual({ ok: true, text, bom: false });
    }),
    { seed: 4 },
  );
});

describe("what is left alone, and why", () => {
  /** Makes a file something, and finds that it is not written and keeps its text. */
  function check(make: (path: string) => void, reason: string) {
    const folder = temporaryFolder({ "a.practice": "old" });
    const path = join(folder, "a.practice");
    make(path);
    expect(write(path, "new")).toEqual({ ok: false, reason });
    expect(readFileSync(path, "utf8")).toBe("old");
    expect(readdirSync(folder).filter((name) => name.endsWith(".new"))).toEqual([]);
  }

  test("a read-only file, by its mode, also for who may write everywhere", () =>
    check((path) => chmodSync(path, 0o444), "It is read-only."));

  test("one that others may write, but its owner may not", () =>
    check((path) => chmodSync(path, 0o464), "It is read-only."));

  test("a file with a second name", () =>
    check(
      (path) => linkSync(path, `${path}.same`),
      "It has a second name (a hard link), under which the old text would stay.",
    ));
});

test.skipIf(process.getuid?.() !== 0)("owner and group stay (skipped where this user may not give files away)", () => {
  const path = join(temporaryFolder({ "a.practice": "old" }), "a.practice");
  chownSync(path, 1234, 4321);
  chmodSync(path, 0o664);
  expect(write(path, "new")).toEqual({ ok: true });
  expect(statSync(path)).toMatchObject({ uid: 1234, gid: 4321 });
  expect(statSync(path).mode & 0o7777).toBe(0o664);
});

/** As many editors save. */
function replaceByRename(path: string) {
  writeFileSync(`${path}.saved`, "theirs");
  renameSync(`${path}.saved`, path);
}

test.each([
  ["added to", (path: string) => appendFileSync(path, " and theirs")],
  ["emptied", (path: string) => writeFileSync(path, "")],
  ["replaced", replaceByRename],
  ["removed", (path: string) => rmSync(path)],
])("a file that was %s meanwhile stays so", (_, meanwhile) => {
  const folder = temporaryFolder({ "a.practice": "old" });
  const path = join(folder, "a.practice");
  expect(write(path, "new", () => meanwhile(path)).ok).toBe(false);
  const left = readdirSync(folder).map((name) => readFileSync(join(folder, name), "utf8"));
  expect(left).not.toContain("new");
});

test("a file may have a name as long as the disk allows, and any signs in it", () => {
  for (const name of ["x".repeat(246), "a b", "-rf", "ü\n\t'\"$(x)", "%41"]) {
    const path = join(temporaryFolder({ [`${name}.practice`]: "old" }), `${name}.practice`);
    expect(write(path, "new")).toEqual({ ok: true });
    expect(readFileSync(path, "utf8")).toBe("new");
  }
});

test("a sweep removes what a killed run left, not what a running one writes, and nothing of anybody else's", () => {
  const gone = 2 ** 22 + 1; // above the highest number that Linux gives a process
  const kept = [`.daystave-${process.ppid}.new`, ".daystave-x.new", ".other-1.new", "a.practice"];
  const left = [`.daystave-${gone}.new`, `.daystave-${process.pid}.new`];
  const folder = temporaryFolder(Object.fromEntries([...kept, ...left].map((name) => [name, ""])));
  sweep(folder);
  expect(readdirSync(folder).sort()).toEqual(kept.sort());
  sweep(join(folder, "gone"));
});
