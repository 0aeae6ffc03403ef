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
  // The core is compiled beside everything else, and what the phone has kept is asked for all at once, so that the
  // first thing drawn is the screen itself.
  void core.start();
  await Promise.all([
    settings.start().then(() => settleLanguage(settings.language)),
    startClock(),
    session.start(),
  ]);
  mount(App, { target });
  outbox.watch();
  live.start();
  alarm.start();
  storage.start();
  void registerWorker();
}
