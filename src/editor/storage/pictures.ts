// The pictures under the units, taken out of the text of a project before it is stored and put back when it is read.
//
//   "image": "data:image/png;base64,…megabytes…"   ◀──▶   "image": "stored-picture:0"   and   0 ▶ data:image/…

import type { Project } from "../../plan/project.ts";
import { writeProject } from "../../plan/write.ts";

/** Pictures by place: the number of their unit in the project. */
export type Pictures = ReadonlyMap<string, string>;

export interface StoredText {
  readonly text: string;
  readonly pictures: Pictures;
}

const LEAST_LENGTH = 4096; // characters; what is shorter costs less where it stands
const markOf = (place: string): string => `stored-picture:${place}`;

/**
 * The text of a project without its pictures.
 *
 * @throws {RangeError} if a number in it is not finite
 */
export function takeOut(project: Project): StoredText {
  const pictures = new Map<string, string>();
  const units = project.units.map((unit, index) => {
    const image = unit.underlay?.image;
    if (typeof image !== "string" || image.length < LEAST_LENGTH) return unit;
    pictures.set(String(index), image);
    return { ...unit, underlay: { ...unit.underlay, image: markOf(String(index)) } };
  });
  const text = writeProject({ ...project, units });
  // A text that says a mark by itself could not be told from one put there: then all stays where it stands.
  const isClear = [...pictures.keys()].every((place) => text.split(quotedMark(place)).length === 2);
  return isClear ? { text, pictures } : { text: writeProject(project), pictures: new Map() };
}

/** The text with its pictures. A picture that is missing leaves its mark, which no reader takes for a picture. */
export function putBack({ text, pictures }: StoredText): string {
  let whole = text;
  for (const [place, image] of pictures) {
    whole = whole.split(quotedMark(place)).join(JSON.stringify(image));
  }
  return whole;
}

function quotedMark(place: string): string {
  return `"${markOf(place)}"`;
}
