import { type Device, deviceOf } from "../words/whereWorkedOut.ts";

/** The device in hand. */
export function thisDevice(): Device {
  return deviceOf(matchMedia("(pointer: coarse)").matches, Math.min(screen.width, screen.height));
}
