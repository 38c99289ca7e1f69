import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseAst } from "vitest/node";

/** The top of the checkout. */
export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Written by tools, or fetched: what `.gitignore` leaves out, and Git's own folder. */
const NOT_OURS = /^(?:\.git|node_modules|dist|out|\.hosts|.*\.(?:vsix|tgz))$/;

/** A node of the syntax tree as ESTree has it, with TypeScript's own kinds. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

export interface Module {
  /** From the top of the checkout, with slashes. */
  readonly path: string;
  readonly body: readonly Node[];
  lineOf(node: Node): number;
}

/** Every file of the checkout below a folder, from the top of the checkout, with slashes, sorted. */
export function filesBelow(folder = "."): readonly string[] {
  const walk = (at: string): string[] =>
    readdirSync(at, { withFileTypes: true }).flatMap((entry) => {
      if (NOT_OURS.test(entry.name)) return [];
      const path = join(at, entry.name);
      return entry.isDirectory() ? walk(path) : [relative(ROOT, path).split(sep).join("/")];
    });
  return existsSync(join(ROOT, folder)) ? walk(join(ROOT, folder)).sort() : [];
}

export function textOf(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/** The modules of the program itself: everything in TypeScript below these folders. */
export function modules(...folders: readonly string[]): readonly Module[] {
  const paths = folders.flatMap((folder) => filesBelow(folder)).filter((path) => path.endsWith(".ts"));
  return paths.map((path) => moduleOf(path, textOf(path)));
}

export function moduleOf(path: string, text: string): Module {
  const { body } = parseAst(text, { lang: "ts" }) as unknown as { body: readonly Node[] };
  return { path, body, lineOf: ({ start }) => text.slice(0, start).split("\n").length };
}

/** Every node below these, in the order of the text. */
export function* nodes(below: unknown): Generator<Node> {
  if (Array.isArray(below)) for (const each of below) yield* nodes(each);
  else if (isNode(below)) {
    yield below;
    for (const field of Object.values(below)) if (typeof field === "object") yield* nodes(field);
  }
}

export function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && typeof (value as Node).type === "string";
}

/** The value of a literal; undefined for anything else. */
export function literal(node: unknown): unknown {
  return isNode(node) && node.type === "Literal" ? node["value"] : undefined;
}

/** The name of an identifier; undefined for anything else. */
export function nameOf(node: unknown): string | undefined {
  return isNode(node) && node.type === "Identifier" ? (node["name"] as string) : undefined;
}

export interface Import {
  /** As it is written. */
  readonly from: string;
  /** For an import within the project the file, from the top of the checkout. */
  readonly file?: string;
  readonly line: number;
}

const IMPORTS = [
  "ImportDeclaration",
  "ExportNamedDeclaration",
  "ExportAllDeclaration",
  "ImportExpression",
  "TSImportType",
  "TSExternalModuleReference",
];

/** Everything a module imports, by whatever form: also types, re-exports and imports at run time. */
export function importsOf(module: Module): readonly Import[] {
  return [...nodes(module.body)].flatMap((node) => {
    const isRequire = node.type === "CallExpression" && nameOf(node["callee"]) === "require";
    if (!IMPORTS.includes(node.type) && !isRequire) return [];
    const source = isRequire ? (node["arguments"] as Node[])[0] : (node["source"] ?? node["expression"]);
    if (!source) return []; // an export of something of its own
    const from = literal(source);
    const line = module.lineOf(node);
    if (typeof from !== "string") throw new Error(`${module.path}:${line} imports something that only a run can tell.`);
    if (!from.startsWith(".")) return [{ from, line }];
    return [{ from, line, file: join(dirname(module.path), from).split(sep).join("/") }];
  });
}
