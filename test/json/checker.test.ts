import { describe, expect, it } from "vitest";
import {
  andThen,
  anyObject,
  type Checker,
  emptyReport,
  fail,
  list,
  number,
  oneOf,
  pair,
  table,
  text,
  textOr,
  top,
  truth,
  warn,
} from "../../src/json/checker.ts";
import { formatIssue, MAX_ISSUES } from "../../src/json/issue.ts";
import { byMember, object, optional, required } from "../../src/json/members.ts";
import type { Json } from "../../src/json/value.ts";

function run<T>(checker: Checker<T>, value: Json) {
  const report = emptyReport();
  return { value: checker.read(value, top(report)), ...report };
}

const point = pair("a point [x, y]", number(), number());
const nail = object("a nail", { kind: required(oneOf("nail")), length: required(number({ least: 1 })) });
const hook = object("a hook", { kind: required(oneOf("hook")), left: optional(truth, null) });
const words = { pattern: /\//, words: "without /" };

describe("what a checker accepts", () => {
  it.each<{ why: string; checker: Checker<unknown>; value: Json; gives: unknown }>([
    { why: "a number at its least", checker: number({ least: 2, greatest: 3 }), value: 2, gives: 2 },
    { why: "a number at its greatest", checker: number({ least: 2, greatest: 3 }), value: 3, gives: 3 },
    { why: "a fraction where whole is not asked", checker: number(), value: 0.5, gives: 0.5 },
    { why: "minus zero is zero", checker: number({ least: 0 }), value: -0, gives: 0 },
    { why: "the empty text", checker: text({ greatest: 3 }), value: "", gives: "" },
    { why: "a text of full length", checker: text({ greatest: 3 }), value: "abc", gives: "abc" },
    { why: "false is a truth value", checker: truth, value: false, gives: false },
    { why: "a number among literals", checker: oneOf(1, 2), value: 2, gives: 2 },
    { why: "an empty list", checker: list(truth, { what: "a list", greatest: 1 }), value: [], gives: [] },
    { why: "a pair", checker: point, value: [1, 2], gives: [1, 2] },
    { why: "a member left out", checker: hook, value: { kind: "hook" }, gives: { kind: "hook", left: null } },
    {
      why: "a choice by member",
      checker: byMember("kind", { nail, hook }),
      value: { kind: "nail", length: 1 },
      gives: { kind: "nail", length: 1 },
    },
    {
      why: "a text where a text or an object may stand",
      checker: textOr(text({ greatest: 9 }), anyObject),
      value: "a",
      gives: "a",
    },
    {
      why: "an object there",
      checker: textOr(text({ greatest: 9 }), anyObject),
      value: { a: 1 },
      gives: { a: 1 },
    },
    { why: "a step after", checker: andThen(number(), (value) => value * 2), value: 4, gives: 8 },
  ])("$why", ({ checker, value, gives }) => {
    const result = run(checker, value);
    expect(result.issues).toEqual([]);
    expect(result.warnings).toEqual([]);
    expect(result.value).toEqual(gives);
    expect(Object.is(result.value, -0)).toBe(false);
  });
});

describe("what a checker reports", () => {
  it.each<{ why: string; checker: Checker<unknown>; value: Json; says: string[] }>([
    {
      why: "a word for a number",
      checker: number({ least: 20, greatest: 2000, unit: "mm" }),
      value: "100",
      says: ['the file: expected a number from 20 to 2000 mm, found "100".'],
    },
    {
      why: "infinity",
      checker: number(),
      value: Infinity,
      says: ["the file: expected a number, found Infinity."],
    },
    { why: "not a number", checker: number(), value: NaN, says: ["the file: expected a number, found NaN."] },
    {
      why: "a fraction where whole is asked",
      checker: number({ least: 0, whole: true }),
      value: 0.5,
      says: ["the file: expected a whole number of at least 0, found 0.5."],
    },
    {
      why: "whole but beyond what is exact",
      checker: number({ whole: true }),
      value: 2 ** 53,
      says: ["the file: expected a whole number, found 9007199254740992."],
    },
    {
      why: "just under the least",
      checker: number({ least: 1 }),
      value: 0.999,
      says: ["the file: expected a number of at least 1, found 0.999."],
    },
    {
      why: "just over the greatest",
      checker: number({ greatest: 1 }),
      value: 1.001,
      says: ["the file: expected a number of at most 1, found 1.001."],
    },
    {
      why: "a text too long",
      checker: text({ greatest: 2 }),
      value: "abc",
      says: ['the file: expected a text of up to 2 characters, found "abc".'],
    },
    {
      why: "a text too short",
      checker: text({ least: 1, greatest: 2 }),
      value: "",
      says: ['the file: expected a text of 1 to 2 characters, found "".'],
    },
    {
      why: "a character that may not stand",
      checker: text({ what: "an id", greatest: 9, not: words }),
      value: "a/b",
      says: ['the file: expected an id of up to 9 characters without /, found "a/b".'],
    },
    { why: "one for true", checker: truth, value: 1, says: ["the file: expected true or false, found 1."] },
    {
      why: "a word not among the words",
      checker: oneOf("a", "b", "c"),
      value: "d",
      says: ['the file: expected "a", "b" or "c", found "d".'],
    },
    {
      why: "null for a list",
      checker: list(truth, { what: "a list of truths", greatest: 2 }),
      value: null,
      says: ["the file: expected a list of truths (up to 2), found null."],
    },
    {
      why: "a list too long is not looked into",
      checker: list(truth, { what: "a list", greatest: 2 }),
      value: [1, 1, 1],
      says: ["the file: expected a list (up to 2), found [1, 1, 1]."],
    },
    {
      why: "every bad item of a list",
      checker: list(truth, { what: "a list", greatest: 3 }),
      value: [1, true, null],
      says: ["[0]: expected true or false, found 1.", "[2]: expected true or false, found null."],
    },
    {
      why: "three numbers for a pair",
      checker: point,
      value: [1, 2, 3],
      says: ["the file: expected a point [x, y], found [1, 2, 3]."],
    },
    {
      why: "both halves of a pair",
      checker: point,
      value: ["a", {}],
      says: [
        '[0]: expected a number, found "a".',
        "[1]: expected a number, found an object with no members.",
      ],
    },
    {
      why: "a list for an object",
      checker: nail,
      value: [],
      says: ["the file: expected a nail (an object), found an empty list."],
    },
    {
      why: "a member missing and one wrong",
      checker: nail,
      value: { length: 0 },
      says: ['kind: expected "nail", found nothing.', "length: expected a number of at least 1, found 0."],
    },
    {
      why: "null is not left out",
      checker: hook,
      value: { kind: "hook", left: null },
      says: ["left: expected true or false, found null."],
    },
    {
      why: "an inherited name is not a case",
      checker: byMember("kind", { nail, hook }),
      value: { kind: "toString" },
      says: ['kind: expected one of "nail", "hook", found "toString".'],
    },
    {
      why: "a table's name and value",
      checker: table("a stock", text({ greatest: 1 }), number()),
      value: { ab: 1, c: "x" },
      says: ['ab: expected a text of up to 1 characters, found "ab".', 'c: expected a number, found "x".'],
    },
    {
      why: "a number where a text or an object may stand",
      checker: textOr(text({ greatest: 9 }), anyObject),
      value: 3,
      says: ["the file: expected a text of up to 9 characters or an object, found 3."],
    },
    {
      why: "a step after",
      checker: andThen(number(), (value, place) => fail(place, "another", value)),
      value: 4,
      says: ["the file: expected another, found 4."],
    },
  ])("$why", ({ checker, value, says }) => {
    const result = run(checker, value);
    expect(result.value).toBeUndefined();
    expect(result.issues.map(formatIssue)).toEqual(says);
  });

  it("keeps members it does not know and warns of each", () => {
    const result = run(nail, { colour: "blue", kind: "nail", length: 2, toString: null });
    expect(result.value).toEqual({ kind: "nail", length: 2, extra: { colour: "blue", toString: null } });
    expect(result.warnings.map((issue) => issue.path)).toEqual(["colour", "toString"]);
    expect(result.issues).toEqual([]);
  });

  it("looks only at own members", () => {
    const result = run(object("a thing", { valueOf: required(truth) }), {});
    expect(result.issues).toEqual([{ path: "valueOf", expected: "true or false", found: "nothing" }]);
  });

  it("makes tables without inherited members", () => {
    const { value } = run(table("a stock", text({ greatest: 9 }), number()), { a: 1 });
    expect(value?.toString).toBeUndefined();
    expect(value?.a).toBe(1);
  });

  it("stops collecting at the limit", () => {
    const many = run(list(truth, { what: "a list", greatest: 1000 }), Array(1000).fill(0));
    expect(many.issues.length).toBe(MAX_ISSUES);
  });

  it("says one thing about one place", () => {
    const report = emptyReport();
    fail(top(report), "this", 1);
    fail(top(report), "that", 1);
    warn(top(report), "something else", 1);
    expect(report.issues.map((issue) => issue.expected)).toEqual(["this"]);
    expect(report.warnings.map((issue) => issue.expected)).toEqual(["something else"]);
  });
});
