// A sound project file and a way to spoil one place in it with any text, JSON or not.

export type Keys = readonly (string | number)[];

/** Holds one of everything a file may hold. */
export const SOUND = {
  format: "panelwright-project",
  version: 1,
  name: "Row of houses",
  revision: "B",
  language: "en",
  storey: { clearHeight: 2400, slab: 100 },
  kit: "demo",
  units: [
    {
      id: "A",
      name: "Type A",
      walls: [
        { id: "w1", from: [0, 0], to: [7200, 0], thickness: 100, justify: "centre" },
        { id: "w2", from: [0, 0], to: [0, 4000], thickness: 150 },
      ],
      openings: [{ id: "d1", wall: "w1", at: 1200, width: 900, sill: 0, head: 2100, formed: "band" }],
      rooms: [{ name: "Kitchen", at: [1500, 1200], kind: "room", soffitDrop: 0 }],
      slabs: [
        {
          id: "b1",
          outline: [
            [0, 0],
            [900, 0],
            [900, 900],
          ],
        },
      ],
      slabOpenings: [
        {
          id: "o1",
          outline: [
            [100, 100],
            [200, 100],
            [200, 200],
          ],
        },
      ],
      services: [
        {
          id: "s1",
          path: [
            [0, 600],
            [900, 600],
          ],
          clearance: 60,
        },
      ],
      controlLines: [{ id: "X1", from: [500, 0], to: [500, 9000] }],
      pinned: [{ wall: "w1", from: 200, widths: [600, 600, 450] }],
    },
    { id: "B", walls: [] },
  ],
  pours: [
    { id: "p1", name: "Level 1 west", unit: "A", mirror: false, day: 1 },
    { id: "p2", unit: "B", mirror: true, storey: { clearHeight: 2600, slab: 0 } },
  ],
  stock: { "P-60": 40 },
  buy: true,
  objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
  concrete: { density: 24 },
  loads: {},
} as const;

const MARK = "the one place to spoil";

/** The file with the value at `keys` replaced by a raw text; an unknown last key adds a member. */
export function spoiled(keys: Keys, raw: string): string {
  const file: unknown = JSON.parse(JSON.stringify(SOUND));
  return JSON.stringify(replaced(file, keys)).replace(`"${MARK}"`, () => raw);
}

/** The file without the member at `keys`. */
export function without(keys: Keys): string {
  return JSON.stringify(JSON.parse(spoiled(keys, `"${MARK}"`)), (_, value) =>
    value === MARK ? undefined : value,
  );
}

function replaced(value: unknown, [key, ...rest]: Keys): unknown {
  if (key === undefined) return MARK;
  if (Array.isArray(value)) return value.map((each, index) => (index === key ? replaced(each, rest) : each));
  if (typeof value !== "object" || value === null) throw new RangeError(`no member ${key} here`);
  const members: { readonly [name: string]: unknown } = { ...value };
  return { ...members, [key]: replaced(members[key], rest) };
}
