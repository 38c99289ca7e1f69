// The diary from June to August, in the shorthand of shorthand.mjs. Every person, place and piece is invented.
export const SUMMER = `
week 2026-06-01
Mon 30
g dm3 well; bb4
p gal1 heart nearly
-- by heart it is the second half that I know, because that is where I used to get lost
Tue 15
. gal2 heart nearly; gal3 heart slow nearly
Wed 30
g eb uneven; td slow nearly
p gat3a; gat3b
Fri 25
w tonesT
c tC once
-- ten minutes with the sling, then the case shut. Nothing.
p gal1 heart well
Sun 40
w tones
g dm3 slips; de
f chain1
p gal2 heart; gal3 heart nearly

week 2026-06-08
Mon 30
g bb4 well; eb
p gal3 heart nearly
-- say the bar number at every landing, and the stairs stay put
Tue 20
. gat1; gat2b
Thu
l45
= Galliard, from the top, at 54 nearly, by heart
= Gates, mvt 3, at 56 clean
set "play the whole set to one listener"
! start slower than you dare; nobody has a train to catch
! if you fall out, come in at the next double bar and look as if it were written
Fri 20
. gal3 heart; gat3b nearly
-- one listener: the cat, who went and came back
= done "play the whole set to one listener"
Sat
t100 with the consort
= Galliard, from the top, at 54 clean, by heart
= Gates, mvt 1, at 54 clean
= Gates, mvt 3, at 56 nearly
= rehearsal, 60 min
Sun 30
g am well
p gat3a well; gat2a

week 2026-06-15
Mon 25
w tones
g five
p gal1 heart well; gat3b well
Wed 20
. gat2a well; gal3 heart
-- dreamt of bar 57, and in the dream it was the other fork
Thu
t80 with the consort in the net loft
= run-through, 60 min
= tuning, 10 min
Fri rest, on purpose
Sat
session 11:00 15
. tones; = Galliard, from the top, slow, clean, by heart
session 19:30
t60 with the consort
= run-through, 45 min
-- Midsummer in the net loft. I fell out in the jig and came in at the double bar, and looked as if it were written.
Sun rest, slept till ten

week 2026-06-22
Mon rest
Wed 20
. = improvising on D dorian, 10 min
. tones
-- no piece, no clock; the windows open and someone sawing in tune
Fri 15
. = sight-reading, 10 min; pent well
Sat 20
c tC; tG nearly
-- the sling is a friend. The thumb has nothing to add.
Sun 20
. dm3; = improvising on D dorian, 10 min

week 2026-06-29
Mon 30
g dm3 uneven; gm slips
-- four months without it: it starts lower than it stopped, but the hand remembers the road
f f12
Wed 25
w five
g gm nearly; turns
s st4a slow nearly
Thu
l45
= G minor arpeggio, 2 octaves, slurred, at 54 nearly, 50 clean
= Stairs, lines 1-4, slow, nearly
set Stairs, lines 1-4, 4 days
set Lamps, on tenor recorder, bars 1-20, slow, 3 days
! after a concert, studies: nobody applauds, so one listens
Sat 25
c tC
break 5
-- two lots of ten minutes, with tea between
c lam1 nearly
? which of the two B flats in the arpeggio, going up?
Sun 40
w tones
g gm
f stile well; chain1
s st4a nearly

week 2026-07-06
Mon 25
g eb well; td nearly
-- from the top down the crossing comes before I am awake
s st4a nearly
-- line 3 turns in the air like a swallow, or ought to
Wed 25
w tones
c lam1 nearly; tG
Fri 20
. gm nearly; st4b slow nearly
Sat 15
. pent
. = improvising on G minor, 10 min
Sun 35
g bb4 uneven
f f12 nearly; stac
s st4a

week 2026-07-13
Mon 25
g dm3 row
-- and with the metronome in the other room
s st4b nearly
Tue 15
. gm; eb; inv
Thu
l45
= Stairs, lines 1-4, at 60 clean, 63 uneven
= Lamps, on tenor recorder, bars 1-20, at 56 clean
set "a fortnight off, and a book instead"
! the B flat that agrees with the drone, and that is for you to find out
! when you come back: a third slower for a week, and no testing on the first day
Sat 20
w tonesT
c lam1; tC
-- oiled both, and laid them in the drawer like fish
Sun rest, packing

week 2026-07-20
Mon rest, away by the lakes, no recorder
Sun rest, away
= done "a fortnight off, and a book instead"

week 2026-07-27
Mon rest, still away
Fri rest, home, twelve degrees warmer than we left it
Sun rest, too hot to hold anything made of wood

week 2026-08-03
Mon 15
. tones; five
-- stiff as a gate. No testing, as ordered.
Wed 20
g dm3 -6 well; bb4 -5 well
Thu 15
. am -5 well; gm -4 well
-- a third slower, and it is rather beautiful down there
Sat 20
c tC -3 well; lam1 -4 well
Sun 25
w five
g dm3 -4 well; eb -4 well
p gal1 -4 well
-- an old friend, at the pace of an old friend

week 2026-08-10
Mon 20
. dm3; gm nearly
-- thirty degrees in the room, and the pitch went up with them
Wed 20
. bb4; inv; tones
Fri rest, heat
Sat 25
c tC; tAm; lam1 nearly
Sun 30
g eb
s st4a; st4b slow nearly

week 2026-08-17
Mon 30
w five
g dm3 uneven; td
s st4a nearly
Wed 25
g am; cd slow nearly
-- d-g from the beginning again, in C, where there is nothing else to think about
p fan1 slow nearly
Thu
l45
= Stairs, lines 1-4, at 63 clean
= "Reed Bed Fantasia", bars 1-30, slow
set C major, d-g, 16ths, 4 days
set Fantasia, bars 1-30, slow, 4 days
! the fantasia is a conversation: find out who is speaking in each bar, and write it in
Sat 15
. cd nearly; fan1 slow nearly
Sun 40
w tones
g gm well
f f12 slips
-- high summer, low breath
p fan1 nearly

week 2026-08-24
Mon 30
g dm3; eb uneven
p fan1
-- three voices pencilled in: the aunt, the nephew, the weather
Tue 15
. cd; am; stac
Wed rest
Fri 30
w tonesT
c tG; lam1
Sat
t90 with the consort
= rehearsal, 80 min
= tuning, 10 min
-- first one since June; we had all forgotten a different thing
Sun 40
w five
g gm
f stile; chain1 nearly
break 5
s st4b nearly
`;
