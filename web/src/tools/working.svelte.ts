// A question that a screen has asked of the tools, and how it stands: being worked out, answered, or refused in
// words. Made while a component is made; what is still being worked out when the component goes is dropped.

import { onDestroy } from 'svelte';
import { said } from '../texts/index.ts';
import { type Asking, ask, type Tool, type Tools } from './ask.ts';

export class Working<T extends Tool> {
  answer = $state.raw<Tools[T][1] | undefined>();
  failure = $state('');
  busy = $state(false);
  readonly #tool: T;
  readonly #why: (message: string) => string;
  #asking: Asking<Tools[T][1]> | undefined;

  constructor(tool: T, why: (message: string) => string = (message) => message) {
    this.#tool = tool;
    this.#why = why;
    onDestroy(() => this.#asking?.drop());
  }

  /** Asks anew; an earlier question is dropped. What was answered last stays until then. */
  ask(technique: string, request: Tools[T][0]): void {
    this.#asking?.drop();
    const asking = ask(this.#tool, technique, request);
    this.#asking = asking;
    this.busy = true;
    asking.answer.then(
      (answer) => this.#settle(asking, answer, ''),
      (error: unknown) =>
        this.#settle(
          asking,
          undefined,
          said(this.#why(error instanceof Error ? error.message : String(error))),
        ),
    );
  }

  #settle(asking: Asking<Tools[T][1]>, answer: Tools[T][1] | undefined, failure: string): void {
    if (asking !== this.#asking) return;
    this.#asking = undefined;
    [this.answer, this.failure, this.busy] = [answer, failure, false];
  }
}
