// The list of commands, the keys that call them, and what those do that need no screen.

import { describe, expect, it } from "vitest";
import {
  COMMANDS,
  type CommandId,
  chordKeys,
  chordOf,
  commandFor,
  type KeyStroke,
  searchCommands,
} from "../../src/editor/keys.ts";
import { isAvailable, runCommand } from "../../src/editor/state/commands.ts";
import { type EditorState, showUnit, unitInHand, withSession } from "../../src/editor/state/editorState.ts";
import { speechOf } from "../../src/editor/words/say.ts";
import { listed } from "../../src/plan/document.ts";
import { documentToUnit } from "../../src/plan/documentProject.ts";
import { twoRooms } from "../plan/editFixture.ts";
import { doc, editorOn, ends, go, play, press, selected, steps } from "./fixture.ts";

const plan = editorOn();
const selecting = (...walls: string[]): EditorState =>
  withSession(plan, { selection: { unit: "A", items: walls.map((id) => ({ bucket: "walls", id })) } });
const run = (state: EditorState, ...ids: CommandId[]): EditorState =>
  ids.reduce((now, id) => runCommand(now, id) ?? now, state);

describe("the list", () => {
  it("has every id and every chord once", () => {
    const ids = COMMANDS.map(({ id }) => id);
    const chords = COMMANDS.flatMap(({ chord }) => (chord === null ? [] : [chord]));
    expect([new Set(ids).size, new Set(chords).size]).toEqual([ids.length, chords.length]);
  });

  // The letters of the design: one letter, one tool.
  it.each([
    "V select",
    "W wall",
    "D door",
    "N window",
    "C column",
    "R room",
    "S service",
    "L control-line",
    "M measure",
  ])("%s", (row) => {
    const [chord = "", tool] = row.split(" ");
    expect(commandFor(chord)?.id).toBe(`tool.${tool}`);
  });
});

describe("keys", () => {
  const stroke = (key: string, more: Partial<KeyStroke> = {}): KeyStroke => ({
    key,
    ctrlKey: false,
    metaKey: false,
    altKey: false,
    shiftKey: false,
    ...more,
  });

  it.each([
    { why: "a letter", stroke: stroke("w"), chord: "W", id: "tool.wall" },
    { why: "with Ctrl", stroke: stroke("z", { ctrlKey: true }), chord: "Ctrl+Z", id: "command.undo" },
    {
      why: "with the command key",
      stroke: stroke("z", { metaKey: true }),
      chord: "Ctrl+Z",
      id: "command.undo",
    },
    {
      why: "with both",
      stroke: stroke("Z", { ctrlKey: true, shiftKey: true }),
      chord: "Ctrl+Shift+Z",
      id: "command.redo",
    },
    {
      why: "another habit for redo",
      stroke: stroke("y", { ctrlKey: true }),
      chord: "Ctrl+Y",
      id: "command.redo",
    },
    { why: "Backspace as Delete", stroke: stroke("Backspace"), chord: "Backspace", id: "command.delete" },
    {
      why: "a sign that needs Shift",
      stroke: stroke("+", { shiftKey: true }),
      chord: "+",
      id: "command.zoom-in",
    },
    { why: "a sign that does not", stroke: stroke("-"), chord: "\u2212", id: "command.zoom-out" },
    { why: "a key with a name", stroke: stroke("F6"), chord: "F6", id: "command.next-region" },
    { why: "no command", stroke: stroke("y"), chord: "Y", id: undefined },
  ])("$why", ({ stroke: pressed, chord, id }) => {
    expect([chordOf(pressed), commandFor(chord)?.id]).toEqual([chord, id]);
  });

  it("are printed one by one", () => {
    expect([chordKeys("Ctrl+Shift+Z"), chordKeys("+")]).toEqual([["Ctrl", "Shift", "Z"], ["+"]]);
  });
});

describe("search", () => {
  const found = (text: string) => searchCommands(text, speechOf("en", {})).map(({ id }) => id);

  it("finds every command for nothing typed", () => {
    expect(found("  ")).toHaveLength(COMMANDS.length);
  });

  it.each([
    { text: "undo", first: "command.undo" },
    { text: "WALL", first: "tool.wall" },
    { text: "unit mirr", first: "command.duplicate-mirrored" },
    { text: "left", first: "command.turn-left" },
  ])("$text", ({ text, first }) => {
    expect(found(text)[0]).toBe(first);
  });

  it("finds nothing for what is not there", () => {
    expect(found("zebra")).toEqual([]);
  });
});

describe("availability", () => {
  const can = (id: CommandId, state: EditorState, isFaceShown = false) =>
    COMMANDS.some((command) => command.id === id && isAvailable(command, state, isFaceShown));

  it.each<{ id: CommandId; no: EditorState; yes: EditorState }>([
    { id: "command.undo", no: plan, yes: run(selecting("w1"), "command.delete") },
    { id: "command.redo", no: plan, yes: run(selecting("w1"), "command.delete", "command.undo") },
    { id: "command.delete", no: plan, yes: selecting("w1") },
    { id: "command.fit", no: selecting("w1"), yes: plan },
    { id: "command.split", no: selecting("w1", "w2"), yes: selecting("w1") },
    { id: "command.join", no: plan, yes: selecting("w1", "w2") },
    { id: "command.paste", no: plan, yes: run(selecting("w1"), "command.copy") },
  ])("$id", ({ id, no, yes }) => {
    expect([can(id, no), can(id, yes)]).toEqual([false, true]);
  });

  it("the hand on a face needs a face", () => {
    expect([can("command.pin", plan), can("command.pin", plan, true)]).toEqual([false, true]);
  });
});

describe("commands", () => {
  it("delete takes the selection in one step that undo brings back", () => {
    const after = run(selecting("w1", "w5"), "command.delete");
    expect([ends(after, "w1"), steps(after), selected(after)]).toEqual([null, 1, []]);
    const back = run(after, "command.undo");
    expect([documentToUnit(unitInHand(back)), selected(back)]).toEqual([
      twoRooms(),
      ["walls w1", "walls w5"],
    ]);
  });

  it("paste beside in the same unit, in place in another", () => {
    const copied = run(selecting("w6"), "command.copy");
    expect(ends(run(copied, "command.paste"), "w7")).toEqual([4100, 1500, 7700, 1500]);
    const there = run(run(copied, "command.duplicate-unit"), "command.paste");
    expect([there.session.selection.unit, ends(there, "w7")]).toEqual(["U1", [3600, 2000, 7200, 2000]]);
  });

  it("cut and paste gives the wall and its window back under new names", () => {
    const after = run(selecting("w6"), "command.cut", "command.paste");
    expect([selected(after), steps(after)]).toEqual([["walls w6", "openings d3"], 2]);
  });

  it("paste of nothing says so", () => {
    expect(run(plan, "command.paste").session.message?.key).toBe("message.nothing-to-paste");
  });

  it("turn about the middle, four times the identity", () => {
    // w6 from 3600 to 7200 at 2000 turns about (5400, 2000).
    const once = run(selecting("w6"), "command.turn-left");
    expect(ends(once, "w6")).toEqual([5400, 200, 5400, 3800]);
    expect(ends(run(selecting("w6"), "command.turn-right"), "w6")).toEqual([5400, 3800, 5400, 200]);
    const four = run(once, "command.turn-left", "command.turn-left", "command.turn-left");
    expect(doc(four)).toEqual(doc(plan));
  });

  it("mirror in the middle, twice the identity", () => {
    const once = run(selecting("w5", "w6"), "command.mirror-across");
    expect([ends(once, "w5"), ends(once, "w6")]).toEqual([
      [7200, 0, 7200, 4200],
      [7200, 2000, 3600, 2000],
    ]);
    expect(doc(run(once, "command.mirror-across"))).toEqual(doc(plan));
  });

  it("split in the middle and join again is the identity", () => {
    const cut = run(selecting("w1"), "command.split");
    expect([ends(cut, "w1"), ends(cut, "w7")]).toEqual([
      [0, 0, 3600, 0],
      [3600, 0, 7200, 0],
    ]);
    const both = withSession(cut, {
      selection: {
        unit: "A",
        items: [
          { bucket: "walls", id: "w1" },
          { bucket: "walls", id: "w7" },
        ],
      },
    });
    const joined = run(both, "command.join");
    expect([doc(joined), selected(joined)]).toEqual([doc(plan), ["walls w1"]]);
  });

  // Wall 1 runs from (0, 0) to (7200, 0): its left is up the plan.
  it.each([
    { id: "command.offset-left", y: 1000 },
    { id: "command.offset-right", y: -1000 },
  ] as const)("draw a parallel wall and select it: $id", ({ id, y }) => {
    const after = run(selecting("w1"), id);
    expect([ends(after, "w1"), ends(after, "w7")]).toEqual([
      [0, 0, 7200, 0],
      [0, y, 7200, y],
    ]);
    expect(selected(after)).toEqual(["walls w7"]);
  });

  it("say why they cannot be done", () => {
    expect(run(selecting("w1", "w2"), "command.join").session.message?.key).toBe("refusal.not-in-line");
  });

  it("duplicate a unit mirrored and show it", () => {
    const after = run(plan, "command.duplicate-mirrored");
    expect([listed(doc(after).units).map(({ id }) => id), after.session.selection]).toEqual([
      ["A", "U1"],
      { unit: "U1", items: [] },
    ]);
    expect(ends(after, "w6")).toEqual([3600, 2000, 0, 2000]);
    expect(run(after, "command.undo").session.selection.unit).toBe("A");
  });

  it("select all takes everything", () => {
    // Six walls, three openings, two labels, a slab, a service and a control line; the pin goes with its wall.
    expect(selected(run(plan, "command.select-all"))).toHaveLength(14);
  });

  it("toggle what they say", () => {
    const off = run(plan, "command.toggle-ortho", "command.toggle-snap").session.settings;
    expect([off.ortho, off.snapping]).toEqual([false, false]);
  });

  it("take a tool and lay the old one down with nothing behind it", () => {
    const drawing = play(editorOn(twoRooms(), "wall"), press(0, 6000), go(900, 6000));
    const after = run(drawing, "tool.room");
    expect([after.session.tool.name, after.session.preview, doc(after)]).toEqual(["room", null, doc(plan)]);
  });

  it("leave to the screen what is the screen's", () => {
    expect(runCommand(plan, "command.fit")).toBeNull();
  });
});

describe("units on the screen", () => {
  it("change without a step, and only to one that is there", () => {
    const two = run(plan, "command.duplicate-unit");
    expect(showUnit(two, "A").session.selection).toEqual({ unit: "A", items: [] });
    expect(showUnit(two, "Z")).toBe(two);
  });

  it("undo of a step in another unit shows that unit", () => {
    const two = run(selecting("w1"), "command.delete", "command.duplicate-unit");
    const edited = run(
      withSession(two, { selection: { unit: "U1", items: [{ bucket: "walls", id: "w2" }] } }),
      "command.delete",
    );
    expect(run(showUnit(edited, "A"), "command.undo").session.selection).toMatchObject({ unit: "U1" });
  });
});
