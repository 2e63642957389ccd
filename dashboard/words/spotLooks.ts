import type { Check } from "../api/types.ts";
import { levelWords } from "./plain.ts";

/** What a look on the spot is called, and how it is made, in as few words as a kneeling reader takes in. */
interface LookWords {
  /** As an order: the heading of its card. */
  readonly ask: string;
  /** What it is about, before its finding. */
  readonly part: string;
  /** The catalogue's instruction in short; absent where that is short itself. */
  readonly brief?: string;
  /** What was found, behind the part's name, where the level's own word would be misread there. */
  readonly found?: Readonly<Record<string, string>>;
}

/** By check. The instruction in full stands in the catalogue; nothing here says more than it does. */
export const LOOK_WORDS: Readonly<Record<string, LookWords>> = {
  "frame-cracks": {
    ask: "Look for cracks",
    part: "Frame",
    found: { none: "no crack seen" },
    brief:
      "Light from the side: head tube joints, seat cluster, shell, dropouts, welds. A stained line counts as a crack.",
  },
  "frame-dents": {
    ask: "Feel the tubes for dents",
    part: "Tubes",
    found: { none: "no dent" },
    brief: "Two fingers along each tube, a straight edge over any hollow. Is its edge a sharp fold?",
  },
  "front-impact": {
    ask: "Feel behind the head tube",
    part: "Front-end crash",
    found: { none: "no sign" },
    brief:
      "A ripple or bulge under down tube and top tube, 20 to 60 mm back? From the side the fork must go on in the head tube\u2019s line.",
  },
  "fork-alignment": {
    ask: "Sight along the fork",
    part: "Fork",
    found: { true: "straight" },
    brief: "From the front the wheel sits centred. From the side both blades overlap without a kink.",
  },
  rust: {
    ask: "Feel and tap for rust",
    part: "Rust",
    brief:
      "Under the bottom bracket, at the stay bridges, behind the chainrings, at bare dropouts. Tap: a rotten tube sounds dull.",
  },
  "alloy-corrosion": { ask: "Look for white bloom", part: "Corrosion" },
  "carbon-damage": {
    ask: "Light and tap the carbon",
    part: "Carbon",
    found: { none: "clear coat sound" },
    brief:
      "Exposed fibre, bulges, cracks at clamps and dropouts? Tap with a coin every 20 mm for a dull patch. Flex it and listen.",
  },
  "seatpost-free": { ask: "Twist the seatpost", part: "Seatpost" },
  "suspension-fork": { ask: "Rock and press the fork", part: "Suspension fork" },
  finish: { ask: "See the paint in daylight", part: "Paint" },
  headset: { ask: "Rock the headset", part: "Headset" },
  "stem-insertion": { ask: "Look for the stem\u2019s mark", part: "Stem depth" },
  "bar-stem-cracks": {
    ask: "Look over bar and stem",
    part: "Bar and stem",
    found: { none: "no crack seen, straight" },
    brief:
      "Clamp edges of the bar, the stem\u2019s slot, lever clamps, bends. Sight it from above and behind.",
  },
  "rim-damage": { ask: "Look round the rim", part: "Rim", found: { none: "no damage seen" } },
  "spokes-broken": { ask: "Count broken spokes", part: "Spokes", found: { none: "none broken" } },
  "hub-bearings": {
    ask: "Rock and spin the wheel",
    part: "Hub",
    brief: "Hold the rim at the top and rock it sideways. Lift, spin, and feel the frame for rumble.",
  },
  "tyre-condition": { ask: "Press the tyre\u2019s sidewall", part: "Tyre" },
  "tyre-age": { ask: "Read the tyre\u2019s date", part: "Tyre age" },
  "tyre-size": {
    ask: "Read the tyre\u2019s size",
    part: "Tyre size",
    brief:
      "The two-number size on the sidewall. Inch markings are not unique: two rims of one name may differ.",
  },
  sprockets: { ask: "Look at the sprockets", part: "Sprockets" },
  chainrings: { ask: "Spin the chainrings", part: "Chainrings" },
  "bb-bearing": {
    ask: "Rock a crank across the frame",
    part: "Bottom bracket",
    brief: "Then spin the cranks and hold the seat tube to feel for grinding. Chain off the ring if you can.",
  },
  cranks: {
    ask: "Rock each crank on its axle",
    part: "Cranks",
    brief: "Cracks at pedal eye, spider, edge of the square taper? Check the pins of cottered cranks.",
  },
  shifting: { ask: "Try every gear", part: "Gears" },
  "hub-gear": { ask: "Try every gear of the hub", part: "Hub gear" },
  freewheel: { ask: "Drive, then coast", part: "Freewheel" },
  "gear-standard": { ask: "Name the transmission", part: "Transmission" },
  "brake-function": {
    ask: "Pull the brakes hard",
    part: "Braking",
    brief:
      "Rock the bike, push it forward on the front brake: the wheel must hold. No cable may slip, no lever reach the bar.",
  },
  "brake-pads": {
    ask: "Look at the brake pads",
    part: "Pads",
    brief: "How much is left above the holder or the wear line? Press with a nail: rock-hard counts as low.",
  },
  "inner-cable": { ask: "Look for frayed cable", part: "Brake cable" },
  housing: { ask: "Bend the cable housing", part: "Cable housing" },
  caliper: {
    ask: "Pull and let go the brake",
    part: "Brake arms",
    brief:
      "Both sides must return, the centre bolt hold, the arms be straight, the pad hit the rim and never the tyre.",
  },
  "brake-lever": { ask: "Wiggle the brake lever", part: "Brake lever" },
  hydraulic: { ask: "Squeeze for 30 seconds", part: "Hydraulic line" },
  "hub-brake": { ask: "Push against the hub brake", part: "Hub brake" },
  saddle: { ask: "Look at the saddle", part: "Saddle" },
  pedals: { ask: "Spin and rock the pedals", part: "Pedals" },
  "bar-covering": { ask: "Twist the grips", part: "Grips or tape" },
  serial: { ask: "Read the serial number", part: "Serial number" },
  ownership: {
    ask: "Ask where it comes from",
    part: "Papers",
    brief:
      "Name, when and where, any receipt. Write a short bill of sale. For a find, permission in writing.",
  },
  equipment: { ask: "Count lights and reflectors", part: "Lights and bell" },
};

type Named = Pick<Check, "id" | "name" | "how">;

/** The heading of a look's card; the check's own name where the screen has no words for it. */
export function askWords({ id, name }: Pick<Named, "id" | "name">): string {
  return LOOK_WORDS[id]?.ask ?? name;
}

/** What a level found, in a few words behind the part's name: "no crack seen". */
export function levelFound(check: Pick<Check, "id" | "levels">, level: string): string {
  return LOOK_WORDS[check.id]?.found?.[level] ?? levelWords(check, level);
}

/** What a look is about, in a word or two. */
export function partWords({ id, name }: Pick<Named, "id" | "name">): string {
  return LOOK_WORDS[id]?.part ?? name;
}

/** How a look is made, in short. */
export function briefWords({ id, how }: Pick<Named, "id" | "how">): string {
  return LOOK_WORDS[id]?.brief ?? how;
}
