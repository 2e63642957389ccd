import { describe, expect, test } from "vitest";
import { inspected } from "../../engine/inspection/realTables.ts";

describe("limits of law and standard", () => {
  // Source: 16 CFR 1512.11(a): no spoke may be missing.
  test("one missing spoke blocks riding, none does not", () => {
    const wheel = (count: number) =>
      inspected({ "spokes-broken": { rear: { measured: { count } } } }).findings[0];
    expect(wheel(0)?.safety).toBe("none");
    for (const count of [1, 2, 5, 36]) expect(wheel(count)?.safety).toBe("block");
  });

  // Source: ISO 4210-2, 4.6.1: at least two independently actuated brakes, one front and one rear.
  test("a bike with one brake that fails, or none, blocks riding", () => {
    for (const level of ["one-fails", "none"]) {
      expect(inspected({ "brake-function": { level } }).findings[0]?.safety).toBe("block");
    }
  });

  // Source: ISO 4210 fatigue tests fail a frame on any visible crack; from memory.
  test("a crack in the frame of any metal blocks riding", () => {
    for (const frameMaterial of ["steel", "aluminium", "titanium"] as const) {
      for (const level of ["crack-attachment", "crack-structural"]) {
        expect(inspected({ "frame-cracks": { level } }, { frameMaterial }).findings[0]?.safety).toBe("block");
      }
    }
  });

  // Source: a wheel builder's article on rim wear: at or below 1.00 mm the rim is done.
  test("a rim wall of 1.00 mm or less is worn out, a thicker one is not", () => {
    const rim = (thickness: number) =>
      inspected({ "rim-sidewall": { front: { measured: { thickness } } } }).findings[0];
    for (const thickness of [0, 0.8, 1])
      expect(rim(thickness)).toMatchObject({ level: "worn-out", safety: "block" });
    expect(rim(1.05)?.level).toBe("near-limit");
    expect(rim(1.4)?.level).toBe("sound");
  });

  // Source: a wheel builder's articles on true wheels: up to 1 mm sideways passes with many, builders work to 0.15 mm.
  test("a wheel within a builder's tolerance is true, within 1 mm it is no caution", () => {
    const wheel = (runout: number) =>
      inspected({ "rim-lateral": { rear: { measured: { runout } } } }).findings[0];
    expect(wheel(0.15)?.level).toBe("true");
    expect(wheel(1)?.safety).toBe("none");
  });

  // Source: a frame-tool maker's article: 2 mm is often quoted as the trade's tolerance of frame alignment.
  test("a rear end within 2 mm is true, over it is not", () => {
    const frame = (right: number) =>
      inspected({ "rear-alignment": { measured: { left: 40, right } } }).findings[0];
    expect(frame(41.9)?.level).toBe("true");
    expect(frame(42)?.level).toBe("slight");
  });

  // Source: frame spacing articles: 126 mm (six speeds) and 130 mm (eight speeds, from about 1989); only steel may be cold set.
  test("a 130 mm hub in a 126 mm frame does not simply fit", () => {
    const spacing = { "dropout-spacing": { measured: { spacing: 126, hub: 130 } } };
    expect(inspected(spacing).findings[0]).toMatchObject({
      level: "off",
      safety: "advisory",
      derived: { value: 4 },
    });
  });

  test("what steel may be sprung in by hand is a caution on every other material", () => {
    const spacing = { "dropout-spacing": { measured: { spacing: 128, hub: 130 } } };
    expect(inspected(spacing).findings[0]?.safety).toBe("none");
    for (const frameMaterial of ["aluminium", "carbon", "titanium"] as const) {
      expect(inspected(spacing, { frameMaterial }).findings[0]?.safety).toBe("advisory");
    }
  });
});
