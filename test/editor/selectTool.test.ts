// Selecting, dragging and typing on the two-room plan. Reach is some 89 mm, the grid 50.
//
//   4200 ●────────w3────────●─────────●
//        w4                 w5        w2        d1 in w1 at 1200, d2 in w5, d3 in w6
//        │                  ├───w6────┤ 2000
//      0 ●──d1──────w1──────●─────────●
//        0                 3600     7200

import { describe, expect, it } from "vitest";
import { withSettings } from "../../src/editor/state/commands.ts";
import {
  type EditorState,
  unitInHand,
  unitInView,
  walk,
  withSession,
} from "../../src/editor/state/editorState.ts";
import { find, type ItemRef } from "../../src/plan/document.ts";
import { documentToUnit } from "../../src/plan/documentProject.ts";
import { unitOf, wallOf } from "../plan/editFixture.ts";
import {
  click,
  doc,
  drag,
  editorOn,
  ends,
  endsInView,
  go,
  play,
  press,
  release,
  type Script,
  selected,
  snapShown,
  steps,
} from "./fixture.ts";

const plan = editorOn();
const selecting = (...ids: string[]): EditorState => {
  const items: readonly ItemRef[] = ids.map((id) => ({
    bucket: id.startsWith("d") ? "openings" : "walls",
    id,
  }));
  return withSession(plan, { selection: { unit: "A", items } });
};
const at = (state: EditorState, id: string) => find(unitInHand(state).openings, id)?.at;

describe("selecting", () => {
  it.each<{ why: string; from?: EditorState; script: Script; items: readonly string[] }>([
    { why: "a click takes the wall under it", script: click(3000, 30), items: ["walls w1"] },
    { why: "an opening before its wall", script: click(1600, 0), items: ["openings d1"] },
    { why: "a room by its label", script: click(1800, 2100), items: ["rooms r1"] },
    { why: "a click on nothing lets go", from: selecting("w1"), script: click(2000, 1000), items: [] },
    { why: "another click changes", from: selecting("w1"), script: click(3600, 1000), items: ["walls w5"] },
    {
      why: "Shift adds",
      from: selecting("w1"),
      script: click(3600, 1000, { shift: true }),
      items: ["walls w1", "walls w5"],
    },
    {
      why: "Shift takes away",
      from: selecting("w1", "w5"),
      script: click(3600, 1000, { shift: true }),
      items: ["walls w1"],
    },
    {
      why: "Shift on nothing keeps",
      from: selecting("w1"),
      script: click(2000, 1000, { shift: true }),
      items: ["walls w1"],
    },
    {
      why: "a click on one of several leaves it alone",
      from: selecting("w1", "w5"),
      script: click(3600, 1000),
      items: ["walls w5"],
    },
    {
      why: "a window to the right takes what lies in it",
      script: drag([3300, -200], [7400, 2300]),
      items: ["walls w6"],
    },
    {
      why: "a window to the left takes what it touches",
      script: drag([3800, 1500], [3500, 1200]),
      items: ["walls w5"],
    },
    {
      why: "a window with Shift adds",
      from: selecting("w1"),
      script: [press(3300, -200, { shift: true }), go(7400, 2300), release(7400, 2300)],
      items: ["walls w1", "walls w6"],
    },
    { why: "Escape lets go", from: selecting("w1"), script: ["Escape"], items: [] },
  ])("$why", ({ from = plan, script, items }) => {
    const after = play(from, ...script);
    expect(selected(after)).toEqual(items);
    expect([steps(after), doc(after), after.session.preview]).toEqual([0, doc(plan), null]);
  });

  it("shows the window while it is drawn", () => {
    const drawing = play(plan, press(3300, -200), go(7400, 2300));
    expect(drawing.session.preview?.marks).toEqual([
      { kind: "window", box: { minX: 3300, minY: -200, maxX: 7400, maxY: 2300 }, touching: false },
    ]);
    expect(selected(play(drawing, "Escape", release(7400, 2300)))).toEqual([]);
  });
});

describe("a hand that moves and changes nothing", () => {
  it("leaves the state as it is, so that nobody is woken", () => {
    const rested = play(plan, go(1000, 1000));
    expect(play(rested, go(1500, 1200))).toBe(rested);
    const held = play(plan, press(3600, 1000));
    expect(play(held, go(3601, 1000))).toBe(held);
  });

  it("keeps the document in view while the step of the grid stays the same", () => {
    const inView = (state: EditorState) => state.session.preview?.document;
    const first = play(plan, press(3600, 1000), go(3920, 1400));
    const again = play(first, go(3915, 1410));
    expect(inView(again)).toBe(inView(first));
    expect(inView(play(again, go(4020, 1400)))).not.toBe(inView(first));
    expect(ends(play(again, release(3915, 1410)), "w5")).toEqual([3900, 0, 3900, 4200]);
  });
});

describe("dragging a wall", () => {
  it("moves it across itself in one step, and what ends on it stretches", () => {
    const after = play(plan, ...drag([3600, 1000], [3920, 1400]));
    expect([ends(after, "w5"), ends(after, "w6")]).toEqual([
      [3900, 0, 3900, 4200],
      [3900, 2000, 7200, 2000],
    ]);
    expect([steps(after), selected(after)]).toEqual([1, ["walls w5"]]);
  });

  it("is worked out from the plan as it was: wherever the hand has been, the same place gives the same plan", () => {
    const straight = play(plan, ...drag([3600, 1000], [3920, 1400]));
    const roaming = play(
      plan,
      press(3600, 1000),
      go(9000, 0),
      go(-500, 3000),
      go(3610, 1010),
      go(3920, 1400),
      release(3920, 1400),
    );
    expect(doc(roaming)).toEqual(doc(straight));
  });

  it("shows what it gives and writes nothing until the hand lets go", () => {
    const dragging = play(plan, press(3600, 1000), go(3920, 1400));
    expect([endsInView(dragging, "w6"), doc(dragging)]).toEqual([[3900, 2000, 7200, 2000], doc(plan)]);
    const left = play(dragging, "Escape");
    expect([doc(left), left.session.preview, steps(play(left, release(3920, 1400)))]).toEqual([
      doc(plan),
      null,
      0,
    ]);
  });

  it("shows nothing of a drag whose release was lost once another press begins", () => {
    const again = play(plan, press(3600, 1000), go(3920, 1000), press(2000, 1000));
    expect([again.session.preview, doc(again)]).toEqual([null, doc(plan)]);
  });

  it("is no step when it comes back to where it was", () => {
    const after = play(plan, press(3600, 1000), go(4200, 1000), go(3604, 1000), release(3604, 1000));
    expect([steps(after), after.session.preview]).toEqual([0, null]);
  });

  it("snaps in line with another wall and says so; Alt moves freely", () => {
    const free = unitOf([wallOf("w1", [0, 0], [3000, 0]), wallOf("w2", [5000, 625], [8000, 625])]);
    const near = play(editorOn(free), press(1500, 0), go(1500, 600));
    expect([endsInView(near, "w1"), snapShown(near)]).toEqual([[0, 625, 3000, 625], "extension w2"]);
    const loose = play(near, go(1500, 603, { alt: true }));
    expect([endsInView(loose, "w1"), snapShown(loose)]).toEqual([[0, 603, 3000, 603], null]);
  });

  it("takes along the walls that carry it straight on", () => {
    const split = unitOf([
      wallOf("w1", [0, 0], [0, 2000]),
      wallOf("w2", [0, 2000], [0, 4000]),
      wallOf("w3", [0, 2000], [3000, 2000]),
    ]);
    const after = play(editorOn(split), ...drag([0, 500], [-300, 500]));
    expect(["w1", "w2", "w3"].map((id) => ends(after, id))).toEqual([
      [-300, 0, -300, 2000],
      [-300, 2000, -300, 4000],
      [-300, 2000, 3000, 2000],
    ]);
  });

  it("moves in any direction with Shift", () => {
    const lone = editorOn(unitOf([wallOf("w1", [0, 0], [3000, 0])]));
    const after = play(
      lone,
      press(1500, 0),
      go(1700, 300, { shift: true }),
      release(1700, 300, { shift: true }),
    );
    expect(ends(after, "w1")).toEqual([200, 300, 3200, 300]);
  });

  it("says why it cannot be done", () => {
    const after = play(withSettings(plan, { snapping: false }), ...drag([3600, 1000], [7200, 1000]));
    expect([doc(after), after.session.message?.key]).toEqual([doc(plan), "refusal.wall-vanishes"]);
  });
});

describe("dragging an end", () => {
  it("moves its joint, both walls with it", () => {
    const after = play(selecting("w1"), ...drag([7200, 0], [7640, -310]));
    expect([ends(after, "w1"), ends(after, "w2")]).toEqual([
      [0, 0, 7650, -300],
      [7650, -300, 7200, 4200],
    ]);
    expect(selected(after)).toEqual(["walls w1"]);
  });

  it("of a wall alone runs along the wall; Shift lets it turn", () => {
    const lone = withSession(editorOn(unitOf([wallOf("w1", [0, 0], [3000, 0])])), {
      selection: { unit: "A", items: [{ bucket: "walls", id: "w1" }] },
    });
    expect(ends(play(lone, ...drag([3000, 0], [3420, 500])), "w1")).toEqual([0, 0, 3400, 0]);
    const turned = play(
      lone,
      press(3000, 0),
      go(3400, 500, { shift: true }),
      release(3400, 500, { shift: true }),
    );
    expect(ends(turned, "w1")).toEqual([0, 0, 3400, 500]);
  });

  it("takes a typed length for the end in the hand", () => {
    const lone = withSession(editorOn(unitOf([wallOf("w1", [0, 0], [3000, 0])])), {
      selection: { unit: "A", items: [{ bucket: "walls", id: "w1" }] },
    });
    const typed = play(lone, press(0, 0), go(-400, 0), "3255", "Enter", release(-400, 0));
    expect([ends(typed, "w1"), steps(typed)]).toEqual([[-255, 0, 3000, 0], 1]);
  });
});

describe("dragging other things", () => {
  it("an opening along its wall, by steps from its neighbour", () => {
    // The corner's face is at 50: the door stands 1150 from it; 333 further is 1483, on the grid 1500.
    const after = play(plan, ...drag([1600, 0], [1933, 400]));
    expect([at(after, "d1"), selected(after)]).toEqual([1550, ["openings d1"]]);
  });

  it("an opening freely with Alt, and no further than its wall", () => {
    const free = play(plan, press(1600, 0), go(1933, 0, { alt: true }), release(1933, 0, { alt: true }));
    expect(at(free, "d1")).toBe(1533);
    expect(at(play(plan, ...drag([1600, 0], [99999, 0])), "d1")).toBe(6300);
  });

  it("a label anywhere", () => {
    const after = play(plan, ...drag([1800, 2100], [1010, 1320]));
    expect(unitInHand(after).rooms.r1?.at).toEqual([1000, 1300]);
  });

  it("several things together along one axis; joined walls stretch", () => {
    const after = play(selecting("w5", "w6"), ...drag([3600, 1000], [4010, 1100]));
    expect([ends(after, "w5"), ends(after, "w6"), ends(after, "w1")]).toEqual([
      [4000, 0, 4000, 4200],
      [4000, 2000, 7600, 2000],
      [0, 0, 7200, 0],
    ]);
    expect(after.history.past[0]?.label).toEqual({ key: "step.move", values: { count: 2 } });
  });

  it("with Ctrl a copy, selected; the original stays", () => {
    const after = play(
      selecting("w1"),
      press(3000, 0),
      go(3000, -2000, { ctrl: true }),
      release(3000, -2000, { ctrl: true }),
    );
    expect([ends(after, "w1"), ends(after, "w7")]).toEqual([
      [0, 0, 7200, 0],
      [0, -2000, 7200, -2000],
    ]);
    expect([selected(after), at(after, "d4")]).toEqual([["walls w7", "openings d4"], 1200]);
  });
});

describe("typing a figure", () => {
  const typing = play(selecting("w5"), "33");

  it("starts with a digit in the first figure and shows what it gives", () => {
    expect(typing.session.preview?.marks).toEqual([
      { kind: "typing", key: "clear-left", text: "33", was: 3500 },
    ]);
    const more = play(typing, "00");
    expect([endsInView(more, "w5"), doc(more)]).toEqual([[3400, 0, 3400, 4200], doc(plan)]);
  });

  it("keeps with Enter as one step, and the wall stays selected", () => {
    const kept = play(typing, "00", "Enter");
    expect([ends(kept, "w5"), steps(kept), selected(kept), kept.session.preview]).toEqual([
      [3400, 0, 3400, 4200],
      1,
      ["walls w5"],
      null,
    ]);
  });

  it("goes back with Escape", () => {
    const left = play(typing, "00", "Escape");
    expect([doc(left), left.session.preview, selected(left)]).toEqual([doc(plan), null, ["walls w5"]]);
  });

  it("goes to the next figure with Tab, keeping what was typed", () => {
    const next = play(typing, "00", "Tab");
    expect([steps(next), next.session.tool]).toMatchObject([
      1,
      { phase: { kind: "typing", key: "clear-right", text: "" } },
    ]);
    expect(play(selecting("w5"), "3", "Backspace", "Tab", "Tab", "Tab").session.tool).toMatchObject({
      phase: { key: "thickness" },
    });
  });

  it("is kept by a click elsewhere, which does its own work", () => {
    const kept = play(typing, "00", ...click(1600, 0));
    expect([ends(kept, "w5")?.[0], selected(kept)]).toEqual([3400, ["openings d1"]]);
  });

  it("takes over in the middle of a drag; letting go of the button then does nothing", () => {
    const typed = play(plan, press(3600, 1000), go(3900, 1000), "3210", "Enter", release(3900, 1000));
    expect([ends(typed, "w5"), steps(typed)]).toEqual([[3310, 0, 3310, 4200], 1]);
  });

  it("begins in the figure that was clicked", () => {
    const hit = { kind: "dimension", key: "length" } as const;
    const begun = play(selecting("w5"), {
      kind: "press",
      at: [3600, 5000],
      hit,
      modifiers: { shift: false, alt: false, ctrl: false },
    });
    expect(ends(play(begun, { kind: "field", text: "4 500" }, "Enter"), "w5")).toEqual([3600, 0, 3600, 4500]);
  });

  it("says so when it is no number, or when the plan cannot follow", () => {
    expect(play(typing, "-", "Enter").session.message?.key).toBe("message.not-a-number");
    expect(play(selecting("w5"), "-5", "Enter").session.message?.key).toBe("refusal.bad-size");
  });

  it("is no step where it says what was there", () => {
    expect(steps(play(selecting("w5"), "3500", "Enter"))).toBe(0);
  });
});

describe("arrows", () => {
  it.each([
    { why: "one step of the grid", modifiers: {}, x: 3650 },
    { why: "ten with Shift", modifiers: { shift: true }, x: 4100 },
    { why: "one millimetre with Alt", modifiers: { alt: true }, x: 3601 },
  ])("$why", ({ modifiers, x }) => {
    const event = {
      kind: "key",
      key: "ArrowRight",
      modifiers: { shift: false, alt: false, ctrl: false, ...modifiers },
    } as const;
    expect(ends(play(selecting("w5"), event), "w5")?.[0]).toBe(x);
  });

  it("do nothing with nothing selected", () => {
    expect(steps(play(plan, "ArrowLeft"))).toBe(0);
  });
});

it("after undo the selection is what it was before the step, and after redo what it was after", () => {
  const after = play(selecting("w1"), ...drag([3600, 1000], [3920, 1000]));
  // The drag first took w5 in hand, so that is what was selected before the step.
  const back = walk(after, "undo");
  expect([documentToUnit(unitInHand(back)), selected(back)]).toEqual([
    documentToUnit(unitInHand(plan)),
    ["walls w5"],
  ]);
  expect(unitInView(walk(back, "redo"))).toEqual(unitInHand(after));
});
