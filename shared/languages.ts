/** The languages beside English that the program speaks, by their codes of ISO 639-1. */
export const SPOKEN = ["de"] as const;

export type Spoken = (typeof SPOKEN)[number];

/** Which of them an editor's locale asks for (`de`, `de-AT`); undefined is English. */
export function spokenIn(locale: string | undefined): Spoken | undefined {
  const language = locale?.toLowerCase().split(/[-_]/, 1)[0];
  return SPOKEN.find((spoken) => spoken === language);
}
