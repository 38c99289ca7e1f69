import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { CODES, type Code, MEANINGS } from "../../checks/codes.ts";
import type { Severity } from "../../features/types.ts";
import type { Explanation } from "../explain/explanation.ts";
import explanations from "../explain/explanations.json";

export const LEVELS = {
  error: "error",
  warning: "warning",
  information: "note",
  hint: "note",
} as const satisfies Record<Severity, string>;

/** The codes in the order of the rules. */
export const RULES = Object.keys(CODES) as Code[];

/** The format reference, with a section for each code. */
const PAGE = "FORMAT.md";

/**
 * Each code as a `reportingDescriptor` (SARIF 2.1.0, 3.49), with what the format reference says of it: why it is
 * reported, what to do, an example. A help link must be an absolute URI (3.49.12), so it leads into the page where this
 * package is installed; whoever reads the log elsewhere has the texts.
 *
 * @param pages the folder with the pages; without one, or where the page is missing, there are no links
 */
export function sarifRules(pages: string | undefined): readonly object[] {
  const page = pages === undefined ? undefined : join(pages, PAGE);
  const link = page !== undefined && existsSync(page) ? pathToFileURL(page).href : undefined;
  return RULES.map((code) => {
    const explanation = (explanations as Readonly<Record<Code, Explanation>>)[code];
    return {
      id: code,
      shortDescription: message(`${MEANINGS[code]}.`),
      fullDescription: message(explanation.why),
      help: help(explanation),
      ...(link !== undefined && { helpUri: `${link}#${anchorOf(code)}` }),
      defaultConfiguration: { level: LEVELS[CODES[code]] },
    };
  });
}

/** The heading of a code's section as an anchor: `prose` is also the heading of a kind of line, further up. */
export function anchorOf(code: Code): string {
  return code === "prose" ? "prose-1" : code;
}

function help({ whatToDo, further, example }: Explanation): object {
  const said = [whatToDo, ...(further === undefined ? [] : [further]), "For example, this is reported:"].join("\n\n");
  return {
    text: `${plainText(said)}\n\n${example.trimEnd()}`,
    markdown: `${said}\n\n\`\`\`text\n${example.trimEnd()}\n\`\`\``,
  };
}

/** A `multiformatMessageString` (3.12). */
function message(markdown: string): object {
  return { text: plainText(markdown), markdown };
}

/** What is code is in quotes. */
function plainText(markdown: string): string {
  return markdown.replace(/`([^`]*)`/g, "“$1”");
}
