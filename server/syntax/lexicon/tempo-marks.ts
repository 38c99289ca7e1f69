/**
 * Words before or behind a number that say whether it is a tempo. Words: reference lexicon of practice words, classes
 * tempo-word, approximately, not-a-tempo-after, time-unit; `bij`, `op` and the units of measure are from memory.
 */

/** The metronome, or the tempo itself: `metro 60`, `click at 60`, `MM=60`. */
export const TEMPO_WORDS: readonly string[] =
  "tempo | speed | metronome | metro | met. | met | metr. | click | mm | m.m. | m.m | metronom | métronome | métro".split(
    " | ",
  );

/** `at` in other languages. */
export const AT_WORDS: readonly string[] = "bei | auf | à | bij".split(" | ");

/** Behind several tempos they lead back to one of them: `72, 80, at 80 tense`. */
export const BACK_TO_TEMPO: ReadonlySet<string> = new Set(["at", ...AT_WORDS, "bij", "op", "con", "sur"]);

/** About so many. */
export const APPROXIMATELY: readonly string[] =
  "ca | ca. | c. | circa | about | abt | abt. | approx | approx. | around | roughly | env. | environ | etwa | ungefähr".split(
    " | ",
  );

/** Right before a number they leave it the tempo that it may be: `max 80`, `then 72`, `up to 80`. */
export const LEAD_TO_TEMPO: ReadonlySet<string> = new Set(
  (
    "bpm | b.p.m. | max | max. | maximum | reached | hit | then | now | finally | tried | just | only | also | from | to | best | even | later | " +
    "dann | danach | bis | maximal | jetzt | noch | ab | puis | ensuite | jusqu'à | enfin | dan | daarna | tot | poi | fino | a | " +
    "luego | hasta | después"
  ).split(" | "),
);

/** A number behind these is no tempo. */
export const BEFORE_NO_TEMPO: ReadonlySet<string> = new Set(
  (
    "goal | was | were | since | stuck | string | strings | str | str. | position | positions | pos | pos. | finger | fingers | " +
    "fing | fing. | fret | frets | capo | track | ch | ch. | chapter | valve | valves | no. | nr. | op. | bar | bars | b. | m. | " +
    "measure | measures | page | pages | p. | line | lines"
  ).split(" | "),
);

/** Nor is one that nothing else marks behind these: they say what it counts. */
export const COUNTS_ELSE: ReadonlySet<string> = new Set(
  (
    "aim | target | until | no | nr | op | grade | take | over | within | than | age | aged | bus | tram | train | platform | gate | " +
    "room | flat | house | seat | route | bp | weight | paid | cost | costs | spent | bill | score | won | lost | zimmer | gleis | bahn | " +
    "salle | quai | ligne | lijn | spoor | kamer | sala | aula | binario | andén"
  ).split(" | "),
);

/** Nor is one before these. */
export const UNITS: ReadonlySet<string> = new Set(
  (
    "% | percent | cents | hz | hertz | min | min. | mins | mins. | minute | minutes | sec | secs | seconds | s | h | hr | hrs | hour | " +
    "hours | days | weeks | years | times | time | x | reps | bars | bar | measures | lines | pages | notes | note | octave | octaves | " +
    "oct | degrees | degrees. | grad | degrés | graden | gradi | grados | °c | °f | km | kg | miles | euro | euros | quid | pounds | people | beats | sharps | flats | strings | pieces | tunes | songs | sets | scales | of | ' | ′ | ’"
  ).split(" | "),
);
