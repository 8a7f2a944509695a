// What fewer widths and fewer fillers cost: a few points of either curve, to pick from. Picking one writes it into what the
// choice keeps to, as one step, and looks for its set.

import type { CurvePoint } from "../../fill/optimise/tradeOff.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import { formatNumber } from "../words/numbers.ts";
import { AsideSection } from "./AsideSection.tsx";
import { type CurveName, dearerBy, plotted } from "./curvePlot.ts";
import { curveInputsOf } from "./inputs.ts";
import { NO_LIMITS } from "./limitEdits.ts";
import type { Needs } from "./useNeeds.ts";
import { useDrawer } from "./useOptimiser.ts";
import { usePick } from "./usePick.ts";
import { useAmounts, useSetWords } from "./useSetWords.ts";

export function CurveSection({ needs: { plan, counted } }: { needs: Needs }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const { drawer, drawing } = useDrawer();
  if (plan === null || counted === null || counted.pieces.length === 0) return null;
  const { found, told } = drawing;
  const now = curveInputsOf(doc);
  const isOld = found !== null && found.inputs.others !== now.others;
  return (
    <AsideSection
      className="set-curves"
      title={w("curves")}
      ask={[w("draw"), w("draw-again")]}
      why={w("curves-why")}
      told={told === null ? w("loading") : w(`drawing.${told.curve}`, { number: told.found + 1 })}
      aside={drawing}
      isOld={isOld}
      onBegin={() => drawer.begin(plan, now)}
      onCancel={drawer.cancel}
    >
      {found === null ? null : (
        <div className="curves" data-old={isOld}>
          <CurveView
            curve="widths"
            points={found.value.widths}
            countedBy={found.value.countedBy}
            isOff={isOld || found.inputs.filler !== now.filler}
          />
          <CurveView
            curve="fillers"
            points={found.value.fillers}
            countedBy={found.value.countedBy}
            isOff={isOld || found.inputs.mostWidths !== now.mostWidths}
          />
        </div>
      )}
    </AsideSection>
  );
}

interface CurveViewProps {
  readonly curve: CurveName;
  readonly points: readonly CurvePoint[];
  readonly countedBy: "price" | "mass" | "area";
  /** The points hold no more: something else that they depend on was changed. */
  readonly isOff: boolean;
}

function CurveView({ curve, points, countedBy, isOff }: CurveViewProps) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const { doc } = useEditorState().history;
  const amount = useAmounts(countedBy, useCurrency());
  const pick = usePick();
  if (points.length === 0) return null;
  const dearer = dearerBy(points);
  const { mostWidths } = doc.limits ?? NO_LIMITS;
  const isPicked = (point: CurvePoint) =>
    curve === "widths"
      ? point.mostWidths === mostWidths
      : point.filler === (doc.objective.filler ?? 0) && !isOff;
  return (
    <div className="curve" data-off={isOff}>
      <h4>{w(`curve.${curve}`)}</h4>
      <CurvePicture curve={curve} points={points} isPicked={isPicked} />
      <ul>
        {points.map((point, k) => (
          <li key={`${point.mostWidths} ${point.filler}`}>
            <button
              type="button"
              aria-pressed={isPicked(point)}
              aria-disabled={isOff}
              onClick={() => (isOff ? undefined : pick(curve, point))}
            >
              <span className="curve-dot" aria-hidden="true" />
              <span className="curve-count">{w(`count.${curve}`, { count: point[curve] })}</span>
              <span>{amount(point.cost, 2)}</span>
              <small>
                {(dearer[k] ?? 0) > 0
                  ? `+${formatNumber(dearer[k] ?? 0, speech.language, (dearer[k] ?? 0) < 0.1 ? 3 : 2)} %`
                  : w("cheapest")}
              </small>
              <small className="curve-sure">
                {w(point.status === "optimal" ? "proven" : "at-least", boundOf(point, amount))}
              </small>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function boundOf({ lowerBound }: CurvePoint, amount: (value: number) => string) {
  return { amount: amount(lowerBound) };
}

function useCurrency(): string | null {
  const { doc } = useEditorState().history;
  return kitOf(doc)?.currency ?? null;
}

const BOX = { width: 440, height: 92 };
const SIDE = 8;

interface PictureProps extends Pick<CurveViewProps, "curve" | "points"> {
  readonly isPicked: (point: CurvePoint) => boolean;
}

function CurvePicture({ curve, points, isPicked }: PictureProps) {
  const places = plotted(points, curve, BOX);
  const line = [...places].sort((a, b) => a.x - b.x);
  return (
    <svg
      className="curve-picture"
      aria-hidden="true"
      viewBox={`${-SIDE} ${-SIDE} ${BOX.width + 2 * SIDE} ${BOX.height + 2 * SIDE}`}
    >
      <path className="curve-axis" d={`M${-SIDE} ${BOX.height + SIDE}H${BOX.width + SIDE}`} />
      <path
        className="curve-line"
        d={line.map(({ x, y }, k) => `${k === 0 ? "M" : "L"}${x} ${y}`).join("")}
      />
      {places.map(({ x, y, boundY }, k) => (
        <g key={`${x} ${y}`}>
          {boundY - y < 1 ? null : <path className="curve-gap" d={`M${x} ${y}V${boundY}m-3 0h6`} />}
          <circle
            className="curve-point"
            cx={x}
            cy={y}
            r="4"
            data-picked={points[k] !== undefined && isPicked(points[k])}
          />
        </g>
      ))}
    </svg>
  );
}
