import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in English: whole phrases, and what each says of the tempo that it follows. Words: reference lexicon of
 * practice words, class outcome (`tight` and single letters are left out: a tight hand is no good news); those with
 * `not`, `no` and `nearly` before a word of the table are common practice, no source. The eight of the format stand in
 * `terms.ts`.
 */
export const ENGLISH_OUTCOMES: OutcomeWords = {
  reached: `
    + | :) | accurate | all good | at last | beautiful | better than yesterday | brilliant | by heart now | came out
    | clean at last | clear | comfortable | comfy | correct | cracked it | decent | done it | easier | effortless |
    even | excellent | fab | feels easy | feels good | felt easy | felt good | felt great | finally | fine | fine
    now | fluent | good | good now | got it | got there | got through it | great | held together | in control | in
    the pocket | in time | in tune | kept up | learnt it | locked | locked in | lovely | memorised | memorized |
    much better | nailed it | nice | nice and even | no mistakes | no problem | no problems | no slips | no stops |
    not bad | not too bad | ok | ok now | okay | perfect | pretty good | quite good | really good | relaxed | right
    | ringing | rock solid | secure | singing | sings | sits | sits now | smooth | solid | sorted | sounded good |
    sounded nice | sounds good | spot on | steady | strong | success | sweet | tidy | very good | warm | well | went
    fine | went ok | went well | working | works | y | yay | yeah | yep | yes | whoop | woohoo | woo hoo | tidier | clean now | no
    wrong notes | without mistakes | not bad at all
  `,
  nearly: `
    1 mistake | 2 mistakes | :/ | a bit better | a bit rough | a bit uneven | a few slips | almost | almost there |
    better | bit better | bit rough | borderline | careful | coming | even ish | fair | few mistakes | getting there
    | half ok | hit and miss | hmm | iffy | improving | improving slowly | just about | kind of | meh | mistake |
    mistakes | more or less | mostly | mostly ok | nearly clean | nearly there | not quite | ok ish | okayish |
    okish | one mistake | one slip | one stop | passable | patchy | shaky | slightly better | so so | so-so | some
    mistakes | some slips | sort of | stops | two mistakes | two stops | unsteady | unsure | wobbly | ~ | ± | ok-ish
    | nearly clean | almost clean | almost ok | nearly ok | nearly got it | 1 slip | 2 slips |
    two slips | a slip | 1 stop | 2 stops | steadier | cleaner | smoother | lighter | calmer | more even | less messy | nearer |
    getting better | coming along | slow but right | slow but ok | slow but clean | right but slow | not perfect
  `,
  not: `
    :( | a mess | airy | argh | awful | bad | behind | bit messy | blurred | breathy | buzzes | buzzing | buzzy |
    can't | cannot | catches | chaos | choked | clumsy | collapse | collapsed | cracked | cracks | crap | dies |
    disaster | dragged | dragging | early | fail | failed | falling apart | falls apart | fell apart | fluff |
    fluffed | fluffs | fuzzy | garbage | glissy | got lost | hard | heavy | hesitant | hesitating | hopeless |
    horrible | lapse | lapses | late | lost | lumpy | mess | messy | missed | misses | muddled | muddy | mush |
    nervous | no | no air | no breath | no way | noisy | nooo | nope | not clean | not even | not good | not
    happening | not there | not together | not yet | nowhere near | oh dear | ouch | out of breath | out of tune |
    overblew | overblows | overshot | panic | panicked | pinched | ragged | ran out of air | rubbish | rushing |
    sagging | sags | scratchy | shallow | sloppy | sluggish | smudged | sour | split | splits | squeak | squeaked |
    squeaks | squeaky | squealed | stiff | strangled | stuck | stumbled | tangled | terrible | thin | too fast | too
    hard | too loud | too quiet | too slow | train wreck | tripped | two lapses | ugh | ugly | weak | wonky | wrong
    | n | naw | nah | yikes | yuck | flat | sharp | not easy | not ok | not okay | not so good | no good | not great |
    not really | not clean yet | wrong every time | wrong notes | gallops | squeal | squeals | squealing | splat | clams | lots of clams | flubbed | botched | gave up |
    lost it | ran out of breath | too high | too low | too tense | wooden | whiny | all over the place | no chance | no luck
  `,
  intensifiers:
    "both | both times | all | each time | every time | very | quite | a bit | bit | mostly | now | at last | ish | so | pretty | really | still",
  negations: "not | no | never | hardly | barely | but | except | until | apart | isn't | wasn't | didn't | less",
};
