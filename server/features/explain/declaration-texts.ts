/** What the declarations are for, by their words. */
export const declarationTexts = {
  purposes: {
    player: "Whose journal this is.",
    instrument: "What is played; the first is used when an entry does not name one.",
    pitch: "The pitch of A4 in hertz, and perhaps the temperament.",
    names: "The language of the note names.",
    shared:
      "Names, pitch, note value, patterns, scales, articulations, outcomes and phases declared here hold in the journals of the folders below, too.",
    "share body":
      "What this journal says of the body is shown to a teacher who reads it with `daystave pupils`. Without this line it is not.",
    "hide notes":
      "Names of notes stay out of sight until they are asked for, for anyone who plays by ear or from a signature.",
    "note value": "The note value that tempos are counted in when an entry does not name one.",
    "usual articulation": "The articulation that is used when an entry does not name one.",
    piece: "A current piece, with its key, its bars, its goal and its dates.",
    study: "A current study, likewise.",
    movement: "A movement of a piece, with its own key and goal.",
    concert: "A day on which pieces are due.",
    aim: "What is to be reached, and by when.",
    set: "Work set by a teacher.",
    pattern: "A pattern of this journal's own, in degrees: 1 is the first note, 8 the octave.",
    scale: "A scale of this journal's own, in degrees or in cents.",
    focus: "Something to listen for, offered after `focus`.",
    phase: "A phase of this journal's own.",
    activity: "An activity of this journal's own.",
    articulation: "An articulation of this journal's own: `single`, `slurred`, `mixed` or `multiple`.",
    outcome: "Words of this journal's own for how it went: `reached`, `nearly` or `not`.",
  },
};
