// The diary from September to November, in the shorthand of shorthand.mjs. Every person, place and piece is invented.
export const AUTUMN = `
week 2026-08-31
Mon 30
g dm3 well; cd nearly
p fan1
Wed 30
g am; inv; hi nearly
-- the thumb is to stand a little further round, and the top notes do not know it yet
p fan2 slow nearly
-- the nephew interrupts on the second half of the beat, every time
Thu
l45
= Fantasia, bars 1-30, at 54 clean, 58 nearly
= C major, d-g, 16ths at 54 clean
set Fantasia, bars 31-64, slow, 5 days
set E major, slow, 3 days
! now that the d-g is soft, let the air do the accents
Fri 20
. = E major: E F# G# A B C# D# E, 4 sharps
. cd
? does the trill in 27 start above?
Sun 45
w tones
g dm3 uneven; em nearly
-- four sharps, and none of them where the hand expects it
f chain2 nearly
p fan2 nearly

week 2026-09-07
Mon 30
w five
g td; am nearly
p fan2 nearly
Wed 25
c tAm well; lam1; lam2 slow nearly
Sat
t90 with the consort
= rehearsal, 75 min
= G major, slurred, by ear
-- somebody began a tune, and nobody wanted to be the one to stop
Sun 45
w tones
g eb nearly
f cd uneven; chain2
break 5
p fan1 well

week 2026-09-14
Mon 25
g em nearly; inv
p fan2
Tue 15
. = trill A5 with Bb5, slow
. = sight-reading, 10 min
Wed 30
w five
g cd; hi
f stile
p fan1
Thu
l45
= E major, 8ths at 52 clean, 54 uneven
= Fantasia, bars 31-64, at 50 nearly
set E major, 8ths, 5 days
set Lamps, on tenor recorder, bars 21-40, 3 days
! above, yes, and late: let the harmony wait for you
! D sharp is the old fork's cousin; greet it the same way
Sat 20
c tC; lam2 nearly
-- twenty minutes with the sling. I put it down before the thumb could ask.
Sun 45
w tones
g em
f f12
p fan2; fan3 slow nearly

week 2026-09-21
Mon rest, stocktaking
Tue 15
. dm3 well
-- ten minutes between the boxes and bed, and better than none
Wed rest, stocktaking
Fri 15
. tones; fan1 -1 well
Sat rest, lesson and consort both missed, asleep by eight
Sun 30
g em nearly; cd
p fan2 well

week 2026-09-28
Mon 30
w tones
g dm3 uneven; hi nearly
-- slower than in August, and the hand is quieter
s att slow nearly
-- a study in E, so there is no getting away from it
p fan3 slow nearly
Wed 35
g em well; dim slow nearly
f chain2
p fan2
-- with the light gone at seven it feels like the season for it
Thu
l45
= E major, 8ths at 56 clean
= Fantasia, bars 65-90, slow, nearly
set C# diminished seventh, slurred, slow, 3 days
set Fantasia, bars 65-90, 4 days
! do not decorate the cadence before you can sing it plain
Fri 15
. = C# diminished seventh: C# E G Bb
. dim nearly; stac
Sat
t90 with the consort
= rehearsal, 90 min
-- somebody brought apples, so it ran late
Sun 45
w tonesT
c tAm; lam2
p fan3 nearly

week 2026-10-05
Mon 30
g gm row
f cd
p fan3 nearly
Tue 20
. em; bb4
Wed rest
Fri 30
w tones
g dim uneven
p fan3
-- it can be sung plain now. In the van, at least.
Sun 50
w tones; five
g dm3 slips
f chain2 slips
break 5
-- window open, arms down, ten slow breaths
p gal1
-- the old galliard for dessert

week 2026-10-12
Mon 30
g cd nearly; bc
p fan1 nearly
Wed 30
c lam2 nearly
-- bars 21 to 40 lie where the tenor's low C has to speak at once. It clears its throat first.
break 5
c lam1; tC
Thu
l45
= Lamps, on tenor recorder, bars 21-40, at 58 clean, 60 slips
= Fantasia, bars 65-90, at 50 nearly
set Lamps, on tenor recorder, bars 41-60, slow
set "a slow week, nothing over half speed" by 2026-10-25
! warmer air for the low C, not more of it
! before a concert, go slow on purpose once; it shows what you have been hiding
Fri 15
| plan
. = E major, 8ths at 58
. = C major, d-g, 16ths at 60, done
-- two planned and one played; supper was the other
Sat
t90 with the consort
= rehearsal, 80 min
= Lamps, on tenor recorder, from the top, at 54 nearly
Sun 35
w tones
g dim; hi nearly
p fan3; fan2 uneven

week 2026-10-19
Mon 30
g dm3 slow clean
-- at this speed I hear that the third finger slaps
p fan1 slow clean
Tue 20
. em slow clean; = E major, steps T T S T T T S
Wed 30
g gm slow clean; eb slow clean
p fan2 slow nearly
-- what I have been hiding: two bars of the nephew, played by nobody in particular
Thu rest
Fri 25
w tonesT
c tC slow easy; lam3 slow nearly
Sun 35
g bb4 slow clean; cd slow clean
p fan3 slow clean
= done "a slow week, nothing over half speed"
-- and now I should like to run

week 2026-10-26
Mon 30
g dm3 row; hi
s att
p fan1
Wed 30
w five
g cd; am nearly
-- not met since September: the hand remembers the way, and not the pace
p fan3 nearly
Thu
l45
= Fantasia, from the top, at 50 nearly
= E major, 8ths at 60 clean
set Fantasia, from the top, 4 days
set C major, d-g, 16ths at 60, 4 days
! you are allowed to take time before the weather speaks
Sat
t90 with the consort
= Lamps, on tenor recorder, from the top, at 56 clean
= rehearsal, 75 min
? can I leave out the repeat without anybody minding?
Sun 45
w tonesT
c lam3 nearly
-- dark at five; the tenor is a good thing to have in a dark room
f f12 well
p fan1 well; fan3

week 2026-11-02
Mon 30
g gm nearly
s att well
p fanall nearly
Tue 15
. em; dm3 slips
-- tired, and it shows in the fourth finger first
Wed rest
Fri 35
g am; bb4; chrom nearly
-- last met in March. The low G sharp and I are on terms again.
p fan2; fan3
Sun 45
w five
g dim well
f wt nearly
-- six equal steps and no way home
p fanall nearly; lam3

week 2026-11-09
Mon 30
w tones
g chrom
p fanall
Wed 30
c lam1 well; lam2
break 5
-- sling off, arms down, kettle on
c lam3
Thu
l45
= Fantasia, from the top, at 54 clean
= Lamps, on tenor recorder, from the top, at 56 clean
set "play it once a day, from any bar, and no more"
! leave out the repeat; nobody ever minded
! it is ready; leave it alone
Fri 15
. wt; cd; stac well
Sat
t100 with the consort
= run-through, 80 min
-- a hall with a wooden floor: everything comes back a moment later, and kinder
Sun 40
w tones
g eb well; hi nearly
f chain2 well
p fanall; lam2 well

week 2026-11-16
Mon 25
g dm3 nearly; em well; am well
p fanall well
Tue 15
. wt nearly; gm
Wed 20
. tones; fan3 well
-- from bar 65, as drawn from a hat; the hat was right
Thu
t75 with the consort in the hall
= run-through, 60 min
Fri rest, before the concert
a10 = Fantasia, from the top, mental
Sat
session 11:00 15
. tones; five
session 19:00
t70 with the consort
= run-through, 60 min
-- Lantern evening. The low C spoke at once, and so, in the end, did everybody.
Sun rest
| -- A year of lines today. Faster in some places, slower in others, and louder nowhere, which I like best.
`;
