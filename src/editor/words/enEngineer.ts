// The English words of the elevation, the covers, the reasons, the nudges, the kit and the underlay.

export const engineerEnglish = {
  "tool.calibrate": "Set the scale of the underlay",
  "dimension.distance": "True distance",
  "step.calibrate": "set the scale of the underlay",
  "step.move-underlay": "move the underlay",
  "message.no-underlay": "There is no picture under this unit. Drop one on the plan first.",
  "message.beside-underlay": "Click on the picture, on a place whose distance from another you know.",
  "message.cannot-calibrate": "The picture cannot be scaled to that. Type a distance greater than nothing.",
} as const;
