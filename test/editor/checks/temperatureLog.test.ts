// A log of temperatures as loggers export it and people paste it: read to the figure, or refused with the line.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pairsText, readPairs } from "../../../src/editor/checks/pairLines.ts";
import { readTemperatureLog } from "../../../src/editor/checks/temperatureLog.ts";
import { MOST_READINGS, readConcrete } from "../../../src/plan/concrete.ts";

const read = (text: string) => {
  const answer = readTemperatureLog(text);
  return answer.status === "read" ? answer.readings : answer.fault;
};

describe("a log of temperatures", () => {
  it.each([
    {
      why: "commas",
      text: "0,18.5\n1.5,21",
      wanted: [
        [0, 18.5],
        [1.5, 21],
      ],
    },
    {
      why: "semicolons with decimal commas",
      text: "0;18,5\n1,5;21",
      wanted: [
        [0, 18.5],
        [1.5, 21],
      ],
    },
    {
      why: "tabs, as from a spreadsheet",
      text: "0\t18.5\r\n2\t-1",
      wanted: [
        [0, 18.5],
        [2, -1],
      ],
    },
    {
      why: "blanks with decimal commas",
      text: "0,5 18,5\n1,5   21",
      wanted: [
        [0.5, 18.5],
        [1.5, 21],
      ],
    },
    { why: "a true minus", text: "0;−2", wanted: [[0, -2]] },
    {
      why: "units behind",
      text: "0 h, 18.5 °C\n4 h, 20 °C",
      wanted: [
        [0, 18.5],
        [4, 20],
      ],
    },
    {
      why: "a heading, a byte-order mark and empty lines",
      text: "\uFEFFtime (h);T\n\n0;18\n\n3;20\n",
      wanted: [
        [0, 18],
        [3, 20],
      ],
    },
    {
      why: "hours and minutes",
      text: "0:30,18\n26:45,20",
      wanted: [
        [0.5, 18],
        [26.75, 20],
      ],
    },
    {
      why: "dates, from the first line on",
      text: "2026-02-28 22:00,18\n2026-03-01T04:30:00,20",
      wanted: [
        [0, 18],
        [6.5, 20],
      ],
    },
    {
      why: "dates over a leap day",
      text: "2028-02-28 22:00;18\n2028-03-01 22:00;20",
      wanted: [
        [0, 18],
        [48, 20],
      ],
    },
    { why: "hour and temperature alike", text: "5;5", wanted: [[5, 5]] },
  ])("is read with $why", ({ text, wanted }) => {
    expect(read(text)).toEqual(wanted);
  });

  it.each([
    { why: "no figure", text: "0;18\n1;warm", line: 2, reason: "form" },
    { why: "three columns: nobody knows which is which", text: "0;18;19", line: 1, reason: "form" },
    { why: "commas between decimal commas", text: "0,5,18,5", line: 1, reason: "form" },
    { why: "one column", text: "18.5", line: 1, reason: "form" },
    { why: "a second heading", text: "h;T\nh;T\n0;18", line: 2, reason: "form" },
    { why: "a date that is none", text: "2026-02-30 10:00;18", line: 1, reason: "form" },
    { why: "a day before the month: anybody's guess", text: "04/03/2026 10:00;18", line: 1, reason: "form" },
    { why: "hours after dates", text: "2026-03-04 10:00;18\n4;20", line: 2, reason: "mixed" },
    { why: "a time that goes back", text: "0;18\n4;20\n3;21", line: 3, reason: "order" },
    { why: "a time twice", text: "0;18\n0;20", line: 2, reason: "order" },
    { why: "before placing", text: "-1;18", line: 1, reason: "hour" },
    { why: "later than any slab is watched", text: "0;18\n10001;20", line: 2, reason: "hour" },
    { why: "colder than any site", text: "0;-41", line: 1, reason: "temperature" },
    { why: "hotter than steam", text: "0;101", line: 1, reason: "temperature" },
    { why: "nothing", text: " \n\n", line: 1, reason: "empty" },
    { why: "a heading alone", text: "time;temperature", line: 1, reason: "empty" },
  ])("is refused for $why", ({ text, line, reason }) => {
    expect(read(text)).toMatchObject({ line, reason });
  });

  it("is refused with more readings than the project holds", () => {
    const lines = (count: number) => Array.from({ length: count }, (_, k) => `${k};20`).join("\n");
    expect(read(lines(MOST_READINGS))).toHaveLength(MOST_READINGS);
    expect(read(lines(MOST_READINGS + 1))).toMatchObject({ line: MOST_READINGS + 1, reason: "many" });
  });

  it("is what the project's reader takes, whenever it is read at all", () => {
    const figure = fc.double({ min: -60, max: 120, noNaN: true }).map((value) => value.toFixed(2));
    const line = fc
      .tuple(figure, fc.constantFrom(";", ",", "\t", " "), figure)
      .map((parts) => parts.join(""));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (lines) => {
        const answer = readTemperatureLog(lines.join("\n"));
        if (answer.status === "read") expect(readConcrete({ log: answer.readings }).status).toBe("ok");
      }),
      { seed: 8, numRuns: 400 },
    );
  });

  it("comes back from its own text", () => {
    const hours = fc.uniqueArray(fc.integer({ min: 0, max: 9000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(hours, fc.integer({ min: -400, max: 1000 }), (some, tenth) => {
        const readings = some.sort((a, b) => a - b).map((hour) => [hour / 4, tenth / 10] as const);
        expect(read(pairsText(readings))).toEqual(readings);
        expect(readPairs(pairsText(readings))).toEqual({ status: "read", pairs: readings });
      }),
      { seed: 9 },
    );
  });
});

describe("pairs of figures", () => {
  it.each([
    {
      why: "a third of an hour, as a logger's clock gives it",
      pairs: [
        [1 / 3, 18.5],
        [2 / 3, 19],
      ],
    },
    { why: "a second", pairs: [[1 / 3600, 18.5]] },
    { why: "the longest figure", pairs: [[1.2345678901234567e-6, 0.1 + 0.2]] },
    { why: "a figure that is written with an exponent", pairs: [[1e-7, 20]] },
  ] as const)("come back from their own text: $why", ({ pairs }) => {
    expect(readPairs(pairsText(pairs))).toEqual({ status: "read", pairs });
  });

  it("come back to the second after a log of clock times was taken", () => {
    const log = read("0:00;18\n0:20;19\n0:20:01;20");
    expect(Array.isArray(log) && read(pairsText(log))).toEqual(log);
  });

  it("are refused with the line that is none", () => {
    expect(readPairs("300;4\n\n600 nine")).toEqual({ status: "refused", line: 3, text: "600 nine" });
    expect(readPairs("")).toEqual({ status: "read", pairs: [] });
  });
});
