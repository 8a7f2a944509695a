import fc from "fast-check";
import { expect, it } from "vitest";
import { angleBetween } from "../../src/geom/angle.ts";

it.each([
  { why: "straight on", a: [1, 0], b: [3, 0], angle: 0 },
  { why: "a quarter turn left", a: [1, 0], b: [0, 0.2], angle: 90 },
  { why: "a half turn", a: [1, 1], b: [-5, -5], angle: 180 },
  { why: "a quarter turn right", a: [0, 7], b: [2, 0], angle: 270 },
])("is exact for $why", ({ a, b, angle }) => {
  expect(angleBetween(a[0]!, a[1]!, b[0]!, b[1]!)).toBe(angle);
});

it("agrees with the arctangent of the machine to 1e-9 degrees", () => {
  const part = fc.double({ min: -1e5, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(part, part, part, part, (ax, ay, bx, by) => {
      fc.pre(Math.hypot(ax, ay) > 1e-3 && Math.hypot(bx, by) > 1e-3);
      const degrees = (Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * 180) / Math.PI;
      const angle = angleBetween(ax, ay, bx, by);
      const apart = Math.abs(angle - (degrees < 0 ? degrees + 360 : degrees));
      expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-9);
      expect(angle).toBeGreaterThanOrEqual(0);
      expect(angle).toBeLessThan(360);
    }),
    { seed: 31, numRuns: 2000 },
  );
});
