// The panel at the right that is called and sent away; it pushes the plan aside and covers nothing.

import { ProjectsPanel } from "../desk/ProjectsPanel.tsx";
import { useScreen } from "../live/useWorkbench.tsx";
import { ProblemsList } from "./ProblemsList.tsx";
import { ThingsList } from "./ThingsList.tsx";

export function SidePanel() {
  const { panel } = useScreen();
  switch (panel) {
    case "problems":
      return <ProblemsList />;
    case "things":
      return <ThingsList />;
    case "projects":
      return <ProjectsPanel />;
    default:
      return null;
  }
}
