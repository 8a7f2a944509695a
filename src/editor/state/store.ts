// The one place where the page's state is held. Made for `useSyncExternalStore`: `get` returns the same object until
// `set` has given another.

export interface Store<State> {
  readonly get: () => State;
  /** Replaces the state by what `change` makes of it. The same object back means no change and wakes nobody. */
  readonly set: (change: (state: State) => State) => void;
  /** Calls `listener` after every change until the function returned is called. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function createStore<State>(first: State): Store<State> {
  let state = first;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set: (change) => {
      const next = change(state);
      if (Object.is(next, state)) return;
      state = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe: (listener) => {
      // Wrapped, so that one function subscribed twice is two subscriptions.
      const call = () => listener();
      listeners.add(call);
      return () => {
        listeners.delete(call);
      };
    },
  };
}
