// A demo server of one's own: a fresh "Salt Meridian" in a folder of its own on a free port, which can be
// stopped and started again as a set's server is. Tests in Playwright, Firefox and the scores start theirs
// here. Knows processes, folders and ports; nothing of the app or of any test runner.
//
// GAGWRIGHT_BIN names the program. GAGWRIGHT_WEB may name a folder with a built app (web/dist): it is then
// served in place of the one inside the program, with the program's own headers, so that the app can be
// worked on without building the program again.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createReadStream, existsSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, stat } from 'node:fs/promises';
import http from 'node:http';
import net from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const program =
  process.env.GAGWRIGHT_BIN ?? fileURLToPath(new URL('../../target/debug/gagwright', import.meta.url));

/** @returns {Promise<number>} a port nobody listens on */
export async function freePort() {
  const server = net.createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = /** @type {net.AddressInfo} */ (server.address());
  server.close();
  await once(server, 'close');
  return port;
}

export class DemoServer {
  /** The address to open, for example `http://127.0.0.1:40123`. It stays the same over stop and start. */
  url = '';
  /** The folder the server runs in. */
  folder = '';
  /** What the server printed. */
  log = '';
  #port = 0;
  /** @type {import('node:child_process').ChildProcess | undefined} */
  #process;
  /** @type {Front | undefined} */
  #front;

  /**
   * Makes the demo in a new folder, or copies one made before (which saves the seconds it takes), and starts.
   * @param {string} [template] a folder from `seedTemplate`
   * @returns {Promise<DemoServer>}
   */
  static async fresh(template) {
    const demo = new DemoServer();
    demo.folder = await mkdtemp(join(tmpdir(), 'gagwright-'));
    if (template) await cp(template, demo.folder, { recursive: true });
    demo.#port = await freePort();
    if (process.env.GAGWRIGHT_WEB) demo.#front = new Front(process.env.GAGWRIGHT_WEB, await freePort(), demo.#port);
    demo.url = `http://127.0.0.1:${demo.#front?.port ?? demo.#port}`;
    await demo.start();
    return demo;
  }

  async start() {
    if (this.#process) return;
    const child = spawn(program, [], {
      cwd: this.folder,
      env: { ...process.env, GAGWRIGHT_LISTEN: `127.0.0.1:${this.#port}` },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.#process = child;
    for (const stream of [child.stdout, child.stderr]) {
      stream.on('data', (piece) => {
        this.log += piece;
      });
    }
    /** @type {Error | undefined} */
    let failed;
    child.on('error', (error) => {
      failed = error;
    });
    for (const until = Date.now() + 60_000; Date.now() < until; ) {
      if (failed || child.exitCode !== null) break;
      const answer = await fetch(`http://127.0.0.1:${this.#port}/api/v1/status`).catch(() => undefined);
      if (answer?.ok) {
        await this.#front?.start();
        return;
      }
      await new Promise((done) => setTimeout(done, 25));
    }
    throw new Error(`the server did not start: ${failed ?? ''}\n${this.log}`);
  }

  /** As when the set's server loses power: connections break, and nobody listens any more. */
  async stop() {
    const child = this.#process;
    this.#process = undefined;
    await this.#front?.stop();
    if (!child || child.exitCode !== null) return;
    const ended = once(child, 'exit');
    child.kill('SIGKILL');
    await ended;
  }

  /** Stops it for good and removes its folder. */
  async remove() {
    await this.stop();
    await rm(this.folder, { recursive: true, force: true });
  }
}

/**
 * A folder with the demo made and the server ended properly, to copy from.
 * @returns {Promise<string>}
 */
export async function seedTemplate() {
  const folder = await mkdtemp(join(tmpdir(), 'gagwright-seed-'));
  const child = spawn(program, [], {
    cwd: folder,
    env: { ...process.env, GAGWRIGHT_LISTEN: '127.0.0.1:0' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  const listens = new Promise((done, fail) => {
    child.stdout.on('data', (piece) => {
      said += piece;
      if (said.includes('listens on')) done(undefined);
    });
    child.on('error', fail);
    child.on('exit', () => fail(new Error(`the demo could not be made:\n${said}`)));
  });
  await listens;
  const ended = once(child, 'exit');
  child.kill('SIGTERM');
  await ended;
  return folder;
}

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** A built app from a folder, in front of the program, with the headers the program sends. */
class Front {
  /**
   * @param {string} web
   * @param {number} port
   * @param {number} behind
   */
  constructor(web, port, behind) {
    this.web = web;
    this.port = port;
    this.behind = behind;
    /** @type {http.Server | undefined} */
    this.server = undefined;
    /** @type {Record<string, string>} */
    this.headers = {};
  }

  async start() {
    const page = await fetch(`http://127.0.0.1:${this.behind}/`);
    for (const [name, value] of page.headers) {
      if (/^(content-security|permissions|referrer|cross-origin|x-)/.test(name)) this.headers[name] = value;
    }
    this.server = http.createServer((request, response) => {
      this.#answer(request, response).catch((error) => response.writeHead(500).end(String(error)));
    });
    this.server.listen(this.port, '127.0.0.1');
    await once(this.server, 'listening');
  }

  async stop() {
    this.server?.closeAllConnections();
    this.server?.close();
    this.server = undefined;
  }

  /**
   * @param {http.IncomingMessage} request
   * @param {http.ServerResponse} response
   */
  async #answer(request, response) {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://front').pathname);
    if (path.startsWith('/api/')) return this.#pass(request, response);
    let file = join(this.web, normalize(path));
    if (!existsSync(file) || (await stat(file)).isDirectory()) {
      if (extname(path)) return void response.writeHead(404, this.headers).end();
      file = join(this.web, 'index.html');
    }
    const compressed = existsSync(`${file}.br`) && /\bbr\b/.test(String(request.headers['accept-encoding']));
    response.writeHead(200, {
      ...this.headers,
      'content-type': TYPES[/** @type {keyof typeof TYPES} */ (extname(file))] ?? 'application/octet-stream',
      'cache-control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
      ...(compressed ? { 'content-encoding': 'br' } : {}),
    });
    if (compressed) response.end(await readFile(`${file}.br`));
    else createReadStream(file).pipe(response);
  }

  /**
   * @param {http.IncomingMessage} request
   * @param {http.ServerResponse} response
   */
  #pass(request, response) {
    const onward = http.request(
      { host: '127.0.0.1', port: this.behind, path: request.url, method: request.method, headers: request.headers },
      (answer) => {
        response.writeHead(answer.statusCode ?? 502, answer.headers);
        answer.pipe(response);
      },
    );
    onward.on('error', () => response.destroy());
    response.on('close', () => onward.destroy());
    request.pipe(onward);
  }
}
