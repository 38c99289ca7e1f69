// The diary from March to May, in the shorthand of shorthand.mjs. Every person, place and piece is invented.
export const SPRING = `
week 2026-03-02
Mon 30
w tones
g am
f dg uneven
p gat2a slow nearly
Tue rest
Wed 30
g bb4 well; dom
p gal3 rushed
-- the hemiola comes and I run at it like a gate
Thu
l45
= G major, d-g, 16ths at 60 clean 3 of 5, 63 uneven
= Galliard, bars 49-72, at 50 clean, focus rhythm
set Gates, mvt 2, bars 1-16, slow, 4 days
set Galliard, bars 49-72, half=48, 3 days
! count the hemiola aloud until it bores you
! mvt 2: tongue like a finger on a windowpane
Fri 15
. gat2a slow nearly; dm3
? may I slur the pair in bar 6?
Sun 45
w tones
g dm3 uneven; chrom
f stile nearly
-- a pattern of my own: three steps, over, and down the other side
p gat2a nearly

week 2026-03-09
Mon 25
g bb4 well; turns nearly
p gat2a nearly
Wed 35
w tones
g am
f stile
p gat1
Thu 20
. = sight-reading, 10 min
. tC; stac
Sat
t90 with the consort
= Galliard, from the top, at 46 clean, 50 rushed
= rehearsal, 70 min
-- I was not alone at the end this time. We were all alone, in fours.
Sun 35
c tC; tAm nearly
p gal1; gal2

week 2026-03-16
Mon 30
g dm3; dg
p gat2a
Tue rest, stock day, arms like string
Wed 25
w five
g dom; am well
f dot
Thu
l45
= Bb major, fours, 8ths at 76 clean
= Gates, mvt 2, bars 1-16, at 52 nearly
set Bb major, fours, slow, 6 days
set Gates, mvt 2, bars 17-40, slow
! E flat with the fuller fork, one finger more, in everything, from today
! yes, slur the pair in 6, once you can say why
! you will hate it for three weeks; keep the old one for nothing, not even for consort
Fri 20
. = Bb major, slow: T T S T T T S
. = notes D5 Eb5, back and forth, slurred, slow, uneven
-- one finger, and the whole hand has to be introduced again
Sun 35
g bb4 slips
-- slower than at Christmas. So be it.
g de nearly
p gal2; gal3

week 2026-03-23
Mon 25
g de; bb4 uneven
p gat2b slow nearly
Wed 30
w tones
g dm3 well
-- no E flat in it: a holiday
f dg uneven; stile
Thu 15
. bb4; de
Fri rest
Sat
t90 with the consort
= rehearsal, 60 min
= Galliard, from the top, at 50 clean
-- I used the new fork and paid for it, quietly
Sun 40
w tones
g bb4 nearly; turns
f chain1 slips
-- the chain runs straight into the same E flat
p gat2b nearly; gat1 well

week 2026-03-30
Mon 30
g de
p gat2b; gal3 well
Tue rest
Wed 25
g dm3 uneven; turns
p gat1
Thu
l45
= Bb major, fours, slow, clean, focus finger changes
= Gates, mvt 2, bars 17-40, at 46 nearly
set G major, d-g, 16ths, 3 days
set "a week without the recorder, with a good conscience"
! the fork sounds in tune now; speed is no business of ours yet
! go for walks: the fingers will file it meanwhile
Sat 20
. de row; bb4
Sun rest

week 2026-04-06
Mon rest, a week of walking along the coast, recorder at home
Wed rest, walking
a5 = Gates, mvt 1, sung
-- on a wet headland, to some sheep
Sun rest, walking, home by the last bus
= done "a week without the recorder, with a good conscience"

week 2026-04-13
Mon 20
w tones
-- a week off and the sound is bigger; it cannot be only the room
g five
Wed 30
w five
g bb4 well; dm3 nearly
p gat2a
Thu 20
. de; am -1 well; lss
Sat
t90 with the consort
= tuning, 10 min
= rehearsal, 60 min
= Galliard, from the top, at 50 clean, 54 nearly
-- the net loft smells of tar in the first warm weather
Sun 40
w tones
g = Eb major: Eb F G Ab Bb C D Eb, 3 flats
g eb nearly
f lss uneven
p gat2b

week 2026-04-20
Mon 30
c tAm well
g dm3
p gat2a
Wed 30
g eb slips
-- the A flat without its thumb: like standing on one leg in a boat
g bb4
p gat2b nearly
Thu
l45
= Gates, mvt 2, bars 1-16, at 58 clean, 60 nearly
= Bb major, fours, 8ths at 69 clean
set Eb major, thirds, slurred, 8ths, 4 days
set Gates, mvt 3, bars 1-24, slow
! you lift the fingers as if the holes were hot
Fri rest
? is there another A flat for slow music?
Sat 20
. de; gat3a slow nearly
-- a jig. I can hear it, which is something
Sun 45
w tones
g eb nearly
f stile; dg uneven
break 5
p gat3a nearly

week 2026-04-27
Mon 25
w five
g dm3 row
-- the thumb rolls now without a telegram beforehand
g bb4
p gat3a nearly
Tue 20
. eb; f12; stac rushed
-- short is not the same as early
Wed rest, evening meeting
Fri 30
g eb well
f chain1 nearly
p gat2b
Sat
session 10:30
t90 with the consort
= rehearsal, 60 min
= Gates, mvt 1, at 52 clean
-- they have put harmonies under it, and it turns out to be sad
session 18:00 20
c tC well; lam1 slow nearly
Sun 35
g bb4; am
p gal1; gat3a

week 2026-05-04
Mon 30
w five
g dm3 uneven; turns
p gat3b slow nearly
Wed 35
c tC; tAm; lam1 nearly
-- twenty-five minutes on the tenor without putting it down, and the right thumb knows it
p gal2
Thu
l45
= Gates, mvt 3, bars 1-24, at 58 clean, 63 rushed
= Lamps, on tenor recorder, bars 1-20, at 54 nearly
set Gates, mvt 3, bars 25-48, slow, 4 days
set G major, d-g, 16ths at 56, 3 days
! there is another A flat, and it is out of tune: stay on your one leg
! breathe out before you breathe in
! a dance needs two feet; you play it on one
Fri 20
. dg; gat3b slow nearly
Sun 45
w tones
g eb
f f12
p gat3b nearly
break 5
-- put it all down in between; tea
p gal3

week 2026-05-11
Mon 20
. dm3 well
. tC -1 once
= Lamps, on tenor recorder, bars 1-20, slow, sore right thumb
-- stopped there. It is tired more than painful, but I know myself.
Tue rest, right thumb tired
Wed 15
w five
-- five minutes, sitting, alto only; stopped at the first word from it
a10 = Gates, mvt 3, bars 25-48, mental
Thu rest, right thumb
a10 = Galliard, bars 49-72, sung
-- rang the teacher about it: come by on Saturday, bring both instruments
? is it the weight, or the way I hold it?
Sat
l20 = F major, five notes, slow, easy
! the tenor rests until the thumb is quiet, and then comes back on a sling
! if it is still there in a week, or wakes you, that is a question for a doctor and not for me
Sun rest, thumb better, leaving it alone

week 2026-05-18
Mon 15
. tones; five
-- a quarter of an hour and nothing to report, which is the report
Wed 15
. dm3 -4 well
. gat1 slow clean
Thu 20
. = listening, 10 min
. am -4 well
-- slow all week on purpose
Fri rest
Sat 20
w tones
p gal1 -3 well
-- ten minutes, ten off. The thumb holds its peace.
Sun 25
w five
g bb4 -3 well
p gat3a -2 well
-- a whole week of playing nothing at the edge; the jig is the better for it

week 2026-05-25
Mon 25
g dm3; eb nearly
p gat3b nearly
Wed 30
w five
g bc well
p gat2b well
Thu
l45
= Gates, mvt 3, bars 25-48, at 54 nearly, 50 clean
= C major, on tenor recorder, slow, easy, with a sling
set Gates, mvt 3, bars 25-48, at 56, 5 days
set Galliard, by heart by 2026-06-13
! with the sling the thumb steers and does not carry; still, ten minutes at a time
! three weeks to June: nothing new now
Fri rest
Sat
t75 with the consort
= Galliard, from the top, at 54 clean
= Gates, mvt 2, at 54 nearly
= rehearsal, 45 min
Sun 40
w tones
g dg uneven
-- so, slower than in February. It is also the first time I like the sound of it.
p gat3a; gat3b; gal2 well
`;
