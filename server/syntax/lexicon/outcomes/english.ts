import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `nearly clean`, `not together`. */
const GOOD = joined(
  "clean | clear | comfortable | confident | convincing | easy | even | fluent | good | great | in time | in tune | ok",
  "perfect | relaxed | right | secure | smooth | solid | steady | there | tidy | together | up to speed",
);

const FAULT = joined(
  "bum note | clam | crack | drop | error | fluff | glitch | hesitation | hiccup | lapse | memory slip | miss",
  "missed note | mistake | pause | restart | slip | split | squeak | stop | stumble | wobble | wrong note",
);
const FAULTS = joined(
  "bum notes | clams | cracks | drops | errors | fluffs | glitches | hesitations | hiccups | lapses | memory slips",
  "misses | missed notes | mistakes | pauses | restarts | slips | splits | squeaks | stops | stumbles | wobbles",
  "wrong notes",
);

/**
 * How it went, in English: whole phrases, and what each says of the tempo that it follows. Words: reference lexicon of
 * practice words, class outcome (`tight` and single letters are left out: a tight hand is no good news), and common
 * practice, no source. A single word that also stands in what is said of a pain is none: `grand`, `easily`, `stable`.
 */
export const ENGLISH_OUTCOMES: OutcomeWords = {
  reached: `
    + | 100 % | :) | a breeze | a joy | a lot better | a lot cleaner | a lot easier | a lot smoother | about right |
    accurate | accurate now | aced it | all clean | all correct | all fine | all good | all grand | all in order |
    all in place | all in time | all in tune | all notes there | all ok | all right | all smooth | alright | amazing |
    as it should be | at ease | at full speed | at last | at speed | at tempo | at the first attempt | awesome |
    bang in time | bang on | beautiful | beautifully | better than yesterday | big improvement | bingo | bravo |
    braw | breezy | brilliant | by heart now | came good | came out | came out clean | came out well | came together |
    came together nicely | can play it | can play it now | clean all the way | clean all through | clean and clear |
    clean and even | clean and in time | clean and in tune | clean and relaxed | clean and smooth | clean and steady |
    clean at last | clean enough | clean every time | clean for once | clean now | clean run | clean start to finish |
    clean throughout | clear | clear and even | comes easily | comes easy | comes out | comes out now | comfortable |
    comfy | confident | convincing | correct | cracked it | cracked it at last | crisp | crisp and clean | cruising |
    crushed it | dead easy | dead on | decent | decent enough | decent run | decent sound | decent tone | dialed in |
    dialled in | did it | doable | done and dusted | done it | easier | easy enough | easy now | easy peasy |
    effortless | even | even all through | even and clean | even and clear | even and in time | even and relaxed |
    even and smooth | even enough | even now | even throughout | even tone | everything works | excellent | fab |
    fantastic | fast and clean | fast enough | faultless | feels comfortable | feels easy | feels good |
    feels good now | feels great | feels natural | feels nice | feels right | feels secure | feels solid |
    fell into place | felt comfortable | felt easy | felt easy enough | felt good | felt great | felt natural |
    felt nice | felt right | felt secure | felt solid | finally | fine | fine all through | fine at last |
    fine by the end | fine now | fine throughout | first time clean | first time lucky | flawless | flowed |
    flowed nicely | flowing | flowing nicely | flows | flows now | flows well | fluent | fluently | full marks |
    full speed | gd | gelled | goes fine | goes nicely | goes well | goes well now | going great | going nicely |
    going very well | going well | good | good all round | good all through | good and clean | good and even |
    good and steady | good articulation | good attack | good attacks | good balance | good by the end | good control |
    good dynamics | good energy | good enough | good feel | good first go | good flow | good groove |
    good intonation | good job | good now | good phrasing | good pitch | good progress | good pulse | good rhythm |
    good run | good sound | good stuff | good swing | good tempo | good throughout | good timing | good tone |
    good tuning | good work | got it | got it at last | got it clean | got it down | got it now | got it right |
    got the hang of it | got there | got there in the end | got through | got through clean | got through it |
    got to the end | grand altogether | grand enough | grand now | grand so | great | great control | great feel |
    great groove | great improvement | great progress | great run | great sound | great stuff | great tone | had it |
    happy enough | happy with it | happy with that | happy with this | held it | held it together | held steady |
    held tempo | held the tempo | held together | held up | hit it | hit the tempo | holds together | hooray |
    hurrah | hurray | huzzah | i did it | impressive | in control | in good shape | in my fingers | in one go |
    in one take | in place | in sync | in the bag | in the can | in the fingers | in the groove | in the pocket |
    in the zone | in time | in tune | it clicked | it flows | it worked | it works | it's in | it's there |
    just grand | just right | kept going | kept in time | kept it together | kept steady | kept the beat | kept time |
    kept up | killed it | killing it | landed it | learnt it | light and even | like butter | like clockwork |
    like silk | locked | locked down | locked in | looking good | lots better | loved it | lovely | lovely and even |
    lovely sound | lovely tone | managed it | marvellous | marvelous | mastered | memorised | memorized | mint |
    more than ok | much better | much cleaner | much easier | much improved | much more even | much more secure |
    much nicer | much smoother | much steadier | musical | nae bad | nae bother | nailed | nailed it |
    nailed it at last | nailed that | neat | neat and tidy | never better | nice | nice and clean | nice and clear |
    nice and crisp | nice and easy | nice and even | nice and light | nice and relaxed | nice and smooth |
    nice and steady | nice and tidy | nice feel | nice flow | nice groove | nice one | nice run | nice sound |
    nice tone | nice work | nicely | nicely done | no bother | no bumps | no complaints | no fuss | no hitch |
    no hitches | no issues | no mistakes | no problem | no problems | no slips | no stops | no stress | no stumbling |
    no sweat | no trouble | no worries | no wrong notes | not a problem | not a single mistake | not bad |
    not bad at all | not half bad | not shabby | not too bad | not too shabby | note perfect | ok | ok now | okay |
    on it | on point | on tempo | on the ball | on the beat | on the button | on the money | on the nose |
    on top of it | one clean run | out of the park | outstanding | peachy | perfect | perfectly | perfecto |
    played it through | played well | pleased with it | pleased with that | pleased with this | presentable |
    pretty good | pukka | quick and clean | quite good | ready for lesson | ready for the concert |
    ready for the lesson | ready to go | ready to move on | ready to perform | ready to play | really good | relaxed |
    relaxed and even | reliable | resonant | right | right at last | right every time | right notes | right on |
    ringing | rock solid | rock steady | runs well | sat better | sat nicely | sat well | satisfactory | satisfying |
    scrumptious | secure | settled | settled in | settled nicely | settled now | singing | sings | sings now | sits |
    sits nicely | sits now | sits well | slick | smashed it | smashing | smooth | smooth all through |
    smooth and even | smooth as silk | smooth enough | smooth sailing | smooth throughout | smoothly |
    so much better | solid | sorted | sorted now | sounded fab | sounded fine | sounded good | sounded great |
    sounded lovely | sounded nice | sounded right | sounded well | sounding good | sounding great | sounding lovely |
    sounding nice | sounds clean | sounds fine | sounds good | sounds good now | sounds great | sounds like music |
    sounds lovely | sounds nice | sounds right | sparkling | splendid | spot on | spot on at last | spotless |
    stayed in time | stayed steady | stayed together | steady | steady all through | steady and clean |
    steady as a rock | steady enough | steady now | steady throughout | strong | sublime | success | superb | sweet |
    sweet as | sweet spot | sweet tone | ten out of ten | terrific | that clicked | that was good | that worked |
    that's it | there at last | there now | they're good | tickety boo | tidier | tidy | tidy enough | tip top |
    to tempo | together at last | together now | top notch | under control | under my fingers | under the belt |
    under the fingers | unhurried | up to scratch | up to speed | up to tempo | v gd | v v good | very good |
    very well indeed | vg | wahey | warm | way better | way cleaner | way easier | well | well controlled |
    well done | well done me | well in time | well in tune | well under the fingers | well worth it |
    went beautifully | went fine | went great | went nicely | went ok | went smoothly | went to plan |
    went very well | went well | went well enough | whoop | with confidence | with ease | without a hitch |
    without a slip | without mistakes | without slips | without stopping | without stops | without stumbling |
    without trouble | wonderful | woohoo | woohooo | woot | worked a treat | worked at last | worked fine |
    worked nicely | worked out | worked well | working | works | works a treat | works fine | works now | works well |
    y | yahoo | yass | yay | yeah | yeh | yep | yes | yess | yesss | yey | yippee | you beauty | yup |
    ${combined("no | without a", FAULT)} |
    ${combined("0 | no | without | zero", FAULTS)}
  `,
  nearly: `
    1 mistake | 1 slip | 1 stop | 2 mistakes | 2 slips | 2 stops | :/ | ~ | ± | a bit better | a bit of progress |
    a bit rough | a bit uneven | a few bumps | a few slips | a little better | a little hesitant | a slip |
    a tad better | a work in progress | acceptable | adequate | all but | all but one | all right ish | almost |
    almost all | almost clean | almost got it | almost had it | almost ish | almost ok |
    almost right | almost there | alright ish | basics there | better | better again | better but not clean |
    better but not great | better but not there | better but slow | better but uneven | better by the end |
    better each time | better every time | better in places | better ish | better than before | better than it was |
    better than last time | better than last week | better than monday | better with metronome | bit better |
    bit by bit | bit of progress | bit rough | bitty | borderline | bumpy | by a whisker | calmer | careful |
    clean but slow | clean in places | clean mostly | clean slowly | clean till the end | clean until the end |
    cleaner | cleanish | close | close but no cigar | close enough | comes and goes | coming | coming along |
    coming on | coming on nicely | coming slowly | coming together | coming up | could be better | could be cleaner |
    could be smoother | could be tighter | could be worse | decentish | easier but not easy | easier than yesterday |
    easing up | even ish | even mostly | evening out | every other time | fair | fair enough | fair to middling |
    fairly close | feels better | feels easier | feels safer | fell at the last | felt better | felt easier |
    few mistakes | fiddly but ok | fifty fifty | fine but slow | fine in places | fine mostly | fine slowly |
    fine until the end | fineish | fits and starts | gd but slow | getting better | getting better slowly |
    getting cleaner | getting closer | getting easier | getting faster | getting it | getting smoother |
    getting somewhere | getting steadier | getting there | getting there slowly | getting warmer | good but slow |
    good but tiring | good first half | good in parts | good in places | good mostly | good slowly |
    good start bad end | good until the end | goodish | had it then lost it | half and half | half decent |
    half good | half ok | half there | halfway there | hit and miss | hit or miss | hm | hmm | hmmm | iffy |
    improved | improving | improving daily | improving slowly | in and out | in parts | in patches | in places |
    in progress | inconsistent | just about | just missed | just missed it | just ok | just short | kind of | kinda |
    kinda ok | lacks polish | less bad | less bumpy | less clumsy | less jerky | less messy | less muddy |
    less patchy | less rough | less rushed | less shaky | less uneven | less wobbly | lighter | little better |
    little by little | little wobble | made it just | made progress | making progress | manageable | mediocre |
    mediocre at best | meh | middling | mistake | mistakes | mixed | mixed bag | mixed results | more clean than not |
    more confident | more controlled | more even | more fluent | more or less | more secure | more settled |
    more solid | more steady | mostly | mostly clean | mostly even | mostly fine | mostly good | mostly in time |
    mostly in tune | mostly ok | mostly right | mostly steady | mostly there | mostly there now | near enough |
    nearer | nearly all | nearly all right | nearly clean | nearly got it | nearly had it | nearly ish |
    nearly ok | nearly right | nearly there | needs more | needs more time | needs more work |
    needs polish | needs polishing | needs time | needs work | nice but slow | no worse | not a disaster |
    not as bad | not as bad as i thought | not bad but slow | not brilliant | not every time | not far off |
    not hopeless | not perfect | not quite | not so bad but slow | not terrible | not the best | not the worst |
    not wonderful | off and on | ok at best | ok but bumpy | ok but hard | ok but messy | ok but not clean |
    ok but not great | ok but rough | ok but rushed | ok but shaky | ok but slow | ok but uneven | ok by the end |
    ok i guess | ok i suppose | ok in parts | ok in places | ok ish | ok most of the time | ok mostly | ok slowly |
    ok sometimes | ok until the end | ok when slow | okayish | on and off | on the edge | on the way | one bad bar |
    one bad note | one mistake | one or two slips | one slip | one stop | only just | only one mistake |
    only one slip | only slowly | partial | partly | passable | patchy | patchy but ok | pretty close | progress |
    progressing | quite close | quite there yet | reasonable | right but slow | room for improvement |
    rough around the edges | rough but ok | rough edges | rough in places | roughly ok | rusty | scraped by |
    scraped through | semi clean | shaky | shaky but ok | shaky start | slight improvement | slight wobble |
    slightly better | slips at the end | slow but clean | slow but even | slow but good | slow but ok |
    slow but right | slow but steady | slow but sure | slow but there | slow progress | slow start | slow to start |
    slowly better | slowly but surely | slowly coming | slowly getting better | slowly getting there |
    slowly improving | smoother | smoothish | so so | so so today | solidish | some better | some clean | some good |
    some good bits | some good some bad | some improvement | some mistakes | some progress | some slips | sometimes |
    sometimes clean | sort of | sort of ok | spotty | started well | steadier | steadyish | still coming |
    still improving | still rusty | still shaky | still to polish | stops | sufficient | tad better |
    there or thereabouts | thereabouts | thereish | tidyish | tolerable | touch and go | tricky but ok |
    two mistakes | two slips | two stops | unsteady | unsure | useable | variable | very close | wee bit better |
    wip | within reach | wobbled a bit | wobbly | wobbly but ok | wobbly in places | wobbly start | work in progress |
    works in parts | works slowly | yes and no | yes but slow | yesish |
    ${combined("almost | nearly | not always | not fully | not quite", GOOD)} |
    ${combined("1 | a | one | only one", FAULT)} |
    ${combined("2 | a couple of | a few | couple of | few | some | two", FAULTS)}
  `,
  not: `
    :( | a disaster | a fiasco | a mess | a nightmare | a shambles | a struggle | aaargh | aargh | abandoned |
    abysmal | airy | all over the place | all over the shop | all wrong | appalling | argh | atrocious | awful | bad |
    bad articulation | bad intonation | bad rhythm | bad sound | bad start | bad timing | bad tone | bad tuning |
    bailed | bailed out | behind | beyond me | bit messy | bits missing | blah | blanked | bleh | blergh | bleurgh |
    blew it | blurred | bodged | bombed | botched | breathy | bum notes | bungled | butchered | buzzes | buzzing |
    buzzy | can't | can't get it | can't play it | cannot | catches | chaos | choked | choppy | clams | clattered |
    clattery | clumsy | clunky | cocked up | collapse | collapsed | complete mess | couldn't get it |
    couldn't keep up | cracked | crackly | cracks | crap | crashed | crashed and burned | crawled | crunchy | d'oh |
    dies | dire | disaster | disjointed | dodgy | dodgy intonation | dodgy tuning | doesn't speak | doesn't work |
    doh | dragged | dragging | dreadful | drifted | drifting | dropped a stick | dropped notes | dropped out |
    dropped sticks | early | eek | fail | failed | falling apart | falling over | falls apart | fell apart |
    fell apart at the end | fell down | fell off | fell off the end | fell over | fell over it |
    fell over my fingers | fell to bits | fell to pieces | flailed | flaky | flat | flubbed | fluff | fluffed |
    fluffs | fluffy | flunked | foggy | forced | forgot it | frantic | frustrating | fudged | fumbled | fumbling |
    fumbly | fuzzy | gallops | garbage | garbled | gave up | getting worse | ghastly | glissy | gone to pot |
    gone wrong | got lost | got slower | got stuck | got worse | grim | gritty | grotty | grr | grrr | gruesome |
    had to stop | hard | hated it | haywire | heavy | heavy going | hell no | hellish | hesitant | hesitating |
    hit a wall | honking | hopeless | horrendous | horrible | horrid | hot mess | i can't | impossible | in bits |
    in pieces | jerky | jittery | jumbled | jumpy | just no | keeps falling apart | keeps stopping |
    kept falling apart | kept stopping | kept stumbling | labored | laboured | lagging | lapse | lapses | late |
    limped | limping | lost | lost control | lost count | lost it | lost it completely | lost my place | lost place |
    lost the beat | lost the place | lost the plot | lost the pulse | lots of clams | lots of mistakes |
    lots of slips | lots of stops | lousy | lumpy | lurching | mangled | massacred | memory lapses | memory slips |
    mess | messed it up | messed up | messy | missed | missed it | missed notes | misses | missing notes |
    much too fast | much worse | mucked up | muddled | muddy | mush | mushy | n | nae good | nae luck | naff | nah |
    naw | needs a lot of work | needs loads of work | needs lots of work | needs slowing down | nervous |
    never again | no | no air | no better | no breath | no chance | no chance yet | no control | no flow | no go |
    no good | no hope | no improvement | no joy | no luck | no progress | no rhythm | no tone | no way | noisy |
    nooo | nooope | nope | nope nope nope | nope not yet | not a chance | not a hope | not again | not any better |
    not clean | not clean yet | not close | not coming | not easy | not even | not even close | not even nearly |
    not fast enough | not for me | not going in | not going to happen | not going well | not good | not great |
    not happening | not near | not nearly | not ok | not okay | not really | not so good | not sticking | not there |
    not there by a mile | not there today | not today | not together | not up to it | not up to scratch |
    not working | not yet | nowhere near | off key | off pitch | off the beat | off the rails | oh dear | omg no |
    oof | oops | ouch | out of breath | out of control | out of phase | out of sync | out of time | out of tune |
    outpaced | over the place | overblew | overblows | overshot | panic | panicked | pants | pathetic | pear shaped |
    pinched | pitch off | pitchy | played badly | plodding | poor | poor intonation | poor sound | poor tone |
    pushed too hard | raced | racing | racing ahead | ragged | ran away | ran away from me | ran away with me |
    ran out of air | ran out of bow | ran out of breath | raspy | ropey | ropy | rotten | rubbish | ruined |
    running away | rushed badly | rushed it | rushed the end | rushed the ending | rushed the last bit | rushes |
    rushing | rushy | sagging | sags | same mistakes | same old mistakes | scrambled | scraped | scrappy | scratchy |
    screechy | screwed up | shaky and slow | shallow | shambolic | sharp | shit | shite | shocking | shrill | sigh |
    sketchy | slapdash | slid off | slipshod | sloppy | slowing down | sluggish | smudged | smudgy | snatched |
    snatchy | sounded awful | sounded bad | sounded horrible | sounded terrible | sounds awful | sounds bad |
    sounds horrible | sounds terrible | sour | speeding up | splat | split | splits | spluttered | squeak | squeaked |
    squeaks | squeaky | squeal | squealed | squealing | squeals | stalled | sticky | stiff | still awful | still no |
    still no good | still not | still wrong | stilted | stodgy | stop start | stopping | stopping and starting |
    stops and starts | strangled | struggled | struggling | stuck | stuck every time | stumbled | stumbles |
    stumbling | stumbly | stuttered | stuttering | stuttery | sucked | sucks | tangled | tatty | terrible | thin |
    thin sound | thin tone | timing off | tinny | tone bad | too choppy | too fast | too fast for now |
    too fast still | too fiddly | too hard | too heavy | too high | too jerky | too loud | too low | too many |
    too much | too quick | too quiet | too rough | too slow | too soft | too tense | too tricky | total chaos |
    total mess | train wreck | tricky | tripped | tripped over it | tripped up | tripping | tuning bad | tuning off |
    two lapses | ugh | ugly | uh oh | unclean | unclear | uncontrolled | unconvincing | uncoordinated |
    uneven and rushed | uneven and slow | unmusical | unplayable | unreliable | unsettled | unstable | untidy |
    useless | wandered | wandering | wavered | wavering | wavery | way off | way too fast | way too hard |
    way too slow | weak | weedy | went blank | went flat | went off | went sharp | went to bits | went to pieces |
    went to pot | went wonky | went wrong | whiny | whoops | wild and woolly | wobbled | woeful | won't come | wonky |
    wont come | wooden | woolly | wooly | worse | worse than before | worse than last week | worse than yesterday |
    worst | wouldn't come | wouldn't speak | wrong | wrong every time | wrong fingering | wrong fingers |
    wrong notes | wrong rhythm | wrong tempo | wtf | yikes | yuck | yuk |
    ${combined("barely | far from | hardly | never | not | not yet", GOOD)} |
    ${combined("3 | 4 | 5 | three | several | lots of | many | too many", FAULTS)}
  `,
  intensifiers: joined(
    "a bit | a little | absolutely | actually | again | all | all that | at last | bit | both | both times",
    "completely | consistently | definitely | each time | entirely | eventually | every time | extremely | fairly",
    "generally | increasingly | incredibly | ish | mostly | much | now | overall | particularly | pretty | properly",
    "quite | rather | really | reasonably | relatively | remarkably | slightly | so | somewhat | still | super",
    "surprisingly | that | this time | throughout | today | tonight | totally | v | v. | very | vv",
  ),
  negations: "not | no | never | hardly | barely | but | except | until | apart | isn't | wasn't | didn't | less",
};
