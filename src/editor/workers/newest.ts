// One ask in hand, one that waits. A newer ask takes the place of the waiting one, so that whoever answers never falls
// behind the hand.
//
//   ask 1 ▶ in hand      ask 2 ▶ waits      ask 3 ▶ waits in its place, 2 is put aside

export interface Newest<Ask, Answer> {
  /** `settle` is told null where the ask was put aside. */
  readonly give: (ask: Ask, settle: (answer: Answer | null) => void) => void;
  /** Settles what is in hand and what waits by this answer; what is done of it later is not heard. */
  readonly drop: (answer: Answer | null) => void;
}

interface Given<Ask, Answer> {
  readonly ask: Ask;
  readonly settle: (answer: Answer | null) => void;
}

/** @param begin - takes an ask in hand, and calls `done` when it is answered */
export function createNewest<Ask, Answer>(
  begin: (ask: Ask, done: (answer: Answer) => void) => void,
): Newest<Ask, Answer> {
  let inHand: Given<Ask, Answer> | null = null;
  let waiting: Given<Ask, Answer> | null = null;
  const next = () => {
    if (inHand !== null || waiting === null) return;
    const own = waiting;
    [inHand, waiting] = [own, null];
    begin(own.ask, (answer) => {
      if (inHand !== own) return;
      inHand = null;
      own.settle(answer);
      next();
    });
  };
  return {
    give: (ask, settle) => {
      waiting?.settle(null);
      waiting = { ask, settle };
      next();
    },
    drop: (answer) => {
      const left = [inHand, waiting];
      [inHand, waiting] = [null, null];
      for (const each of left) each?.settle(answer);
    },
  };
}
