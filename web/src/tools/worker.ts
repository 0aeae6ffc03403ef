// The techniques beside the page: answers one question after another. Knows nothing of screens.

import init, * as techniques from '../../techniques/pkg/gagwright_techniques.js';
import type { Question, Reply } from './asides.ts';

type Ask = (technique: string, request: string) => string;
const tools: Record<string, Ask> = {
  spread: techniques.spread,
  sensitivity: techniques.sensitivity,
  solve_for: techniques.solve_for,
  calibrate: techniques.calibrate,
  compare: techniques.compare,
};

interface Here {
  onmessage: (event: MessageEvent<Question>) => void;
  postMessage(reply: Reply | { ready: boolean }): void;
}
const here = self as unknown as Here;

const started = init();
// Whoever started this works it out itself when the techniques cannot be had here.
started.then(
  () => here.postMessage({ ready: true }),
  () => here.postMessage({ ready: false }),
);

here.onmessage = async ({ data: { id, tool, technique, request } }) => {
  await started;
  try {
    const ask = tools[tool];
    if (!ask) throw new Error(`there is no tool "${tool}"`);
    here.postMessage({ id, answer: ask(technique, request) });
  } catch (error) {
    here.postMessage({ id, failure: error instanceof Error ? error.message : String(error) });
  }
};
