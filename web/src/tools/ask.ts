// Asking the core's tools from a screen: beside the page where the browser can, in the page where it cannot.
// Answers come in the language in use.

import type {
  CalibrateRequest,
  Calibration,
  CompareRequest,
  Comparison,
  Sensitivity,
  SensitivityRequest,
  Solution,
  SolveRequest,
  Spread,
  SpreadRequest,
} from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import {
  spokenCalibration,
  spokenComparison,
  spokenSensitivity,
  spokenSolution,
  spokenSpread,
} from '../texts/spoken.ts';
import { workerAddress } from '../worker-address.ts';
import { Asides, type Question, type Reply, type Start } from './asides.ts';
import address from './worker.ts?worker&url';

export interface Tools {
  spread: [SpreadRequest, Spread];
  sensitivity: [SensitivityRequest, Sensitivity];
  solve_for: [SolveRequest, Solution];
  calibrate: [CalibrateRequest, Calibration];
  compare: [CompareRequest, Comparison];
}
export type Tool = keyof Tools;

const spoken: { [T in Tool]: (one: Tools[T][1]) => Tools[T][1] } = {
  spread: spokenSpread,
  sensitivity: spokenSensitivity,
  solve_for: spokenSolution,
  calibrate: spokenCalibration,
  compare: spokenComparison,
};

const start: Start = (reply, failed) => {
  try {
    const worker = new Worker(workerAddress(address), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<Reply | { ready: boolean }>) => {
      if (!('ready' in data)) reply(data);
      else if (!data.ready) failed();
    };
    worker.onerror = failed;
    return { post: (question) => worker.postMessage(question), end: () => worker.terminate() };
  } catch {
    // No workers, or no modules in them.
    queueMicrotask(failed);
    return { post: () => {}, end: () => {} };
  }
};

const here = ({ tool, technique, request }: Question): string => core.raw(tool as Tool, technique, request);

const asides = new Asides(start, here);

export interface Asking<A> {
  answer: Promise<A>;
  drop(): void;
}

export function ask<T extends Tool>(tool: T, technique: string, request: Tools[T][0]): Asking<Tools[T][1]> {
  const asked = asides.ask(tool, technique, JSON.stringify(request));
  return { answer: asked.answer.then((text) => spoken[tool](JSON.parse(text))), drop: asked.drop };
}
