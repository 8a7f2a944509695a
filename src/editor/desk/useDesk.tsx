// The desk as React components reach it: what it is in, and what is done with projects and files.

import {
  createContext,
  type ReactNode,
  useContext,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from "react";
import type { Workbench } from "../live/workbench.ts";
import { warnBeforeLeaving } from "../storage/browser.ts";
import type { Desk, DeskState } from "../storage/desk.ts";
import type { FilePort } from "../storage/files.ts";
import { takeDropped } from "./dropProject.ts";
import { keepProject } from "./keepProject.ts";
import { type FileDesk, openFile, saveAsFile } from "./projectFiles.ts";

interface DeskInUse extends FileDesk {
  /** Goes on with what would give unsaved changes up; null = nothing of the kind is asked. */
  readonly asked: (() => void) | null;
  readonly dismiss: () => void;
}

const DeskContext = createContext<DeskInUse | null>(null);

export interface DeskProviderProps {
  readonly bench: Workbench;
  readonly desk: Desk;
  readonly files: FilePort;
  readonly children: ReactNode;
}

export function DeskProvider({ bench, desk, files, children }: DeskProviderProps) {
  const [asked, setAsked] = useState<(() => void) | null>(null);
  const inUse = useMemo(
    (): DeskInUse => ({
      bench,
      desk,
      files,
      asked,
      beforeGivingUp: (goOn) => setAsked(() => goOn),
      dismiss: () => setAsked(null),
    }),
    [bench, desk, files, asked],
  );
  useEffect(() => keepProject(bench, desk), [bench, desk]);
  useEffect(
    () => warnBeforeLeaving(() => desk.state.get().save.status === "failed" && hasSteps(bench)),
    [bench, desk],
  );
  useEffect(() => {
    bench.calls.set("command.save-file", () => void saveAsFile(inUse));
    bench.calls.set("command.open-file", () => void openFile(inUse));
  }, [bench, inUse]);
  useEffect(() => takeDropped(inUse), [inUse]);
  return <DeskContext value={inUse}>{children}</DeskContext>;
}

function hasSteps({ editor }: Workbench): boolean {
  return editor.get().history.past.length > 0;
}

/** @throws {Error} outside a {@link DeskProvider} */
export function useDesk(): DeskInUse {
  const inUse = useContext(DeskContext);
  if (inUse === null) throw new Error("a part of the page stands outside its desk");
  return inUse;
}

export function useDeskState(): DeskState {
  const { desk } = useDesk();
  return useSyncExternalStore(desk.state.subscribe, desk.state.get);
}
