import { readFileSync, writeFileSync } from "node:fs";
import { test } from "vitest";
import { lineText, read } from "./print.ts";
test("dump", () => {
  const out = readFileSync("/tmp/x/in.txt", "utf8").split("\n").map((l) => l === "" || l.startsWith("##") ? l : `${l}   =>   ${lineText(read(l.replace(/^\^/, ""), l.startsWith("^")))}`);
  writeFileSync("/tmp/x/out.txt", out.join("\n"));
});
