/** The exercise under the cursor: its staff, its fingerings, its hardest finger changes. */
export const staffTexts = {
  heading: "On the staff",
  nothing: "The cursor is on no scale or arpeggio.",
  hint: "Choose a note with a click or the arrow keys.",
  notes: (staff: string) => `Notes on the staff. ${staff}`,
  showFingerings: "Show the fingerings",
  hideFingerings: "Hide the fingerings",
  note: (place: number, count: number, what: string) => `Note ${place} of ${count}: ${what}.`,
  fingering: (chart: string, words: string) => `Fingering ${chart}: ${words}.`,
  hardestChanges: "Hardest finger changes of this line:",
  practiseAlone: (change: string) => `${change}: practise it by itself`,
};
