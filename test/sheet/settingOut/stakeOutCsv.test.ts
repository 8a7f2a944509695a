import { describe, expect, it } from "vitest";
import { settingOutOf } from "../../../src/sheet/settingOut/settingOut.ts";
import { stakeOutCsv } from "../../../src/sheet/settingOut/stakeOutCsv.ts";
import { filled, sampleProject } from "../../support/samples.ts";

describe("the stake-out list", () => {
  it("has metres with three decimals in both axis orders, point after point, then the pins", () => {
    const text = stakeOutCsv({
      points: [
        { id: "K1", kind: "control", at: [650, 600], room: null, open: [0, 0] },
        { id: "1", kind: "corner", at: [10850, 7], room: "Bath, small", open: [1, 1] },
        { id: "2", kind: "jamb", at: [0, 12_000], room: "=1+1", open: [1, 0] },
      ],
      pins: [{ at: [100, 450], face: "A/f1", movedOff: [] }],
    });
    expect(text.split("\r\n")).toEqual([
      "point,what,room,easting_m,northing_m,northing_first_m,easting_second_m,class",
      "K1,control,,0.650,0.600,0.600,0.650,A",
      '1,corner,"Bath, small",10.850,0.007,0.007,10.850,A',
      "2,jamb,'=1+1,0.000,12.000,12.000,0.000,B",
      "P1,pin,,0.100,0.450,0.450,0.100,C",
      "",
    ]);
  });

  it("says of the sample room what was worked out by hand", () => {
    const project = sampleProject("one-room");
    const layout = settingOutOf(filled(project).units[0]!, project.units[0]!, false);
    const rows = stakeOutCsv(layout).split("\r\n");
    // 3000 by 3600 clear in walls of 100; the door's jambs are 700 and 1600 from the outer corner.
    for (const row of ["0.100,0.100", "0.100,3.700", "3.100,3.700", "3.100,0.100", "3.200,3.800"])
      expect(rows.some((one) => one.includes(`,${row},`))).toBe(true);
    expect(rows.filter((one) => one.includes(",jamb,")).map((one) => one.split(",").slice(3, 5))).toEqual([
      ["1.600", "0.100"],
      ["0.700", "0.100"],
    ]);
  });
});
