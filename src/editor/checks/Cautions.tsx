// What stands with every result, always in view: the first caution whole, the others under it, and what the checks take
// for granted.

import { useId, useState } from "react";
import type { CheckList } from "./checkList.ts";
import { useCheckWords } from "./useCheckWords.ts";

export function Cautions({ list }: { list: CheckList }) {
  const { w, told } = useCheckWords();
  const id = useId();
  const [isLarge, setLarge] = useState(false);
  const { cautions, assumptions } = list.document;
  return (
    <footer className="check-cautions" data-large={isLarge}>
      <button
        type="button"
        className="caution-head"
        aria-expanded={isLarge}
        aria-controls={id}
        onClick={() => setLarge(!isLarge)}
      >
        <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true" className="icon">
          <path d={isLarge ? "M2.5 4.2L6 7.8l3.5-3.6" : "M2.5 7.8L6 4.2l3.5 3.6"} />
        </svg>
        {w("cautions", { count: cautions.length })}
      </button>
      <section
        id={id}
        className="caution-texts"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls can be scrolled by keys
        tabIndex={0}
        aria-label={w("cautions", { count: cautions.length })}
      >
        <ol>
          {cautions.map((caution) => (
            <li key={caution}>{told(caution)}</li>
          ))}
        </ol>
        {isLarge ? (
          <>
            <h3>{w("assumptions")}</h3>
            <ul>
              {assumptions.map((sentence) => (
                <li key={sentence}>{told(sentence)}</li>
              ))}
            </ul>
          </>
        ) : null}
      </section>
    </footer>
  );
}
