// What whoever runs the features may ask of the history itself: whether it is at hand, and to read it beforehand.
export { hasHistory, journalHistory, readAhead } from "../../history/journal-history.ts";
