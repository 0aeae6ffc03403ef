// Questions that take the core a while, asked of a second copy of the techniques beside the page, so that the page
// goes on answering to the finger. One at a time, in order; one that nobody waits for any more is dropped, and cut
// off when it is already being worked out. Knows messages only: who answers is handed in.

/** What is sent to whoever works it out. */
export interface Question {
  id: number;
  tool: string;
  technique: string;
  request: string;
}

/** What comes back: an answer as JSON, or a sentence why there is none. */
export type Reply = { id: number; answer: string } | { id: number; failure: string };

/** One that answers questions, in the order they were asked. */
export interface Answerer {
  post(question: Question): void;
  /** Stops at once, whatever is being worked out. */
  end(): void;
}

/** Starts an answerer; it calls `reply` for each answer, and `failed` when it can answer none at all. */
export type Start = (reply: (reply: Reply) => void, failed: () => void) => Answerer;

interface Waiting {
  question: Question;
  done: (answer: string) => void;
  refused: (error: Error) => void;
}

export interface Asked {
  answer: Promise<string>;
  /** Nobody waits for it any more: neither answer nor refusal will come. */
  drop(): void;
}

export class Asides {
  readonly #start: Start;
  /** Works it out in the page, where there is no other place. */
  readonly #here: (question: Question) => string;
  #answerer: Answerer | undefined;
  #broken = false;
  /** The first of them is being worked out. */
  #waiting: Waiting[] = [];
  #next = 1;

  constructor(start: Start, here: (question: Question) => string) {
    this.#start = start;
    this.#here = here;
  }

  ask(tool: string, technique: string, request: string): Asked {
    const question = { id: this.#next, tool, technique, request };
    this.#next += 1;
    const answer = new Promise<string>((done, refused) => {
      this.#waiting.push({ question, done, refused });
    });
    if (this.#waiting.length === 1) this.#go();
    return { answer, drop: () => this.#drop(question.id) };
  }

  #go(): void {
    const first = this.#waiting[0];
    if (!first) return;
    if (this.#broken) {
      // Later, so that whoever asked can first say that it is being worked out.
      setTimeout(() => this.#workHere(first), 40);
      return;
    }
    this.#answerer ??= this.#start(
      (reply) => this.#hear(reply),
      () => this.#fail(),
    );
    this.#answerer.post(first.question);
  }

  #workHere(one: Waiting): void {
    if (this.#waiting[0] !== one) return;
    const { id } = one.question;
    try {
      this.#hear({ id, answer: this.#here(one.question) });
    } catch (error) {
      this.#hear({ id, failure: error instanceof Error ? error.message : String(error) });
    }
  }

  #hear(reply: Reply): void {
    const first = this.#waiting[0];
    if (first?.question.id !== reply.id) return;
    this.#waiting.shift();
    if ('answer' in reply) first.done(reply.answer);
    else first.refused(new Error(reply.failure));
    this.#go();
  }

  #fail(): void {
    if (this.#broken) return;
    this.#broken = true;
    this.#answerer?.end();
    this.#answerer = undefined;
    this.#go();
  }

  #drop(id: number): void {
    const at = this.#waiting.findIndex((one) => one.question.id === id);
    if (at < 0) return;
    this.#waiting.splice(at, 1);
    if (at > 0) return;
    this.#answerer?.end();
    this.#answerer = undefined;
    this.#go();
  }
}
