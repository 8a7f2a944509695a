// What the changes to the kit do to the unit in view: its counts with the kit as it was when the table was opened, and
// with the kit as it is.

import { useMemo, useState } from "react";
import type { Kit } from "../../kit/kit.ts";
import { useBench, useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import type { InView } from "../live/workbench.ts";
import { kitOf, type Workbench } from "../live/workbench.ts";
import { countsOf, type NudgeCounts } from "../nudge/nudge.ts";
import { unitOf } from "../pane/usePane.ts";
import { formatChange } from "../words/numbers.ts";
import { words } from "../words/say.ts";

const COUNTED = ["closures", "fillers", "sizes", "errors"] as const;

export function KitEffect() {
  const bench = useBench();
  const { speech, t } = useSpeech();
  const { history } = useEditorState();
  const inView = useInView();
  const kit = kitOf(history.doc);
  const [first] = useState(kit);
  const before = useMemo(() => counted(bench, inView, first), [bench, inView, first]);
  const after = useMemo(() => counted(bench, inView, kit), [bench, inView, kit]);
  if (before === null || after === null)
    return <span className="kit-effect">{t(words("kit.no-effect"))}</span>;
  return (
    <dl className="kit-effect" aria-label={t(words("kit.effect"))}>
      {COUNTED.map((name) => {
        const change = after[name] - before[name];
        const judged = change < 0 ? "chip better" : change > 0 ? "chip worse" : "";
        return (
          <div key={name} data-effect={name}>
            <dt>{t(words(`nudge.${name}`))}</dt>
            <dd>
              {first === kit ? null : <>{speech.write(before[name])} → </>}
              <b>{speech.write(after[name])}</b>{" "}
              {first === kit ? null : <span className={judged}>{formatChange(change, speech.language)}</span>}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

function counted(bench: Workbench, { document, unit }: InView, kit: Kit | null): NudgeCounts | null {
  if (kit === null) return null;
  try {
    return countsOf(bench.fills.trial(document, unitOf(unit), kit));
  } catch {
    return null;
  }
}
