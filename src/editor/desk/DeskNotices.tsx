// What has to be said about keeping the project, over the plan and with the ways out beside it: another tab, no room,
// a browser that keeps nothing, a project that cannot be read.

import { type ReactNode, useSyncExternalStore } from "react";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import type { StorageFault } from "../storage/database.ts";
import type { DeskState } from "../storage/desk.ts";
import { type Words, words } from "../words/say.ts";
import { newVersion } from "./newVersion.ts";
import { saveAsFile, saveText } from "./projectFiles.ts";
import { useDesk, useDeskState } from "./useDesk.tsx";

export function DeskNotices() {
  const state = useDeskState();
  const { asked } = useDesk();
  const { t } = useSpeech();
  const load = useSyncExternalStore(newVersion.subscribe, newVersion.get);
  const notices = [
    asked === null ? null : <Unsaved key="unsaved" goOn={asked} />,
    state.damaged === null ? null : <Damaged key="damaged" damaged={state.damaged} />,
    state.save.status === "failed" ? <NotKept key="fault" fault={state.save.fault} /> : null,
    state.seat.role === "reading" ? <Reading key="reading" /> : null,
    load === null ? null : <NewVersion key="version" load={load} />,
  ].filter((notice) => notice !== null);
  if (notices.length === 0) return null;
  return (
    <section className="notices" aria-label={t(words("notice.region"))} {...{ [REGION]: "notices" }}>
      {notices}
    </section>
  );
}

interface NoticeProps {
  readonly said: Words;
  readonly isGrave: boolean;
  readonly children: ReactNode;
}

function Notice({ said, isGrave, children }: NoticeProps) {
  const { t } = useSpeech();
  return (
    <div className={isGrave ? "notice grave" : "notice"} role={isGrave ? "alert" : "status"}>
      <p>{t(said)}</p>
      <div className="ways">{children}</div>
    </div>
  );
}

interface WayProps {
  readonly name: Words;
  readonly onTake: () => void;
}

function Way({ name, onTake }: WayProps) {
  const { t } = useSpeech();
  return (
    <button type="button" onClick={onTake}>
      {t(name)}
    </button>
  );
}

function SaveFile() {
  const inUse = useDesk();
  return <Way name={words("notice.save-file")} onTake={() => void saveAsFile(inUse)} />;
}

function Unsaved({ goOn }: { goOn: () => void }) {
  const { dismiss } = useDesk();
  const take = () => {
    dismiss();
    goOn();
  };
  return (
    <Notice said={words("notice.unsaved")} isGrave>
      <SaveFile />
      <Way name={words("notice.give-up")} onTake={take} />
      <Way name={words("notice.close")} onTake={dismiss} />
    </Notice>
  );
}

function Damaged({ damaged }: { damaged: NonNullable<DeskState["damaged"]> }) {
  const inUse = useDesk();
  const { t } = useSpeech();
  const name = damaged.name === "" ? t(words("projects.nameless")) : damaged.name;
  const save = () => void saveText(inUse, damaged.name, damaged.text);
  return (
    <Notice said={words("notice.damaged", { name, fault: damaged.faults[0] ?? "" })} isGrave>
      <Way name={words("notice.save-what-is-there")} onTake={save} />
      <Way name={words("notice.close")} onTake={inUse.desk.dismissDamaged} />
    </Notice>
  );
}

function Reading() {
  const { desk } = useDesk();
  return (
    <Notice said={words("notice.reading")} isGrave={false}>
      <Way name={words("notice.take-over")} onTake={() => void desk.takeOver()} />
    </Notice>
  );
}

function NewVersion({ load }: { load: () => void }) {
  return (
    <Notice said={words("notice.version")} isGrave={false}>
      <Way name={words("notice.load-anew")} onTake={load} />
      <Way name={words("notice.close")} onTake={() => newVersion.set(() => null)} />
    </Notice>
  );
}

function NotKept({ fault }: { fault: StorageFault }) {
  return (
    <Notice said={sentenceOf(fault)} isGrave>
      <WaysOut fault={fault} />
    </Notice>
  );
}

function sentenceOf(fault: StorageFault): Words {
  switch (fault.kind) {
    case "failed":
      return words("notice.failed", { reason: fault.reason });
    case "full":
      return words("notice.full");
    case "unavailable":
      return words("notice.unavailable");
    case "newer":
      return words("notice.newer");
    case "conflict":
      return words("notice.conflict");
    case "gone":
      return words("notice.gone");
    default:
      return fault satisfies never;
  }
}

function WaysOut({ fault }: { fault: StorageFault }) {
  const { desk } = useDesk();
  const bench = useBench();
  const keepAsNew = <Way name={words("notice.keep-as-new")} onTake={desk.keepAsNew} />;
  switch (fault.kind) {
    case "conflict":
      return (
        <>
          {keepAsNew}
          <Way name={words("notice.give-up")} onTake={() => void desk.takeStored()} />
        </>
      );
    case "gone":
      return keepAsNew;
    case "newer":
      return (
        <>
          <SaveFile />
          <Way name={words("notice.load-anew")} onTake={() => location.reload()} />
        </>
      );
    case "unavailable":
      return (
        <>
          <SaveFile />
          <Way name={words("notice.try-again")} onTake={() => void desk.retry()} />
        </>
      );
    default:
      return (
        <>
          <SaveFile />
          <Way name={words("notice.try-again")} onTake={() => void desk.retry()} />
          <Way name={words("notice.projects")} onTake={() => changeScreen(bench, { panel: "projects" })} />
        </>
      );
  }
}
