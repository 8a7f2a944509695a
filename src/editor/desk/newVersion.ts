// Whether a later version of the page has been fetched and waits: the way to load it, or null.

import { createStore } from "../state/store.ts";

export const newVersion = createStore<(() => void) | null>(null);
