import type { fingerTexts as english } from "./finger-texts.ts";

export const fingerTexts: typeof english = {
  step: ([from, to], [before, after], movement) => `${from} nach ${to}, ${before} nach ${after}: ${movement}`,
  fingers: (count) => `${count} Finger`,
  theThumb: "der Daumen",
  theBell: "das Fußende",
  moved: (parts) => parts.join(" und "),
  contrary: "gegeneinander",
  halfHoles: (count) => (count === 1 ? "mit einem halben Loch" : `mit ${count} halben Löchern`),
  thirdRegister: "über die Grenze zum dritten Register",
  otherRegister: "ins andere Register",
  thumbs: { closed: "Daumen", half: "Daumenloch halb", open: "Daumenloch offen" },
  halfOf: (hole) => `${hole} halb`,
  otherFingerings: (note) => `für ${note} gibt es auch andere Griffe`,
  uncertainFingering: (note) => `der Griff für ${note} ist unsicher und hängt vom Instrument ab`,
  fingeringFor: (fingering, note) => `${fingering} für ${note}`,
  easier: (others, movement, charts) => `leichter mit ${others}: ${movement} (Quelle: ${charts})`,
  noGermanFingering: "für deutsche Griffweise noch nicht bekannt",
  hardest: (words) => `Schwerster Griffwechsel: ${words}.`,
};
