import { mount } from 'svelte';
import App from './App.svelte';
import { alarm } from './alarm.svelte.ts';
import { startClock } from './api/clock.ts';
import { core } from './core/core.svelte.ts';
import { live } from './live.svelte.ts';
import { registerWorker } from './register-worker.ts';
import { session } from './session.svelte.ts';
import { settings } from './settings.svelte.ts';
import { outbox } from './storage/outbox.svelte.ts';
import { storage } from './storage/storage.svelte.ts';
import './styles/index.css';
import { settleLanguage } from './texts/language.ts';

const target = document.getElementById('app');
if (target) {
  await settings.start();
  await startClock();
  await settleLanguage(settings.language);
  mount(App, { target });
  outbox.watch();
  live.start();
  alarm.start();
  storage.start();
  void session.start();
  void core.start();
  void registerWorker();
}
