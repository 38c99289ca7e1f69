import { join } from "node:path";
import { expect, test } from "vitest";
import { readFileText } from "../../../server/host/node/read-file.ts";
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
  check(`${"x".repeat(7999)}\0`, { ok: false, reason: "It is a binary file: it contains a NUL character." });
  check(`${"x".repeat(8000)}\0`, { ok: true });
});

test("bytes that are not UTF-8 are named so", () => {
  check(new Uint8Array([0x44, 0xe9, 0x0a]), {
    ok: false,
    reason: "It is not UTF-8 text. Save it again with the encoding UTF-8.",
  });
  check(new Uint8Array([0xed, 0xa0, 0x80]), { ok: false });
});

test("text in 16 or 32 bits a unit is called by its name, with a byte order mark or without", () => {
  const named = (name: string) => ({ ok: false, reason: `It is ${name} text. Save it again with the encoding UTF-8.` });
  const text = "2026-03-02 Mon\n  D minor, 8ths at 60 clean\n  F♯ major\n";
  const little = Buffer.from(text, "utf16le");
  const big = Buffer.from(little).swap16();
  check(Buffer.concat([Buffer.from([0xff, 0xfe]), little]), named("UTF-16"));
  check(Buffer.concat([Buffer.from([0xfe, 0xff]), big]), named("UTF-16"));
  check(little, named("UTF-16"));
  check(big, named("UTF-16"));
  check(new Uint8Array([0xff, 0xfe, 0, 0, 0x32, 0, 0, 0]), named("UTF-32"));
  check(new Uint8Array([0, 0, 0xfe, 0xff, 0, 0, 0, 0x32]), named("UTF-32"));
  check(new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0, 0, 0]), { reason: expect.stringContaining("binary") });
});

test("a file that is not there, and a folder, are values too", () => {
  const folder = temporaryFolder();
  expect(readFileText(join(folder, "gone.practice"))).toEqual({
    ok: false,
    reason: "There is no such file or folder.",
  });
  expect(readFileText(folder)).toEqual({ ok: false, reason: "It is a folder." });
});
