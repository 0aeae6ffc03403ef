// A new version of the app that has been fetched and waits for a tap. It never takes over by itself, and nobody is
// told of it while they sign or write.

import { router } from './router.svelte.ts';

class Update {
  waiting = $state.raw<ServiceWorker | undefined>();
  /** Put off until the app is opened again. */
  later = $state(false);
  /** Forms on the screen that an earlier visit left half filled. */
  #busy = $state(0);
  /** The screen on which something was last typed, picked or drawn. */
  #written = $state('');

  get shown(): boolean {
    const signing = /^\/gags\/[^/]+\/sign$/.test(router.path);
    const writing = this.#busy > 0 || this.#written === router.path;
    return this.waiting !== undefined && !this.later && !signing && !writing;
  }

  watch(registration: ServiceWorkerRegistration): void {
    const look = () => {
      // With no version in use there is none to replace: this is the first visit.
      this.waiting = navigator.serviceWorker.controller ? (registration.waiting ?? undefined) : undefined;
    };
    look();
    document.addEventListener('input', () => {
      this.#written = router.path;
    });
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', look);
    });
  }

  /** Says that a form is half filled, until the function given back is called. */
  hold(): () => void {
    this.#busy += 1;
    return () => {
      this.#busy -= 1;
    };
  }

  /** Lets the new version take over and starts the app again on it. What waits to be sent is untouched. */
  take(): void {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    this.waiting?.postMessage('SKIP_WAITING');
  }
}

export const update = new Update();
