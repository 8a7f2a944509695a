// The list of checks: kinds, walls and rooms, checks. One line takes the focus; the arrows walk, open and close.

import { type KeyboardEvent, type MouseEvent, useEffect, useRef } from "react";
import type { CheckedUnit } from "./checkList.ts";
import { shareText, valueText } from "./figureText.ts";
import { countsOf, type Line, opens, STATUSES, walked } from "./gather.ts";
import { lineText } from "./lineText.ts";
import { StatusSign } from "./StatusSign.tsx";
import { UtilisationBar } from "./UtilisationBar.tsx";
import { type CheckSpeech, useCheckWords } from "./useCheckWords.ts";
import { useWindow } from "./useWindow.ts";

export interface CheckTreeProps {
  readonly lines: readonly Line[];
  readonly units: readonly CheckedUnit[];
  /** Id of the line in hand. */
  readonly line: string;
  readonly onTake: (line: Line) => void;
  readonly onToggle: (line: Line) => void;
  readonly onEnter: () => void;
}

const HEIGHT = matchMedia("(pointer: coarse)").matches ? 52 : 44; // px, as the style has it

export function CheckTree({ lines, units, line, onTake, onToggle, onEnter }: CheckTreeProps) {
  const speech = useCheckWords();
  const tree = useRef<HTMLDivElement>(null);
  const { from, to } = useWindow(tree, lines.length, HEIGHT);
  const at = Math.max(
    0,
    lines.findIndex(({ id }) => id === line),
  );
  const inHand = lines[at]?.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: goes with the line in hand alone, not with those over it
  useEffect(() => {
    const host = tree.current;
    if (inHand === undefined || host === null) return;
    const top = at * HEIGHT;
    if (top < host.scrollTop) host.scrollTop = top;
    else if (top + HEIGHT > host.scrollTop + host.clientHeight)
      host.scrollTop = top + HEIGHT - host.clientHeight;
  }, [inHand]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const own = lines[at];
    if (own === undefined) return;
    const step = walked(lines, at, event.key);
    if (event.key === " " && opens(own)) onToggle(own);
    else if (event.key === "Enter" || event.key === " ") onEnter();
    else if (step?.kind === "go") onTake(step.to);
    else if (step !== null) onToggle(step.line);
    else return;
    event.preventDefault();
  };
  const onClick = ({ target }: MouseEvent) => {
    if (!(target instanceof Element)) return;
    const element = target.closest<HTMLElement>("[data-line]");
    const own = lines.find(({ id }) => id === element?.dataset.line);
    if (own === undefined) return;
    onTake(own);
    tree.current?.focus();
    if (opens(own) && (own.id === inHand || target.closest(".check-open") !== null)) onToggle(own);
  };
  return (
    <div
      className="check-tree"
      role="tree"
      aria-label={speech.w("list")}
      tabIndex={0}
      aria-activedescendant={inHand === undefined ? undefined : domId(inHand)}
      ref={tree}
      onKeyDown={onKeyDown}
      onClick={onClick}
    >
      <div className="check-room" role="presentation" style={{ height: lines.length * HEIGHT }}>
        {lines.map((each, index) =>
          (index >= from && index < to) || index === at ? (
            <TreeLine
              key={each.id}
              line={each}
              top={index * HEIGHT}
              units={units}
              speech={speech}
              isInHand={index === at}
            />
          ) : null,
        )}
      </div>
    </div>
  );
}

function domId(line: string): string {
  return `check ${line}`.replaceAll(/\s/g, "~");
}

interface TreeLineProps {
  readonly line: Line;
  readonly top: number;
  readonly units: readonly CheckedUnit[];
  readonly speech: CheckSpeech;
  readonly isInHand: boolean;
}

function TreeLine({ line, top, units, speech, isInHand }: TreeLineProps) {
  const { rows, level, isOpen, place, of, id } = line;
  const [worst] = rows;
  if (worst === undefined) return null;
  const isMany = opens(line);
  const { title, place: where } = lineText(line, speech, units);
  return (
    <div
      id={domId(id)}
      className={`check-line level-${level}`}
      role="treeitem"
      aria-level={level}
      aria-posinset={place}
      aria-setsize={of}
      aria-expanded={isMany ? isOpen : undefined}
      aria-selected={isInHand}
      aria-label={spoken(line, speech, `${title}${where === "" ? "" : `, ${where}`}`)}
      tabIndex={-1}
      data-line={id}
      data-kind={worst.kind}
      data-status={worst.status}
      style={{ top, height: HEIGHT }}
    >
      <span className={isMany ? "check-open" : "check-open leaf"} aria-hidden="true">
        {isMany ? <Arrow isOpen={isOpen} /> : null}
      </span>
      <StatusSign status={worst.status} />
      <span className="check-what" aria-hidden="true">
        <span className="check-title">{title}</span>
        {where === "" ? null : <small>{where}</small>}
      </span>
      {isMany ? <Tally line={line} speech={speech} /> : null}
      <span className="check-value" aria-hidden="true">
        {valueText({ ...worst, unit: speech.told(worst.unit) }, speech.language)}
      </span>
      <UtilisationBar utilisation={worst.utilisation} />
    </div>
  );
}

function Tally({ line, speech }: Pick<TreeLineProps, "line" | "speech">) {
  const counts = countsOf(line.rows);
  return (
    <span className="check-tally" aria-hidden="true">
      {STATUSES.map((status) =>
        counts[status] === 0 ? null : (
          <span key={status} className={status}>
            <StatusSign status={status} />
            {speech.figure(counts[status])}
          </span>
        ),
      )}
    </span>
  );
}

function spoken({ rows }: Line, { w, language, told }: CheckSpeech, what: string): string {
  const [worst] = rows;
  if (worst === undefined) return what;
  const counts = countsOf(rows);
  const verdict =
    rows.length === 1
      ? [w(worst.status)]
      : STATUSES.flatMap((status) => (counts[status] === 0 ? [] : [`${counts[status]} ${w(status)}`]));
  const share =
    worst.utilisation === null ? [] : [w("share", { share: shareText(worst.utilisation, language) })];
  return [what, ...verdict, valueText({ ...worst, unit: told(worst.unit) }, language), ...share].join("; ");
}

function Arrow({ isOpen }: { isOpen: boolean }) {
  return (
    <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true" className="icon">
      <path d={isOpen ? "M2.5 4.2L6 7.8l3.5-3.6" : "M4.2 2.5L7.8 6l-3.6 3.5"} />
    </svg>
  );
}
