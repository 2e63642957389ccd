import { describe, expect, test } from "vitest";
import { listingDraft } from "../../../dashboard/listing/listingDraft.ts";
import { offeredStates } from "../../../dashboard/listing/saleStates.ts";
import { BANNED, demoBody, drafted, HYBRID, inputFor, sectionOf, soundBut } from "./listing.ts";

const FIRST = "Not roadworthy: for repair or parts; not to be ridden as it is.";

describe("a bike on which every check was made and no fault found", () => {
  test("is described in words of the reference, without praise and without a warning in its title", async () => {
    const draft = drafted(
      await inputFor(soundBut(HYBRID), { state: "asFound", askingPrice: 120, invented: true }),
    );
    expect(draft.title).toBe("Hybrid, 2010s, aluminium frame, middle size");
    expect(draft.opening[0]).toMatch(/^No fault that stops riding was found in the checks made\./);
    expect(sectionOf(draft, "what").items).toContain("Brakes: Rim, linear pull");
    expect(sectionOf(draft, "what").lines).toEqual(["Not known: fork material, completeness and tyre size."]);
    expect(sectionOf(draft, "faults").lines).toEqual(["No fault is known from the checks made."]);
    expect(draft.text).toContain("Every check that applies was made.");
    expect(draft.text).toContain("Asking price: €120");
    expect(draft.text).toContain("Invented find:");
    expect(draft.text).not.toMatch(BANNED);
    expect(draft.text).not.toMatch(/\bcm\b/);
  });

  test("tells sizes in figures only where they were measured", async () => {
    const measured = drafted(await inputFor(soundBut({ ...HYBRID, frameSizeMm: 540 })));
    expect(sectionOf(measured, "forWhom").lines[0]).toMatch(/middle; seat tube 540 mm/);
    const { sizeClass: _, ...unsized } = HYBRID;
    const open = drafted(await inputFor(soundBut(unsized)));
    expect(sectionOf(open, "forWhom").lines[0]).toMatch(/^Frame size not known\./);
    expect(sectionOf(open, "forWhom").lines.join()).not.toMatch(/\d/);
  });

  test("keeps a blank with its currency where no price is asked, and its code where a sign would not do", async () => {
    const input = await inputFor({ ...soundBut(HYBRID), currency: "USD" });
    expect(drafted(input).text).toMatch(/Asking price: _+ USD/);
    expect(drafted({ ...input, askingPrice: 99.5 }).text).toMatch(/Asking price: USD\s99\.50/);
    expect(drafted({ ...input, askingPrice: Number.NaN }).text).toMatch(/Asking price: _+ USD/);
  });
});

describe("a bike with faults", () => {
  test("names what is worn, as found, and stays without the warning where nothing stops riding", async () => {
    const body = soundBut(HYBRID, { saddle: "torn", finish: "faded" });
    const draft = drafted(await inputFor(body, { state: "asFound" }));
    expect(draft.title).not.toMatch(/roadworthy/);
    expect(sectionOf(draft, "faults").items).toEqual([
      "Paint, decals and originality of finish: Faded. Original but faded, decals part lost.",
      "Saddle: Torn. Torn cover, sagged leather.",
    ]);
    expect(draft.photos).toContain("Close up: Saddle");
  });

  test("says in title and first line that it is not roadworthy, while a fault that stops riding is there", async () => {
    const draft = drafted(await inputFor(demoBody("plum-hybrid"), { state: "asFound" }));
    expect(draft.title).toMatch(/^Not roadworthy, for repair or parts: Hybrid/);
    expect(draft.opening[0]).toBe(FIRST);
    expect(sectionOf(draft, "faults").items).toContain(
      "Brake inner cable (stops riding): Frayed. Any broken strand at the lever or clamp.",
    );
    expect(draft.text).toContain("Carry or push it; do not ride it home.");
    expect(draft.text).toContain("5 checks not made:");
    expect(sectionOf(draft, "notDone").items).toContain("New brake pads");
  });

  test("made safe, tells the work and what it left, and the symptom goes with its causes", async () => {
    const draft = drafted(await inputFor(demoBody("plum-hybrid")));
    expect(draft.state).toBe("madeSafe");
    expect(draft.title).not.toMatch(/roadworthy/);
    expect(draft.opening[0]).toMatch(/^Faults that stopped riding were found and put right;/);
    expect(sectionOf(draft, "done").items).toEqual(expect.arrayContaining(["New brake pads", "New chain"]));
    expect(sectionOf(draft, "done").items.join()).not.toMatch(/Photograph|haggling|bill of sale/);
    const faults = sectionOf(draft, "faults").items.join();
    expect(faults).toMatch(/Paint/);
    expect(faults).not.toMatch(/Braking effect|Brake inner cable/);
    expect(draft.notes[0]).toMatch(/says that the work is done/);
    expect(draft.text).not.toMatch(BANNED);
  });

  test.each(["new-pads both", "final-check bike"])(
    "made safe, but without %s, it is not roadworthy after all",
    async (job) => {
      const draft = drafted(await inputFor(demoBody("plum-hybrid"), { undone: new Set([job]) }));
      expect(draft.title).toMatch(/^Not roadworthy/);
      expect(draft.opening[0]).toBe(FIRST);
      expect(sectionOf(draft, "faults").items.join()).toMatch(/Braking effect \(stops riding\)/);
      expect(sectionOf(draft, "notDone").lines[0]).toMatch(/needed before anyone rides/);
      expect(sectionOf(draft, "done").items).not.toContain(job);
    },
  );

  test("hardly looked over, it is not roadworthy in any state, and says which looks are owed", async () => {
    const input = await inputFor(demoBody("orange-racer"));
    for (const state of offeredStates(input.answer)) {
      const draft = drafted({ ...input, state });
      expect(draft.title, state).toMatch(/^Not roadworthy/);
      expect(sectionOf(draft, "checks").items, state).toHaveLength(45);
    }
    const asFound = drafted({ ...input, state: "asFound" });
    expect(asFound.opening[1]).toMatch(/before these checks are made: Frame cracks \(metal\), Headset/);
    expect(asFound.text).toContain("No fault found in 4 of the 6 checks made, before any work.");
  });
});

describe("what may not be sold whole, or not at all", () => {
  test("a frame that is finished leaves parts alone, and the frame is never among them", async () => {
    const input = await inputFor(demoBody("choir-tandem"));
    expect(offeredStates(input.answer)).toEqual(["parts"]);
    const draft = drafted({ ...input, state: "asFound" });
    expect(draft.state).toBe("parts");
    expect(draft.title).toMatch(/^Not roadworthy, parts only, frame not sold: Tandem/);
    expect(draft.opening[1]).toMatch(
      /^The frame is not sold\. It is cut through .*: Frame cracks \(metal\)\.$/,
    );
    expect(draft.photos).toContain("Each piece alone on a plain ground, with a ruler beside it");
  });

  test("parts of a bike that could be sold whole are told to be parts", async () => {
    const draft = drafted(await inputFor(soundBut(HYBRID), { state: "parts" }));
    expect(draft.title).toMatch(/^Not roadworthy, parts only: Hybrid/);
    expect(draft.text).not.toContain("frame is not sold");
    expect(draft.sections.map(({ id }) => id)).not.toContain("forWhom");
  });

  test("a stopped find has no draft, and says why", async () => {
    const draft = listingDraft(await inputFor(demoBody("white-carbon-racer")));
    expect(draft).toEqual({
      kind: "refused",
      why: "No draft. Serial number: filed, drilled or over-stamped. While this stands, do not sell it and do not advertise it.",
    });
  });

  test("a bike under an open recall has no draft until the remedy is done", async () => {
    const input = await inputFor(soundBut(HYBRID, { recall: "open" }));
    for (const state of ["asFound", "parts"] as const) {
      const draft = listingDraft({ ...input, state });
      expect(draft).toMatchObject({ kind: "refused", why: expect.stringMatching(/recall.*Do not sell it/) });
    }
    expect(drafted({ ...input, state: "madeSafe" }).text).toContain("Look up recall notices and fit remedy");
  });

  test("a cracked bare frame can be sold neither whole nor in pieces", async () => {
    const find = { ...HYBRID, completeness: "frame-only" } as const;
    const draft = listingDraft(await inputFor(soundBut(find, { "frame-cracks": "crack-structural" })));
    expect(draft).toMatchObject({ kind: "refused", why: expect.stringMatching(/^No draft\. Nothing of it/) });
  });

  test("a number not yet queried is told, and is no matter of riding", async () => {
    const draft = drafted(await inputFor(soundBut(HYBRID, { serial: "not-queried" }), { state: "asFound" }));
    expect(draft.title).not.toMatch(/roadworthy/);
    expect(sectionOf(draft, "papers").items.concat(sectionOf(draft, "papers").lines).join()).toMatch(
      /Serial number: Not queried. Legible, not yet queried/,
    );
  });
});
