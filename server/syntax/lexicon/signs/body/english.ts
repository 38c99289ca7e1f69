import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What is said of the body in English: common practice, no source. */
export const ENGLISH_BODY_SIGNS: SignTable = {
  "body-part": {
    "arm or leg": joined(
      "4th finger | 5th finger | ankle | ankles | arm | arms | bicep",
      "biceps | calf | calves | elbow | elbows | feet | finger | finger joint | finger joints | finger tip",
      "finger tips | fingernail | fingernails | fingers | fingertip | fingertips | foot | forearm",
      "forearms | forefinger | hamstring | hamstrings | hand | hands | hip | hips | index finger",
      "knee | knees | knuckle | knuckles | l hand | l thumb | l wrist | left arm | left hand | left thumb",
      "left wrist | leg | legs | little finger | lower arm | middle finger | palm | palms | pinkie | pinkies",
      "pinky | pinkys | r hand | r thumb | r wrist | right arm | right hand | right thumb | right wrist",
      "ring finger | shin | shins | thigh | thighs | thumb | thumb joint",
      "thumbnail | thumbs | toe | toes | tricep | triceps | upper arm | wrist | wrist bone | wrist joint | wrists",
    ),
    ear: "ear | eardrum | eardrums | ears | hearing | tinnitus",
    "part of the body": joined(
      "abs | armpit | back | belly | bottom lip | cheek | cheekbone | cheeks | chest | chin | chop | chops",
      "coccyx | collarbone | delts | diaphragm | embouchure | eye | eyes | forehead | front teeth | glutes | gums",
      "head | jaw | larynx | lip | lips | lower back | lower lip | molar | mouth | muscle | muscles | neck",
      "neck muscles | nerve | nerves | nose | pelvis | rib | ribcage | ribs | rotator cuff | scapula | shoulder",
      "shoulder blade | shoulder blades | shoulders | sinus | sinuses | spine | sternum | stomach | tailbone",
      "teeth | temples | tendon | tendons | throat | tongue | tonsils | tooth | top lip | torso | trapezius",
      "traps | tummy | upper back | upper lip | vertebra | vocal chord | vocal chords | vocal cord | vocal cords",
      "vocal folds | voice | wisdom tooth",
    ),
  },
  "body-trouble": {
    hurts: joined(
      "ache | ached | aches | achey | achin | achiness | aching | achy | arm pain | arthritis | back pain",
      "back spasm | backache | bad back | blood blister | broken arm | broken finger | broken thumb",
      "broken wrist | bursitis | carpal tunnel | chest pain | concussion | cramp | cramped | cramped up",
      "cramping | cramps | cramps up | crampy | croaky | dislocated | dizzy | dystonia | earache | fainted",
      "finger pain | focal dystonia | fractured | ganglion | golfer's elbow | gone numb | hand pain | headache",
      "hoarse | hurt | hurting | hurts | hurty | in pain | inflamed | inflammation | jaw ache | jaw pain",
      "laryngitis | light-headed | lightheaded | lip pain | lost my voice | lost voice | migraines | nausea",
      "nauseous | neck ache | neck pain | no voice | numb | numbness | ouchy | overuse injury | pain | painful",
      "painfull | pains | pinched nerve | pins & needles | pins + needles | pins and needles | pins n needles",
      "pulled a muscle | pulled muscle | repetitive strain | rsi | sciatica | sharp pain | shooting pain",
      "shooting pains | shoulder pain | sore | sore throat | soreness | spasm | spasms | sprained | stabbing pain",
      "stiff neck | stomach ache | swelling | swollen | swollen up | tendinitis | tendonitis | tennis elbow",
      "tenosynovitis | throbbing | throbs | thumb pain | tingle | tingles | tingling | tingly | toothache",
      "trapped nerve | tremor | tremors | trigger finger | twinge | twinged | twinges | vertigo | voice lost",
      "went numb | whiplash | wrist pain",
    ),
    sore: joined(
      "acting up | asleep | bleeding | blister | blisters | bruise | bruised | bruises | burning | burns",
      "buzzing | chapped | dead | dull | fizzing | flared up | flaring up | giving me grief | giving me gyp",
      "giving out | gone | grumbling | hurtin | in knots | injured | injury | killing me | knackered | knotted",
      "locked | locked up | locking up | locks | locks up | muffled | niggle | niggles | niggling | niggly",
      "overdid it | overuse | overused | peeling | playing me up | playing up | protesting | puffy | raw | ring",
      "ringing | rings | scabbed | seized | seized up | seizes up | seizing | seizing up | shot | spasmed",
      "spasming | sprain | stabbing | stiff | stiffness | stinging | stings | strained | swells | tender | throb",
      "tinnitus | trembles | trembling | trembly | tweaked | twinging | twitch | twitches | twitching | ulcer",
      "weak | weakness | will not obey | won't obey",
    ),
    tight: "tight | tightness | too tight",
    tense: "clenched | clenching | tense | tensed | tensed up | tensing | tensing up | tension | tightening up",
    tired: joined(
      "bushed | dead tired | drained | exhausted | fatigue | fatigued | pooped | shattered | tired | tiredness",
      "wiped out | worn out | zonked",
    ),
    cold: "cold",
  },
  rhythm: {
    rhythm: "beat | ensemble | groove | pulse | rhythm | rhythms",
  },
  eased: {
    eased: "better | gone",
    free: "free of pain | pain free | painless",
  },
};
