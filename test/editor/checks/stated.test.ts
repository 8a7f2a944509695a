// What becomes of a change in the forms of loads and concrete: taken within the range the form shows, refused beyond it.

import { describe, expect, it } from "vitest";
import {
  type ConcreteField,
  concreteFallback,
  concreteTakes,
  LOAD_FIELDS,
  loadFallback,
  loadTakes,
  modelOf,
  pressureFields,
  SHORING_FIELDS,
  STRENGTH_FIELDS,
  shoringTakes,
  type Takes,
  TURN_FIELDS,
} from "../../../src/editor/checks/fields.ts";
import { type StatedName, type Tried, tried } from "../../../src/editor/checks/stated.ts";
import type { Json, JsonObject } from "../../../src/json/value.ts";
import { CONCRETE_CHOICES, MODEL_NEEDS, readConcrete } from "../../../src/plan/concrete.ts";
import { readLoads } from "../../../src/plan/loads.ts";

const concreteFields: readonly ConcreteField[] = [
  ...new Set([...CONCRETE_CHOICES.pressureModel.flatMap(pressureFields), ...STRENGTH_FIELDS, ...TURN_FIELDS]),
];

const SHORING = { shores: 2, reshores: 1, storeys: 5 };

interface Case {
  readonly name: StatedName;
  readonly member: string;
  readonly takes: Takes;
  /** What is said beside it, and the change that puts a value in. */
  readonly given: JsonObject;
  readonly change: (value: Json) => { readonly [member: string]: Json };
}

const cases: readonly Case[] = [
  ...concreteFields.map(
    (member): Case => ({
      name: "concrete",
      member,
      takes: concreteTakes(member),
      given: {},
      change: (value) => ({ [member]: value }),
    }),
  ),
  ...LOAD_FIELDS.map(
    (member): Case => ({
      name: "loads",
      member,
      takes: loadTakes(member),
      given: member === "motorisedCarts" ? { slabModel: "ACI 347" } : {},
      change: (value) => ({ [member]: value }),
    }),
  ),
  ...SHORING_FIELDS.map(
    (member): Case => ({
      name: "loads",
      member,
      takes: shoringTakes(member),
      given: {},
      change: (value) => ({ shoring: { ...SHORING, [member]: value } }),
    }),
  ),
];

describe("a figure in the forms", () => {
  const figures = cases.flatMap(({ takes, ...each }) =>
    takes.kind === "number" ? [{ ...each, least: takes.least, greatest: takes.greatest }] : [],
  );

  it.each(figures)("$name $member is taken from $least to $greatest and no further", (each) => {
    const { name, given, change, least, greatest } = each;
    const statusOf = (value: number) => tried(name, given, change(value)).status;
    expect([least, greatest].map(statusOf)).toEqual(["taken", "taken"]);
    expect([least - 1, greatest + 1].map(statusOf)).toEqual(["refused", "refused"]);
  });

  it("is among the fields wherever the reader knows a figure", () => {
    const read = readConcrete({});
    const known = read.status === "ok" ? Object.keys(read.value) : [];
    const asked = [...concreteFields, "log", "strengthTests"];
    expect(known.filter((member) => !asked.includes(member))).toEqual([]);
    const loads = readLoads({});
    const said = loads.status === "ok" ? Object.keys(loads.value) : [];
    expect(said.filter((member) => ![...LOAD_FIELDS, "shoring"].includes(member))).toEqual([]);
  });

  it("shows the default that the reader puts in, that of a model with the model", () => {
    expect(concreteFallback("density")).toBe(25);
    expect(concreteFallback("rate")).toBeNull();
    expect(loadFallback("concreteDensity", {})).toBe(25);
    expect(loadFallback("concreteDensity", { slabModel: "ACI 347" })).toBe(24);
  });
});

describe("a choice in the forms", () => {
  const choices = cases.flatMap(({ takes, ...each }) =>
    takes.kind === "choice" ? [{ ...each, choices: takes.choices }] : [],
  );

  it.each(choices)("$name $member takes each of its words", ({ name, given, change, choices: words }) => {
    for (const word of words) expect(tried(name, given, change(word)).status).not.toBe("refused");
    expect(tried(name, given, change("something else")).status).toBe("refused");
  });

  it.each(CONCRETE_CHOICES.pressureModel)(
    "%s waits for all that it asks for, and is then one step",
    (model) => {
      const needs = MODEL_NEEDS[model];
      expect(pressureFields(model)).toEqual(expect.arrayContaining([...needs]));
      let answer = tried("concrete", { note: "kept" }, { pressureModel: model });
      if (needs.length === 0) expect(answer.status).toBe("taken");
      const values: { readonly [member: string]: Json } = {
        rate: 1,
        temperature: 15,
        cement: "blend",
        slump: 100,
        consistence: "F5",
        settingEnd: 6,
      };
      for (const [index, need] of needs.entries()) {
        expect(answer).toMatchObject({ status: "waiting", lacks: needs.slice(index) });
        answer = tried("concrete", nextOf(answer), { [need]: values[need] });
      }
      expect(answer).toMatchObject({ status: "taken", next: { note: "kept", pressureModel: model } });
      expect(modelOf(nextOf(answer))).toBe(model);
    },
  );

  it("waits with storeys on shores until it is said how many", () => {
    const begun = tried("loads", {}, { shoring: {} });
    expect(begun).toMatchObject({ status: "waiting", lacks: ["shoring.shores", "shoring.storeys"] });
    const more = tried("loads", nextOf(begun), { shoring: { shores: 2 } });
    expect(more).toMatchObject({ status: "waiting", lacks: ["shoring.storeys"] });
    expect(tried("loads", nextOf(more), { shoring: { shores: 2, storeys: 9 } }).status).toBe("taken");
  });

  it("refuses carts that a model has no load for, and says why", () => {
    const answer = tried("loads", {}, { motorisedCarts: true });
    expect(answer.status === "refused" && answer.issue.expected).toContain("ACI 347");
  });
});

describe("what is taken out", () => {
  it("leaves the default in its place and all else where it was", () => {
    const answer = tried("concrete", { density: 20, rate: 2 }, { density: undefined });
    expect(answer).toEqual({ status: "taken", next: { rate: 2 } });
  });

  it("waits where a model cannot do without it", () => {
    const given = { pressureModel: "CIRIA 108", rate: 2, temperature: 15, cement: "blend" };
    expect(tried("concrete", given, { rate: undefined })).toMatchObject({ lacks: ["rate"] });
  });

  it("can be a mistake the file came with, while others are left", () => {
    const answer = tried("concrete", { density: -3, slump: "wet" }, { density: 24 });
    expect(answer).toEqual({ status: "waiting", next: { density: 24, slump: "wet" }, lacks: [] });
    expect(tried("concrete", nextOf(answer), { slump: undefined }).status).toBe("taken");
  });
});

function nextOf(answer: Tried): JsonObject {
  if (answer.status === "refused") throw new Error(answer.issue.expected);
  return answer.next;
}
