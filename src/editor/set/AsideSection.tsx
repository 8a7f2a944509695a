// What is worked out beside the search, as it stands in the view: its head with the one button, how far it is, what went
// wrong, whether what was found is of an earlier state.

import type { ReactNode } from "react";
import type { Aside } from "./aside.ts";
import { useSetWords } from "./useSetWords.ts";

interface AsideSectionProps {
  readonly className: string;
  readonly title: string;
  /** On the button: to begin, and to begin again. */
  readonly ask: readonly [first: string, again: string];
  /** What it is for, where nothing was found yet. */
  readonly why: string;
  /** How far it is, while it works. */
  readonly told: string;
  readonly aside: Pick<Aside<unknown, unknown, unknown>, "isWorking" | "found" | "failure">;
  readonly isOld: boolean;
  readonly onBegin: () => void;
  readonly onCancel: () => void;
  /** What was found. */
  readonly children: ReactNode;
}

export function AsideSection(props: AsideSectionProps) {
  const { className, title, ask, why, told, aside, isOld, onBegin, onCancel, children } = props;
  const w = useSetWords();
  const { isWorking, found, failure } = aside;
  return (
    <section className={className} aria-label={title}>
      <header className="set-head">
        <h3>{title}</h3>
        <p className="set-counting" role="status">
          {isWorking ? told : ""}
        </p>
        <button type="button" className="act pieces-shown" onClick={isWorking ? onCancel : onBegin}>
          {isWorking ? w("cancel") : ask[found === null ? 0 : 1]}
        </button>
      </header>
      {failure === null ? null : (
        <p className="set-fault" role="alert">
          {w("solve-broken", { reason: failure })}
        </p>
      )}
      {found === null ? <p className="set-why">{why}</p> : null}
      {isOld ? (
        <p className="set-old" role="note">
          <b>{w("old")}</b> {w("old-why")}
        </p>
      ) : null}
      {children}
    </section>
  );
}
