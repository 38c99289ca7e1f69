/** What of an answer names things, or is as a player could write it, and is not read as a sentence. */
const NOT_READ = new Set(["uri", "key", "hash", "lines", "instruments", "svg"]);

/** All texts in an answer that a person reads; of a chart its labels and what it says of itself. */
export function textsOf(value: unknown, name = ""): readonly string[] {
  if (typeof value === "string") return name === "svg" || value.startsWith("<svg") ? inChart(value) : [value];
  if (Array.isArray(value)) return value.flatMap((each) => textsOf(each, name));
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, each]) => (isRead(key, each) ? textsOf(each, key) : []));
}

function isRead(key: string, value: unknown): boolean {
  const isText = (each: unknown): boolean => typeof each === "string";
  return key === "svg" || !NOT_READ.has(key) || !(isText(value) || (Array.isArray(value) && value.every(isText)));
}

/** The texts of SVG: its name, what it says of itself, its labels. */
export function inChart(svg: string): readonly string[] {
  return [...svg.matchAll(/<(?:title|desc|text)[^>]*>([^<]*)</g)].map((match) => match[1]!);
}
