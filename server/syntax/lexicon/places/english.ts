import { joined } from "../joined.ts";
import type { PlaceTable } from "./place-table.ts";

/** Where in a piece, in English: common practice, no source. */
export const ENGLISH_PLACES: PlaceTable = {
  numbered: {
    bars: "bars | bar | measures | measure | meas | bar numbers",
    lines: "lines | line | systems | system | sys | staves | stave",
    page: "pages | page | pg | pgs",
    mvt: "mvt | movement | mvmt | mov | mvts | movements",
    var: "var | variation | vars | variations",
    letter: "letter | letters | fig | figs | figure | rehearsal mark | rehearsal letter",
    section: "section | sections",
    part: "part | parts | pt",
    verse: "verse | verses | stanza | stanzas | v | vv",
    phrase: "phrase | phrases",
    strain: "strain | strains",
  },
  short: {
    bars: "b | bb | bs | m | mm | ms | t",
    lines: "l | ll",
    page: "p | pp",
  },
  ordinals: "first | second | third | fourth | fifth | sixth | seventh | eighth",
  likeOrdinals: joined(
    "last | final | next | opening | middle | closing | slow | fast | tricky | hard | both | whole | main",
  ),
  parts: joined(
    "half | halves | part | parts | time bar | time bars | ending | repeat | theme | bit | bits | passage | chorus",
    "time | quarter | eight | subject | entry | entries | solo",
  ),
  articles: "the",
  from: "from",
  to: "to | up to | until | till | through to | thru | through",
  onwards: "on | onwards | onward | ff",
  end: "end | the end",
  before: "before",
  after: "after",
  whole: joined(
    "entire | entire piece | whole way | whole way through | start to end | top to end | all of it | all through",
    "beginning to end | complete | from beginning | from the beginning | from the begining | from begining",
    "from the start | start to finish | straight through | the lot | top to bottom | hole thing | whole tune",
    "the whole tune | full run | full run through | top to tail | whole | whole thing",
    "the whole thing | whole song | the whole piece | whole of it | the whole of it | first to last",
  ),
  named: joined(
    "minore | maggiore | double bar | B theme | A theme | first theme | second theme | out chorus | last chorus",
    "tutti | tuttis | soli | tune only | melody only | head out | vamp | stretto | episode | beginning",
    "the beginning | bridge | cadenza | chorus | coda | coda only | da capo | dc | d.c. | dal segno | development",
    "dev | ending | the ending | exposition | intro | introduction | interlude | no repeats | opening",
    "the opening | outro | run through | pre chorus | recap | recapitulation | refrain | repeat | the repeat | to the end",
    "to end | the middle | theme | main theme | head | the head | head only | last A | first A | last A only",
    "bridge only | chorus only | whole page | to the double bar | up to the double bar | last section",
    "last chorus | out head | upbeat | up to the repeat | verse and chorus | verse | strain | phrase | with rep",
    "w/ rep | with reps | w/ repeats | with repeats | w. repeats | without repeats | w/o repeats",
  ),
};
