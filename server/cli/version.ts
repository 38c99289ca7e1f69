import { version } from "../../package.json";

/** What `daystave --version` prints; undefined where the first word of a command line asks for something else. */
export function versionAsked(first: string | undefined): string | undefined {
  return first === "--version" || first === "-V" ? VERSION_TEXT : undefined;
}

export const VERSION_TEXT = `${version}\n`;
