// Striking times as the tables of two standards give them.

import { describe, expect, it } from "vitest";
import { type Aci347Member, aci347Striking } from "../../src/check/aci347Striking.ts";
import { type Is456Member, is456Striking } from "../../src/check/is456Striking.ts";
import { value } from "../support/answers.ts";

const IS456 = "IS 456:2000, 11.3.1, at dreamhomeguide.in/stripping-time-of-formworks";
const ACI_SLAB = "concreteconstruction.net/how-to/safe-time-to-strip-a-slab_o";
const ACI_TABLE = "concreteconstruction.net/how-to/when-to-strip-forms_o, heads of its columns exchanged";
const ACI_MEMORY = "from memory of ACI 347";

const DAY = 24;
const FOOT = 304.8;

describe(`IS 456 (${IS456})`, () => {
  it.each<{ id: string; member: Is456Member; span: number; days: number }>([
    { id: "T28", member: "slab-props", span: 4000, days: 7 },
    { id: "T28", member: "slab-props", span: 5000, days: 14 },
    { id: "T28", member: "beam-props", span: 5000, days: 14 },
    { id: "T28", member: "beam-props", span: 7000, days: 21 },
    { id: "limit", member: "slab-props", span: 4500, days: 7 },
    { id: "limit", member: "beam-props", span: 6000, days: 14 },
    { id: "forms", member: "slab-soffit", span: 5000, days: 3 },
    { id: "forms", member: "beam-soffit", span: 5000, days: 7 },
  ])("$id: $member over $span mm stay $days days", ({ member, span, days }) => {
    expect(value(is456Striking(member, span))).toEqual({ from: days * DAY, to: days * DAY });
  });

  it("vertical faces stay 16 to 24 hours", () => {
    expect(value(is456Striking("vertical-face", 3000))).toEqual({ from: 16, to: 24 });
  });
});

describe("ACI 347, concrete above 50 °F", () => {
  it.each<{
    id: string;
    source: string;
    member: Aci347Member;
    feet: number;
    isLiveGreater: boolean;
    days: number;
  }>([
    { id: "T29", source: ACI_SLAB, member: "one-way-slab", feet: 18, isLiveGreater: false, days: 7 },
    { id: "T30", source: ACI_TABLE, member: "one-way-slab", feet: 8, isLiveGreater: false, days: 4 },
    { id: "T30", source: ACI_TABLE, member: "one-way-slab", feet: 25, isLiveGreater: false, days: 10 },
    { id: "T30", source: ACI_TABLE, member: "beam-soffit", feet: 15, isLiveGreater: true, days: 7 },
    { id: "table", source: ACI_TABLE, member: "beam-soffit", feet: 8, isLiveGreater: false, days: 7 },
    { id: "table", source: ACI_TABLE, member: "beam-soffit", feet: 25, isLiveGreater: false, days: 21 },
    { id: "table", source: ACI_TABLE, member: "beam-soffit", feet: 25, isLiveGreater: true, days: 14 },
    { id: "table", source: ACI_TABLE, member: "one-way-slab", feet: 8, isLiveGreater: true, days: 3 },
    { id: "table", source: ACI_TABLE, member: "joist-form-to-30-in", feet: 8, isLiveGreater: false, days: 3 },
    {
      id: "table",
      source: ACI_TABLE,
      member: "joist-form-over-30-in",
      feet: 8,
      isLiveGreater: true,
      days: 4,
    },
    { id: "table", source: ACI_MEMORY, member: "vertical", feet: 8, isLiveGreater: true, days: 0.5 },
  ])("$id: $member of $feet ft, live greater: $isLiveGreater, $days days ($source)", (row) => {
    const { member, feet, isLiveGreater, days } = row;
    const input = { member, span: feet * FOOT, isLiveGreater, shoresUndisturbed: false };
    expect(value(aci347Striking(input))).toBe(days * DAY);
  });

  it.each<{ member: Aci347Member; feet: number; isLiveGreater: boolean; days: number; source: string }>([
    { member: "one-way-slab", feet: 8, isLiveGreater: false, days: 3, source: ACI_TABLE },
    { member: "one-way-slab", feet: 18, isLiveGreater: false, days: 3.5, source: ACI_TABLE },
    { member: "beam-soffit", feet: 25, isLiveGreater: false, days: 10.5, source: ACI_TABLE },
    { member: "one-way-slab", feet: 18, isLiveGreater: true, days: 4, source: ACI_TABLE },
  ])("$member of $feet ft whose shores stay: $days days ($source)", (row) => {
    const { member, feet, isLiveGreater, days } = row;
    const input = { member, span: feet * FOOT, isLiveGreater, shoresUndisturbed: true };
    expect(value(aci347Striking(input))).toBe(days * DAY);
  });

  it("never lets a member with little live load go before one with much", () => {
    for (const member of ["beam-soffit", "one-way-slab"] as const) {
      for (const span of [2000, 3000, 4500, 6000, 9000]) {
        const time = (isLiveGreater: boolean) =>
          value(aci347Striking({ member, span, isLiveGreater, shoresUndisturbed: false }));
        expect(time(false)).toBeGreaterThan(time(true));
      }
    }
  });
});
