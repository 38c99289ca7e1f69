// What whoever runs the features may ask of the history itself: whether it is at hand, and to read it beforehand.
export { hasHistory, historyInSteps, journalHistory } from "../../history/journal-history.ts";
