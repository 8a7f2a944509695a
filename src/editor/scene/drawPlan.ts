// The whole plan, from the ground up, as one drawing.

import { drawConcrete } from "./concrete.ts";
import { drawPieces } from "./drawPieces.ts";
import { drawSoffit } from "./drawSoffit.ts";
import { drawTies } from "./drawTies.ts";
import { drawLabels } from "./labels.ts";
import { drawControlLines, drawServices, drawSlabs } from "./lines.ts";
import { drawJambs, drawOpenings } from "./openings.ts";
import { drawOverall } from "./overall.ts";
import type { Pen } from "./pen.ts";
import { drawRings } from "./rings.ts";
import { drawRoomNames, drawWallNames } from "./rooms.ts";
import type { Scene } from "./scene.ts";

export function drawPlan(pen: Pen, scene: Scene): void {
  drawSlabs(pen, scene);
  drawSoffit(pen, scene);
  drawConcrete(pen, scene);
  drawOpenings(pen, scene);
  drawJambs(pen, scene);
  drawPieces(pen, scene);
  drawTies(pen, scene);
  drawWallNames(pen, scene);
  drawServices(pen, scene);
  drawOverall(pen, scene);
  drawControlLines(pen, scene);
  drawRoomNames(pen, scene);
  drawLabels(pen, scene);
  drawRings(pen, scene);
}
