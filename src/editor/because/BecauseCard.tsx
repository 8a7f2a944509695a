// The card over the pane that says why a filler, a closure, a tie is there, and which small move would take it away.

import { type ReactNode, useEffect, useRef } from "react";
import { changeScreen, run } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { isPinned, targetHere } from "../pane/paneActions.ts";
import { jointWords, partWords } from "../pane/paneWords.ts";
import type { PaneView } from "../pane/usePane.ts";
import { fillerToken } from "../theme/palette.ts";
import { english } from "../words/en.ts";
import { formatNumber } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";
import { type Because, becauseOf, type RuleLine } from "./because.ts";
import { NudgeOffers } from "./NudgeOffers.tsx";

export interface BecauseCardProps {
  readonly view: PaneView;
  readonly onClose: () => void;
}

export function BecauseCard({ view, onClose }: BecauseCardProps) {
  const bench = useBench();
  const { t } = useSpeech();
  const card = useRef<HTMLElement>(null);
  const pinned = isPinned(view);
  const because = becauseOf(view.now, view.given, pinned);
  const target = targetHere(view);
  const isThere = because !== null;
  useEffect(() => {
    if (isThere) card.current?.focus();
  }, [isThere]);
  if (because === null) return null;
  return (
    <section
      className="because"
      ref={card}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the card is read as a whole when it opens
      tabIndex={0}
      aria-label={t(words("because.label"))}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onClose();
        document.querySelector<HTMLElement>(".elevation")?.focus();
      }}
    >
      <Title because={because} view={view} onClose={onClose} />
      <Reasons because={because} />
      {because.rules.length === 0 ? null : (
        <div className="because-rules">
          {because.rules.map((line) => (
            <Rule key={line.name} line={line} />
          ))}
          <button type="button" className="link" onClick={() => run(bench, "command.kit")}>
            {t(words("because.kit"))}
          </button>
        </div>
      )}
      {target === null ? null : <NudgeOffers view={view} target={target} />}
      {because.joints === null ? null : (
        <div className="because-acts">
          <button type="button" className="act" onClick={() => run(bench, "command.pin")}>
            {t(words(pinned ? "because.unpin" : "because.pin"))} <kbd>P</kbd>
          </button>
          <button
            type="button"
            className="act"
            onClick={() => {
              changeScreen(bench, { isPaneOpen: true });
              run(bench, "command.covers");
            }}
          >
            {t(words("because.covers"))} <kbd>O</kbd>
          </button>
        </div>
      )}
    </section>
  );
}

function Title({ because, view, onClose }: { because: Because; view: PaneView; onClose: () => void }) {
  const { speech, t } = useSpeech();
  const { about, mass, needsTwo, isOnBothFaces } = because;
  const wall = view.now.drawn.face.walls.join(" + ");
  const name =
    about.kind === "tie"
      ? words("piece.tie", { length: about.tie.length, count: about.tie.heights.length })
      : partWords(about.part);
  const facts = [
    t(words(isOnBothFaces ? "because.both" : "because.one", { wall })),
    mass === null ? null : t(words("because.mass", { mass: formatNumber(mass, speech.language, 1) })),
    mass === null ? null : t(words(needsTwo ? "because.two-persons" : "because.one-person")),
  ];
  return (
    <header>
      <Swatch because={because} />
      <div>
        <h2>{t(name)}</h2>
        <small>{facts.filter((fact) => fact !== null).join(", ")}</small>
      </div>
      <button type="button" className="close" aria-label={t(words("because.close"))} onClick={onClose}>
        <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
          <path d="M3 3l8 8M11 3l-8 8" />
        </svg>
      </button>
    </header>
  );
}

function Swatch({ because: { about } }: { because: Because }) {
  if (about.kind === "tie") return null;
  const { kind, width } = about.part;
  const tone = kind === "filler" ? { background: `var(--${fillerToken(width)})` } : undefined;
  return <span className={`swatch ${kind}`} style={tone} aria-hidden="true" />;
}

function Reasons({ because: { joints, arithmetic } }: { because: Because }) {
  const { speech, t } = useSpeech();
  return (
    <ul className="reasons">
      {joints === null ? null : (
        <>
          <Reason mark="A">
            <b>{speech.write(joints[0].x)}</b> {t(jointWords(joints[0]))}
          </Reason>
          <Reason mark="B">
            <b>{speech.write(joints[1].x)}</b> {t(jointWords(joints[1]))}
          </Reason>
        </>
      )}
      {arithmetic.length === 0 ? null : (
        <Reason mark="=">{arithmetic.map((said) => t(said)).join(" ")}</Reason>
      )}
    </ul>
  );
}

function Reason({ mark, children }: { mark: string; children: ReactNode }) {
  return (
    <li>
      <span className={mark === "=" ? "mark plain" : "mark"}>{mark}</span>
      <span>{children}</span>
    </li>
  );
}

// Where a rule comes from is the kit's to say; its two fixed sayings are the page's.
function saidOrigin(origin: string, t: (said: Words) => string): string {
  if (origin === english["origin.practice"]) return t(words("origin.practice"));
  return origin === english["origin.invented"] ? t(words("origin.invented")) : origin;
}

function Rule({ line: { name, rule } }: { line: RuleLine }) {
  const { t } = useSpeech();
  const named = t(words(`rule.${name}`));
  return (
    <p>
      {t(
        rule === null
          ? words("because.no-rule", { rule: named })
          : words("because.rule", { ...rule, rule: named, origin: saidOrigin(rule.origin, t) }),
      )}
    </p>
  );
}
