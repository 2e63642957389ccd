import { describe, expect, test, vi } from "vitest";
import { type Drawn, drawnLater } from "../../../dashboard/charts/drawn.ts";

const canvas = {} as HTMLCanvasElement;
/** Some tasks later: a drawing is made in one of its own. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

function drawing() {
  const shown: [string, boolean][] = [];
  const destroy = vi.fn();
  const drawn: Drawn<string> = { show: (settings, glide) => void shown.push([settings, glide]), destroy };
  return { shown, destroy, create: () => drawn };
}

describe("a drawing whose script comes later", () => {
  test("shows the newest settings when it comes, and each that follows", async () => {
    const { shown, create, destroy } = drawing();
    const load = vi.fn(async () => create);
    const chart = drawnLater(load)(canvas);
    chart.show("first", false);
    chart.show("second", true);
    await settled();
    expect(shown).toEqual([["second", false]]);
    chart.show("third", true);
    expect(shown.at(-1)).toEqual(["third", true]);
    expect(load).toHaveBeenCalledTimes(1);
    chart.destroy();
    expect(destroy).toHaveBeenCalledTimes(1);
  });

  test("whose script did not come is asked for again with the next settings", async () => {
    const { shown, create } = drawing();
    const load = vi.fn(async () => create).mockRejectedValueOnce(new Error("no network"));
    const chart = drawnLater(load)(canvas);
    chart.show("first", false);
    await settled();
    expect(shown).toEqual([]);
    chart.show("second", true);
    await settled();
    expect(shown).toEqual([["second", false]]);
  });

  test("is never made where its canvas has gone meanwhile", async () => {
    const { create } = drawing();
    const made = vi.fn(create);
    const chart = drawnLater(async () => made)(canvas);
    chart.show("first", false);
    chart.destroy();
    await settled();
    expect(made).not.toHaveBeenCalled();
  });
});
