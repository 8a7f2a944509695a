// What the tool in hand draws with, beside the rail; with a thing selected, its lengths that the plan cannot show.

import type { ReactNode } from "react";
import type { ItemRef, UnitDocument } from "../../plan/document.ts";
import type { Justify } from "../../plan/project.ts";
import { liveDimensions } from "../dimensions.ts";
import { REGION } from "../live/actions.ts";
import { useBench, useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import type { LiveDimension } from "../liveDimension.ts";
import { RoomFields } from "../soffit/RoomFields.tsx";
import { withSettings } from "../state/commands.ts";
import { takeStep, unitInHand } from "../state/editorState.ts";
import type { DrawSettings } from "../tools/protocol.ts";
import { words } from "../words/say.ts";
import { NumberField } from "./NumberField.tsx";
import { placeWords } from "./placeWords.ts";

export function ToolOptions() {
  const { session } = useEditorState();
  const { t } = useSpeech();
  const { unit } = useInView();
  const { name } = session.tool;
  const isBare =
    name === "room" ||
    (name === "select" &&
      hiddenDimensions(unit, session.selection.items).length === 0 &&
      roomOf(session.selection.items) === null);
  if (isBare) return null;
  return (
    <fieldset className="options" {...{ [REGION]: "options" }}>
      <legend className="hidden">{t(words("region.options"))}</legend>
      {optionsFor(name)}
    </fieldset>
  );
}

function optionsFor(name: string): ReactNode {
  switch (name) {
    case "select":
      return <SelectedFields />;
    case "wall":
      return (
        <>
          <SettingField name="thickness" label="option.thickness" least={1} />
          <JustifyChoice />
          <Guides />
        </>
      );
    case "door":
      return <OpeningFields name="door" />;
    case "window":
      return <OpeningFields name="window" />;
    case "column":
      return (
        <>
          <ColumnFields />
          <Guides />
        </>
      );
    case "service":
      return (
        <>
          <SettingField name="clearance" label="option.clearance" least={0} />
          <Guides />
        </>
      );
    default:
      return <Guides />;
  }
}

function useSettings(): readonly [DrawSettings, (change: Partial<DrawSettings>) => void] {
  const bench = useBench();
  const { session } = useEditorState();
  return [session.settings, (change) => bench.editor.set((state) => withSettings(state, change))];
}

function SettingField({
  name,
  label,
  least,
}: {
  name: "thickness" | "clearance";
  label: "option.thickness" | "option.clearance";
  least: number;
}) {
  const [settings, change] = useSettings();
  const { t } = useSpeech();
  return (
    <NumberField
      label={t(words(label))}
      value={settings[name]}
      least={least}
      onKeep={(value) => change({ [name]: value })}
    />
  );
}

const JUSTIFIES: readonly Justify[] = ["left", "centre", "right"];

function JustifyChoice() {
  const [settings, change] = useSettings();
  const { t } = useSpeech();
  return (
    <label className="option">
      {t(words("option.justify"))}
      <select
        value={settings.justify}
        onChange={(event) => {
          const justify = JUSTIFIES.find((name) => name === event.target.value);
          if (justify !== undefined) change({ justify });
        }}
      >
        {JUSTIFIES.map((name) => (
          <option key={name} value={name}>
            {t(words(`option.justify-${name}`))}
          </option>
        ))}
      </select>
    </label>
  );
}

function Guides() {
  const [settings, change] = useSettings();
  const { t } = useSpeech();
  const toggle = (name: "ortho" | "snapping", label: "option.ortho" | "option.snap") => (
    <button
      type="button"
      className="toggle"
      aria-pressed={settings[name]}
      onClick={() => change({ [name]: !settings[name] })}
    >
      {t(words(label))}
    </button>
  );
  return (
    <>
      {toggle("ortho", "option.ortho")}
      {toggle("snapping", "option.snap")}
      <NumberField
        label={t(words("option.grid"))}
        value={settings.grid}
        onKeep={(grid) => change({ grid })}
      />
    </>
  );
}

const SIZES = ["width", "sill", "head"] as const;

function OpeningFields({ name }: { name: "door" | "window" }) {
  const [settings, change] = useSettings();
  const { t } = useSpeech();
  const size = settings[name];
  return SIZES.map((side) => (
    <NumberField
      key={side}
      label={t(words(`option.${side}`))}
      value={size[side]}
      onKeep={(value) => change({ [name]: { ...size, [side]: value } })}
    />
  ));
}

function ColumnFields() {
  const [{ column }, change] = useSettings();
  const { t } = useSpeech();
  return (["width", "depth"] as const).map((side) => (
    <NumberField
      key={side}
      label={t(words(`option.${side}`))}
      value={column[side]}
      least={1}
      onKeep={(value) => change({ column: { ...column, [side]: value } })}
    />
  ));
}

// Those lengths of a single thing that have no line in the plan.
function hiddenDimensions(unit: UnitDocument, items: readonly ItemRef[]): readonly LiveDimension[] {
  return items.length === 1 ? liveDimensions(unit, items).filter(({ line }) => line === null) : [];
}

// The one thing selected, where that is a room.
function roomOf(items: readonly ItemRef[]): string | null {
  const [only] = items;
  return items.length === 1 && only?.bucket === "rooms" ? only.id : null;
}

function SelectedFields() {
  const bench = useBench();
  const { session } = useEditorState();
  const { unit } = useInView();
  const { t } = useSpeech();
  const { items } = session.selection;
  const [only] = items;
  const hidden = hiddenDimensions(unit, items);
  if (only === undefined) return null;
  const room = roomOf(items);
  return (
    <>
      <b className="option-title">{t(placeWords(unit, only))}</b>
      {room === null ? null : <RoomFields key={room} id={room} />}
      {hidden.map(({ key, name, value }) => (
        <NumberField
          key={`${only.id} ${key}`}
          label={t({ key: name, values: {} })}
          value={value}
          onKeep={(typed) =>
            bench.editor.set((state) => {
              // Worked out afresh: a gesture may have changed the plan since.
              const found = liveDimensions(unitInHand(state), items).find((each) => each.key === key);
              if (found === undefined) return state;
              return takeStep(state, words("step.resize"), [found.edit(typed)], items);
            })
          }
        />
      ))}
    </>
  );
}
