import { importsOf, type Module } from "./source.ts";

type Graph = ReadonlyMap<string, readonly string[]>;

/**
 * One circle of imports for each knot of modules that import each other, types and imports at run time included, as
 * `a.ts → b.ts → a.ts`: the shortest through the knot's first module.
 */
export function circlesAmong(modules: readonly Module[]): string[] {
  const graph: Graph = new Map(modules.map((each) => [each.path, importsOf(each).flatMap(({ file }) => file ?? [])]));
  const reached = new Map([...graph.keys()].map((path) => [path, reachedFrom(path, graph)]));
  const inKnot = new Set<string>();
  return [...graph.keys()].sort().flatMap((path) => {
    if (inKnot.has(path) || !reached.get(path)!.has(path)) return [];
    for (const other of reached.get(path)!) if (reached.get(other)?.has(path)) inKnot.add(other);
    return [circleThrough(path, graph).join(" → ")];
  });
}

/** Every module that one imports, directly or by others; itself where it stands in a circle. */
function reachedFrom(path: string, graph: Graph): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [path];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const each of graph.get(next) ?? []) {
      if (found.has(each)) continue;
      found.add(each);
      open.push(each);
    }
  }
  return found;
}

/** Breadth first, from a module that stands in a circle. */
function circleThrough(path: string, graph: Graph): readonly string[] {
  const open: (readonly string[])[] = [[path]];
  const seen = new Set<string>();
  for (const way of open) {
    for (const each of graph.get(way.at(-1)!) ?? []) {
      if (each === path) return [...way, path];
      if (!seen.has(each)) open.push([...way, each]);
      seen.add(each);
    }
  }
  throw new Error(`${path} stands in no circle.`);
}
