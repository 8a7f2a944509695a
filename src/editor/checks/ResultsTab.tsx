// The checks themselves: the list, worst first, and beside it the check in hand with all that went into it.

import { useRef } from "react";
import { CheckCard } from "./CheckCard.tsx";
import { CheckFilter } from "./CheckFilter.tsx";
import { CheckTree } from "./CheckTree.tsx";
import type { CheckDetail, CheckList } from "./checkList.ts";
import { type Checks, useDetail } from "./useChecks.ts";
import { useCheckWords } from "./useCheckWords.ts";
import type { Listed } from "./useListed.ts";

export interface ResultsTabProps {
  readonly checks: Checks;
  readonly list: CheckList;
  readonly listed: Listed;
  readonly onShow: (detail: CheckDetail) => void;
}

const NO_ROWS: CheckList["rows"] = [];

export function ResultsTab({ checks, list, listed, onShow }: ResultsTabProps) {
  const { w } = useCheckWords();
  const { lines, line, filter } = listed;
  const looked = useDetail(checks, line?.rows ?? NO_ROWS);
  const card = useRef<HTMLElement>(null);
  return (
    <div className="check-results">
      <div className="check-side">
        <CheckFilter list={list} filter={filter} onFilter={listed.setFilter} />
        {lines.length === 0 ? <p className="check-none">{w("none-listed")}</p> : null}
        <CheckTree
          lines={lines}
          units={list.units}
          line={line?.id ?? ""}
          onTake={listed.take}
          onToggle={listed.toggle}
          onEnter={() => card.current?.focus()}
        />
      </div>
      <section className="check-main" tabIndex={-1} ref={card} aria-label={w("inputs")}>
        {looked === null || line === null ? (
          <p className="check-none">{w("choose-one")}</p>
        ) : (
          <CheckCard {...looked} onShow={onShow} />
        )}
      </section>
    </div>
  );
}
