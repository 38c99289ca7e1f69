import { describe, expect, test } from "vitest";
import { importsOf, isNode, literal, type Module, moduleOf, modules, type Node, nameOf, nodes } from "./source.ts";

/** What computes: the same arguments give the same answer, in Node, in a web worker and in a test. */
const CORE = ["music", "syntax", "journal", "history", "plan", "checks", "charts", "features"].map(
  (name) => `server/${name}`,
);

/** A clock, chance, the outside world. The day and the settings are arguments. */
const OUTSIDE =
  "Date performance process Buffer console globalThis window document navigator setTimeout setInterval queueMicrotask";
const NETWORK = "fetch XMLHttpRequest WebSocket EventSource WebTransport importScripts";

/** Modules of Node that reach a network. */
const NETWORK_MODULES = ["http", "https", "http2", "net", "tls", "dgram", "dns", "undici", "ws"];

const MUTATORS = "set add delete clear push pop shift unshift splice sort reverse fill copyWithin";

/** Where one of these names stands for the global thing: not as a field, a key or a type. */
function uses(module: Module, names: string): string[] {
  const sought = new Set(names.split(" "));
  const declared = new Set([...nodes(module.body)].flatMap((node) => [...boundNames(node)]));
  const found: string[] = [];
  const visit = (value: unknown, parent?: Node, field?: string): void => {
    if (Array.isArray(value)) for (const each of value) visit(each, parent, field);
    if (!isNode(value) || isType(value)) return;
    const name = nameOf(value);
    const isField = parent?.["computed"] === false && (field === "property" || field === "key");
    if (name && sought.has(name) && !declared.has(name) && !isField) found.push(`${at(module, value)} uses ${name}`);
    for (const [key, each] of Object.entries(value)) if (typeof each === "object") visit(each, value, key);
  };
  visit(module.body);
  return found;
}

/** The names that a declaration, a parameter or an import gives to something of the module's own. */
function boundNames(node: Node): readonly string[] {
  const declares = node.type === "VariableDeclarator" || /^(Function|Class)Declaration$/.test(node.type);
  const parameters = (node["params"] as readonly unknown[] | undefined) ?? [];
  return [declares && node["id"], node.type.startsWith("Import") && node["local"], ...parameters].flatMap(patternNames);
}

/** The names in a pattern; not those in its defaults. */
function patternNames(pattern: unknown): readonly string[] {
  if (!isNode(pattern)) return [];
  const name = nameOf(pattern);
  if (name) return [name];
  const { left, argument, parameter, value, elements, properties } = pattern;
  return [left, argument, parameter, value, elements, properties].flat().flatMap(patternNames);
}

function isType(node: Node): boolean {
  return /^TS(Type|Interface|Array|Tuple|Union|Intersection|Function|Literal|Mapped|Qualified)/.test(node.type);
}

/**
 * Names of the module's own that change while it runs: `let` at the top, and collections at the top that are written
 * to.
 */
function mutableState({ body, lineOf, path }: Module): string[] {
  const top = body.flatMap((node) => {
    const declaration = node.type === "ExportNamedDeclaration" ? node["declaration"] : node;
    return isNode(declaration) && declaration.type === "VariableDeclaration" ? [declaration] : [];
  });
  const variables = top.filter(({ kind }) => kind !== "const").map((node) => `${path}:${lineOf(node)} is no constant`);
  const constants = new Set(
    top.flatMap((node) => (node["declarations"] as Node[]).flatMap(({ id }) => nameOf(id) ?? [])),
  );
  const writes = [...nodes(body)].flatMap((node) => {
    const name = writtenTo(node);
    return name && constants.has(name) ? [`${path}:${lineOf(node)} writes to ${name}`] : [];
  });
  return [...variables, ...writes];
}

/** The name whose value a node changes from within. */
function writtenTo(node: Node): string | undefined {
  const { type, left, argument, callee } = node;
  const target =
    type === "AssignmentExpression"
      ? left
      : type === "UpdateExpression" || (type === "UnaryExpression" && node["operator"] === "delete")
        ? argument
        : type === "CallExpression"
          ? callee
          : undefined;
  if (!isNode(target) || target.type !== "MemberExpression") return undefined;
  const method = nameOf(target["property"]) ?? String(literal(target["property"]));
  if (type === "CallExpression" && !MUTATORS.split(" ").includes(method)) return undefined;
  return nameOf(target["object"]);
}

function at(module: Module, node: Node): string {
  return `${module.path}:${module.lineOf(node)}`;
}

const core = modules(...CORE);
const all = modules("server", "client", "shared");

describe("the search itself", () => {
  const found = (text: string) => uses(moduleOf("x.ts", text), `${OUTSIDE} ${NETWORK}`);
  const state = (text: string) => mutableState(moduleOf("x.ts", text));

  test("sees a clock, wherever it stands", () => {
    expect(found("export const now = () => Date.now();")).toEqual(["x.ts:1 uses Date"]);
    expect(found("\nfunction f(at = new Date()) { return at; }")).toEqual(["x.ts:2 uses Date"]);
    expect(found("const f = { at: performance.now() };")).toEqual(["x.ts:1 uses performance"]);
    expect(found("const env = process.env; void fetch(env.X);")).toHaveLength(2);
  });

  test("lets fields, types, words and names of the module's own pass", () => {
    expect(found("const f = (page: Page) => page.document; // Date")).toEqual([]);
    expect(found("const f = (document: Document) => document.lines; type D = Date; const text = 'Date';")).toEqual([]);
  });

  test("sees state at the top of a module", () => {
    expect(state("let count = 0;")).toEqual(["x.ts:1 is no constant"]);
    expect(state("export var count = 0;")).toEqual(["x.ts:1 is no constant"]);
    expect(state("const known = new Map();\nfunction f() { known.set(1, 2); }")).toEqual(["x.ts:2 writes to known"]);
    expect(state("const known: number[] = []; const f = () => { known[0] = 1; };")).toHaveLength(1);
    expect(state("export const count = { value: 0 }; const f = () => count.value++;")).toHaveLength(1);
    expect(state("const known = new Map(); const f = () => { const own = []; own.push(known.get(1)); };")).toEqual([]);
  });
});

test("the core has no clock, no chance and no outside world", () => {
  expect(core.length).toBeGreaterThan(100);
  expect(core.flatMap((module) => uses(module, `${OUTSIDE} ${NETWORK}`))).toEqual([]);
  expect(core.flatMap((module) => chances(module))).toEqual([]);
});

/** `Math.random`, and the names of the modules of Node and of editors. */
function chances(module: Module): string[] {
  const random = [...nodes(module.body)].filter(
    (node) =>
      node.type === "MemberExpression" && nameOf(node["object"]) === "Math" && nameOf(node["property"]) === "random",
  );
  const outside = importsOf(module).filter(({ from }) => /^(node:|vscode)/.test(from));
  return [
    ...random.map((node) => `${at(module, node)} uses Math.random`),
    ...outside.map(({ from, line }) => `${module.path}:${line} imports ${from}`),
  ];
}

test("nothing that is shipped reaches a network", () => {
  expect(all.flatMap((module) => uses(module, NETWORK))).toEqual([]);
  const imports = all.flatMap((module) => importsOf(module).map(({ from }) => `${module.path} imports ${from}`));
  expect(imports.filter((each) => NETWORK_MODULES.includes(each.replace(/.* (node:)?/, "")))).toEqual([]);
});

/** The top of a module that nothing imports is a program's own first function, and runs once. */
test("no module that another imports has state of its own", () => {
  const imported = new Set(all.flatMap((module) => importsOf(module).map(({ file }) => file)));
  const shared = all.filter(({ path }) => imported.has(inEnglish(path)));
  expect(shared.length).toBeGreaterThan(all.length - 10);
  expect(shared.flatMap(mutableState)).toEqual([]);
});

/** The texts of another language come in the place of the English ones. */
function inEnglish(path: string): string {
  return path.replace(/-texts\.\w+\.ts$/, "-texts.ts");
}
