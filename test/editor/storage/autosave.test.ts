// The autosave: every step is written, the newest last, one write at a time.

import { describe, expect, it } from "vitest";
import { createAutosave, type SaveState } from "../../../src/editor/storage/autosave.ts";
import type { StorageFault } from "../../../src/editor/storage/database.ts";
import type { PlanDocument } from "../../../src/plan/document.ts";
import { documentOf, twoRooms } from "../../plan/editFixture.ts";

const kept = documentOf(twoRooms());
const step = (name: string): PlanDocument => ({ ...kept, name });

/** A record that answers when the test says so. */
function record() {
  const begun: string[] = [];
  const answers: ((fault: StorageFault | null) => void)[] = [];
  const autosave = createAutosave((document) => {
    begun.push(document.name);
    return new Promise((resolve) => answers.push(resolve));
  }, kept);
  const states: SaveState["status"][] = [];
  autosave.state.subscribe(() => states.push(autosave.state.get().status));
  const answer = async (fault: StorageFault | null = null) => {
    answers.shift()?.(fault);
    await turn();
  };
  return { autosave, begun, states, answer };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

describe("a step", () => {
  it("is written before anything else has a turn, and said to be saved only when it is", async () => {
    const { autosave, begun, states, answer } = record();
    autosave.changed(step("a"));
    expect(autosave.state.get().status).toBe("saving");
    await Promise.resolve();
    await Promise.resolve();
    expect(begun).toEqual(["a"]);
    await turn();
    expect(states).toEqual(["saving"]);
    await answer();
    expect(states).toEqual(["saving", "saved"]);
  });

  it("that follows in the same turn shares the write; those during a write share the next", async () => {
    const { autosave, begun, states, answer } = record();
    autosave.changed(step("a"));
    autosave.changed(step("b"));
    await turn();
    for (const name of ["c", "d", "e"]) autosave.changed(step(name));
    await answer();
    expect(begun).toEqual(["b", "e"]);
    expect(states).toEqual(["saving"]);
    await answer();
    expect(await autosave.settled()).toEqual({ status: "saved" });
    expect(states).toEqual(["saving", "saved"]);
  });

  it("that is none writes nothing", async () => {
    const { autosave, begun, states } = record();
    autosave.changed(kept);
    await turn();
    expect([begun, states]).toEqual([[], []]);
  });

  it("taken back during its write is written back", async () => {
    const { autosave, begun, answer } = record();
    autosave.changed(step("a"));
    await turn();
    autosave.changed(kept);
    await answer();
    await answer();
    expect(begun).toEqual(["a", kept.name]);
    expect(autosave.state.get().status).toBe("saved");
  });
});

describe("a failure", () => {
  it.each([{ kind: "full" }, { kind: "failed", reason: "?" }, { kind: "unavailable", reason: "?" }] as const)(
    "of kind $kind is said, and the next step tries again",
    async (fault) => {
      const { autosave, begun, answer } = record();
      autosave.changed(step("a"));
      await turn();
      await answer(fault);
      expect(autosave.state.get()).toEqual({ status: "failed", fault });
      autosave.changed(step("b"));
      await turn();
      await answer();
      expect(begun).toEqual(["a", "b"]);
      expect(autosave.state.get().status).toBe("saved");
    },
  );

  it.each([{ kind: "conflict", revision: 4 }, { kind: "gone" }] as const)(
    "of kind $kind stands until somebody decides",
    async (fault) => {
      const { autosave, begun, answer } = record();
      autosave.changed(step("a"));
      await turn();
      await answer(fault);
      autosave.changed(step("b"));
      await turn();
      expect(begun).toEqual(["a"]);
      expect(autosave.state.get()).toEqual({ status: "failed", fault });
      autosave.force();
      await turn();
      await answer();
      expect(begun).toEqual(["a", "b"]);
      expect(autosave.state.get().status).toBe("saved");
    },
  );
});

describe("a write that breaks down", () => {
  it("is a failure that is said, and the next step tries again", async () => {
    let isBroken = true;
    const autosave = createAutosave(async () => {
      if (isBroken) throw new TypeError("a part of the browser is missing");
      return null;
    }, kept);
    autosave.changed(step("a"));
    expect(await autosave.settled()).toMatchObject({ status: "failed", fault: { kind: "failed" } });
    isBroken = false;
    autosave.changed(step("b"));
    expect(await autosave.settled()).toEqual({ status: "saved" });
  });
});

describe("another document taken as kept", () => {
  it("is not written, and what becomes of the write in hand does not matter", async () => {
    const { autosave, begun, answer } = record();
    autosave.changed(step("mine"));
    await turn();
    autosave.rest(step("theirs"));
    await answer({ kind: "conflict", revision: 2 });
    expect(autosave.state.get().status).toBe("saved");
    expect(begun).toEqual(["mine"]);
  });

  it("is written when that is forced", async () => {
    const { autosave, begun, answer } = record();
    autosave.rest(step("new"));
    autosave.force();
    await turn();
    await answer();
    expect(begun).toEqual(["new"]);
  });
});
