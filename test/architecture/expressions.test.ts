import { expect, test } from "vitest";
import { type Module, moduleOf, modules, type Node, nodes } from "./source.ts";

// A journal may hold U+2028 or U+2029 in a line, which a dot leaves out: what matches anything does not match there.

/** The expressions of a module in which a dot leaves out line breaks: `path:line`. */
function narrowDots(module: Module): string[] {
  return [...nodes(module.body)].flatMap((node) => {
    const regex = expressionOf(node);
    return regex && hasDot(regex.pattern) && !regex.flags.includes("s")
      ? [`${module.path}:${module.lineOf(node)}`]
      : [];
  });
}

function expressionOf(node: Node): { readonly pattern: string; readonly flags: string } | undefined {
  return node.type === "Literal" ? (node["regex"] as { pattern: string; flags: string } | undefined) : undefined;
}

/** Outside classes, and not escaped. */
function hasDot(pattern: string): boolean {
  return pattern
    .replace(/\\./gs, "")
    .replace(/\[[^\]]*\]/g, "")
    .includes(".");
}

test("a dot in an expression of the server takes in every sign", () => {
  expect(modules("server").flatMap(narrowDots)).toEqual([]);
});

test("what the rule is about", () => {
  const text = ["const a = /^(.*)$/;", "const b = /^(.*)$/s;", "const c = /[.,]\\./;"].join("\n");
  expect(narrowDots(moduleOf("a.ts", text))).toEqual(["a.ts:1"]);
});
