// Small words in and around titles: a title may be in any language, whatever the names of notes. Common practice, no
// source.

/** Before a title, and part of it or not: `the Sleepy Frog`. */
export const ARTICLES: ReadonlySet<string> = set(
  "the | a | an | der | die | das | den | dem | la | le | les | il | el | de | het",
);

/** Between two names these make one title of them. */
export const CONNECTORS: ReadonlySet<string> = set(
  "of | for | and | & | or | von | vom | für | und | de | des | du | et | di | e | y",
);

/** Before the key of a piece: `Sonata in a`, `Valse en la`. */
export const BEFORE_KEY_OF_TITLE: ReadonlySet<string> = set("in | en | i");
/** The same before a tonic that a capital does not tell from a word. */
export const BEFORE_KEY: ReadonlySet<string> = set("in | en");

function set(words: string): ReadonlySet<string> {
  return new Set(words.split(" | "));
}

/** Words for something that is practised and has no title, in six languages: common practice, no source. */
export const EXERCISE_WORDS: ReadonlySet<string> = new Set(
  (
    "exercise exercises drill drills warmup routine pattern patterns workout uebung uebungen übung übungen exercice exercices " +
    "oefening oefeningen ejercicio ejercicios esercizio esercizi"
  ).split(" "),
);

/** Kinds of piece that books number through: common practice, no source. */
export const NUMBERED: ReadonlySet<string> = new Set(
  (
    "song songs tune piece number lied canción cancion chanson stuk stück brano pieza hymn psalm carol chorale choral exercise ex " +
    "duet duo trio solo invention caprice prelude"
  ).split(" "),
);

/** Of a piece, before `of the` and its name: `trio of the Minuet`, `urlar of the Lament`. */
export const PARTS_OF_PIECES: ReadonlySet<string> = set(
  "trio | coda | urlar | ground | theme | opening | intro | ending | end | beginning | start | middle | bridge | chorus | refrain | cadenza",
);
