import barUnderTape from "./bar-under-tape.svg?raw";
import chainGauge from "./chain-gauge.svg?raw";
import crankRock from "./crank-rock.svg?raw";
import dropoutSpacing from "./dropout-spacing.svg?raw";
import forkLine from "./fork-line.svg?raw";
import frameCracks from "./frame-cracks.svg?raw";
import frontImpact from "./front-impact.svg?raw";
import headsetRock from "./headset-rock.svg?raw";
import leverGap from "./lever-gap.svg?raw";
import postTwist from "./post-twist.svg?raw";
import rimWall from "./rim-wall.svg?raw";
import stringTest from "./string-test.svg?raw";

/** The line drawings, by the check they belong to. They take the colour of the text around them. */
const DRAWINGS: Readonly<Record<string, string>> = {
  "bar-corrosion": barUnderTape,
  "bb-bearing": crankRock,
  "brake-function": leverGap,
  chain: chainGauge,
  "dropout-spacing": dropoutSpacing,
  "fork-alignment": forkLine,
  "frame-cracks": frameCracks,
  "front-impact": frontImpact,
  headset: headsetRock,
  "seatpost-free": postTwist,
  "rim-sidewall": rimWall,
  "rear-alignment": stringTest,
};

/** The drawing of a check as SVG text; undefined where it has none. */
export function drawingOf(check: string): string | undefined {
  return DRAWINGS[check];
}
