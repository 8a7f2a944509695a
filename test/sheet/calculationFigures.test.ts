// How a calculation sheet writes a part of a limit.

import { describe, expect, it } from "vitest";
import { percent } from "../../src/sheet/calculations/figures.ts";

describe("a part of a limit", () => {
  it.each([
    { why: "to a tenth", part: 0.2183, wanted: "21.8 %" },
    { why: "all of it", part: 1, wanted: "100.0 %" },
    { why: "a little less than all is rounded as any other", part: 0.9999, wanted: "100.0 %" },
    { why: "a little more is over and does not read as all of it", part: 1.00002, wanted: "100.1 %" },
    { why: "far over", part: 1.234, wanted: "123.4 %" },
  ])("$why", ({ part, wanted }) => {
    expect(percent(part, "en")).toBe(wanted);
  });
});
