// How much of a limit is used: a bar against the mark of the limit. What is over it is hatched, so that grey tells it, too.

import { shareText } from "./figureText.ts";
import { useCheckWords } from "./useCheckWords.ts";

const FULL = 1.25; // of the limit is as long as the bar goes

export function UtilisationBar({ utilisation }: { utilisation: number | null }) {
  const { w, language } = useCheckWords();
  if (utilisation === null) return <span className="used none" aria-hidden="true" />;
  const part = (value: number) => `${(Math.min(value, FULL) / FULL) * 100}%`;
  const share = shareText(utilisation, language);
  return (
    <span className="used" role="img" aria-label={w("share", { share })}>
      <span className="used-track" aria-hidden="true">
        <span className="used-part" style={{ width: part(Math.min(utilisation, 1)) }} />
        {utilisation > 1 ? (
          <span
            className="used-over"
            style={{ left: part(1), width: `calc(${part(utilisation)} - ${part(1)})` }}
          />
        ) : null}
        <span className="used-limit" style={{ left: part(1) }} />
      </span>
      <span className="used-share" aria-hidden="true">
        {share}&#8239;%
      </span>
    </span>
  );
}
