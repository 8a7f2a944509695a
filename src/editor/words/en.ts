// Every word the page shows, in English. Other languages give the same keys; `say.ts` puts values into the braces.
//
// A phrase is a text, or one text for a count of one and another for every other count. Sentence case; a message says
// what is wrong and what would mend it.

import { engineerEnglish } from "./enEngineer.ts";
import { screenEnglish } from "./enScreen.ts";
import { soffitEnglish } from "./enSoffit.ts";
import { storageEnglish } from "./enStorage.ts";

/** A text, or a pair chosen by the value `count`. */
export type Phrase = string | { readonly one: string; readonly other: string };

export const english = {
  ...engineerEnglish,
  ...screenEnglish,
  ...soffitEnglish,
  ...storageEnglish,

  "tool.select": "Select",
  "tool.wall": "Wall",
  "tool.door": "Door",
  "tool.window": "Window",
  "tool.column": "Column",
  "tool.room": "Room name",
  "tool.service": "Service",
  "tool.control-line": "Control line",
  "tool.measure": "Measure",
  "tool.slab": "Balcony slab",
  "tool.slab-opening": "Slab opening",

  "command.undo": "Undo",
  "command.redo": "Redo",
  "command.delete": "Delete",
  "command.select-all": "Select all",
  "command.copy": "Copy",
  "command.cut": "Cut",
  "command.paste": "Paste",
  "command.turn-left": "Turn a quarter left",
  "command.turn-right": "Turn a quarter right",
  "command.mirror-across": "Mirror left for right",
  "command.mirror-upright": "Mirror top for bottom",
  "command.split": "Split the wall in the middle",
  "command.join": "Join walls in line",
  "command.flip": "Draw the wall from its other end",
  "command.offset-left": "Draw a parallel wall to the left",
  "command.offset-right": "Draw a parallel wall to the right",
  "command.duplicate-unit": "Duplicate the unit",
  "command.duplicate-mirrored": "Duplicate the unit mirrored",
  "command.toggle-ortho": "Straight lines only",
  "command.toggle-snap": "Snapping",
  "command.find": "Find a command",
  "command.fit": "Show the whole plan",
  "command.zoom-in": "Zoom in",
  "command.zoom-out": "Zoom out",
  "command.next-region": "Next part of the window",
  "command.other-face": "Other face of the wall",
  "command.elevation": "Open or close the elevation",
  "command.pin": "Pin the pieces",
  "command.swap": "Swap with the next piece",
  "command.covers": "Other covers",
  "command.nudge": "Try a nudge",
  "command.problems": "Open or close the problems",
  "command.underlay": "Underlay",
  "command.save-file": "Save as a file",
  "command.open-file": "Open a file",

  "step.add-wall": "draw a wall",
  "step.add-column": "place a column",
  "step.add-opening": "place an opening",
  "step.add-room": "name a room",
  "step.add-service": "draw a service",
  "step.add-control-line": "draw a control line",
  "step.add-slab": "draw a slab",
  "step.move": { one: "move one thing", other: "move {count} things" },
  "step.copy": { one: "copy one thing", other: "copy {count} things" },
  "step.move-joint": "move a joint",
  "step.resize": "type a dimension",
  "step.delete": { one: "delete one thing", other: "delete {count} things" },
  "step.paste": { one: "paste one thing", other: "paste {count} things" },
  "step.turn": "turn",
  "step.mirror": "mirror",
  "step.split": "split a wall",
  "step.join": "join walls",
  "step.flip": "redraw a wall from its other end",
  "step.offset": "draw a parallel wall",
  "step.duplicate-unit": "duplicate a unit",
  "step.undo": "Undo: {step}",
  "step.redo": "Redo: {step}",

  "snap.end": "End of wall {wall}",
  "snap.centreline": "On the centreline of wall {wall}",
  "snap.perpendicular": "Square to wall {wall}",
  "snap.extension": "In line with wall {wall}",
  "snap.alignment": "Level with the end of wall {wall}",
  "snap.grid": "On the {step} mm grid",
  "snap.middle": "In the middle",
  "snap.free": "hold Alt to move freely",

  "dimension.length": "Length",
  "dimension.angle": "Angle",
  "dimension.clear": "Clear width",
  "dimension.thickness": "Thickness",
  "dimension.left": "To the left",
  "dimension.right": "To the right",
  "dimension.width": "Width",
  "dimension.depth": "Depth",
  "dimension.sill": "Sill",
  "dimension.head": "Head",
  "dimension.clearance": "Clearance",
  "dimension.position": "Distance from the datum",
  "dimension.across": "East to west",
  "dimension.upright": "North to south",
  "dimension.was": "was {value}",

  "hint.empty": "Click to start a wall, or drop a picture or PDF",
  "hint.first": "Drag a wall.",
  "hint.keep": "Enter keeps, Esc goes back",

  "message.nothing-to-undo": "Nothing to undo.",
  "message.nothing-to-redo": "Nothing to redo.",
  "message.not-a-number": "“{text}” is not a length. Type millimetres, for instance 2400.",
  "message.no-wall": "An opening needs a wall. Put it on one.",
  "message.too-few-points": "An outline needs three corners. Add one or press Esc.",
  "message.copied": { one: "One thing copied.", other: "{count} things copied." },
  "message.nothing-to-paste": "Nothing has been copied yet.",

  "refusal.no-such-unit": "The unit “{item}” is not there any more.",
  "refusal.no-such-item": "“{item}” is not there any more.",
  "refusal.id-in-use": "Another unit is named “{item}” already. Choose another name.",
  "refusal.wall-vanishes": "Wall {item} would have no length left. Move it less far, or delete it.",
  "refusal.opening-in-the-way": "Opening {item} lies across the cut. Cut beside it, or move it first.",
  "refusal.opening-too-wide": "Opening {item} is wider than its wall. Make it narrower, or the wall longer.",
  "refusal.bad-size":
    "This size cannot be built. Type one greater than nothing, with the head above the sill.",
  "refusal.not-in-line": "These walls do not meet in one line with equal bodies, so they cannot be joined.",
  "refusal.not-parallel": "The walls are not parallel, so there is no clear width to set between them.",
  "refusal.offset-too-far": "At this distance the copy of wall {item} would turn inside out. Take less.",
  "refusal.not-a-turn": "This is no angle to turn by.",
  "refusal.no-wall-here": "There is no wall here that could take it. Put it nearer to one.",
  "refusal.last-unit": "A project keeps at least one unit.",
  "refusal.out-of-limits":
    "{item} would be larger, smaller or farther off than a project can hold. Take other figures.",
} as const satisfies { readonly [key: string]: Phrase };

export type WordKey = keyof typeof english;

/** What another language gives for a part of the English words: every key of it, and no other. */
export type Translated<Part> = { readonly [Key in keyof Part]: Phrase };

/** All words in one language. */
export type Catalogue = Translated<typeof english>;
