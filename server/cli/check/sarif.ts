import { isAbsolute, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { version } from "../../../package.json";
import type { Code } from "../../checks/codes.ts";
import type { Diagnostic, Fix, Range } from "../../features/types.ts";
import type { CheckReport, FileReport } from "./check-report.ts";
import { fingerprints } from "./fingerprint.ts";
import { LEVELS, RULES, sarifRules } from "./sarif-rules.ts";

/** What relative paths count from. Where that is, is not said: a log may be passed on. */
const BASE = "%SRCROOT%";
const BASES = { [BASE]: { description: { text: "The folder in which daystave ran." } } };

/** Which findings of two runs are the same; a new number where they are known by something else. */
const FINGERPRINT = "dayAndLine/v1";

/**
 * A log in the Static Analysis Results Interchange Format: OASIS, SARIF Version 2.1.0 (March 2020).
 *
 * @param pages the folder with the pages of the package, into which help leads
 */
export function sarifLog({ files, skipped }: CheckReport, pages: string | undefined): object {
  const notifications = skipped.map(({ path, reason }) => ({
    level: "warning",
    message: { text: reason },
    locations: [{ physicalLocation: { artifactLocation: artifactLocation(path) } }],
  }));
  return {
    $schema: "https://json.schemastore.org/sarif-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: {
          driver: { name: "Daystave", version, semanticVersion: version, language: "en-GB", rules: sarifRules(pages) },
        },
        invocations: [{ executionSuccessful: true, toolExecutionNotifications: notifications }],
        originalUriBaseIds: BASES,
        columnKind: "utf16CodeUnits",
        artifacts: files.map(({ path }) => ({ location: artifactLocation(path) })),
        results: files.flatMap(resultsIn),
      },
    ],
  };
}

function resultsIn({ path, diagnostics, document }: FileReport): object[] {
  const location = artifactLocation(path);
  const known = fingerprints(diagnostics, document);
  return diagnostics.map((each, i) => result(each, location, known[i]!));
}

function result(
  { code, severity, message, range, fixes }: Diagnostic,
  artifact: ArtifactLocation,
  fingerprint: string,
): object {
  return {
    ruleId: code,
    ruleIndex: RULES.indexOf(code as Code),
    level: LEVELS[severity],
    message: { text: message },
    locations: [{ physicalLocation: { artifactLocation: artifact, region: region(range) } }],
    partialFingerprints: { [FINGERPRINT]: fingerprint },
    ...(fixes.length > 0 && { fixes: fixes.map((each) => fix(each, artifact)) }),
  };
}

function fix({ title, edits }: Fix, artifactLocation: ArtifactLocation): object {
  const replacements = edits.map(({ range, newText }) => ({
    deletedRegion: region(range),
    insertedContent: { text: newText },
  }));
  return { description: { text: title }, artifactChanges: [{ artifactLocation, replacements }] };
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

interface ArtifactLocation {
  readonly uri: string;
  readonly uriBaseId?: string;
}

/** A relative path stays relative (3.4.4). */
function artifactLocation(path: string): ArtifactLocation {
  if (isAbsolute(path)) return { uri: pathToFileURL(path).href };
  return { uri: path.split(sep).map(encodeURIComponent).join("/"), uriBaseId: BASE };
}
