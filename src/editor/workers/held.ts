// One worker at a time: begun when there is something to send, dropped when it breaks down or is ended. The last words of
// one that was dropped are not heard.

import type { Port, PortEvents, StartPort } from "./port.ts";

export interface HeldWorker<To> {
  /** @param messages - gives what to send; is told whether the worker is another one, which knows nothing yet */
  readonly send: (messages: (isNew: boolean) => readonly To[]) => void;
  /** The next message begins another. */
  readonly end: () => void;
}

export function holdWorker<To, From>(
  start: StartPort<To, From>,
  { onAnswer, onFailure }: PortEvents<From>,
): HeldWorker<To> {
  let held: Port<To> | null = null;
  const end = () => {
    held?.end();
    held = null;
  };
  const fail = (reason: string) => {
    end();
    onFailure(reason);
  };
  const begun = (): Port<To> => {
    const own: Port<To> = start({
      onAnswer: (answer) => {
        if (held === own) onAnswer(answer);
      },
      onFailure: (reason) => {
        if (held === own) fail(reason);
      },
    });
    return own;
  };
  return {
    send: (messages) => {
      try {
        const isNew = held === null;
        const port = held ?? begun();
        held = port;
        for (const message of messages(isNew)) port.send(message);
      } catch (reason) {
        fail(String(reason));
      }
    },
    end,
  };
}
