import type { theorySentenceTexts as english } from "./theory-sentence-texts.ts";

/** By the sentences of `KINDS`, `PATTERNS`, `VARIANTS`, `CHORDS` and `TEMPERAMENTS`. */
const SENTENCES: Readonly<Record<string, string>> = {
  "The major scale: whole tones, with semitones from its third to its fourth and from its seventh to its eighth degree.":
    "Die Durtonleiter: Ganztöne, mit Halbtönen von der dritten zur vierten und von der siebten zur achten Stufe.",
  "The natural minor scale: the notes of its key signature and no other, with a whole tone below the tonic.":
    "Natürliches Moll: die Töne seiner Vorzeichen und keine anderen, mit einem Ganzton unter dem Grundton.",
  "The harmonic minor scale: natural minor with the seventh raised, so that three semitones lie below the leading note.":
    "Harmonisches Moll: natürliches Moll mit erhöhter siebter Stufe, sodass unter dem Leitton drei Halbtöne liegen.",
  "The melodic minor scale: the sixth and seventh are raised on the way up, and natural again on the way down.":
    "Melodisches Moll: Die sechste und die siebte Stufe sind aufwärts erhöht und abwärts wieder wie im natürlichen Moll.",
  "The jazz minor scale: the rising melodic minor, in the same notes on the way down.":
    "Jazz-Moll: melodisches Moll, wie es aufwärts geht, abwärts mit denselben Tönen.",
  "The ionian mode: the same notes as the major scale.": "Ionisch: dieselben Töne wie die Durtonleiter.",
  "The dorian mode: natural minor with a major sixth.": "Dorisch: natürliches Moll mit großer Sexte.",
  "The phrygian mode: natural minor with a semitone above the tonic.":
    "Phrygisch: natürliches Moll mit einem Halbton über dem Grundton.",
  "The lydian mode: major with a raised fourth.": "Lydisch: Dur mit erhöhter vierter Stufe.",
  "The mixolydian mode: major with a lowered seventh.": "Mixolydisch: Dur mit erniedrigter siebter Stufe.",
  "The aeolian mode: the same notes as the natural minor scale.": "Äolisch: dieselben Töne wie natürliches Moll.",
  "The locrian mode: natural minor with a lowered second and a lowered fifth.":
    "Lokrisch: natürliches Moll mit erniedrigter zweiter und erniedrigter fünfter Stufe.",
  "The major pentatonic scale: major without its fourth and seventh, so without a semitone.":
    "Dur-Pentatonik: Dur ohne vierte und siebte Stufe, also ohne Halbton.",
  "The minor pentatonic scale: natural minor without its second and sixth, so without a semitone.":
    "Moll-Pentatonik: natürliches Moll ohne zweite und sechste Stufe, also ohne Halbton.",
  "The blues scale: minor pentatonic with one more note between its fourth and fifth, written as a raised fourth going up and a lowered fifth going down.":
    "Die Bluestonleiter: Moll-Pentatonik mit einem weiteren Ton zwischen der vierten und der fünften Stufe, aufwärts als erhöhte vierte, abwärts als erniedrigte fünfte geschrieben.",
  "The major blues scale: major pentatonic with a lowered third beside the major one.":
    "Die Dur-Bluestonleiter: Dur-Pentatonik, in der neben der großen auch die kleine Terz vorkommt.",
  "The whole-tone scale: six whole tones to the octave, one of them written as a diminished third.":
    "Die Ganztonleiter: sechs Ganztöne in der Oktave, einer davon als verminderte Terz geschrieben.",
  "The half-whole octatonic scale: semitone and whole tone by turns, the semitone first.":
    "Die Halbton-Ganzton-Leiter: Halbton und Ganzton im Wechsel, zuerst der Halbton.",
  "The whole-half octatonic scale: whole tone and semitone by turns, the whole tone first.":
    "Die Ganzton-Halbton-Leiter: Ganzton und Halbton im Wechsel, zuerst der Ganzton.",
  "The octatonic scale: semitones and whole tones by turns; read here with the semitone first (half-whole), and the other order (whole-half) is as right.":
    "Die oktatonische Tonleiter: Halbtöne und Ganztöne im Wechsel; hier mit dem Halbton zuerst gelesen (`half-whole`), die andere Reihenfolge (`whole-half`) ist genauso richtig.",
  "The chromatic scale: all twelve semitones, notes raised going up and lowered going down.":
    "Die chromatische Tonleiter: alle zwölf Halbtöne, aufwärts mit erhöhten, abwärts mit erniedrigten Tönen geschrieben.",
  "The harmonic major scale: major with its sixth lowered, so that three semitones lie below the leading note.":
    "Harmonisches Dur: Dur mit erniedrigter sechster Stufe, sodass unter dem Leitton drei Halbtöne liegen.",
  "The double harmonic scale: major with its second and sixth lowered, three semitones above each of them.":
    "Die doppelt-harmonische Tonleiter: Dur mit erniedrigter zweiter und sechster Stufe, über denen jeweils drei Halbtöne liegen.",
  "The lydian dominant scale: major with a raised fourth and a lowered seventh, the fourth mode of the jazz minor.":
    "Lydisch b7: Dur mit erhöhter vierter und erniedrigter siebter Stufe, Jazz-Moll von der vierten Stufe an.",
  "The phrygian dominant scale: phrygian with a major third, the harmonic minor begun on its fifth degree.":
    "Phrygisch-Dur: phrygisch mit großer Terz, harmonisches Moll von der fünften Stufe an.",
  "The Hungarian minor scale: harmonic minor with its fourth raised, three semitones above the third.":
    "Ungarisches Moll: harmonisches Moll mit erhöhter vierter Stufe, drei Halbtöne über der dritten.",
  "The altered scale: root, third and seventh of a dominant chord, and its fifth and ninth both lowered and raised; the jazz minor begun on its seventh degree.":
    "Die alterierte Tonleiter: Grundton, Terz und Septime eines Dominantakkords, dazu Quinte und None sowohl erniedrigt als auch erhöht; Jazz-Moll von der siebten Stufe an.",
  "The bebop dominant scale: mixolydian with the major seventh between its seventh and the octave.":
    "Bebop-Dominante: mixolydisch mit der großen Septime zwischen der siebten Stufe und der Oktave.",
  "The bebop major scale: major with one more note between its fifth and sixth, written raised going up and lowered going down.":
    "Bebop-Dur: Dur mit einem weiteren Ton zwischen der fünften und der sechsten Stufe, aufwärts erhöht, abwärts erniedrigt geschrieben.",

  "Straight: note after note.": "Der Reihe nach: Ton für Ton.",
  "Thirds: each note and the third above it, 1 3 2 4.": "Terzen: jeder Ton und die Terz darüber, 1 3 2 4.",
  "Fourths: each note and the fourth above it, 1 4 2 5.": "Quarten: jeder Ton und die Quarte darüber, 1 4 2 5.",
  "Fifths: each note and the fifth above it, 1 5 2 6.": "Quinten: jeder Ton und die Quinte darüber, 1 5 2 6.",
  "Sixths: each note and the sixth above it, 1 6 2 7.": "Sexten: jeder Ton und die Sexte darüber, 1 6 2 7.",
  "Sevenths: each note and the seventh above it, 1 7 2 8.": "Septimen: jeder Ton und die Septime darüber, 1 7 2 8.",
  "Octaves: each note and its octave, 1 8 2 9.": "Oktaven: jeder Ton und seine Oktave, 1 8 2 9.",
  "Tenths: each note and the tenth above it, 1 10 2 11.": "Dezimen: jeder Ton und die Dezime darüber, 1 10 2 11.",
  "Threes: three notes in a row from each note, 1 2 3, 2 3 4.":
    "Dreiergruppen: von jedem Ton aus drei Töne der Reihe nach, 1 2 3, 2 3 4.",
  "Fours: four notes in a row from each note, 1 2 3 4, 2 3 4 5.":
    "Vierergruppen: von jedem Ton aus vier Töne der Reihe nach, 1 2 3 4, 2 3 4 5.",
  "Fives: five notes in a row from each note, 1 2 3 4 5, 2 3 4 5 6.":
    "Fünfergruppen: von jedem Ton aus fünf Töne der Reihe nach, 1 2 3 4 5, 2 3 4 5 6.",
  "Growing: from the first note each time, one note further, 1 2, 1 2 3, 1 2 3 4.":
    "Wachsend: jedes Mal vom ersten Ton an, immer einen Ton weiter, 1 2, 1 2 3, 1 2 3 4.",
  "Pedal: the first note before each of the others, 1 2 1 3 1 4.":
    "Orgelpunkt: der erste Ton vor jedem der anderen, 1 2 1 3 1 4.",
  "Triads: the triad on each note, 1 3 5, 2 4 6.": "Dreiklänge: der Dreiklang auf jedem Ton, 1 3 5, 2 4 6.",
  "Seventh chords: the seventh chord on each note, 1 3 5 7, 2 4 6 8.":
    "Septakkorde: der Septakkord auf jedem Ton, 1 3 5 7, 2 4 6 8.",
  "Upper neighbours: each note, the one above it, and back, 1 2 1, 2 3 2.":
    "Obere Nebentöne: jeder Ton, der darüber und zurück, 1 2 1, 2 3 2.",
  "Lower neighbours: each note, the one below it, and back, 2 1 2, 3 2 3.":
    "Untere Nebentöne: jeder Ton, der darunter und zurück, 2 1 2, 3 2 3.",
  "Turns: around each note from above, 3 2 1 2, 4 3 2 3.":
    "Doppelschläge: von oben um jeden Ton herum, 3 2 1 2, 4 3 2 3.",
  "Inverted turns: around each note from below, 1 2 3 2, 2 3 4 3.":
    "Umgekehrte Doppelschläge: von unten um jeden Ton herum, 1 2 3 2, 2 3 4 3.",
  "Five notes on each: five notes up and down from each note, 1 2 3 4 5 4 3 2, 2 3 4 5 6 5 4 3.":
    "Fünf Töne auf jedem: von jedem Ton aus fünf Töne auf und ab, 1 2 3 4 5 4 3 2, 2 3 4 5 6 5 4 3.",
  "Skips: every second note, 1 3 5 7.": "Mit Auslassen: jeder zweite Ton, 1 3 5 7.",
  "Leaps: every note once, from the tonic and back to it, by leaps, in an order that each day draws anew; the same all day. A direction changes nothing here.":
    "Sprünge: jeder Ton einmal, vom Grundton aus und zu ihm zurück, in Sprüngen und in einer Reihenfolge, die jeden Tag neu gezogen wird; den ganzen Tag dieselbe. Eine Richtung ändert hier nichts.",
  "Alternating: every second figure turned round.": "Abwechselnd: jede zweite Figur umgekehrt.",
  "Returning: each figure goes back to where it began.":
    "Zurückkehrend: Jede Figur geht dorthin zurück, wo sie anfing.",
  "Linked: every second figure turned round, so that each leads on by step.":
    "Verbunden: jede zweite Figur umgekehrt, sodass es von einer zur nächsten schrittweise weitergeht.",
  "Broken: 1 5 3 5 on each note, the fifth before the third.":
    "Gebrochen: 1 5 3 5 auf jedem Ton, die Quinte vor der Terz.",

  "The major triad: a major third and a perfect fifth above the root.":
    "Der Durdreiklang: große Terz und reine Quinte über dem Grundton.",
  "The minor triad: a minor third and a perfect fifth above the root.":
    "Der Molldreiklang: kleine Terz und reine Quinte über dem Grundton.",
  "The augmented triad: two major thirds, which divide the octave evenly, so that it belongs to no one key.":
    "Der übermäßige Dreiklang: zwei große Terzen, die die Oktave gleichmäßig teilen, sodass er zu keiner bestimmten Tonart gehört.",
  "The diminished triad: two minor thirds, the chord on the leading note of the major key a semitone above.":
    "Der verminderte Dreiklang: zwei kleine Terzen, der Dreiklang auf dem Leitton der Durtonart einen Halbton darüber.",
  "The dominant seventh: a major triad with a minor seventh, the chord on the fifth degree of the key a fifth below.":
    "Der Dominantseptakkord: Durdreiklang mit kleiner Septime, der Akkord auf der fünften Stufe der Tonart eine Quinte darunter.",
  "The major seventh: a major triad with a major seventh.": "Der große Durseptakkord: Durdreiklang mit großer Septime.",
  "The minor seventh: a minor triad with a minor seventh.":
    "Der kleine Mollseptakkord: Molldreiklang mit kleiner Septime.",
  "The half-diminished seventh: a diminished triad with a minor seventh, the seventh on the leading note of the major key a semitone above.":
    "Der halbverminderte Septakkord: verminderter Dreiklang mit kleiner Septime, der Septakkord auf dem Leitton der Durtonart einen Halbton darüber.",
  "The diminished seventh: three minor thirds, which divide the octave evenly, so that it belongs to no one key; it leads to the minor key a semitone above its root.":
    "Der verminderte Septakkord: drei kleine Terzen, die die Oktave gleichmäßig teilen, sodass er zu keiner bestimmten Tonart gehört; er führt in die Molltonart einen Halbton über seinem Grundton.",

  "All twelve fifths are narrowed by a twelfth of the Pythagorean comma, so that every key sounds alike.":
    "Alle zwölf Quinten sind um ein Zwölftel des pythagoreischen Kommas verengt, sodass jede Tonart gleich klingt.",
  "The six fifths from F to B are narrowed by a sixth of the Pythagorean comma; the other six are pure.":
    "Die sechs Quinten von F bis H sind um ein Sechstel des pythagoreischen Kommas verengt; die anderen sechs sind rein.",
  "The six fifths from C to F# are narrowed by a sixth of the Pythagorean comma; the other six are pure.":
    "Die sechs Quinten von C bis Fis sind um ein Sechstel des pythagoreischen Kommas verengt; die anderen sechs sind rein.",
  "The fifths C to G, G to D, D to A and B to F# are narrowed by a quarter of the Pythagorean comma; the other eight are pure.":
    "Die Quinten C–G, G–D, D–A und H–Fis sind um ein Viertel des pythagoreischen Kommas verengt; die anderen acht sind rein.",
  "The fifths C to G, G to D, D to A, A to E and B to F# are narrowed by a fifth of the Pythagorean comma; the other seven are pure.":
    "Die Quinten C–G, G–D, D–A, A–E und H–Fis sind um ein Fünftel des pythagoreischen Kommas verengt; die anderen sieben sind rein.",
  "Neidhardt's first of 1724: the four fifths from C to E are narrowed by a sixth of the Pythagorean comma, those on E, B, G# and Eb by a twelfth; the other four are pure.":
    "Neidhardts erste von 1724: Die vier Quinten von C bis E sind um ein Sechstel des pythagoreischen Kommas verengt, die auf E, H, Gis und Es um ein Zwölftel; die anderen vier sind rein.",
  "Neidhardt's second of 1724: the three fifths from C to A are narrowed by a sixth of the Pythagorean comma, those on A, B, F#, C#, Bb and F by a twelfth; the other three are pure.":
    "Neidhardts zweite von 1724: Die drei Quinten von C bis A sind um ein Sechstel des pythagoreischen Kommas verengt, die auf A, H, Fis, Cis, B und F um ein Zwölftel; die anderen drei sind rein.",
  "The fifths D to A and A to E are narrowed by half the syntonic comma, which makes C to E pure, and F# to C# by the schisma; the other nine are pure.":
    "Die Quinten D–A und A–E sind um ein halbes syntonisches Komma verengt, sodass C–E rein wird, und Fis–Cis um das Schisma; die anderen neun sind rein.",
  "The four fifths from C to E are narrowed by a quarter of the syntonic comma, which makes C to E pure, and F# to C# by the schisma; the other seven are pure.":
    "Die vier Quinten von C bis E sind um ein Viertel des syntonischen Kommas verengt, sodass C–E rein wird, und Fis–Cis um das Schisma; die anderen sieben sind rein.",
  "The eleven fifths from Eb to G# are narrowed by a sixth of the syntonic comma.":
    "Die elf Quinten von Es bis Gis sind um ein Sechstel des syntonischen Kommas verengt.",
  "The eleven fifths from Eb to G# are narrowed by a fifth of the syntonic comma.":
    "Die elf Quinten von Es bis Gis sind um ein Fünftel des syntonischen Kommas verengt.",
  "The eleven fifths from Eb to G# are narrowed by a quarter of the syntonic comma, so that eight major thirds are pure.":
    "Die elf Quinten von Es bis Gis sind um ein Viertel des syntonischen Kommas verengt, sodass acht große Terzen rein sind.",
  "The eleven fifths from Eb to G# are pure.": "Die elf Quinten von Es bis Gis sind rein.",
  "Each note makes a ratio of small whole numbers with the tonic: 16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 16/9, 15/8.":
    "Jeder Ton steht zum Grundton im Verhältnis kleiner ganzer Zahlen: 16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 16/9, 15/8.",
};

export const theorySentenceTexts: typeof english = {
  of: (sentence) => SENTENCES[sentence] ?? sentence,
};
