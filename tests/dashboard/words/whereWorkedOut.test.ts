import { describe, expect, test } from "vitest";
import { deviceOf, noSignal, whereWorkedOut } from "../../../dashboard/words/whereWorkedOut.ts";

describe("where answers were worked out", () => {
  test("is said of all answers in sight together", () => {
    expect(whereWorkedOut([true, true], "phone")).toBe("Worked out on this phone.");
    expect(whereWorkedOut([false], "phone")).toBe("Worked out by the server.");
    expect(whereWorkedOut([true, false], "computer")).toBe(
      "Worked out partly on this computer, partly by the server, from the same prices and rules.",
    );
  });

  test("without a signal names this device only where it does the work", () => {
    expect(noSignal(true, "phone")).toBe("No signal. Worked out on this phone.");
    expect(noSignal(false, "phone")).toBe("No signal.");
  });

  test("names the device by how it is pointed at and how large it is", () => {
    expect(deviceOf(false, 390)).toBe("computer");
    expect(deviceOf(true, 390)).toBe("phone");
    expect(deviceOf(true, 768)).toBe("tablet");
  });
});
