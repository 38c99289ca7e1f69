/** What stands beside a name in the outline. */
export const outlineTexts = {
  /** A pattern and a variant of it, by their ids. */
  pattern: (id: string, variant: string | undefined) => (variant === undefined ? id : `${id}, ${variant}`),
};
