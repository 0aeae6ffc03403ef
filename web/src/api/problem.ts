// What went wrong, in the server's own words (RFC 9457) or, with no server, in ours.

import { t } from '../texts/index.ts';
import type { ProblemBody } from './types.ts';

export class Problem extends Error {
  readonly body: ProblemBody;
  constructor(body: ProblemBody) {
    super(body.detail || body.title);
    this.body = body;
  }
  get status(): number {
    return this.body.status;
  }
  get code(): string {
    return this.body.code ?? '';
  }
}

/** No answer came: no signal, server down, or the phone is offline. */
export class Unreachable extends Error {
  constructor() {
    super(t.problem.unreachable);
  }
}

export async function problemFrom(response: Response): Promise<Problem> {
  const type = response.headers.get('content-type') ?? '';
  if (type.includes('json')) {
    try {
      const body = (await response.json()) as ProblemBody;
      if (typeof body.title === 'string') return new Problem({ ...body, status: response.status });
    } catch {
      // An answer that promises JSON and is not: fall through to the plain sentence below.
    }
  }
  return new Problem({ title: t.problem.unexpected(response.status), status: response.status });
}

/** Refusals that say nothing about what was asked: too slow, too early, too many, or a fault at the server. */
export function isPassing(status: number): boolean {
  return status === 408 || status === 425 || status === 429 || status >= 500;
}

export function asProblem(error: unknown): ProblemBody {
  if (error instanceof Problem) return error.body;
  return { title: error instanceof Error ? error.message : String(error), status: 0 };
}
