// One check with all that went into it: verdict, figures, inputs by sign, formula, source, and the way to its place.

import type { Check } from "../../assess/checkDocument.ts";
import type { CheckDetail } from "./checkList.ts";
import { figureText } from "./figureText.ts";
import { placeText } from "./lineText.ts";
import { StatusSign } from "./StatusSign.tsx";
import { UtilisationBar } from "./UtilisationBar.tsx";
import { useCheckWords } from "./useCheckWords.ts";

export interface CheckCardProps {
  readonly detail: CheckDetail;
  /** More than one: it is the worst of them. */
  readonly of?: number;
  readonly onShow: (detail: CheckDetail) => void;
}

export function CheckCard({ detail, of = 1, onShow }: CheckCardProps) {
  const { check, spot } = detail;
  const speech = useCheckWords();
  const { w, kind, told } = speech;
  const walls = check.where.face === undefined ? "" : (spot?.face?.walls.join("+") ?? "");
  const place = placeText({ ...check, walls }, speech);
  return (
    <article className="check-card" data-check={check.id}>
      <header>
        <h3>{kind(check.kind)}</h3>
        {of > 1 ? <small>{w("worst-of", { count: of })}</small> : null}
        {place === "" ? null : <p className="check-where">{place}</p>}
      </header>
      <p className={`check-verdict ${check.status}`}>
        <StatusSign status={check.status} />
        {w(`say.${check.status}`)}
      </p>
      <Figures check={check} />
      {check.reason === undefined ? null : <p className="check-reason">{told(check.reason)}</p>}
      {spot === null ? null : (
        <button type="button" className="act strong" onClick={() => onShow(detail)}>
          {w("show")}
        </button>
      )}
      <Inputs check={check} />
      <dl className="check-how">
        <dt>{w("formula")}</dt>
        {split(told(check.formula)).map((part) => (
          <dd key={part} className="check-formula">
            {part}
          </dd>
        ))}
        <dt>{w("source")}</dt>
        {split(told(check.source)).map((part) => (
          <dd key={part} lang="en">
            {part}
          </dd>
        ))}
      </dl>
    </article>
  );
}

function Figures({ check }: { check: Check }) {
  const { w, language, told } = useCheckWords();
  const { value, limit, utilisation } = check;
  const unit = told(check.unit);
  const text = (number: number | null) =>
    number === null ? w("none") : `${figureText(number, language)} ${unit}`.trim();
  return (
    <div className="check-figures">
      <dl>
        <div>
          <dt>{w("value")}</dt>
          <dd>{text(value)}</dd>
        </div>
        <div>
          <dt>{w("limit")}</dt>
          <dd>{limit === null ? w("no-limit") : text(limit)}</dd>
        </div>
      </dl>
      <UtilisationBar utilisation={utilisation} />
    </div>
  );
}

function Inputs({ check: { inputs } }: { check: Check }) {
  const { w, language, told } = useCheckWords();
  if (inputs.length === 0) return null;
  return (
    <table className="check-inputs">
      <caption>{w("inputs")}</caption>
      <thead className="hidden">
        <tr>
          <th scope="col">{w("sign")}</th>
          <th scope="col">{w("name")}</th>
          <th scope="col">{w("value")}</th>
        </tr>
      </thead>
      <tbody>
        {inputs.map(({ sign, name, value, unit }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an input is told by its place
          <tr key={index}>
            <td className="check-sign">{sign}</td>
            <td>{told(name)}</td>
            <td className={typeof value === "number" ? "check-figure" : "check-figure words"}>
              {typeof value === "number" ? figureText(value, language) : told(value)} {told(unit)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

// Formulas and sources are joined by semicolons; the same one may stand twice.
function split(text: string): readonly string[] {
  return [...new Set(text.split("; ").map((part) => part.trim()))].filter((part) => part !== "");
}
