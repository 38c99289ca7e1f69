import type { Explanation } from "../../server/cli/explain/explanation.ts";

/**
 * What the format reference says of each code, by the code: its sections are the one source. Throws where a section is
 * not made as the others are.
 */
export function explanationsIn(reference: string): Readonly<Record<string, Explanation>> {
  const [, diagnostics = ""] = reference.split("\n## Diagnostics\n");
  const sections = diagnostics.split("\n### `").slice(1);
  return Object.fromEntries(
    sections.map((section) => [section.slice(0, section.indexOf("`")), explanationIn(section)]),
  );
}

const SECTION = /```practice\n([\s\S]*?)```\n\n\*\*Why\.\*\* ([\s\S]*?)\n\n\*\*What to do\.\*\* ([\s\S]*)$/;

function explanationIn(section: string): Explanation {
  const [, example, why, rest] = SECTION.exec(section) ?? [];
  if (!example || !why || !rest) throw new Error(`This section has no example, no why, or nothing to do: ${section}`);
  const [whatToDo, ...further] = rest.trim().split(/\n\n+/).map(plain);
  return {
    example,
    why: plain(why),
    whatToDo: whatToDo!,
    ...(further.length > 0 && { further: further.join("\n\n") }),
  };
}

/** One line, without the signs of Markdown but for code. */
function plain(text: string): string {
  return text
    .replace(/\s*\n\s*/g, " ")
    .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/\*\*([^*]+)\*\*/g, "$1")
    .replace(/\b_([^_]+)_\b/g, "$1");
}
