// Takes what is owned from a table or a workbook: the whole list or nothing, as one step. What is wrong in it is said line by
// line. The reader is loaded when a file is chosen.

import { useRef, useState } from "react";
import type { StockAnswer, StockRemark } from "../../exchange/stock/readStock.ts";
import type { Kit } from "../../kit/kit.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

const MOST_LINES = 6; // sentences shown

export interface StockFile {
  readonly button: React.ReactNode;
  /** What came of the last file; null before the first. */
  readonly notice: React.ReactNode;
}

export function useStockFile(kit: Kit): StockFile {
  const w = useSetWords();
  const step = useStep();
  const field = useRef<HTMLInputElement>(null);
  const [answer, setAnswer] = useState<StockAnswer | null>(null);
  const read = async (file: File) => {
    const { readStock } = await import("../../exchange/stock/readStock.ts");
    const found = readStock(new Uint8Array(await file.arrayBuffer()), kit);
    setAnswer(found);
    if (found.status === "ok")
      step("step.set-stock", [{ kind: "change-project", set: { stock: found.stock } }]);
  };
  const button = (
    <>
      <button type="button" className="act pieces-shown" onClick={() => field.current?.click()}>
        {w("stock-file")}
      </button>
      <input
        ref={field}
        type="file"
        accept=".csv,.tsv,.txt,.xlsx"
        className="hidden"
        tabIndex={-1}
        aria-hidden
        onChange={({ target }) => {
          const [chosen] = target.files ?? [];
          if (chosen !== undefined) void read(chosen);
          target.value = "";
        }}
      />
    </>
  );
  return { button, notice: answer === null ? null : <StockNotice answer={answer} /> };
}

function StockNotice({ answer }: { answer: StockAnswer }) {
  const w = useSetWords();
  const isRead = answer.status === "ok";
  const lines = isRead ? answer.remarks : answer.issues;
  const pieces = isRead ? Object.values(answer.stock).reduce((sum, count) => sum + count, 0) : 0;
  const more = lines.length - MOST_LINES;
  return (
    <div className={isRead ? "set-note" : "set-fault"} role={isRead ? "status" : "alert"}>
      <b>{isRead ? w("stock-read", { count: answer.lines, pieces }) : w("stock-broken")}</b>
      <ul>
        {lines.slice(0, MOST_LINES).map((remark) => (
          <StockLine key={`${remark.line} ${remark.kind}`} remark={remark} />
        ))}
      </ul>
      {more > 0 ? <p>{w("stock-more", { count: more })}</p> : null}
    </div>
  );
}

// English has the reader's own sentence with the code and the figure; the others say what kind of fault stands where.
function StockLine({ remark: { line, kind, message } }: { remark: StockRemark }) {
  const w = useSetWords();
  const { language } = useSpeech().speech;
  return <li>{language === "en" ? `${message}.` : w(`stock.${kind}`, { number: line })}</li>;
}
