import { isAbsolute, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { version } from "../../../package.json";
import { CODES } from "../../checks/codes.ts";
import type { Diagnostic, Fix, Range, Severity } from "../../features/types.ts";
import type { CheckReport } from "./check-report.ts";

const RULES = Object.keys(CODES);
const LEVELS = { error: "error", warning: "warning", information: "note", hint: "note" } as const satisfies Record<
  Severity,
  string
>;

/** A log in the Static Analysis Results Interchange Format: OASIS, SARIF Version 2.1.0 (March 2020). */
export function sarifLog({ files, skipped }: CheckReport): object {
  const notifications = skipped.map(({ path, reason }) => ({
    level: "warning",
    message: { text: reason },
    locations: [{ physicalLocation: { artifactLocation: { uri: uriReference(path) } } }],
  }));
  return {
    $schema: "https://json.schemastore.org/sarif-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: { driver: { name: "Daystave", version, rules: RULES.map(rule) } },
        invocations: [{ executionSuccessful: true, toolExecutionNotifications: notifications }],
        columnKind: "utf16CodeUnits",
        artifacts: files.map(({ path }) => ({ location: { uri: uriReference(path) } })),
        results: files.flatMap(({ path, diagnostics }) => diagnostics.map((each) => result(each, uriReference(path)))),
      },
    ],
  };
}

function rule(code: string): object {
  return { id: code, defaultConfiguration: { level: LEVELS[CODES[code as keyof typeof CODES]] } };
}

function result({ code, severity, message, range, fixes }: Diagnostic, uri: string): object {
  return {
    ruleId: code,
    ruleIndex: RULES.indexOf(code),
    level: LEVELS[severity],
    message: { text: message },
    locations: [{ physicalLocation: { artifactLocation: { uri }, region: region(range) } }],
    ...(fixes.length > 0 && { fixes: fixes.map((each) => fix(each, uri)) }),
  };
}

function fix({ title, edits }: Fix, uri: string): object {
  const replacements = edits.map(({ range, newText }) => ({
    deletedRegion: region(range),
    insertedContent: { text: newText },
  }));
  return { description: { text: title }, artifactChanges: [{ artifactLocation: { uri }, replacements }] };
}

/**
 * Lines and columns from 1; the end is the column behind the last one (section 3.30.8), as an end excluded from 0 is.
 */
function region({ start, end }: Range): object {
  return {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  };
}

/** A relative path stays relative, as the reader knows where the run began. */
function uriReference(path: string): string {
  if (isAbsolute(path)) return pathToFileURL(path).href;
  return path.split(sep).map(encodeURIComponent).join("/");
}
