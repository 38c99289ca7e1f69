/** The phases of a session as headings to read. */
export const phaseTexts = {
  /** By its id; one that the journal declares is itself. */
  name: (phase: string) => phase,
};
