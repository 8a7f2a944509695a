// Puts the editor on the page, and keeps the page usable without a network.

import { createElement } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./editor/App.tsx";
import { keepOffline } from "./editor/offline.ts";

const root = document.getElementById("root");
if (root !== null) createRoot(root).render(createElement(App));
keepOffline();
