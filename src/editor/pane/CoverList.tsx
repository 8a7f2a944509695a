// The covers on offer for the interval in hand, each with what it costs against the one in use. Choosing one pins it.

import { type KeyboardEvent, useMemo, useRef } from "react";
import { type Choice, choicesOf } from "../../fill/choices.ts";
import { narrowUnder } from "../../fill/kitTables.ts";
import type { OrderedPiece } from "../../fill/order.ts";
import type { Mm } from "../../units.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { fillerToken, inkOnFillerRule } from "../theme/palette.ts";
import { formatChange } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";
import { bookOf } from "./elevation.ts";
import { chooseCover, isPinned, togglePin } from "./paneActions.ts";
import { jointWords } from "./paneWords.ts";
import type { PaneView } from "./usePane.ts";

const MOST = 12;
const ROW = 236; // px of a drawn sequence
const LEAST_LABEL = 8; // px across a piece, for its figures upright

export function CoverList({ view }: { view: PaneView }) {
  const bench = useBench();
  const { t } = useSpeech();
  const list = useRef<HTMLDivElement>(null);
  const { now, given } = view;
  const { seen } = now;
  const choices = useMemo(() => (seen === null ? [] : choicesOf(seen, given, MOST)), [seen, given]);
  if (seen === null) return <p className="covers-nothing">{t(words("covers.choose"))}</p>;
  const title = t(words(seen.isZone ? "covers.title-zone" : "covers.title", { length: seen.length }));
  const between = words("covers.between", {
    left: t(jointWords(seen.left)),
    from: seen.left.x,
    right: t(jointWords(seen.right)),
    to: seen.right.x,
  });
  const pinned = isPinned(view);
  return (
    <section className="covers" aria-label={t(words("covers.label"))}>
      <p>
        <b>{title}</b> <span>{t(between)}</span>
        {pinned ? (
          <span className="pinned-chip">
            {t(words("covers.pinned"))}
            <button type="button" onClick={() => togglePin(bench)}>
              {t(words("covers.unpin"))}
            </button>
          </span>
        ) : null}
      </p>
      <div
        role="radiogroup"
        tabIndex={-1}
        aria-label={t(words("covers.label"))}
        ref={list}
        onKeyDown={(event) => walk(event, list.current)}
      >
        {choices.map((choice, k) => (
          <CoverRow
            key={choice.pieces.map(({ width }) => width).join(" ")}
            choice={choice}
            view={view}
            length={seen.length}
            isEntry={choice.isInUse || (k === 0 && !choices.some(({ isInUse }) => isInUse))}
          />
        ))}
      </div>
    </section>
  );
}

function walk(event: KeyboardEvent, list: HTMLElement | null): void {
  const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (step === 0 || list === null) return;
  const rows = [...list.querySelectorAll("button")];
  const index =
    document.activeElement instanceof HTMLButtonElement ? rows.indexOf(document.activeElement) : -1;
  rows[(index + step + rows.length) % rows.length]?.focus();
  event.preventDefault();
  event.stopPropagation();
}

interface CoverRowProps {
  readonly choice: Choice;
  readonly view: PaneView;
  readonly length: Mm;
  /** Takes the focus when the list is entered. */
  readonly isEntry: boolean;
}

function CoverRow({ choice, view, length, isEntry }: CoverRowProps) {
  const bench = useBench();
  const { speech, t } = useSpeech();
  const { pieces, key, isInUse, pinned } = choice;
  const counts = [
    key.closures > 0 ? t(words("covers.closures", { count: key.closures })) : null,
    key.fillers > 0 ? t(words("covers.fillers", { count: key.fillers })) : t(words("covers.none")),
    t(words("covers.pieces", { count: key.pieces })),
  ];
  const changes = isInUse
    ? []
    : changesOf(choice, narrowUnder(view.given.kit), (value) => formatChange(value, speech.language));
  const widths = pieces.map(({ width }) => speech.write(width)).join(" + ");
  const told = [
    ...counts.filter((text) => text !== null),
    ...(isInUse ? [t(words("covers.in-use"))] : changes.map(({ said }) => t(said))),
  ];
  return (
    // biome-ignore lint/a11y/useSemanticElements: choosing is a step of the plan, so arrows may only walk, not choose
    <button
      type="button"
      role="radio"
      aria-checked={isInUse}
      aria-label={[widths, ...told].join(", ")}
      tabIndex={isEntry ? 0 : -1}
      className="cover"
      data-cover={pieces.map(({ width }) => width).join(" ")}
      onClick={() => {
        if (!isInUse && pinned !== null) chooseCover(bench, view, pinned);
      }}
    >
      <span className="dot" aria-hidden="true" />
      <Sequence pieces={pieces} length={length} view={view} write={speech.write} />
      <span className="cost">{counts.filter((text) => text !== null).join(", ")}</span>
      {isInUse ? <b className="in-use">{t(words("covers.in-use"))}</b> : null}
      {changes.map(({ said, isBetter }) => (
        <span key={said.key} className={isBetter ? "chip better" : "chip worse"}>
          {t(said)}
        </span>
      ))}
      {!isInUse && changes.length === 0 ? <span className="alike">{t(words("covers.alike"))}</span> : null}
    </button>
  );
}

interface Change {
  readonly said: Words;
  readonly isBetter: boolean;
}

function changesOf({ change }: Choice, least: Mm, write: (value: number) => string): readonly Change[] {
  const of = (value: number, said: Words): readonly Change[] =>
    value === 0 ? [] : [{ said, isBetter: value < 0 }];
  const values = (value: number) => ({ count: Math.abs(value), change: write(value) });
  return [
    ...of(change.closures, words("covers.change-closures", values(change.closures))),
    ...of(change.narrow, words("covers.change-narrow", { change: write(change.narrow), least })),
    ...of(change.fillers, words("covers.change-fillers", values(change.fillers))),
    ...of(change.pieces, words("covers.change-pieces", values(change.pieces))),
    ...of(change.sizes, words("covers.change-sizes", values(change.sizes))),
  ];
}

interface SequenceProps {
  readonly pieces: readonly OrderedPiece[];
  readonly length: Mm;
  readonly view: PaneView;
  readonly write: (value: number) => string;
}

function Sequence({ pieces, length, view, write }: SequenceProps) {
  const scale = ROW / Math.max(length, 1);
  const standard = standardWidths(view);
  let x = 0;
  return (
    <svg className="sequence" width={ROW + 1} height="19" aria-hidden="true">
      {pieces.map(({ width, kind }) => {
        const left = x;
        x += width * scale;
        const isFiller = kind === "panel" && !standard.has(width);
        const text = write(width);
        const isLevel = text.length * 6 + 2 <= width * scale;
        const middle = left + (width * scale) / 2 + 0.5;
        const tone = isFiller ? { fill: `var(--${fillerToken(width)})` } : undefined;
        const ink = isFiller ? { fill: inkOnFillerRule(width) } : undefined;
        return (
          <g
            key={left}
            className={kind === "closure" ? "seq-closure" : isFiller ? "seq-filler" : "seq-panel"}
          >
            <rect x={left + 0.5} y="1" width={Math.max(3, width * scale)} height="17" style={tone} />
            <text
              className={isLevel ? "" : "upright"}
              x={middle}
              y="10"
              transform={isLevel ? undefined : `rotate(-90 ${middle} 10)`}
              style={width * scale < LEAST_LABEL ? { display: "none" } : ink}
            >
              {text}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function standardWidths({ given }: PaneView): ReadonlySet<Mm> {
  const widths = new Set<Mm>();
  for (const piece of bookOf(given.kit).values()) {
    if (piece.family === "wall-panel" && piece.standard) widths.add(piece.width);
  }
  return widths;
}
