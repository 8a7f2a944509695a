// Doors and windows on the walls of the two-room plan. Grid 50; the faces of joining walls stand 50 off their lines.

import { describe, expect, it } from "vitest";
import { withSettings } from "../../src/editor/state/commands.ts";
import { type EditorState, unitInHand, unitInView } from "../../src/editor/state/editorState.ts";
import { find } from "../../src/plan/document.ts";
import { unitOf, wallOf } from "../plan/editFixture.ts";
import {
  click,
  doc,
  drag,
  editorOn,
  figures,
  go,
  play,
  press,
  release,
  type Script,
  selected,
  steps,
} from "./fixture.ts";

const door = editorOn(undefined, "door");
const made = (state: EditorState) => {
  const opening = find(unitInHand(state).openings, "d4");
  return opening === undefined ? null : [opening.wall, opening.at, opening.width];
};

describe("dropping", () => {
  it.each<{ why: string; script: Script; opening: readonly (string | number)[] | null }>([
    // Right of w5's face at 3650: the pointer at 5020 asks for 4570, 920 from the face, on the grid 900.
    {
      why: "a click, by steps from the neighbour on the left",
      script: click(5020, 30),
      opening: ["w1", 4550, 900],
    },
    {
      why: "dragged along its wall, the hand far off it",
      script: drag([5020, 30], [6010, 1500]),
      opening: ["w1", 5550, 900],
    },
    // The stretch from 3650 to 7150 leaves 2600 beside the door: its middle begins at 4950.
    { why: "in the middle when near", script: click(5440, 0), opening: ["w1", 4950, 900] },
    { why: "anywhere with Alt", script: click(5023, 0, { alt: true }), opening: ["w1", 4573, 900] },
    { why: "no nearer to a corner than its face", script: click(7190, 0), opening: ["w1", 6250, 900] },
    { why: "typed from the left", script: [go(5020, 0), "620", "Enter"], opening: ["w1", 4270, 900] },
    { why: "typed from the right", script: [go(5020, 0), "Tab", "620", "Enter"], opening: ["w1", 5630, 900] },
    { why: "typed width", script: [go(5020, 0), "Tab", "Tab", "800", "Enter"], opening: ["w1", 4600, 800] },
    {
      why: "typed width, then dropped by hand",
      script: [go(5020, 0), "Tab", "Tab", "800", ...click(4560, 0)],
      opening: ["w1", 4150, 800],
    },
    { why: "off every wall nothing", script: click(2000, 1000), opening: null },
    {
      why: "Escape while dragging",
      script: [press(5020, 0), go(5400, 0), "Escape", release(5400, 0)],
      opening: null,
    },
  ])("$why", ({ script, opening }) => {
    const after = play(door, ...script);
    expect(made(after)).toEqual(opening);
    expect([steps(after), after.session.preview]).toEqual([opening === null ? 0 : 1, null]);
  });

  it("shows the opening and its distances to both neighbours before anything is written", () => {
    const hovering = play(door, go(5020, 30));
    expect(figures(hovering)).toEqual([
      ["left", 900, null],
      ["right", 1700, null],
      ["width", 900, null],
    ]);
    expect([find(unitInView(hovering).openings, "d4")?.at, doc(hovering)]).toEqual([4550, doc(door)]);
  });

  it("leaves nothing in view when the pointer leaves the wall", () => {
    expect(play(door, go(5020, 30), go(5020, 900)).session.preview).toBeNull();
  });

  it("says that it needs a wall", () => {
    expect(play(door, ...click(2000, 1000)).session.message?.key).toBe("message.no-wall");
  });

  it("says so when it is wider than the wall", () => {
    const short = editorOn(unitOf([wallOf("w1", [0, 0], [700, 0])]), "door");
    expect(play(short, ...click(350, 0)).session.message?.key).toBe("refusal.opening-too-wide");
  });

  it("selects what was dropped and stays at hand for the next", () => {
    const two = play(door, ...click(5020, 0), ...click(1600, 4200));
    expect([selected(two), steps(two), two.session.tool.name]).toEqual([["openings d5"], 2, "door"]);
  });
});

it("a window has its sill and head and is formed as its size asks", () => {
  const small = withSettings(editorOn(undefined, "window"), {
    window: { width: 600, sill: 1500, head: 2100 },
  });
  const after = play(small, ...click(5020, 0));
  expect(find(unitInHand(after).openings, "d4")).toMatchObject({ sill: 1500, head: 2100, formed: "box" });
});
