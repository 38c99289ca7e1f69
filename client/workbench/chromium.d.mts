export const launchArguments: string[];

/** A path, or undefined after saying on stderr what to install. */
export function findChromium(): string | undefined;
