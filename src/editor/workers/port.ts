// A worker as the page speaks to it, whatever it is for: messages out, answers and failures in.

export interface Port<To> {
  readonly send: (message: To) => void;
  readonly end: () => void;
}

export interface PortEvents<From> {
  readonly onAnswer: (answer: From) => void;
  /** It did not start, or broke down outside a job. */
  readonly onFailure: (reason: string) => void;
}

/** Begins a worker that tells its events to the listeners given. Throws where none can be begun. */
export type StartPort<To, From> = (events: PortEvents<From>) => Port<To>;

export function portTo<To, From>(worker: Worker, { onAnswer, onFailure }: PortEvents<From>): Port<To> {
  worker.onmessage = ({ data }: MessageEvent<From>) => onAnswer(data);
  worker.onerror = ({ message }) => onFailure(message === "" ? "the worker did not start" : message);
  worker.onmessageerror = () => onFailure("an answer of the worker could not be read");
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
}
