// What a pour adds to the set: a bar beside those of the other pours, pieces and money, and piece by piece when it is opened.

import type { AddedPiece, PourAdds } from "../../fill/optimise/pourAdds.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import { formatNumber } from "../words/numbers.ts";
import { addedSums, type BarScale } from "./pourNames.ts";
import { type SayAmount, useAmounts, useSetWords } from "./useSetWords.ts";

export interface AddsCellProps {
  readonly need: PourAdds | null;
  readonly scale: BarScale;
  readonly isStale: boolean;
  /** Of the pour. */
  readonly title: string;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

export function AddsCell({ need, scale, isStale, title, isOpen, onOpen }: AddsCellProps) {
  const w = useSetWords();
  const amount = useKitAmounts();
  if (need === null) return null;
  const { adds } = need;
  const sums = addedSums(adds);
  const { pieces, small, cost } = sums;
  if (pieces + small === 0)
    return (
      <span className="adds-none" data-stale={isStale}>
        {w("adds-nothing")}
      </span>
    );
  const count = pieces === 0 ? w("adds-small") : `+${w("pieces", { count: pieces })}`;
  return (
    <button
      type="button"
      className="adds"
      data-stale={isStale}
      aria-expanded={isOpen}
      aria-label={`${w("adds-of", { pour: title })}: ${count}, ${amount(cost)}`}
      onClick={onOpen}
    >
      <span className="adds-bar" aria-hidden="true">
        <span className="adds-fill" style={{ width: `${(100 * sums[scale.by]) / scale.greatest}%` }} />
      </span>
      <span className="adds-count">{count}</span>
      <span className="adds-cost">{amount(cost)}</span>
    </button>
  );
}

export function AddedPieces({ adds }: { adds: readonly AddedPiece[] }) {
  const { speech } = useSpeech();
  const amount = useKitAmounts();
  return (
    <ul className="added">
      {adds.map(({ code, count, toBuy, price }) => (
        <li key={code}>
          <b>+{formatNumber(count, speech.language)}</b> <span className="added-code">{code}</span>
          {price === null || toBuy === 0 ? null : <small>{amount(toBuy * price)}</small>}
        </li>
      ))}
    </ul>
  );
}

/** Amounts in the money of the kit's prices. */
export function useKitAmounts(): SayAmount {
  const { doc } = useEditorState().history;
  return useAmounts("price", kitOf(doc)?.currency ?? null);
}
