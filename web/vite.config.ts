import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { compressedCopies, serviceWorker } from './scripts/bundle-plugins.ts';

// The page's own policy, the same one the server sends: `vite preview` is then as strict as the server.
const policy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; font-src 'self'; " +
  "img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; " +
  "base-uri 'none'; form-action 'self'; frame-ancestors 'none'; " +
  "require-trusted-types-for 'script'; trusted-types svelte-trusted-html app-worker";

const server = process.env.GAGWRIGHT_SERVER ?? 'http://127.0.0.1:8080';
const proxy = { '/api': { target: server, changeOrigin: false } };

export default defineConfig({
  plugins: [svelte(), serviceWorker('src/worker/service-worker.ts'), compressedCopies()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      input: { index: 'index.html' },
      output: { entryFileNames: 'assets/[name]-[hash].js' },
    },
  },
  worker: { format: 'es' },
  server: { proxy },
  preview: { proxy, headers: { 'Content-Security-Policy': policy } },
  test: {
    environment: 'happy-dom',
    include: ['src/**/*.test.ts'],
    setupFiles: ['src/testing/setup.ts'],
    // A busy machine must not fail a test: only one that never ends is cut off.
    testTimeout: 60_000,
  },
});
