// A question to the core that may take a breath: the screen says so first, and is then given the answer or the
// reason why there is none.

import { said } from '../texts/index.ts';

/** Long enough for the screen to be drawn. */
const BREATH = 40;

export class Working<T> {
  answer = $state.raw<T | undefined>();
  failure = $state('');
  busy = $state(false);
  #turn = 0;

  /** Asks anew; an earlier answer that comes late is dropped. */
  ask(work: () => T, why: (message: string) => string = (message) => message): void {
    this.#turn += 1;
    const turn = this.#turn;
    this.busy = true;
    this.failure = '';
    setTimeout(() => {
      if (turn !== this.#turn) return;
      try {
        this.answer = work();
      } catch (error) {
        this.answer = undefined;
        this.failure = said(why(error instanceof Error ? error.message : String(error)));
      }
      this.busy = false;
    }, BREATH);
  }
}
