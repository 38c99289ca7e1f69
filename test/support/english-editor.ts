export const env = { language: "en" };

/** The editor's own way of putting a text into its user's words, in English: for tests that have an editor of theirs. */
export const l10n = {
  t: (text: string, ...values: readonly (string | number)[]): string =>
    text.replace(/\{(\d+)\}/g, (place, at) => String(values[at] ?? place)),
};
