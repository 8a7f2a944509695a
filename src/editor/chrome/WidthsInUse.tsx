// The widths of panels in use, widest first, each with its tone, its count and the change since the last edit.

import { boxAround } from "../box.ts";
import { usePalette } from "../canvas/usePalette.ts";
import { type Compared, comparedWidths, judged } from "../live/scores.ts";
import { useBench, useEditorState, useInView, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import type { InView } from "../live/workbench.ts";
import { comparedScores } from "../live/workbench.ts";
import { concreteRings } from "../scene/concrete.ts";
import { toScreen, type Viewport } from "../scene/viewport.ts";
import { fillerTone } from "../theme/palette.ts";
import { formatChange, formatMm } from "../words/numbers.ts";
import { words } from "../words/say.ts";

/** Nothing covers the plan where the window is narrower, px. */
const LEAST_WIDTH = 1020;
const LONGEST = 80; // px of the longest bar

export function WidthsInUse() {
  const bench = useBench();
  const inView = useInView();
  const { size } = useScreen();
  const { session } = useEditorState();
  const { t } = useSpeech();
  const compared = comparedScores(bench, inView);
  if (compared === null || size.width < LEAST_WIDTH) return null;
  if (reachesRight(inView, { ...session.view, ...size })) return null;
  const inKit = new Set(
    inView.live?.kit.pieces.flatMap((piece) => (piece.family === "wall-panel" ? [piece.width] : [])) ?? [],
  );
  return (
    <section className="widths" aria-label={t(words("region.widths"))}>
      <h2>
        {t(words("widths.title"))}
        <small>{t(words("widths.of", { used: compared.now.sizes, all: inKit.size }))}</small>
      </h2>
      <WidthTable compared={compared} />
    </section>
  );
}

function WidthTable({ compared }: { compared: Compared }) {
  const { t, speech } = useSpeech();
  const palette = usePalette();
  const widths = comparedWidths(compared);
  const longest = Math.max(1, ...widths.map(({ width }) => width));
  const { closures } = compared.now;
  return (
    <table>
      <tbody>
        {widths.map(({ width, count, change, isFiller }) => (
          <tr key={width} className={isFiller ? "filler" : ""}>
            <th scope="row">{formatMm(width, speech.language)}</th>
            <td>
              {count === 0 ? (
                <small>{t(words("widths.gone"))}</small>
              ) : (
                <i
                  className={isFiller ? "bar-of filler" : "bar-of"}
                  style={{
                    width: Math.max(6, (LONGEST * width) / longest),
                    ...(isFiller ? { background: fillerTone(palette, width) } : {}),
                  }}
                />
              )}
            </td>
            <td>{count === 0 ? "" : count}</td>
            <td>{change === null || change === 0 ? "" : <Change change={change} isFiller={isFiller} />}</td>
          </tr>
        ))}
        {closures === 0 ? null : (
          <tr>
            <th scope="row">{t(words("widths.closure"))}</th>
            <td>
              <i className="bar-of closure" />
            </td>
            <td>{closures}</td>
            <td />
          </tr>
        )}
      </tbody>
    </table>
  );
}

const TAKEN = 238; // px from the right edge

// Whether the concrete comes under the list.
function reachesRight(inView: InView, viewport: Viewport): boolean {
  const rings = concreteRings({ ...inView, viewport });
  const { maxX, maxY } = boxAround(rings.flat());
  if (!Number.isFinite(maxX)) return false;
  const [right] = toScreen(viewport, [maxX, maxY]);
  return right > viewport.width - TAKEN;
}

// More or fewer standard panels is neither better nor worse.
function Change({ change, isFiller }: { change: number; isFiller: boolean }) {
  const { speech } = useSpeech();
  const text = formatChange(change, speech.language);
  return <span className={isFiller ? `chip ${judged(change)}` : "chip plain"}>{text}</span>;
}
