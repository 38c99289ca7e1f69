import { relative } from "node:path";
import { expect, test } from "vitest";
import { readTree } from "../../../server/host/node/read-tree.ts";
import { type Files, temporaryFolder } from "../../support/temporary-folder.ts";

/** The files that a walk finds, in its order. */
function check(files: Files, found: string[], unreadable: string[] = []) {
  const folder = temporaryFolder(files);
  const steps = [...readTree(folder)];
  const pathsOf = (type: string) =>
    steps.filter((step) => step.type === type).map((step) => relative(folder, step.path));
  expect(pathsOf("file")).toEqual(found);
  expect(pathsOf("unreadable")).toEqual(unreadable);
}

test("practice files at any depth, in the order of names", () => {
  check({ "b.practice": "", "a/z.practice": "", "a/b/c.practice": "", "notes.txt": "", "c.practice.bak": "" }, [
    "a/b/c.practice",
    "a/z.practice",
    "b.practice",
  ]);
});

test("neither dot folders nor node_modules", () => {
  check(
    {
      ".git/a.practice": "",
      "x/.old/a.practice": "",
      "node_modules/p/a.practice": "",
      "x/node_modules/a.practice": "",
      "x/b.practice": "",
    },
    ["x/b.practice"],
  );
});

test("a file may begin with a dot", () => {
  check({ ".draft.practice": "" }, [".draft.practice"]);
});

test("links that lead round in a circle end", () => {
  check({ "a/b.practice": "", "a/up": { linkTo: ".." }, "a/self": { linkTo: "." }, "a/c/d": { linkTo: "../../a" } }, [
    "a/b.practice",
  ]);
});

test("a linked folder is walked once, under its own name where it has one inside", () => {
  check({ "a-link": { linkTo: "z" }, "z/b.practice": "" }, ["z/b.practice"]);
});

test("a linked file is met once, under its own name where it has one inside", () => {
  check({ "a.practice": { linkTo: "z.practice" }, "z.practice": "" }, ["z.practice"]);
});

test("links to places outside are followed", () => {
  const outside = temporaryFolder({ "2025/march.practice": "", "april.practice": "" });
  check({ old: { linkTo: `${outside}/2025` }, "april.practice": { linkTo: `${outside}/april.practice` } }, [
    "april.practice",
    "old/march.practice",
  ]);
});

test("a link to nowhere is told, when it is named like a journal", () => {
  check({ "gone.practice": { linkTo: "nowhere" }, gone: { linkTo: "nowhere" } }, [], ["gone.practice"]);
});

test("a link to itself is told as well", () => {
  check({ "a.practice": { linkTo: "a.practice" } }, [], ["a.practice"]);
});

test("a folder named like a journal is a folder", () => {
  check({ "x.practice/y.practice": "" }, ["x.practice/y.practice"]);
});

test("a folder that does not exist is told", () => {
  const [step] = [...readTree("/no/such/folder")];
  expect(step).toEqual({ type: "unreadable", path: "/no/such/folder", reason: "There is no such file or folder." });
});
