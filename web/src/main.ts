import { mount } from 'svelte';
import App from './App.svelte';
import { core } from './core/core.svelte.ts';
import { live } from './live.svelte.ts';
import { registerWorker } from './register-worker.ts';
import { session } from './session.svelte.ts';
import { settings } from './settings.svelte.ts';
import { outbox } from './storage/outbox.svelte.ts';
import './styles/index.css';
import { settleLanguage } from './texts/language.ts';

const target = document.getElementById('app');
if (target) {
  await settings.start();
  await settleLanguage(settings.language);
  mount(App, { target });
  outbox.watch();
  live.start();
  void session.start();
  void core.start();
  void registerWorker();
}
