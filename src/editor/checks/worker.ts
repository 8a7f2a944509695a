// The worker that checks.

import { servePlan } from "../workers/serve.ts";
import { createChecker } from "./checker.ts";
import { checkAnswers } from "./protocol.ts";

servePlan((union) => checkAnswers(createChecker(union)));
