// What the list shows: all sheets, those of a kind, those of a room; and one box that ticks all it shows.

import type { Ticked } from "./choice.ts";
import { type Filter, filterChoices, type SheetList } from "./sheetList.ts";
import { TickBox } from "./TickBox.tsx";
import { useSheetWords } from "./useSheetWords.ts";

export interface SheetFilterProps {
  readonly list: SheetList;
  readonly filter: Filter;
  readonly ticked: Ticked;
  readonly chosen: number;
  readonly all: number;
  readonly onFilter: (filter: Filter) => void;
  readonly onToggle: () => void;
}

export function SheetFilter({ list, filter, ticked, chosen, all, onFilter, onToggle }: SheetFilterProps) {
  const w = useSheetWords();
  const { kinds, rooms } = filterChoices(list);
  return (
    <div className="sheet-filter">
      <div className="sheet-asks">
        <select
          aria-label={w("kind")}
          value={filter.kind ?? ""}
          onChange={({ target }) =>
            onFilter({ ...filter, kind: kinds.find((kind) => kind === target.value) ?? null })
          }
        >
          <option value="">{w("all-kinds")}</option>
          {kinds.map((kind) => (
            <option key={kind} value={kind}>
              {w(`kind.${kind}`)}
            </option>
          ))}
        </select>
        <select
          aria-label={w("room")}
          value={filter.room ?? ""}
          onChange={({ target }) => onFilter({ ...filter, room: target.value === "" ? null : target.value })}
        >
          <option value="">{w("all-rooms")}</option>
          {rooms.map((room) => (
            <option key={room}>{room}</option>
          ))}
        </select>
      </div>
      <label className="sheet-all">
        <input
          type="checkbox"
          className="hidden"
          checked={ticked === "all"}
          ref={(box) => {
            if (box !== null) box.indeterminate = ticked === "some";
          }}
          onChange={onToggle}
        />
        <TickBox ticked={ticked} />
        <span>{w("tick-all")}</span>
        <small className="sheet-count">{w("chosen", { count: chosen, all })}</small>
      </label>
    </div>
  );
}
