// Two build steps of our own: the service worker with the list of files it keeps, and compressed copies beside
// each asset. Knows nothing of the app itself.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { build, type Plugin } from 'vite';

const WORKER = 'service-worker.js';
const COMPRESSIBLE = /\.(js|css|html|svg|wasm|webmanifest|json|txt)$/;

function filesUnder(folder: string, prefix = ''): string[] {
  return readdirSync(join(folder, prefix), { withFileTypes: true }).flatMap((entry) => {
    const path = prefix ? `${prefix}/${entry.name}` : entry.name;
    return entry.isDirectory() ? filesUnder(folder, path) : [path];
  });
}

/**
 * Builds the worker as one classic script, for the browsers that take no modules there, and writes into it the
 * list of built files and a version made from their contents.
 */
export function serviceWorker(entry: string): Plugin {
  let folder = 'dist';
  return {
    name: 'service-worker',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir;
    },
    closeBundle: {
      order: 'pre',
      sequential: true,
      async handler() {
        await build({
          configFile: false,
          logLevel: 'warn',
          publicDir: false,
          build: {
            target: 'es2022',
            outDir: folder,
            emptyOutDir: false,
            rolldownOptions: {
              input: { 'service-worker': entry },
              output: { format: 'iife', entryFileNames: WORKER },
            },
          },
        });
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
