import { joined } from "../../joined.ts";

/** English techniques of brass: common practice, no source. */
export const BRASS_TECHNIQUES: readonly string[] = [
  joined(
    "lip slurs | lip slur | lip flexibilities | flexibilities | lip flexibility | lip slur exercise",
    "lip slur exercises | lip slur drill | lip slur drills | lip slur studies | lip slurring | lip flex",
    "natural slurs | natural slur | harmonic slurs",
  ),
  "lip trills | lip trill | lip trill exercise",
  "lip bends | lip bend | lip bend exercise | lip bending",
  joined(
    "mouthpiece buzzing | buzzing | mouthpiece buzz | buzz | mouthpiece buzzes | mpc buzz | mpc buzzing",
    "mouthpiece buzzing exercise | buzzing exercise | buzzing exercises | mouthpiece buzz exercise | buzzing drill",
    "buzzing drills | buzzing practice | buzz exercise | buzz exercises",
  ),
  "lip buzzing | free buzzing | lip buzz | free buzz",
  "leadpipe | leadpipe buzzing | lead pipe | lead pipe buzzing | leadpipe exercise | leadpipe buzz",
  joined(
    "pedal tones | pedal notes | pedals | pedal tone | pedal note | pedal tone exercise | pedal tones exercise",
    "pedal register",
  ),
  joined(
    "valve exercise | valve exercises | valve drill | valve drills | valve technique | valve work | valve slurs",
    "valve slur",
  ),
  "mute work | muting | mute practice | muted practice",
  joined(
    "slide positions | slide exercise | slide exercises | slide drill | slide drills | slide technique | slide work",
    "alternate positions | alternate slide positions",
  ),
  "stopped notes | hand stopping | stopped note | stopping exercise | hand stopping exercise",
  "half valve | half valves | half valve exercise",
  "shakes | shake",
  joined(
    "high register | upper register | high range | high notes | high register exercise | high range exercise",
    "high note exercise | upper range",
  ),
  joined(
    "low register | lower register | low range | low notes | low register exercise | low range exercise",
    "low note exercise | lower range",
  ),
  "bugle calls | bugle call",
  "lip glissandi | lip gliss | lip glisses | lip glissando",
  "plunger mute | plunger work | plunger exercise",
  "remingtons | remington exercise | remington exercises",
  "rips exercise | rips and falls",
  "slide legato",
];
