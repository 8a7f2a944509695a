// What the page does to its workbench, by mouse, finger or key alike.

import type { ItemRef, UnitDocument } from "../../plan/document.ts";
import { find, listed } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Position } from "../../plan/project.ts";
import { boxAround, isBoxWithin, placesOf } from "../box.ts";
import type { CommandId } from "../keys.ts";
import { concreteRings } from "../scene/concrete.ts";
import type { PlacedProblem } from "../scene/problemPlaces.ts";
import { fitted, type Insets, type Viewport, visibleBox, zoomedAt } from "../scene/viewport.ts";
import { runCommand } from "../state/commands.ts";
import {
  type EditorState,
  handleEvent,
  showUnit,
  takeStep,
  takeTool,
  unitInHand,
  withSession,
} from "../state/editorState.ts";
import type { View } from "../state/session.ts";
import type { ToolEvent } from "../tools/protocol.ts";
import { say, speechOf, words } from "../words/say.ts";
import { type Screen, withScreen } from "./screen.ts";
import { chooseLanguage } from "./speak.ts";
import { inViewOf, type Workbench } from "./workbench.ts";

/** Kept free round the whole plan: the tools on the left, the list of widths on the right, the overall dimensions. */
const INSETS: Insets = { top: 26, right: 236, bottom: 26, left: 84 };
const NARROW: Insets = { top: 60, right: 26, bottom: 60, left: 84 };
/** The overall dimensions stand off the concrete by so much on two sides, px. */
const OVERALL = 26;
const NARROW_UNDER = 900; // px of drawing
const ZOOM_STEP = 1.25;

export function viewportOf(state: EditorState, { size }: Screen): Viewport {
  return { ...state.session.view, ...size };
}

export function send(bench: Workbench, event: ToolEvent, pointer: "mouse" | "touch" = "mouse"): void {
  bench.editor.set((state) => handleEvent(state, event, pointer));
}

export function changeScreen({ screen }: Workbench, change: Partial<Screen>): void {
  screen.set((now) => withScreen(now, change));
}

export function setView({ editor }: Workbench, view: View | null): void {
  if (view !== null) editor.set((state) => withSession(state, { view }));
}

/** Shows the whole plan. */
export function fitPlan(bench: Workbench): void {
  const state = bench.editor.get();
  const screen = bench.screen.get();
  const inView = inViewOf(bench, state);
  const { unit } = inView;
  const everything = { minX: -1e9, minY: -1e9, maxX: 1e9, maxY: 1e9 };
  const viewport = { ...viewportOf(state, screen) };
  const rings = concreteRings({ ...inView, viewport: viewportOver(viewport, everything) });
  const concrete = rings.flat();
  if (concrete.length === 0) {
    setView(bench, EMPTY_VIEW);
    return;
  }
  const lines = listed(unit.controlLines).flatMap(({ from, to }) => [from, to]);
  const slabs = listed(unit.slabs).flatMap(({ outline }) => outline);
  const insets = screen.size.width < NARROW_UNDER ? NARROW : INSETS;
  const drawn = fitted(boxAround([...concrete, ...slabs]), screen.size, {
    ...insets,
    top: insets.top + OVERALL,
    left: insets.left + OVERALL,
  });
  const all = fitted(boxAround([...concrete, ...slabs, ...lines]), screen.size, insets);
  const view = drawn === null || all === null || drawn.scale < all.scale ? drawn : all;
  setView(bench, view);
  bench.fitted.set(() => view);
}

/** Of a plan with nothing in it yet: room for an apartment, the datum at the lower left. */
const EMPTY_VIEW: View = { centre: [5000, 3500], scale: 0.08 };

/** Whether the view is still that which shows the whole plan: then it follows when the drawing changes its size. */
export function isFitted({ editor, fitted: last }: Workbench): boolean {
  return last.get() === editor.get().session.view;
}

// A viewport in which all of a box is seen, whatever the zoom.
function viewportOver(viewport: Viewport, { maxX }: { readonly maxX: number }): Viewport {
  return { ...viewport, centre: [0, 0], scale: viewport.width / (2 * maxX) };
}

export function zoomBy(bench: Workbench, factor: number): void {
  const viewport = viewportOf(bench.editor.get(), bench.screen.get());
  setView(bench, zoomedAt(viewport, factor, [viewport.width / 2, viewport.height / 2]));
}

/** Brings a place into view, nearer if it is far off, and leaves the view alone where it shows already. */
export function goTo(bench: Workbench, at: Position, least: number): void {
  const { view } = bench.editor.get().session;
  setView(bench, { centre: at, scale: Math.max(view.scale, least) });
}

/** Selects a thing, and brings it into view where it is not. */
export function selectItem(bench: Workbench, item: ItemRef): void {
  bench.editor.set((state) =>
    withSession(state, { selection: { ...state.session.selection, items: [item] } }),
  );
  const state = bench.editor.get();
  const viewport = viewportOf(state, bench.screen.get());
  const box = boxAround(placesOf(unitInHand(state), item));
  if (isBoxWithin(visibleBox(viewport, -20), box)) return;
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  if (Number.isFinite(x)) setView(bench, { ...state.session.view, centre: [x, y] });
}

const PROBLEM_SCALE = 0.16; // px per mm: near enough to see the pieces round a place

/** Goes to a problem and selects what it is about. */
export function goToProblem(bench: Workbench, { number, problem, at }: PlacedProblem): void {
  changeScreen(bench, { problem: number, ...(isOfSoffit(problem) ? { showsSoffit: true } : {}) });
  const state = bench.editor.get();
  const item = itemOf(bench, unitInHand(state), problem.where);
  if (item !== null) {
    bench.editor.set((now) => withSession(now, { selection: { ...now.session.selection, items: [item] } }));
  }
  if (at !== null) goTo(bench, at, PROBLEM_SCALE);
}

/** Problems told of a soffit that stand nowhere on a wall. */
const SOFFIT_PROBLEMS: readonly string[] = [
  "no-exact-cover",
  "special-soffit",
  "connectors-cross",
  "connector-gap",
  "no-retained-support",
  "prop-at-edge",
  "slab-off-wall",
  "slab-opening",
  "slab-over-room",
  "outline-crosses",
];

function isOfSoffit({ kind, where }: PlacedProblem["problem"]): boolean {
  return SOFFIT_PROBLEMS.includes(kind) && where.face === undefined;
}

function itemOf(
  bench: Workbench,
  unit: UnitDocument,
  where: PlacedProblem["problem"]["where"],
): ItemRef | null {
  if (where.opening !== undefined && find(unit.openings, where.opening) !== undefined) {
    return { bucket: "openings", id: where.opening };
  }
  const { live } = inViewOf(bench, bench.editor.get());
  const face = live?.fill.faces.find(({ id }) => id === where.face);
  const wall = where.wall ?? face?.walls[0];
  if (wall !== undefined && find(unit.walls, wall) !== undefined) return { bucket: "walls", id: wall };
  const room = listed(unit.rooms).find(({ name }) => name === where.room);
  if (room !== undefined) return { bucket: "rooms", id: room.id };
  // The soffit of a slab outside the walls goes by the slab's id.
  const slab = where.room === undefined ? undefined : find(unit.slabs, where.room);
  return slab === undefined ? null : { bucket: "slabs", id: slab.id };
}

/** Carries out any command. */
export function run(bench: Workbench, id: CommandId): void {
  const next = runCommand(bench.editor.get(), id);
  if (next !== null) {
    bench.editor.set(() => next);
    return;
  }
  const own = screenCommands(bench, bench.screen.get())[id] ?? bench.calls.get(id);
  own?.();
}

type Calls = { readonly [Id in CommandId]?: () => void };

function screenCommands(bench: Workbench, screen: Screen): Calls {
  const change = (part: Partial<Screen>) => () => changeScreen(bench, part);
  return {
    "command.new-unit": () => beginUnit(bench),
    "command.fit": () => fitPlan(bench),
    "command.zoom-in": () => zoomBy(bench, ZOOM_STEP),
    "command.zoom-out": () => zoomBy(bench, 1 / ZOOM_STEP),
    "command.find": change({ isFinding: !screen.isFinding }),
    "command.elevation": change({ isPaneOpen: !screen.isPaneOpen }),
    "command.problems": change({ panel: screen.panel === "problems" ? null : "problems" }),
    "command.projects": change({ panel: screen.panel === "projects" ? null : "projects" }),
    "command.things": change({ panel: screen.panel === "things" ? null : "things" }),
    "command.sheets": change({ over: screen.over === "sheets" ? null : "sheets" }),
    "command.set": change({ over: screen.over === "set" ? null : "set" }),
    "command.checks": change({ over: screen.over === "checks" ? null : "checks" }),
    "command.kit": change({ isKitOpen: !screen.isKitOpen }),
    "command.underlay": change({ isUnderlayOpen: !screen.isUnderlayOpen }),
    "command.all-widths": change({ allWidths: !screen.allWidths }),
    "command.soffit": () => {
      changeScreen(bench, { showsSoffit: !screen.showsSoffit });
      bench.soffit.set(() => null);
    },
    "command.theme": change({ theme: screen.shownTheme === "light" ? "dark" : "light" }),
    "command.speak-en": () => chooseLanguage(bench, "en"),
    "command.speak-es": () => chooseLanguage(bench, "es"),
    "command.speak-pt": () => chooseLanguage(bench, "pt"),
    "command.next-region": nextRegion,
  };
}

// An empty unit, shown at once with the wall in hand.
function beginUnit({ editor, catalogues }: Workbench): void {
  editor.set((state) => {
    const { language, units } = state.history.doc;
    const name = say(speechOf(language, catalogues.get()), words("unit.new"));
    const edit: Edit = { kind: "add-unit", id: null, name };
    const after = takeStep(state, words("step.new-unit"), [edit], []);
    const made = listed(after.history.doc.units).find(({ id }) => find(units, id) === undefined);
    return made === undefined ? after : takeTool(showUnit(after, made.id), "wall");
  });
}

/** The parts of the window that F6 walks, marked so in the page. */
export const REGION = "data-region";

function nextRegion(): void {
  const regions = [...document.querySelectorAll<HTMLElement>(`[${REGION}]`)].flatMap((region) => {
    const entry = entryOf(region);
    return entry === null ? [] : [{ region, entry }];
  });
  const current = regions.findIndex(({ region }) => region.contains(document.activeElement));
  regions[(current + 1) % regions.length]?.entry.focus();
}

// What takes the focus when a part of the window is entered.
function entryOf(region: HTMLElement): HTMLElement | null {
  if (region.matches("[tabindex]")) return region;
  return region.querySelector<HTMLElement>("button, input, select, [tabindex]");
}
