import { joined } from "../../joined.ts";

/** English techniques of the voice: common practice, no source. */
export const VOICE_TECHNIQUES: readonly string[] = [
  "sirens | siren | siren exercise | sirening",
  "humming | hums | humming exercise | humming exercises | humming scales",
  joined(
    "straw phonation | straw | straw in water | straw exercise | straw exercises | straw work",
    "straw phonation exercise | SOVT | SOVT exercise | SOVT exercises",
  ),
  joined(
    "vowels | vowel exercise | vowel exercises | scales on vowels | vowel shapes | vowel work | vowel drill",
    "vowel modification | pure vowels | vowel shaping",
  ),
  "consonants | consonant exercise | consonant exercises | consonant drill | consonant drills",
  "onset | onsets | onset exercise | onset drill | onset exercises | onset drills",
  "vocal fry | vocal fry exercise",
  "passaggio | passaggio exercise",
  "head voice | head voice exercise | head voice work",
  "chest voice | chest voice exercise | chest voice work",
  "mixed voice | mix voice | mixed voice exercise | register blending",
  joined(
    "agility | agility exercise | agility exercises | coloratura exercise | coloratura exercises | runs exercise",
    "agility drill | agility runs | coloratura | melisma exercise",
  ),
  "tongue twisters | tongue twister",
  "tongue trills | tongue trill | tongue trill exercise",
  joined(
    "five note scale | 5 note scale | five note scales | five tone scale | five tone scales | 5 tone scale",
    "five note scales exercise | 5 note exercise | five note exercise",
  ),
  "five note pattern | 5 note pattern | five note patterns | 5 note patterns",
  "lip rolls | lip roll | lip roll exercise | lip roll exercises | lip bubbles | lip bubble",
  "octave arpeggio",
  "vocalises | vocalise | vocalising | vocalizing | vocalises exercise | vocalisation",
  joined(
    "vocal exercises | vocal exercise | vocal drill | vocal drills | vocal technique | voice exercise",
    "voice exercises | singing exercise | singing exercises | vocal workout",
  ),
  "belting exercise | belt exercise",
  "diction | diction exercise | diction exercises | diction work",
  "falsetto | falsetto exercise",
  "hiss exercise | hissing exercise",
  "pitch glides | pitch glide | vocal slides | vocal glides",
  "resonance exercise | resonance exercises | resonance work | forward placement",
  "scat singing | scatting | scat exercise",
  "twang exercise",
  "yawn sigh | yawn sighs",
];
