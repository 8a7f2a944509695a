// The check of a kind in a unit, looked up in the list: for the parts of the view that are about one thing.

import { CheckCard } from "./CheckCard.tsx";
import type { CheckDetail, CheckList } from "./checkList.ts";
import { byWorst } from "./gather.ts";
import { type Checks, useDetail } from "./useChecks.ts";

export interface OneCheckProps {
  readonly checks: Checks;
  readonly list: CheckList;
  readonly kind: string;
  readonly unit: string;
  readonly onShow: (detail: CheckDetail) => void;
}

export function OneCheck({ checks, list, kind, unit, onShow }: OneCheckProps) {
  const rows = list.rows.filter((row) => row.kind === kind && row.where.unit === unit).sort(byWorst);
  const looked = useDetail(checks, rows);
  if (looked === null || rows.length === 0) return null;
  return <CheckCard {...looked} onShow={onShow} />;
}
