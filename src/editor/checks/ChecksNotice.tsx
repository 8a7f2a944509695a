// What has to be said in place of the checks: what could not be read, what broke down, nothing to check.

import { formatIssue } from "../../json/issue.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { type Checks, KIT } from "./useChecks.ts";
import { useCheckWords } from "./useCheckWords.ts";

export function ChecksNotice({ checks: { failure, issues, list } }: { checks: Checks }) {
  const { t } = useSpeech();
  const { w } = useCheckWords();
  if (failure !== null)
    return (
      <p className="check-notice" role="alert">
        {failure === KIT ? t(words("problems.kit-broken")) : w("broken", { reason: failure })}
      </p>
    );
  if (issues.length > 0)
    return (
      <div className="check-notice" role="alert">
        <b>{w("unread")}</b>
        <ul lang="en">
          {issues.map((issue) => (
            <li key={issue.path}>{formatIssue(issue)}</li>
          ))}
        </ul>
      </div>
    );
  if (list !== null && list.rows.length === 0)
    return (
      <p className="check-notice" role="note">
        {w("nothing")}
      </p>
    );
  return null;
}
