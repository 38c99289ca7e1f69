/** The page of pupils. */
export const pupilsTexts = {
  heading: "Pupils",
  none: "No pupil’s journal is here any more.",
  last: "last",
  nothingPlayed: "nothing played yet",
  sinceLesson: "since the lesson",
  body: "body",
  keys: "The arrow keys lead from line to line.",
};
