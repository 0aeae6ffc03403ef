// The demo's API as one of its people, for setting a scene faster than through screens. What a test is about
// still goes through the screens.

import { randomUUID } from 'node:crypto';

export class Api {
  readonly production: string;
  readonly person: string;
  readonly #url: string;
  readonly #token: string;

  private constructor(url: string, token: string, production: string, person: string) {
    this.#url = url;
    this.#token = token;
    this.production = production;
    this.person = person;
  }

  /** Signs in as the person with this address, of which the part before the @ is enough. */
  static async as(url: string, name: string): Promise<Api> {
    const response = await fetch(`${url}/api/v1/sessions`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ email: `${name}@salt-meridian.example`, password: 'salt-meridian' }),
    });
    if (!response.ok) throw new Error(`signing in as ${name}: ${response.status} ${await response.text()}`);
    const session = await response.json();
    const [{ production, person }] = session.memberships;
    return new Api(url, session.access_token, production.id, person.id);
  }

  /** The answer, whatever it is: for tests about refusals. */
  async ask(
    method: string,
    path: string,
    body?: unknown,
    headers?: Record<string, string>,
  ): Promise<Response> {
    return await fetch(`${this.#url}/api/v1${path}`, {
      method,
      headers: {
        Authorization: `Bearer ${this.#token}`,
        'Idempotency-Key': randomUUID(),
        'Content-Type': typeof body === 'string' ? 'text/csv' : 'application/json',
        ...headers,
      },
      body: body === undefined || typeof body === 'string' ? body : JSON.stringify(body),
    });
  }

  // biome-ignore lint/suspicious/noExplicitAny: a test reads what it needs from an answer
  async get(path: string): Promise<any> {
    return await this.#good('GET', path);
  }

  /** A string is sent as CSV, anything else as JSON. */
  // biome-ignore lint/suspicious/noExplicitAny: a test reads what it needs from an answer
  async post(path: string, body: unknown, headers?: Record<string, string>): Promise<any> {
    return await this.#good('POST', path, body, headers);
  }

  // biome-ignore lint/suspicious/noExplicitAny: a test reads what it needs from an answer
  async #good(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<any> {
    const response = await this.ask(method, path, body, headers);
    const text = await response.text();
    if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${text}`);
    return text ? JSON.parse(text) : undefined;
  }
}
