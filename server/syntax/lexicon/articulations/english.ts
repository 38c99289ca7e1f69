import type { ArticulationTable } from "./articulation-table.ts";

/** English articulations: common practice, no source. */
export const ENGLISH_ARTICULATIONS: ArticulationTable = {
  wind: [
    [
      "slurred | legato | all slurred | all legato | leg | leg. | slur | slurs | slurring | sl | sl.",
      "slurred",
      "Only the first note is tongued; the breath carries the rest.",
    ],
    [
      "tongued | detached | all tongued | tngd | tng | tg | tg. | single tongued | single tongue | single tonguing",
      "single",
      "Each note has its own tongue stroke.",
    ],
    ["staccato | stacc | stacc. | stac | stac. | all staccato", "single", "Each note short, with silence after it."],
    ["staccatissimo", "single", "Each note as short as it will sound."],
    ["portato | mezzo staccato", "single", "Each note tongued softly, almost full length."],
    ["tenuto | ten.", "single", "Each note held its full length."],
    ["marcato | accented | with accents", "single", "Each note with weight at its start."],
    [
      "legato tongued | legato tongue | soft tongued | legato tonguing",
      "single",
      "Each note tongued with no gap between.",
    ],
    ["half tongued | half tonguing", "single", "The tongue touches the reed and leaves the sound on."],
    ["no tongue | breath only | breath attacks", "slurred", "Notes begun by the breath alone."],
    [
      "double tongued | double tongue | double tonguing | dbl tongued | dbl tongue | dbl tonguing | dbl t | d.tg | d.tg. | dtg | dbl tg | dt | d.t.",
      "multiple",
      "Two strokes in turn, the second at the back of the tongue.",
    ],
    [
      "triple tongued | triple tongue | triple tonguing | trpl tongued | trpl tonguing | tt",
      "multiple",
      "Three strokes to a group.",
    ],
  ],
  strings: [
    ["détaché | detache | detaché", "single", "A smooth bow stroke to each note, on the string."],
    ["separate | separate bows | sep bows | sep. bows | separately", "single", "A bow stroke to each note."],
    ["legato bowing | legato bows", "slurred", "Several notes to one bow."],
    ["hooked | hooked bows | hooked bowing", "mixed", "Two notes or more to one bow, with a stop between."],
    ["spiccato | spicc", "single", "Short strokes that leave the string."],
    ["sautillé | sautille", "single", "Quick strokes that spring by themselves."],
    ["martelé | martele | martellato", "single", "A bite at the start of each stroke, and a stop after it."],
    ["louré | loure | portato bowing", "mixed", "One bow, each note gently pulsed."],
    ["collé", "single", "The bow set, a pinch, and lifted."],
    ["ricochet | jeté", "mixed", "Several bounces to one stroke."],
    ["up bow staccato | upbow staccato | down bow staccato", "mixed", "Many stopped notes to one bow."],
    ["col legno", "single", "With the wood of the bow."],
    ["arco", "single", "With the bow, after plucking."],
    ["pizzicato | pizz | pizz.", "single", "Plucked with the finger."],
  ],
  keyboard: [
    ["non legato", "single", "Each note let go just before the next."],
    ["legatissimo", "slurred", "Each note held into the next."],
    ["leggiero | leggero", "single", "Light, the keys hardly pressed."],
    ["finger staccato | wrist staccato | hand staccato", "single", "Short notes from the finger, or from the wrist."],
  ],
  plucked: [
    ["rest stroke | rest strokes | apoyando", "single", "The finger comes to rest on the next string."],
    ["free stroke | free strokes | tirando", "single", "The finger passes clear of the next string."],
    ["alternate picking | alt picking | alternate picked | alt picked", "single", "Down and up strokes in turn."],
    ["economy picking | sweep picking", "mixed", "One stroke carried over to the next string."],
    ["hybrid picking", "single", "Plectrum and fingers together."],
    ["downstrokes | down strokes | all downstrokes | down picking", "single", "Every note with a stroke down."],
    ["upstrokes | up strokes | all upstrokes", "single", "Every note with a stroke up."],
    ["fingerstyle | fingerpicked | with fingers", "single", "Plucked with the fingers."],
    ["plectrum | with pick | with a pick | with plectrum", "single", "Plucked with a plectrum."],
    ["palm muted | palm mute", "single", "The side of the hand on the strings."],
    ["pima | pami", "single", "Thumb and fingers in turn."],
  ],
  voice: [["glottal | glottal onset", "single", "Each note begun with a light closure of the folds."]],
};

/** What is practised in these ways, where it is practised for itself: the way's own name where none stands here. */
export const PRACTISED_AS: Readonly<Record<string, string>> = {
  slurred: "slurring",
  tongued: "tonguing",
  "double tongued": "double tonguing",
  "triple tongued": "triple tonguing",
  "half tongued": "half tonguing",
  "legato tongued": "legato tonguing",
  "palm muted": "palm muting",
  separate: "separate bows",
  hooked: "hooked bowing",
};
