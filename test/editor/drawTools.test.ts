// Drawing walls, columns, services, slabs, control lines, and measuring: events in, the plan out.
// At the scale of the tests a thing counts as under the pointer within 8 px, some 89 mm; the grid is 50.

import { describe, expect, it } from "vitest";
import { withSettings } from "../../src/editor/state/commands.ts";
import { type EditorState, REACH_PX, unitInHand, unitInView } from "../../src/editor/state/editorState.ts";
import { FIRST_SCALE } from "../../src/editor/state/session.ts";
import type { ToolName } from "../../src/editor/tools/tool.ts";
import { listed } from "../../src/plan/document.ts";
import { unitOf, wallOf } from "../plan/editFixture.ts";
import {
  click,
  doc,
  double,
  drag,
  editorOn,
  ends,
  endsInView,
  figures,
  go,
  play,
  press,
  release,
  type Script,
  selected,
  snapShown,
  steps,
} from "./fixture.ts";

const blank = (tool: ToolName): EditorState => editorOn(unitOf([]), tool);
const walls = (state: EditorState) => listed(unitInHand(state).walls).map(({ from, to }) => [...from, ...to]);

it("a thing is under the pointer within 8 px", () => {
  expect(REACH_PX.mouse / FIRST_SCALE).toBeCloseTo(88.9, 1);
});

describe("walls", () => {
  it.each<{ why: string; script: Script; walls: readonly (readonly number[])[] }>([
    { why: "click to click", script: [...click(0, 0), ...click(3010, 30)], walls: [[0, 0, 3000, 0]] },
    { why: "a drag", script: drag([0, 0], [2990, 120]), walls: [[0, 0, 3000, 0]] },
    {
      why: "a chain",
      script: [...click(0, 0), ...click(3000, 0), ...click(3000, 2000)],
      walls: [
        [0, 0, 3000, 0],
        [3000, 0, 3000, 2000],
      ],
    },
    {
      why: "straight up when the pointer is more up than along",
      script: [...click(0, 0), ...click(400, -900)],
      walls: [[0, 0, 0, -900]],
    },
    {
      why: "any angle with Shift",
      script: [...click(0, 0), ...click(1000, 700, { shift: true })],
      walls: [[0, 0, 1000, 700]],
    },
    {
      why: "off the grid with Alt",
      script: [...click(0, 0), ...click(1013, 4, { alt: true })],
      walls: [[0, 0, 1013, 0]],
    },
    {
      why: "a typed length in the direction of the hand",
      script: [...click(0, 0), go(-200, 30), "2485", "Enter"],
      walls: [[0, 0, -2485, 0]],
    },
    {
      why: "a typed length and angle",
      script: [...click(0, 0), go(900, 0), "1000", "Tab", "90", "Enter"],
      walls: [[0, 0, 0, 1000]],
    },
    {
      why: "a typed length along the hand with Shift",
      script: [...click(0, 0), go(300, 400, { shift: true }), "2000", "Enter"],
      walls: [[0, 0, 1200, 1600]],
    },
    {
      why: "a typed angle with the length of the hand",
      script: [...click(0, 0), go(900, 40), "Tab", "180", ...click(880, 40)],
      walls: [[0, 0, -900, 0]],
    },
    {
      why: "an erased digit",
      script: [...click(0, 0), go(900, 0), "12005", "Backspace", "Enter"],
      walls: [[0, 0, 1200, 0]],
    },
    {
      why: "typed in two chains",
      script: [...click(0, 0), go(900, 0), "2000", "Enter", go(2000, 500), "1000", "Enter"],
      walls: [
        [0, 0, 2000, 0],
        [2000, 0, 2000, 1000],
      ],
    },
    {
      why: "letters are no digits",
      script: [...click(0, 0), go(900, 0), "1x", "500", "Enter"],
      walls: [[0, 0, 500, 0]],
    },
    {
      why: "from an input on the page",
      script: [...click(0, 0), go(900, 0), { kind: "field", text: "1500" }, "Enter"],
      walls: [[0, 0, 1500, 0]],
    },
  ])("$why", ({ script, walls: expected }) => {
    expect(walls(play(blank("wall"), ...script))).toEqual(expected);
  });

  it("a rectangle closes on its first corner and ends the chain", () => {
    const drawn = play(
      blank("wall"),
      ...click(0, 0),
      ...click(4000, 0),
      ...click(4000, 3000),
      ...click(0, 3000),
      ...click(10, 20),
    );
    expect(walls(drawn)).toEqual([
      [0, 0, 4000, 0],
      [4000, 0, 4000, 3000],
      [4000, 3000, 0, 3000],
      [0, 3000, 0, 0],
    ]);
    expect([steps(drawn), play(drawn, go(2000, 900)).session.tool]).toMatchObject([
      4,
      { segment: { kind: "idle" } },
    ]);
  });

  it.each<{ why: string; end: Script }>([
    { why: "Escape", end: ["Escape"] },
    { why: "Enter with nothing typed", end: ["Enter"] },
    { why: "a double click", end: [...click(3000, 0), double(3000, 0)] },
  ])("a chain ends with $why and leaves one wall and no preview", ({ end }) => {
    const drawn = play(blank("wall"), ...click(0, 0), ...click(3000, 0), go(3000, 700), ...end);
    expect(walls(drawn)).toEqual([[0, 0, 3000, 0]]);
    expect([drawn.session.preview, drawn.session.tool]).toMatchObject([null, { first: null }]);
  });

  it("shows the wall, its length and angle while it is drawn, and writes nothing", () => {
    const before = blank("wall");
    const drawing = play(before, ...click(0, 0), go(1010, 40));
    expect(endsInView(drawing, "w1")).toEqual([0, 0, 1000, 0]);
    expect(figures(drawing)).toEqual([
      ["length", 1000, null],
      ["angle", 0, null],
    ]);
    expect(figures(play(drawing, "7"))).toEqual([
      ["length", 7, "7"],
      ["angle", 0, null],
    ]);
    expect(doc(drawing)).toBe(doc(before));
  });

  it("says so when what was typed is no length, and keeps the line", () => {
    const drawing = play(blank("wall"), ...click(0, 0), go(900, 0), "1-2", "Enter");
    expect(drawing.session.message).toMatchObject({ key: "message.not-a-number", values: { text: "1-2" } });
    expect(walls(play(drawing, "Backspace", "Backspace", "Enter"))).toEqual([[0, 0, 1, 0]]);
  });

  it("starts on the wall it snaps to, runs square to it, and ends on the next", () => {
    const plan = unitOf([wallOf("w1", [0, 0], [6000, 0]), wallOf("w2", [0, 4000], [6000, 4000])]);
    const drawn = play(editorOn(plan, "wall"), ...click(2013, 40), go(2070, 3950));
    expect(snapShown(drawn)).toBe("centreline w2");
    expect(ends(play(drawn, ...click(2070, 3950)), "w3")).toEqual([2000, 0, 2000, 4000]);
  });

  it("runs along and square to an oblique wall it starts on", () => {
    const plan = unitOf([wallOf("w1", [0, 0], [4000, 3000])]);
    const drawn = play(editorOn(plan, "wall"), ...click(4000, 3000), go(3400, 3800), "1000", "Enter");
    expect(ends(drawn, "w2")).toEqual([4000, 3000, 3400, 3800]);
  });

  it("uses the thickness at hand", () => {
    const thick = withSettings(blank("wall"), { thickness: 150, justify: "left" });
    const drawn = play(thick, ...drag([0, 0], [2000, 0]));
    expect(unitInHand(drawn).walls.w1).toMatchObject({ thickness: 150, justify: "left" });
  });

  it("selects the wall just drawn", () => {
    expect(selected(play(blank("wall"), ...drag([0, 0], [2000, 0])))).toEqual(["walls w1"]);
  });

  it("a press with a trembling hand is a click, not a wall of 40 mm", () => {
    const state = play(blank("wall"), press(0, 0), go(40, 0), release(40, 0));
    expect([walls(state), state.session.tool]).toMatchObject([[], { segment: { kind: "drawing" } }]);
  });
});

describe("columns", () => {
  it("are short walls about the place clicked", () => {
    expect(ends(play(blank("column"), ...click(1000, 2000)), "w1")).toEqual([850, 2000, 1150, 2000]);
  });

  it("are as wide and deep as typed", () => {
    const placed = play(blank("column"), go(1000, 2000), "400", "Tab", "250", "Enter");
    expect(unitInHand(placed).walls.w1).toMatchObject({
      from: [800, 2000],
      to: [1200, 2000],
      thickness: 250,
    });
  });

  it("go with Escape", () => {
    const state = play(blank("column"), go(1000, 2000), "400", "Escape");
    expect([state.session.preview, figures(play(state, go(0, 0)))]).toEqual([
      null,
      [
        ["width", 300, null],
        ["depth", 300, null],
      ],
    ]);
  });
});

describe("services and slabs", () => {
  it("a service runs from click to click and ends with Enter", () => {
    const drawn = play(blank("service"), ...click(0, 600), ...click(900, 640), ...click(900, 2000), "Enter");
    expect(unitInHand(drawn).services.s1).toMatchObject({
      path: [
        [0, 600],
        [900, 600],
        [900, 2000],
      ],
      clearance: 60,
    });
    expect(steps(drawn)).toBe(1);
  });

  it("takes a point back with Backspace and takes typed lengths", () => {
    const drawn = play(
      blank("service"),
      ...click(0, 0),
      ...click(1000, 0),
      "Backspace",
      go(900, 0),
      "455",
      "Enter",
      "Enter",
    );
    expect(unitInHand(drawn).services.s1?.path).toEqual([
      [0, 0],
      [455, 0],
    ]);
  });

  it("one point alone is no service", () => {
    const drawn = play(blank("service"), ...click(0, 0), "Enter");
    expect([doc(drawn), drawn.session.preview]).toEqual([doc(blank("service")), null]);
  });

  it.each([
    { tool: "slab", bucket: "slabs" },
    { tool: "slab-opening", bucket: "slabOpenings" },
  ] as const)("a $tool closes on its first corner", ({ tool, bucket }) => {
    const id = tool === "slab" ? "b1" : "o1";
    const drawn = play(
      blank(tool),
      ...click(0, 0),
      ...click(3000, 0),
      ...click(3000, 1200),
      ...click(0, 1200),
      ...click(20, 30),
    );
    expect(unitInHand(drawn)[bucket][id]?.outline).toEqual([
      [0, 0],
      [3000, 0],
      [3000, 1200],
      [0, 1200],
    ]);
  });

  it("an outline of two corners says what is missing and goes on", () => {
    const drawn = play(blank("slab"), ...click(0, 0), ...click(3000, 0), "Enter");
    expect(drawn.session.message?.key).toBe("message.too-few-points");
    expect(unitInHand(play(drawn, ...click(3000, 1200), "Enter")).slabs.b1?.outline).toHaveLength(3);
  });

  it("Escape leaves nothing", () => {
    const before = blank("slab");
    const after = play(
      before,
      ...click(0, 0),
      ...click(3000, 0),
      ...click(3000, 900),
      go(100, 900),
      "Escape",
    );
    expect([doc(after), after.session.preview]).toEqual([doc(before), null]);
  });
});

describe("room names", () => {
  it("are typed where they stand", () => {
    const named = play(blank("room"), ...click(1500.4, 1200), "K", "itchen", "Enter");
    expect(unitInHand(named).rooms.r1).toMatchObject({ name: "Kitchen", at: [1500, 1200], kind: null });
  });

  it("are changed by a click on them", () => {
    const plan = unitOf([], { rooms: [{ name: "Bath", at: [1000, 1000], kind: "room", soffitDrop: 50 }] });
    const named = play(editorOn(plan, "room"), ...click(1040, 1000), "Backspace", "Backspace", "r", "Enter");
    expect(unitInHand(named).rooms).toEqual({
      r1: { id: "r1", rank: 0, name: "Bar", at: [1000, 1000], kind: "room", soffitDrop: 50 },
    });
  });

  it("are kept by a click elsewhere, which begins the next", () => {
    const named = play(blank("room"), ...click(0, 0), "Hall", ...click(5000, 0), "Bath", "Enter");
    expect(listed(unitInHand(named).rooms).map(({ name }) => name)).toEqual(["Hall", "Bath"]);
    expect(steps(named)).toBe(2);
  });

  it.each<{ why: string; script: Script }>([
    { why: "Escape", script: ["Hall", "Escape"] },
    { why: "Enter on nothing", script: ["Enter"] },
    { why: "Enter on spaces", script: ["  ", "Enter"] },
  ])("leave nothing after $why", ({ script }) => {
    const before = blank("room");
    const after = play(before, ...click(0, 0), ...script);
    expect([doc(after), after.session.preview]).toEqual([doc(before), null]);
  });
});

describe("control lines and the measure", () => {
  it("a control line is a step", () => {
    const drawn = play(blank("control-line"), ...click(500, 0), ...click(520, 9000));
    expect(unitInHand(drawn).controlLines.X1).toMatchObject({ from: [500, 0], to: [500, 9000] });
  });

  it("the measure shows the distance and its parts and changes nothing", () => {
    const before = blank("measure");
    const measured = play(before, ...click(0, 0), ...click(3000, 4000, { shift: true }));
    expect(figures(measured)).toEqual([
      ["length", 5000, null],
      ["across", 3000, null],
      ["upright", 4000, null],
    ]);
    expect([doc(measured), steps(measured)]).toEqual([doc(before), 0]);
    expect(figures(play(measured, go(100, 100)))).toHaveLength(3);
    expect(play(measured, "Escape").session.preview).toBeNull();
  });
});

it("a preview that cannot be built shows the plan as it stands", () => {
  const broken = play(blank("column"), go(0, 0), "0");
  expect(unitInView(broken).walls).toEqual({});
  expect(play(broken, "Enter").session.message?.key).toBe("refusal.wall-vanishes");
});
