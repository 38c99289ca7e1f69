import { chmodSync, lstatSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readFileText } from "../../../server/host/node/read-file.ts";
import { writeByRename } from "../../../server/host/node/write-file.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";

/** What a file with these bytes reads as. */
function check(bytes: string | Uint8Array, expected: object) {
  expect(readFileText(join(temporaryFolder({ "a.practice": bytes }), "a.practice"))).toMatchObject(expected);
}

test("text, with or without a byte order mark", () => {
  check("2026-03-02\n  D minor ♯\n", { ok: true, text: "2026-03-02\n  D minor ♯\n", bom: false });
  check("\uFEFF2026-03-02\r\n", { ok: true, text: "2026-03-02\r\n", bom: true });
  check("", { ok: true, text: "", bom: false });
  check("\uFEFF\uFEFFx", { ok: true, text: "\uFEFFx", bom: true });
});

test("a NUL among the first 8,000 bytes makes a binary file", () => {
  check(`${"x".repeat(7999)}\0`, { ok: false, reason: "It is a binary file: it holds a NUL character." });
  check(`${"x".repeat(8000)}\0`, { ok: true });
});

test("bytes that are not UTF-8 are named so", () => {
  check(new Uint8Array([0x44, 0xe9, 0x0a]), {
    ok: false,
    reason: "It is not UTF-8 text. Saving it again with the encoding UTF-8 mends that.",
  });
  check(new Uint8Array([0xed, 0xa0, 0x80]), { ok: false });
});

test("a file that is not there, and a folder, are values too", () => {
  const folder = temporaryFolder();
  expect(readFileText(join(folder, "gone.practice"))).toEqual({
    ok: false,
    reason: "There is no such file or folder.",
  });
  expect(readFileText(folder)).toEqual({ ok: false, reason: "It is a folder." });
});

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
  expect(written).toEqual({ ok: false, reason: "It changed while it was being worked on, so it was left alone." });
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
