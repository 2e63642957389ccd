import { describe, expect, test } from "vitest";
import type { WholeState } from "../../../dashboard/api/types.ts";
import { saleGround } from "../../../dashboard/selling/road.ts";
import { pickedState, wholeStates } from "../../../dashboard/selling/wholeStates.ts";
import { demoBody, drafted, HYBRID, inputFor, reference, soundBut } from "../listing/listing.ts";

type Body = Parameters<typeof inputFor>[0];

async function ground(body: Body, state: WholeState) {
  const input = await inputFor(body);
  return saleGround(input.answer, body, reference, state);
}

describe("what a find may be sold as", () => {
  test("nothing in the way where every check was made and no fault found", async () => {
    expect(await ground(soundBut(HYBRID), "asFound")).toEqual({
      kind: "open",
      road: "clear",
      stops: [],
      owed: [],
    });
  });

  test("not roadworthy as found while a fault stops riding, and clear once its work is done", async () => {
    const body = demoBody("plum-hybrid");
    const found = await ground(body, "asFound");
    expect(found).toMatchObject({ kind: "open", road: "not-roadworthy" });
    expect(found.kind === "open" && found.stops).toContain("Brake inner cable");
    expect(await ground(body, "madeSafe")).toMatchObject({ road: "clear", stops: [], owed: [] });
  });

  test("nothing looked at: not roadworthy as found; made safe the price counts on the checks owed", async () => {
    const body = { find: HYBRID };
    expect(await ground(body, "asFound")).toMatchObject({ road: "not-roadworthy", stops: [] });
    const safe = await ground(body, "madeSafe");
    expect(safe).toMatchObject({ road: "clear" });
    expect(safe.kind === "open" && safe.owed.length).toBeGreaterThan(0);
  });

  test("agrees with the title of the advert wherever no check is owed", async () => {
    for (const id of ["plum-hybrid", "copper-track-bike", "yellow-folder", "ferry-shed-roadster"]) {
      const input = await inputFor(demoBody(id));
      for (const { state } of wholeStates(input.answer)) {
        const here = saleGround(input.answer, input.body, reference, state);
        if (here.kind === "refused" || (here.road === "clear" && here.owed.length > 0)) continue;
        const { title } = drafted({ ...input, state });
        expect(title.startsWith("Not roadworthy"), `${id} ${state}`).toBe(here.road !== "clear");
      }
    }
  });

  test("refused where the papers forbid the sale or everything is stopped, with the advert's reason", async () => {
    expect(await ground(demoBody("white-carbon-racer"), "asFound")).toMatchObject({
      kind: "refused",
      why: expect.stringContaining("do not sell it"),
    });
  });
});

describe("the states it can be sold whole in", () => {
  test("those whose course is open; none where it is stopped or only pieces are left", async () => {
    const states = async (id: string) =>
      wholeStates((await inputFor(demoBody(id))).answer).map((one) => one.state);
    expect(await states("plum-hybrid")).toEqual(["asFound", "madeSafe", "restored"]);
    expect(await states("white-carbon-racer")).toEqual([]);
    expect(await states("choir-tandem")).toEqual([]);
  });

  test("the wished one where it is open, else the decided course's", async () => {
    const { answer } = await inputFor(demoBody("plum-hybrid"));
    const states = wholeStates(answer);
    expect(pickedState(answer, states, undefined)).toBe("madeSafe");
    expect(pickedState(answer, states, "asFound")).toBe("asFound");
    expect(pickedState(answer, states.slice(0, 1), "restored")).toBe("asFound");
    expect(pickedState(answer, [], "restored")).toBeUndefined();
  });
});
