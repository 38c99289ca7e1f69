/** What is said beside findings, and titles of actions. */
export const diagnosticsTexts = {
  /** @param message of the last finding that is shown */
  moreInFile: (message: string, count: number) => `${message} (And ${count} more in this file.)`,
  fixAll: "Apply all safe fixes",
  declarePattern: (pattern: string) => `Declare ${pattern} (add its degrees)`,
  declareLanguage: (declaration: string) => `Declare ${declaration} (its words and names of notes)`,
};
