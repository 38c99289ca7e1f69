/** What lenses and hints are made of: the same object while nothing that they tell has changed. */
export { historyAtHand as historyShown } from "../../history/journal-history.ts";
