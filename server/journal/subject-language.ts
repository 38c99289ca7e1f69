import type { NamesId } from "../music/notes/note-names.ts";
import type { keySetPhrases } from "../syntax/words/key-sets.ts";
import type { MeaningOf } from "../syntax/words/meaning.ts";

type Figure = MeaningOf<"figure">["figure"];

/** What one language calls scales, chords and figures: other words, parted by ` | `, by the standard one. */
interface SubjectWords {
  /** By English words of the names in `music/`, or by `scale`. */
  readonly standard: Readonly<Record<string, string>>;
  readonly figures: Partial<Readonly<Record<Figure, string>>>;
  /** What is practised in every key. */
  readonly sets: Parameters<typeof keySetPhrases>[0];
}

/**
 * Abbreviations, plurals and names in other languages. English, German and French: collected from players' notes of
 * their practice, common practice, no source; Dutch, Italian and Spanish from memory.
 */
const ENGLISH: SubjectWords = {
  standard: {
    major: "maj | mjr | majors",
    minor: "min | mnr | minors",
    harmonic: "harm | harmon",
    melodic: "mel | melod",
    natural: "nat | natur",
    dominant: "dom",
    diminished: "dim",
    augmented: "aug",
    altered: "alt",
    pentatonic: "pent | penta | pentatonics",
    chromatic: "chrom | chroms | chromatics | chr",
    dorian: "dor",
    phrygian: "phryg",
    lydian: "lyd",
    mixolydian: "mixo",
    ionian: "ion",
    aeolian: "aeol",
    locrian: "locr",
    exercise: "excercise | exersise | excersise | excercises",
    "dominant seventh": "dominant sevenths | dominant 7ths | dom sevenths | dom 7ths | dominant 7s | dom 7s",
    "diminished seventh": "diminished sevenths | diminished 7ths | dim sevenths | dim 7ths | diminished 7s | dim 7s",
    "major seventh": "major sevenths | major 7ths | maj 7ths | major 7s | maj 7s",
    "minor seventh": "minor sevenths | minor 7ths | min 7ths | minor 7s | min 7s",
    arpeggio: "arp | arps | arpegg | arpeggi | arpeggios | arpegio | arpegios | arpejio | arpejios | appegio | apeggio",
    chord: "chords",
    triad: "triads",
    scale: "scales | sc",
    inversion: "inv",
  },
  figures: {
    notes:
      "notes | note | finger pattern | finger patterns | finger exercise | finger exercises | throat notes | cross fingering | cross fingerings",
    "long tones":
      "long tones | long tone | longtones | longtone | long notes | long note | lt | lts | held notes | held note | sustained notes | sustained tones | l.t. | l.t | l.ts | lt.",
    trill: "trill | trills | tr | tr.",
    "five-note scale": "five-note scale | 5-note scale | five-note scales | 5-note scales | five-tone scale",
    "nine-note scale": "nine-note scale | 9-note scale | nine-note scales | 9-note scales",
  },
  sets: {
    "all major scales":
      "all major scales | major scales | maj scales | all majors | all major keys | all the major scales | all the majors | all twelve majors | all 12 majors | all twelve major scales | all 12 major scales",
    "all minor scales":
      "all minor scales | minor scales | min scales | all minors | all minor keys | all the minor scales | all the minors | all twelve minors | all 12 minors | all twelve minor scales | all 12 minor scales",
    "all harmonic minor scales": "all harmonic minor scales | all harmonic minors | all the harmonic minors",
    "all melodic minor scales": "all melodic minor scales | all melodic minors | all the melodic minors",
    "all scales": "all scales | all the scales | all my scales | all 24 scales | all major and minor scales",
    "all major arpeggios": "all major arpeggios | all the major arpeggios",
    "all minor arpeggios": "all minor arpeggios | all the minor arpeggios",
    "circle of fifths":
      "circle of fifths | circle of 5ths | cycle of fifths | cycle of 5ths | around the circle | round the circle | around circle | round circle | around the cycle | round the cycle | round the fifths | round the 5ths | round 5ths",
    "circle of fourths": "circle of fourths | circle of 4ths | cycle of fourths | cycle of 4ths",
  },
};

const GERMAN: SubjectWords = {
  standard: {
    harmonic: "harmonisch",
    melodic: "melodisch",
    natural: "natürlich | natürl | rein",
    dorian: "dorisch",
    phrygian: "phrygisch",
    lydian: "lydisch",
    mixolydian: "mixolydisch",
    aeolian: "äolisch",
    locrian: "lokrisch",
    ionian: "ionisch",
    pentatonic: "pentatonik | pentatonisch",
    blues: "bluestonleiter",
    chromatic: "chromatik | chromatisch | chromatische",
    "whole tone": "ganzton | ganztonleiter",
    arpeggio:
      "dreiklang | dreiklänge | dreiklangsbrechung | dreiklangszerlegung | dreiklangszerlegungen | arpeggien | zerlegung | akkord | akkorde",
    broken: "gebrochen | gebrochener | gebrochene",
    augmented: "übermäßig | übermässig | übermäßiger",
    diminished: "verm | vermindert | verminderter",
    "dominant seventh": "dominantseptakkord | dominantseptakkorde | dominantseptime | dominantsept",
    seventh: "septakkord | sept",
    scale: "tonleiter | tonleitern | leiter | skala",
  },
  figures: {
    notes: "töne | noten | griffwechsel | griffverbindung",
    "long tones":
      "lange töne | langer ton | langtöne | langton | lange noten | haltetöne | halteton | aushalten | töne aushalten",
    trill: "triller",
    "five-note scale":
      "fünftonleiter | fünftonübung | fünftonraum | fünftonreihe | fünftonreihen | fünftonleitern | fünftonübungen",
  },
  sets: {
    "all major scales": "alle dur tonleitern | alle durtonleitern | alle dur tonarten | alle durtonarten",
    "all minor scales": "alle moll tonleitern | alle molltonleitern | alle moll tonarten | alle molltonarten",
    "all scales": "alle tonleitern | alle tonarten",
    "circle of fifths": "quintenzirkel",
    "circle of fourths": "quartenzirkel",
  },
};

const FRENCH: SubjectWords = {
  standard: {
    major: "maj",
    minor: "min",
    harmonic: "harmonique | harm",
    melodic: "mélodique | mél",
    natural: "naturel | naturelle",
    dorian: "dorien",
    phrygian: "phrygien",
    lydian: "lydien",
    mixolydian: "mixolydien",
    aeolian: "éolien",
    locrian: "locrien",
    ionian: "ionien",
    pentatonic: "pentatonique",
    chromatic: "chromatique | chromatiques",
    "whole tone": "par tons",
    arpeggio: "arpège | arpèges | accord | accords",
    broken: "brisé | brisés",
    augmented: "augmenté | augmentée",
    diminished: "diminué | diminuée",
    "dominant seventh":
      "septième de dominante | septième dominante | 7e de dominante | 7e dom | arpège de septième de dominante | arpège de 7e de dominante | arpège de 7e dom",
    "diminished seventh":
      "septième diminuée | 7e diminuée | 7e dim | arpège de septième diminuée | arpège de 7e diminuée",
    scale: "gamme | gammes",
  },
  figures: {
    notes: "notes | passage",
    "long tones":
      "sons filés | son filé | sons longs | notes longues | longues notes | notes tenues | note tenue | tenues | filer les sons",
    trill: "trille | trilles",
  },
  sets: {
    "all major scales": "toutes les gammes majeures | gammes majeures",
    "all minor scales": "toutes les gammes mineures | gammes mineures",
    "all scales": "toutes les gammes",
    "circle of fifths": "cycle des quintes",
    "circle of fourths": "cycle des quartes",
  },
};

const DUTCH: SubjectWords = {
  standard: {
    major: "gr | gr.",
    minor: "kl | kl.",
    harmonic: "harmonisch",
    melodic: "melodisch",
    natural: "natuurlijk | antiek",
    dorian: "dorisch",
    phrygian: "frygisch",
    lydian: "lydisch",
    mixolydian: "mixolydisch",
    aeolian: "eolisch",
    locrian: "locrisch",
    ionian: "ionisch",
    pentatonic: "pentatonisch | pentatoniek",
    chromatic: "chromatisch | chromatiek | chromatische",
    "whole tone": "heletoons | heletoonladder",
    arpeggio: "drieklank | drieklanken | arpeggio's | akkoord | akkoorden",
    broken: "gebroken",
    augmented: "overmatig",
    diminished: "verminderd",
    "dominant seventh": "dominantseptiem | dominantseptiemakkoord",
    scale: "toonladder | toonladders | ladder",
  },
  figures: {
    notes: "noten | tonen",
    "long tones": "lange tonen | lange toon | aanhouden",
    trill: "triller | trillers",
  },
  sets: {
    "all major scales": "alle grote toonladders | alle majeur toonladders",
    "all minor scales": "alle kleine toonladders | alle mineur toonladders",
    "all scales": "alle toonladders",
    "circle of fifths": "kwintencirkel",
    "circle of fourths": "kwartencirkel",
  },
};

const ITALIAN: SubjectWords = {
  standard: {
    major: "magg",
    minor: "min",
    harmonic: "armonica | armonico | arm",
    melodic: "melodica | melodico | mel",
    natural: "naturale",
    dorian: "dorico | dorica",
    phrygian: "frigio | frigia",
    lydian: "lidio | lidia",
    mixolydian: "misolidio | misolidia",
    aeolian: "eolio | eolia",
    locrian: "locrio | locria",
    ionian: "ionico | ionica",
    pentatonic: "pentatonica",
    chromatic: "cromatica | cromatico",
    "whole tone": "esatonale | per toni interi",
    arpeggio: "arp | arpeggi | accordo | accordi",
    broken: "spezzato | spezzati",
    augmented: "aumentato | aumentata | eccedente",
    diminished: "diminuito | diminuita",
    "dominant seventh":
      "settima di dominante | settima dominante | 7a di dominante | 7a dominante | 7a di dom | 7a dom | 7ª di dominante | arpeggio di settima di dominante | arpeggio di 7a di dominante | arp di 7a di dom | arp di 7a dom",
    "diminished seventh":
      "settima diminuita | 7a diminuita | 7a dim | arpeggio di settima diminuita | arpeggio di 7a diminuita | arp di 7a dim",
    scale: "scala | scale",
  },
  figures: {
    notes: "note",
    "long tones": "note lunghe | nota lunga | suoni lunghi | note tenute | suoni filati",
    trill: "trillo | trilli",
  },
  sets: {
    "all major scales": "tutte le scale maggiori",
    "all minor scales": "tutte le scale minori",
    "all scales": "tutte le scale",
    "circle of fifths": "circolo delle quinte",
    "circle of fourths": "circolo delle quarte",
  },
};

const SPANISH: SubjectWords = {
  standard: {
    major: "may",
    minor: "men",
    harmonic: "armónica | armónico",
    melodic: "melódica | melódico",
    natural: "natural",
    dorian: "dórico | dórica",
    phrygian: "frigio | frigia",
    lydian: "lidio | lidia",
    mixolydian: "mixolidio | mixolidia",
    aeolian: "eólico | eolio",
    locrian: "locrio | locria",
    ionian: "jónico | jónica",
    pentatonic: "pentatónica",
    chromatic: "cromática | cromático",
    "whole tone": "hexátona | por tonos",
    arpeggio: "arpegio | arpegios | acorde | acordes",
    broken: "quebrado | quebrados",
    augmented: "aumentado | aumentada",
    diminished: "disminuido | disminuida",
    "dominant seventh":
      "séptima de dominante | 7a de dominante | 7ª de dominante | arpegio de séptima de dominante | arpegio de 7a de dominante | arpegio de 7ª de dominante",
    "diminished seventh": "séptima disminuida | 7a disminuida | arpegio de séptima disminuida",
    scale: "escala | escalas",
  },
  figures: {
    notes: "notas",
    "long tones": "notas largas | nota larga | notas tenidas | sonidos largos",
    trill: "trino | trinos",
  },
  sets: {
    "all major scales": "todas las escalas mayores",
    "all minor scales": "todas las escalas menores",
    "all scales": "todas las escalas",
    "circle of fifths": "círculo de quintas",
    "circle of fourths": "círculo de cuartas",
  },
};

/** English words are known beside those of the journal's language. */
export const SUBJECT_WORDS: Readonly<Record<NamesId, SubjectWords>> = {
  english: ENGLISH,
  german: GERMAN,
  dutch: DUTCH,
  french: FRENCH,
  italian: ITALIAN,
  spanish: SPANISH,
};
