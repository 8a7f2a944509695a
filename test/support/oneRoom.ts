// A project file as somebody would write it down by hand.

/** One room of 3900 × 2900 with a door, as somebody would write it down. */
export const oneRoom = {
  format: "panelwright-project",
  version: 1,
  name: "One room",
  storey: { clearHeight: 2400, slab: 100 },
  kit: "demo" as string | object,
  units: [
    {
      id: "A",
      name: "One room",
      walls: [
        { id: "w1", from: [0, 0], to: [4000, 0], thickness: 100 },
        { id: "w2", from: [4000, 0], to: [4000, 3000], thickness: 100 },
        { id: "w3", from: [4000, 3000], to: [0, 3000], thickness: 100 },
        { id: "w4", from: [0, 3000], to: [0, 0], thickness: 100 },
      ],
      openings: [{ id: "d1", wall: "w1", at: 1500, width: 900, sill: 0, head: 2100 }],
      rooms: [{ name: "../Kitchen / Küche", at: [1500, 1200] }],
    },
  ],
};
