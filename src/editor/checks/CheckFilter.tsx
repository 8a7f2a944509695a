// What the list shows: the checks of a unit, a room, a kind, a verdict.

import type { CheckStatus } from "../../assess/checkDocument.ts";
import type { CheckedUnit, CheckList } from "./checkList.ts";
import { choicesOf, countsOf, type Filter, filtered, STATUSES } from "./gather.ts";
import { StatusSign } from "./StatusSign.tsx";
import { useCheckWords } from "./useCheckWords.ts";

export interface CheckFilterProps {
  readonly list: CheckList;
  readonly filter: Filter;
  readonly onFilter: (filter: Filter) => void;
}

export function CheckFilter({ list, filter, onFilter }: CheckFilterProps) {
  const { w, kind, figure } = useCheckWords();
  const { rooms, kinds } = choicesOf(list.rows);
  const counts = countsOf(filtered(list.rows, { ...filter, status: null }));
  const toggle = (status: CheckStatus) =>
    onFilter({ ...filter, status: filter.status === status ? null : status });
  return (
    <div className="check-filter">
      <div className="check-asks">
        <Choice
          label={w("unit")}
          all={w("all-units")}
          value={filter.unit}
          options={list.units.map((unit) => [unit.name, unitText(unit, w)])}
          onChoose={(unit) => onFilter({ ...filter, unit })}
        />
        <Choice
          label={w("room")}
          all={w("all-rooms")}
          value={filter.room}
          options={rooms.map((room) => [room, room])}
          onChoose={(room) => onFilter({ ...filter, room })}
        />
        <Choice
          label={w("kind")}
          all={w("all-kinds")}
          value={filter.kind}
          options={kinds.map((each) => [each, kind(each)])}
          onChoose={(each) => onFilter({ ...filter, kind: each })}
        />
      </div>
      <div className="check-totals">
        {STATUSES.map((status) => (
          <button
            key={status}
            type="button"
            className={`check-total ${status}`}
            aria-pressed={filter.status === status}
            title={w("status-filter", { status: w(status) })}
            onClick={() => toggle(status)}
          >
            <StatusSign status={status} />
            <b>{figure(counts[status])}</b> {w(status)}
          </button>
        ))}
      </div>
    </div>
  );
}

/** What an entry is called on the screen. */
export function unitText(
  { label, clearHeight }: CheckedUnit,
  w: ReturnType<typeof useCheckWords>["w"],
): string {
  return clearHeight === null ? label : `${label}, ${w("height", { height: clearHeight })}`;
}

interface ChoiceProps {
  readonly label: string;
  readonly all: string;
  readonly value: string | null;
  readonly options: readonly (readonly [value: string, text: string])[];
  readonly onChoose: (value: string | null) => void;
}

function Choice({ label, all, value, options, onChoose }: ChoiceProps) {
  // The place of an option is its value: names may be anything.
  const at = options.findIndex(([each]) => each === value);
  return (
    <select
      aria-label={label}
      value={at}
      onChange={({ target }) => onChoose(options[Number(target.value)]?.[0] ?? null)}
    >
      <option value={-1}>{all}</option>
      {options.map(([each, text], index) => (
        <option key={each} value={index}>
          {text}
        </option>
      ))}
    </select>
  );
}
