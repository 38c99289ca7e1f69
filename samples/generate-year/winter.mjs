// The diary from November to February, in the shorthand of shorthand.mjs. Every person, place and piece is invented.
export const WINTER = `
week 2025-11-24
Mon 30
| -- A new notebook, and this time a line for every sitting.
g dm3 nearly
g gm
-- the top G speaks only if I have thought of it beforehand
p gal1 slow nearly
Wed 25
f f12 well
p gal1 nearly
-- the left hand knows bar 9; the right hand has not been told
Thu rest
Fri 20
. dm3 uneven
-- F to A is where the thumb has to roll, and it hops
. cross
Sat
t90 with the consort
= rehearsal, 75 min
= tuning, 15 min
-- we tuned to the bass for once, and it was better
Sun 35
w tones
g = D melodic minor: D E F G A B C# D C Bb A G F E D, 1 flat
g dm3 well; gm nearly
p gal2 slow nearly

week 2025-12-01
Mon 25
g dm3 uneven; cross
f f12
Tue rest, van in the workshop, home after nine
Wed 30
g gm; tk rushed
-- the k arrives before the finger does
p gal1 nearly
Thu
l45
= D melodic minor, thirds, slurred, 8ths at 54 clean, 58 uneven
= Galliard, bars 1-24, at 48 nearly, focus rhythm
set D melodic minor, thirds, slurred, 8ths at 60, 5 days
set Galliard, bars 25-48, slow
! thirds in pairs first, then the pairs joined
! less air at the bottom, not less support
Fri 20
. dm3 well
-- pairs first. It is dull, and it works.
. gal2 slow nearly
Sun 40
w tones; five
g dm3 row
f f12 slips
p gal2 slow nearly

week 2025-12-08
Mon 30
w tones
g dm3 uneven; tk
f chain1 nearly
-- from F to B flat without looking down: twice out of many
Tue 15
. gm well; cross; bc
Wed rest
Thu 35
| -- The consort's spare tenor came home with me, in a fish crate.
c tC
-- so much more air, and so much less hurry
c tAm slow nearly
p gal1; gal2 nearly
Sat
t90 with the consort
= rehearsal, 80 min
= C major, on tenor recorder, slow
Sun 35
g dm3; gm
f f12
p gal2 nearly
? bars 31 and 32: two breaths or one?

week 2025-12-15
Mon 30
w tones
g bb4 nearly
p gal1 well
Tue rest, school stops, no voice left
Wed 25
f f12; pent
f tk rushed
-- t-k is fast in front and lazy behind
Thu
l45
= C major, on tenor recorder, 8ths at 66 clean
= Galliard, bars 25-48, at 46 clean, 50 nearly
set Bb major, fours, 8ths, 4 days
set "clap bars 25-32 against the foot"
! one breath in 31 if the phrase before it was not greedy
! the tenor hangs from the right thumb: put it down between pieces
Fri 20
. bb4 slips
-- D to E flat: two fingers pass each other in a narrow stair
= done "clap bars 25-32 against the foot"
Sat
t120 with the consort
= run-through, 90 min
-- on the quay in mittens, and nobody can tune in mittens
Sun 25
. tC nearly; dm3 well

week 2025-12-22
Mon 20
g bb4; dm3
Tue 15
. = sight-reading, 15 min
-- an old dance book from the van, pages foxed and tunes sound
Wed rest, family
Thu rest, family
Fri rest, family and too much cake
Sat 30
w tonesT
c tAm nearly
p gal2
-- nobody in the house but me, so I played the ends of phrases as if they mattered
Sun 35
g dm3 uneven; tri nearly
f chain1
p gal1

week 2025-12-29
Mon 40
g bb4 nearly; chrom nearly
p gal2 nearly; gal3 slow nearly
-- the last page has more ink than the other two
Tue 25
. gm row
-- five times the G came as if it lived there
. f12; tk
Wed rest
Fri 30
w breath; five
g dm3 well
f dot uneven
-- the short notes are late because I admire the long ones
Sun 45
w tones
g chrom slips
f chain1
break 5
p gal1; gal3 slow nearly

week 2026-01-05
Mon 25
| -- The child upstairs has arrived. Nothing above top D after seven in the evening.
g dm3; bb4
Wed 30
g chrom nearly; dom
p gal3 nearly
Thu
l45
= Bb major, fours, 8ths at 66 clean, 69 slips
= Galliard, bars 49-72, at 42 nearly
set Galliard, bars 49-60, slow, 5 days
set chromatic from G4 to G5, slurred, 8ths, 3 days
! do not practise the mistake and then the correction: stop before it
Fri 20
. chrom slips
-- the half hole is a matter of faith
. gal3 slow nearly
? G sharp low down: how much of the double hole?
Sat 20
. tC; tAm well
-- low down, so as not to wake anybody: it suits the instrument
Sun 40
w tones
g bb4 well; dm3 uneven
f dom
p gal3 nearly

week 2026-01-12
Mon 30
w five
g tri
p gal1
-- the beginning has grown easier by being left alone
Tue rest
Wed 30
g = A harmonic minor: A B C D E F G# A
g am nearly
f tk rushed; f12
Thu 15
= sight-reading, 10 min
= D dorian, inégal, 8ths at 60 nearly
-- unequal, but not unequal enough to have been meant
Sat
t90 with the consort
= tuning, 10 min
= rehearsal, 80 min
-- our bass had a cold and breathed where the composer did not
Sun 40
w tonesT
c tC nearly
g dm3 row
-- they begin to sound like a tune
p gal2

week 2026-01-19
Mon 30
g am
f dot; ineg
Wed 35
w five
g chrom
p gal1; gal2 well
-- bar 31 in one breath, because the phrase before it was modest
Thu
l45
= A harmonic minor, slur 2+2, 8ths at 54 clean
= Galliard, bars 49-72, at 46 clean, 50 rushed
set A harmonic minor, slur 2+2, 8ths, 4 days
set Gates, mvt 1, slow
! this is a dance in three. You count it in four when you are worried
! of the double hole: less than you think, and sooner
! a new suite for June: only the slow movement for now
Fri 25
. gat1 slow nearly
-- thirty-two bars of nothing but sound, and nowhere to hide
. am nearly
Sun 45
w tones
g dm3 slips
f tk; lss
p gat1 slow clean

week 2026-01-26
Mon 30
g bb4; am
p gat1 nearly
Tue 20
. f12 well; dom; dm3
Wed rest, ice on the hill road, two hours late
Fri 25
g chrom well
-- it ran, low G sharp and all. I did not trust it and tried again, and it ran again.
f dot nearly; ineg well
Sat
session 10:00
t80 with the consort
= rehearsal, 80 min
session 17:00 20
c tC; tAm slips
-- long stretch for the little finger after a morning of it, so enough
Sun 35
w tones
g dm3 row
p gal1; gat1

week 2026-02-02
Mon 20
. dm3 -1 nearly
-- throat like the inside of a boot
. gat1 slow nearly
Tue rest, a cold
Wed rest, a cold
a10 = Gates, mvt 1, mental
Thu rest, a cold, lesson put off
Sat rest, still no wind
a10 = D melodic minor, thirds, silent
Sun 15
= breathing, 5 min
. five
-- twice up and down, then back to the armchair

week 2026-02-09
Mon 15
. five; tones
Wed 20
g dm3 nearly
-- the fingers were not ill, only the breath: it gives out after eight bars
p gat1 slow nearly
Fri 20
g am -1 well; f12 -2 well
-- a step slower on half the air, and quite contented with it
Sat rest, consort without me
Sun 25
w five
g gm nearly
p gal1 -1 well

week 2026-02-16
Mon 25
g tk rushed
p gal1; gat1 nearly
Tue rest
Wed 30
g bb4 nearly
f f12 well; stac
Thu
l45
= G major, t-k, 16ths at 63 clean, 66 uneven
= Gates, mvt 1, at 50 clean
set G major, d-g, 16ths, 5 days
set "say d-g on the stairs, a step to a syllable"
! the k is a door slamming: leave t-k and learn d-g, and let it be slower
! it will drop before it lifts; write down that it drops
Fri 20
. dg uneven
= done "say d-g on the stairs, a step to a syllable"
-- the cat left the stairs
Sun 40
w tones
g dm3 well
f dg
-- the figures go down, as announced
p gal3 nearly

week 2026-02-23
Mon 30
w five
g dg uneven
p gat1
Tue 20
. dm3 slips; tri; f12
Wed rest, road to the point flooded
Thu 35
g bb4; chrom nearly
f dg
-- softer. Whether it is even I cannot hear from the inside.
p gal2 well
Sat
t90 with the consort
= rehearsal, 70 min
= Galliard, from the top, at 46 nearly
-- first time through with the others: I was alone at the end of it
Sun 35
c tC; tAm
g gm row
-- good enough to leave for a while, and make room
p gal1
`;
