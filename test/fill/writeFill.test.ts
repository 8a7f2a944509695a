import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FillDocument } from "../../src/fill/result.ts";
import { writeFillDocument } from "../../src/fill/writeFill.ts";
import { everything, fillDocument, unitEntry } from "../support/fillDocument.ts";

/** The same document with the members of every object the other way round. */
function turned<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(turned) as Value;
  if (typeof value !== "object" || value === null) return value;
  const members = Object.entries(value).map(([key, member]) => [key, turned(member)]);
  return Object.fromEntries(members.reverse()) as Value;
}

const read = (document: FillDocument) => JSON.parse(writeFillDocument(document));

describe("layout", () => {
  it("is that of any other program that writes JSON with two spaces", () => {
    const text = writeFillDocument(everything);
    expect(text).toBe(`${JSON.stringify(JSON.parse(text), null, 2)}\n`);
  });

  it("loses nothing and adds nothing, but for the settled ends, which are for the program's own sheets", () => {
    const units = everything.units.map((unit) => ({
      ...unit,
      faces: unit.faces.map(({ settled: _, ...face }) => face),
    }));
    expect(read(everything)).toEqual({ ...everything, units });
  });

  it("does not depend on the order in which the members were made", () => {
    expect(writeFillDocument(turned(everything))).toBe(writeFillDocument(everything));
  });

  const unit = read(everything).units[0];
  it.each([
    { what: "document", value: read(everything), keys: "format version project units totals" },
    {
      what: "unit",
      value: unit,
      keys: "unit storey pours rooms faces corners reveals soffits ties fittings accessories bill totals causes problems",
    },
    { what: "room", value: unit.rooms[0], keys: "name kind area faces" },
    {
      what: "face",
      value: unit.faces[0],
      keys: "id walls room from to length height openings pieces unfilled",
    },
    { what: "opening", value: unit.faces[0].openings[0], keys: "id x width sill head formed" },
    { what: "plain piece", value: unit.faces[0].pieces[0], keys: "piece code family x z width height" },
    {
      what: "piece with all members",
      value: unit.faces[0].pieces[1],
      keys: "piece code family x z width height madeToMeasure reason firstOut zone",
    },
    { what: "unfilled", value: unit.faces[0].unfilled[0], keys: "x z width height problem" },
    { what: "corner", value: unit.corners[0], keys: "piece code family from to" },
    { what: "reveal", value: unit.reveals[0], keys: "opening side pieces" },
    {
      what: "soffit",
      value: unit.soffits[0],
      keys: "room outline holes pieces unfilled props along height counts",
    },
    { what: "tie", value: unit.ties[0], keys: "at heights faces length code" },
    { what: "fitting", value: unit.fittings[0], keys: "piece code family face x z" },
    { what: "accessory", value: unit.accessories[0], keys: "code family quantity rule" },
    { what: "bill line", value: unit.bill[0], keys: "code family quantity mass area" },
    { what: "problem", value: unit.problems[0], keys: "severity kind message where" },
    { what: "unit's totals", value: unit.totals, keys: "closures narrow fillers zones panels" },
    { what: "totals", value: read(everything).totals, keys: "closures narrow fillers zones panels" },
  ])("puts the members of a $what in the agreed order", ({ value, keys }) => {
    expect(Object.keys(value).join(" ")).toBe(keys);
  });
});

describe("numbers", () => {
  const areaOf = (area: number) =>
    read(fillDocument(unitEntry({ rooms: [{ name: "R", kind: "room", area, faces: [] }] }))).units[0].rooms[0]
      .area;
  const massOf = (mass: number) =>
    read(fillDocument(unitEntry({ bill: [{ code: "P", family: "wall-panel", quantity: 1, mass, area: 1 }] })))
      .units[0].bill[0].mass;
  const placeOf = (x: number) => writtenPlaces([[x, 0]])[0][0];
  const writtenPlaces = (outline: readonly (readonly [number, number])[]) =>
    read(
      fillDocument(
        unitEntry({
          soffits: [
            {
              room: "R",
              along: null,
              height: 2400,
              outline,
              holes: [],
              pieces: [],
              unfilled: [],
              props: [],
              counts: { closures: 0, fillers: 0, panels: 0, strips: 0 },
            },
          ],
        }),
      ),
    ).units[0].soffits[0].outline;

  it.each([
    { why: "half goes up", written: areaOf(1.00005), expected: 1.0001 },
    { why: "just under half goes down", written: areaOf(1.0000499), expected: 1 },
    { why: "the least area that shows", written: areaOf(0.00005), expected: 0.0001 },
    { why: "an area of four decimals stays", written: areaOf(11.5237), expected: 11.5237 },
    { why: "1.005 is just under half in binary and still goes up", written: massOf(1.005), expected: 1.01 },
    { why: "binary noise of a sum vanishes", written: massOf(0.1 + 0.2), expected: 0.3 },
    { why: "a mass of one decimal has no zero behind", written: massOf(356.4), expected: 356.4 },
    { why: "half goes away from zero on the left too", written: placeOf(-1.0005), expected: -1.001 },
    { why: "a coordinate keeps thousandths", written: placeOf(4050.1234), expected: 4050.123 },
  ])("$why", ({ written, expected }) => {
    expect(written).toBe(expected);
  });

  it.each([-0, -0.0004, 0.0004])("never writes minus zero for %d", (x) => {
    expect(Object.is(placeOf(x), 0)).toBe(true);
  });

  it("writes every thousandth exactly, whatever noise came with it", () => {
    const thousandths = fc.integer({ min: -60_000_000, max: 60_000_000 });
    const noise = fc.double({ min: -0.0004, max: 0.0004, noNaN: true });
    fc.assert(
      fc.property(thousandths, noise, (k, by) => {
        expect(placeOf(k / 1000 + by) * 1000).toBeCloseTo(k, 6);
        expect(String(placeOf(k / 1000 + by))).toMatch(/^-?\d+(\.\d{1,3})?$/);
      }),
      { seed: 7_301, numRuns: 300 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d, which JSON would turn into null", (area) => {
    expect(() => areaOf(area)).toThrow(RangeError);
  });
});
