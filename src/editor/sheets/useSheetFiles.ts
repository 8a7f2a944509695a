// What the person takes out of the view: prints, PDF, single files, each said when it is under way and when it is done.

import { useState } from "react";
import { bundleName, sheetName } from "./choice.ts";
import { fullAddresses, printDocument, saveFile } from "./saving.ts";
import type { SheetList } from "./sheetList.ts";
import { SHEET_FONTS } from "./typeface.ts";
import type { Sheets } from "./useSheets.ts";
import type { SayOfSheets } from "./useSheetWords.ts";

export interface SheetFiles {
  /** The last thing that was done, in words; "" = nothing yet. */
  readonly said: string;
  readonly print: () => void;
  readonly savePdf: () => void;
  readonly saveSvg: (key: string) => void;
  readonly saveTable: (name: string) => void;
}

export function useSheetFiles(
  { client, list, isMaking }: Sheets,
  given: { readonly keys: readonly string[]; readonly project: string; readonly w: SayOfSheets },
): SheetFiles {
  const { keys, project, w } = given;
  const [said, setSaid] = useState("");
  const [isBusy, setBusy] = useState(false);
  const count = keys.length;
  const carry = (begin: string, work: (list: SheetList) => Promise<string>) => {
    if (list === null || isMaking || isBusy) return;
    setSaid(begin);
    setBusy(true);
    work(list)
      .then(setSaid, (reason: unknown) => setSaid(w("failed", { reason: String(reason) })))
      .finally(() => setBusy(false));
  };
  const carryChosen = (begin: string, work: (list: SheetList) => Promise<string>) => {
    if (list !== null && count === 0) setSaid(w("none-chosen"));
    else carry(begin, work);
  };
  return {
    said,
    print: () =>
      carryChosen(w("writing", { count }), async () => {
        await printDocument(await client.html(keys, fullAddresses(SHEET_FONTS)), w("title"));
        return w("to-printer", { count });
      }),
    savePdf: () =>
      carryChosen(w("writing", { count }), async (of) => {
        const name = `${bundleName(of, keys, project || "sheets")}.pdf`;
        saveFile(name, await client.pdf(keys), "application/pdf");
        return w("saved", { name });
      }),
    saveSvg: (key) =>
      carry("", async () => {
        const name = `${sheetName(key)}.svg`;
        saveFile(name, await client.svg(key), "image/svg+xml");
        return w("saved", { name });
      }),
    saveTable: (name) =>
      carry("", async () => {
        const table = (await client.tables()).find((each) => each.name === name);
        if (table === undefined) throw new Error(name);
        saveFile(name, table.text, "text/csv;charset=utf-8");
        return w("saved", { name });
      }),
  };
}
