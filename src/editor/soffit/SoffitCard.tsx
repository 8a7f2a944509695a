// The card over the plan that tells of one piece of the soffit or one prop: what it is, why it is there, what it carries,
// and which way the slab panels of its room lie.

import { type ReactNode, useMemo } from "react";
import { isInside } from "../../geom/ring.ts";
import { useProblemText } from "../chrome/useProblemText.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { useBench, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { type SoffitFocus, type SoffitThing, soffitAt } from "../scene/soffitHit.ts";
import type { ScenePropPlace, SoffitShape } from "../scene/soffitPieces.ts";
import { fillerToken } from "../theme/palette.ts";
import { formatArea, formatNumber } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";
import { AlongChoice } from "./AlongChoice.tsx";
import { propCheckOf } from "./propCheck.ts";
import { letGoOfSoffit, showProp, walkSoffit } from "./soffitActions.ts";

export interface SoffitCardProps {
  readonly focus: SoffitFocus;
  /** On which side of the plan the card stands. */
  readonly side: "left" | "right";
}

export function SoffitCard({ focus, side }: SoffitCardProps): ReactNode {
  const { live, isStale, unit } = useInView();
  const { t, speech } = useSpeech();
  const thing = isStale || focus.unit !== unit.id ? null : soffitAt(live, focus.at, focus.reach);
  if (live === null || thing === null) return null;
  const { soffit } = thing.kind === "prop" ? thing.place : thing.shape;
  const { counts, props } = soffit;
  return (
    <section
      className={`because soffit-card ${side}`}
      aria-label={t(words("soffit.label"))}
      aria-live="polite"
    >
      <Title thing={thing} live={live} />
      {thing.kind === "prop" ? (
        <PropFacts place={thing.place} live={live} />
      ) : (
        <ShapeFacts shape={thing.shape} live={live} />
      )}
      <div className="because-rules">
        {soffit.isSlab === true ? null : <AlongChoice at={focus.at} />}
        <p>{t(words("soffit.counts", { ...counts, props: props.length }))}</p>
      </div>
      <p className="caution" lang={speech.language}>
        {t(words("check.caution"))}
      </p>
    </section>
  );
}

function Title({ thing, live }: { thing: SoffitThing; live: LiveFill }) {
  const bench = useBench();
  const { t, speech } = useSpeech();
  const { soffit } = thing.kind === "prop" ? thing.place : thing.shape;
  const piece = thing.kind === "prop" ? thing.place.prop : thing.shape.piece;
  const mass = live.kit.pieces.find(({ code }) => code === piece?.code)?.mass;
  const isMade = thing.kind === "shape" && thing.shape.piece?.madeToMeasure === true;
  const facts = [
    piece?.code ?? null,
    t(words(soffit.isSlab === true ? "soffit.of-slab" : "soffit.of", { room: soffit.room })),
    mass === undefined ? null : t(words("because.mass", { mass: formatNumber(mass, speech.language, 1) })),
    isMade ? t(words("soffit.made")) : null,
  ];
  const step = (way: 1 | -1, name: Words, path: string) => (
    <button
      type="button"
      className="close"
      aria-label={t(name)}
      title={t(name)}
      onClick={() => walkSoffit(bench, thing, way)}
    >
      <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
        <path d={path} />
      </svg>
    </button>
  );
  return (
    <header>
      <Swatch thing={thing} />
      <div>
        <h2>{t(nameOf(thing))}</h2>
        <small>{facts.filter((fact) => fact !== null).join(", ")}</small>
      </div>
      <span className="soffit-steps">
        {step(-1, words("soffit.previous"), "M9 3L5 7l4 4")}
        {step(1, words("soffit.next"), "M5 3l4 4-4 4")}
        <button
          type="button"
          className="close"
          aria-label={t(words("soffit.close"))}
          title={t(words("soffit.close"))}
          onClick={() => letGoOfSoffit(bench)}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d="M3 3l8 8M11 3l-8 8" />
          </svg>
        </button>
      </span>
    </header>
  );
}

function nameOf(thing: SoffitThing): Words {
  if (thing.kind === "prop") return words("soffit.prop");
  const { kind, size } = thing.shape;
  if (kind === "unfilled") return words("soffit.unfilled");
  return words(`soffit.${kind}`, { width: size?.[0] ?? 0, length: size?.[1] ?? 0 });
}

function Swatch({ thing }: { thing: SoffitThing }) {
  if (thing.kind === "prop") {
    return (
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" className="icon">
        <circle cx="10" cy="10" r="7.5" />
        <path d="M5 5l10 10M15 5L5 15" />
      </svg>
    );
  }
  const { kind, size } = thing.shape;
  const tone = kind === "filler" ? { background: `var(--${fillerToken(size?.[0] ?? 0)})` } : undefined;
  return <span className={`swatch ${kind}`} style={tone} aria-hidden="true" />;
}

function ShapeFacts({ shape, live }: { shape: SoffitShape; live: LiveFill }) {
  const bench = useBench();
  const { t } = useSpeech();
  const problemText = useProblemText();
  const { kind, piece, soffit, outline } = shape;
  if (kind === "unfilled") {
    const problem = live.fill.problems[shape.problem ?? -1];
    return <p className="soffit-why">{problem === undefined ? "" : problemText(problem.message)}</p>;
  }
  const standing = soffit.props.filter(({ at }) => isInside(outline, at)).length;
  const holder = soffit.props.find((prop) => prop.piece === piece?.heldBy);
  return (
    <div className="soffit-why">
      <p>{t(words(`soffit.why-${kind}`))}</p>
      {kind === "strip" && standing > 0 ? <p>{t(words("soffit.stands", { count: standing }))}</p> : null}
      {holder === undefined ? null : (
        <p>
          {t(words("soffit.held", { x: Math.round(holder.at[0]), y: Math.round(holder.at[1]) }))}{" "}
          <button type="button" className="link" onClick={() => showProp(bench, holder.piece)}>
            {t(words("soffit.show-prop"))}
          </button>
        </p>
      )}
    </div>
  );
}

function PropFacts({ place: { prop, soffit }, live }: { place: ScenePropPlace; live: LiveFill }) {
  const { t, speech } = useSpeech();
  const { document } = useInView();
  const { check, reason } = useMemo(() => propCheckOf(document, live, prop.piece), [document, live, prop]);
  const figure = (value: number) => formatNumber(value, speech.language, 1);
  const status = check?.status ?? "not-checked";
  const facts = [
    check === null || check.value === null ? null : t(words("check.load", { value: figure(check.value) })),
    check === null || check.limit === null ? null : t(words("check.limit", { value: figure(check.limit) })),
    check === null || check.utilisation === null
      ? null
      : t(words("check.share", { share: formatNumber(check.utilisation * 100, speech.language) })),
  ];
  return (
    <div className="soffit-why">
      <p>
        {t(
          words("soffit.carries", {
            area: formatArea(prop.area, speech.language),
            height: speech.write(soffit.height),
          }),
        )}
      </p>
      <p className={`verdict ${status}`} data-status={status}>
        <b>{t(words(`check.${status}`))}</b> <span>{facts.filter((fact) => fact !== null).join(", ")}</span>
      </p>
      {reason === null ? null : <p>{t(reason)}</p>}
      {check === null ? null : (
        <details>
          <summary>{t(words("check.how"))}</summary>
          <div lang="en">
            <table>
              <tbody>
                {check.inputs.map(({ sign, name, value, unit }) => (
                  <tr key={`${sign} ${name}`}>
                    <th scope="row">{name}</th>
                    <td>{sign}</td>
                    <td>
                      {typeof value === "number" ? formatNumber(value, "en", 2) : value} {unit}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p>{check.formula}</p>
            <p>{check.source}</p>
          </div>
        </details>
      )}
    </div>
  );
}
