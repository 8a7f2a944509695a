// The rooms, walls and openings of the plan as a list, in step with what is selected: the drawing for those who cannot
// see it, and a quick way to a thing by its name for those who can.

import { useEffect, useRef } from "react";
import { type Bucket, type ItemRef, listed, type UnitDocument } from "../../plan/document.ts";
import { wallLength } from "../../plan/editAxis.ts";
import { selectItem } from "../live/actions.ts";
import { useBench, useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { isAmong } from "../selection.ts";
import type { Hit } from "../snap/hit.ts";
import { withSession } from "../state/editorState.ts";
import { formatArea } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";
import { PanelFrame } from "./PanelFrame.tsx";
import { placeWords } from "./placeWords.ts";

const OTHERS: readonly Bucket[] = ["services", "controlLines", "slabs", "slabOpenings"];

export function ThingsList() {
  const { session } = useEditorState();
  const { unit, live } = useInView();
  const { t, speech } = useSpeech();
  const count = session.selection.items.length;
  const areas = new Map((live?.fill.rooms ?? []).map(({ name, area }) => [name, area]));
  const note = t(count === 0 ? words("place.nothing") : words("place.things", { count }));
  const areaOf = (name: string) => {
    const area = areas.get(name);
    return area === undefined ? "" : formatArea(area, speech.language);
  };
  return (
    <PanelFrame title={t(words("region.things"))} note={note}>
      <Group
        title={words("things.rooms")}
        unit={unit}
        things={listed(unit.rooms).map(({ id, name }) => ({
          item: { bucket: "rooms", id },
          more: areaOf(name),
        }))}
      />
      <Group
        title={words("things.walls")}
        unit={unit}
        things={listed(unit.walls).map((wall) => ({
          item: { bucket: "walls", id: wall.id },
          more: t(words("things.wall", { length: Math.round(wallLength(wall)), thickness: wall.thickness })),
        }))}
      />
      <Group
        title={words("things.openings")}
        unit={unit}
        things={listed(unit.openings).map(({ id, width, wall }) => ({
          item: { bucket: "openings", id },
          more: t(words("things.opening", { width, wall })),
        }))}
      />
      <Group title={words("things.others")} unit={unit} things={othersOf(unit)} />
    </PanelFrame>
  );
}

interface Thing {
  readonly item: ItemRef;
  readonly more: string;
}

function othersOf(unit: UnitDocument): readonly Thing[] {
  return OTHERS.flatMap((bucket) =>
    listed<{ readonly id: string; readonly rank: number }>(unit[bucket]).map(({ id }) => ({
      item: { bucket, id },
      more: "",
    })),
  );
}

function Group({ title, unit, things }: { title: Words; unit: UnitDocument; things: readonly Thing[] }) {
  const { t } = useSpeech();
  if (things.length === 0) return null;
  return (
    <section className="things">
      <h3>{t(title)}</h3>
      <ul>
        {things.map(({ item, more }) => (
          <ThingItem key={item.id} item={item} name={t(placeWords(unit, item))} more={more} />
        ))}
      </ul>
    </section>
  );
}

function ThingItem({ item, name, more }: { item: ItemRef; name: string; more: string }) {
  const bench = useBench();
  const { session } = useEditorState();
  const row = useRef<HTMLButtonElement>(null);
  const hover = (hovered: Hit | null) => bench.editor.set((state) => withSession(state, { hovered }));
  const isSelected = isAmong(session.selection.items, item);
  useEffect(() => {
    if (isSelected) row.current?.scrollIntoView({ block: "nearest" });
  }, [isSelected]);
  return (
    <li>
      <button
        ref={row}
        type="button"
        aria-pressed={isSelected}
        data-thing={`${item.bucket} ${item.id}`}
        onClick={() => selectItem(bench, item)}
        onPointerEnter={() => hover({ kind: "item", item })}
        onPointerLeave={() => hover(null)}
      >
        <b>{name}</b>
        <span>{more}</span>
      </button>
    </li>
  );
}
