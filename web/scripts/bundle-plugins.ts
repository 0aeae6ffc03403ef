// Two build steps of our own: the list of files the service worker keeps, and compressed copies beside
// each asset. Knows nothing of the app itself.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

const WORKER = 'service-worker.js';
const COMPRESSIBLE = /\.(js|css|html|svg|wasm|webmanifest|json|txt)$/;

function filesUnder(folder: string, prefix = ''): string[] {
  return readdirSync(join(folder, prefix), { withFileTypes: true }).flatMap((entry) => {
    const path = prefix ? `${prefix}/${entry.name}` : entry.name;
    return entry.isDirectory() ? filesUnder(folder, path) : [path];
  });
}

/** Writes the list of built files, and a version made from their contents, into the worker. */
export function precacheList(): Plugin {
  let folder = 'dist';
  return {
    name: 'precache-list',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir;
    },
    closeBundle: {
      order: 'pre',
      sequential: true,
      handler() {
        const files = filesUnder(folder)
          .filter((file) => file !== WORKER && !/\.(br|gz|map)$/.test(file))
          .sort();
        const hash = createHash('sha256');
        for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
        const list = files.map((file) => (file === 'index.html' ? '/' : `/${file}`));
        const worker = join(folder, WORKER);
        const source = readFileSync(worker, 'utf8');
        const version = hash.digest('hex').slice(0, 16);
        const filled = source
          .replace(/(["'`])__PRECACHE_VERSION__\1/, JSON.stringify(version))
          .replace(/(["'`])__PRECACHE_FILES__\1/, JSON.stringify(JSON.stringify(list)));
        if (filled.includes('__PRECACHE') || filled === source)
          this.error('the service worker has no place for the list of files');
        writeFileSync(worker, filled);
      },
    },
  };
}

/** Writes a brotli and a gzip copy beside each text asset, so the server never compresses at request time. */
export function compressedCopies(): Plugin {
  let folder = 'dist';
  return {
    name: 'compressed-copies',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir;
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      handler() {
        for (const file of filesUnder(folder).filter((name) => COMPRESSIBLE.test(name))) {
          const path = join(folder, file);
          if (statSync(path).size < 512) continue;
          const bytes = readFileSync(path);
          const params = {
            [constants.BROTLI_PARAM_QUALITY]: 11,
            [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
          };
          writeFileSync(`${path}.br`, brotliCompressSync(bytes, { params }));
          writeFileSync(`${path}.gz`, gzipSync(bytes, { level: 9 }));
        }
      },
    },
  };
}
