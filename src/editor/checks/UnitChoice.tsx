// Which unit a part of the view is about; nothing where there is one alone.

import { unitText } from "./CheckFilter.tsx";
import type { CheckedUnit } from "./checkList.ts";
import { useCheckWords } from "./useCheckWords.ts";

export interface UnitChoiceProps {
  readonly units: readonly CheckedUnit[];
  readonly unit: string;
  readonly onUnit: (unit: string) => void;
}

export function UnitChoice({ units, unit, onUnit }: UnitChoiceProps) {
  const { w } = useCheckWords();
  if (units.length < 2) return null;
  return (
    <select
      className="unit-choice"
      aria-label={w("unit")}
      value={unit}
      onChange={({ target }) => onUnit(target.value)}
    >
      {units.map((each) => (
        <option key={each.name} value={each.name}>
          {unitText(each, w)}
        </option>
      ))}
    </select>
  );
}
