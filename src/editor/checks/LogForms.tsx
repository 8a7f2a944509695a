// The log of the slab's temperature and the tests of the mix, as texts that are taken into the project.

import { LOG_RANGES, MOST_READINGS, type Reading, readConcrete } from "../../plan/concrete.ts";
import { PairsBox } from "./PairsBox.tsx";
import { pairsText, readPairs } from "./pairLines.ts";
import { rangeText } from "./StatedField.tsx";
import { readTemperatureLog } from "./temperatureLog.ts";
import { type CheckSpeech, useCheckWords } from "./useCheckWords.ts";
import { useStated } from "./useStated.ts";

type Pairs = readonly (readonly [number, number])[];

export function LogForms() {
  const speech = useCheckWords();
  const { w, figure } = speech;
  const form = useStated("concrete");
  const log = keptPairs(form.values.log, "log");
  const tests = keptPairs(form.values.strengthTests, "strengthTests");
  const takeLog = (text: string): string | null => {
    const read = readTemperatureLog(text);
    if (read.status === "refused") return faultText(read.fault, speech);
    form.change({ log: read.readings });
    return null;
  };
  const takeTests = (text: string): string | null => {
    const read = readPairs(text);
    if (read.status === "refused") return w("log-fault.form", { line: read.line, text: read.text });
    form.change({ strengthTests: read.pairs });
    return null;
  };
  const strengths = tests.map(([, strength]) => strength);
  return (
    <>
      <PairsBox
        title={w("log")}
        hint={w("log-hint")}
        kept={pairsText(log)}
        said={logSaid(log, speech)}
        takeText={w("log-take")}
        clearText={w("log-clear")}
        onTake={takeLog}
        onClear={() => form.change({ log: undefined })}
      />
      <PairsBox
        title={w("tests")}
        hint={w("tests-hint")}
        kept={pairsText(tests)}
        said={
          tests.length === 0
            ? w("tests-none")
            : w("tests-has", {
                count: tests.length,
                least: figure(Math.min(...strengths)),
                greatest: figure(Math.max(...strengths)),
              })
        }
        takeText={w("tests-take")}
        clearText={w("tests-clear")}
        onTake={takeTests}
        onClear={() => form.change({ strengthTests: undefined })}
      />
      {form.refusal === null ? null : (
        <p className="stated-refusal" role="alert">
          {w("not-taken", { reason: form.refusal })}
        </p>
      )}
    </>
  );
}

// A list in the file that cannot be read is shown as none; what is wrong with it is said over the view.
function keptPairs(given: unknown, name: "log" | "strengthTests"): Pairs {
  if (!Array.isArray(given)) return [];
  const read = readConcrete({ [name]: given });
  return read.status === "ok" ? read.value[name] : [];
}

function logSaid(log: readonly Reading[], { w, figure }: CheckSpeech): string {
  const [first] = log;
  const last = log.at(-1);
  if (first === undefined || last === undefined) return w("log-none");
  const degrees = log.map(([, temperature]) => temperature);
  return w("log-has", {
    count: log.length,
    from: figure(first[0]),
    to: figure(last[0]),
    coldest: figure(Math.min(...degrees)),
    warmest: figure(Math.max(...degrees)),
  });
}

type Fault = Extract<ReturnType<typeof readTemperatureLog>, { readonly status: "refused" }>["fault"];

function faultText({ line, text, reason }: Fault, speech: CheckSpeech): string {
  const range = rangeText(reason === "hour" ? LOG_RANGES.hour : LOG_RANGES.temperature, speech);
  return speech.w(`log-fault.${reason}`, { line, text, range, most: MOST_READINGS });
}
