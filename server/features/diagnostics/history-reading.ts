// What whoever runs the features may ask of the history itself: whether it is at hand, and to read it beforehand.
export { practisedDaysInSteps } from "../../history/journal-facts.ts";
export { hasHistory, historyInSteps, journalHistory } from "../../history/journal-history.ts";
