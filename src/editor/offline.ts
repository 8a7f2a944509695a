// Keeps the whole page in the browser's own store, so that it opens on a site without a network.

import { registerSW } from "virtual:pwa-register";

/** Registers the service worker. A later version waits until the page is opened anew: nothing changes under the hand. */
export function keepOffline(): void {
  registerSW({ immediate: true });
}
