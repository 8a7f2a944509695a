// Keeps the whole page in the browser's own store, so that it opens on a site without a network.

import { registerSW } from "virtual:pwa-register";
import { newVersion } from "./desk/newVersion.ts";

/** Registers the service worker. A later version waits until somebody loads it: nothing changes under the hand. */
export function keepOffline(): void {
  const load = registerSW({
    immediate: true,
    onNeedRefresh: () => newVersion.set(() => () => void load(true)),
  });
}
