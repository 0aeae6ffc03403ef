// Making a stop noticed: on the screen at once, by sound and vibration where the phone allows, on the app's badge
// and in the title. Knows nothing of how it heard of the stop.

import { markTitle } from './parts/title.ts';
import { settings } from './settings.svelte.ts';

export interface Raised {
  /** The record's id: told twice, it is one alarm. */
  id: string;
  /** A hold, or a near miss or incident, which freezes the plan. */
  what: 'hold' | 'incident';
  gag?: string;
  code?: string;
  by?: string;
  /** Heard from the server, or handed over by another phone. */
  how: 'told' | 'handed';
}

/** A tone pair that carries over engines and talk: seconds of each, and how often. */
const TONES = [880, 660] as const;
const TONE_SECONDS = 0.28;
const ROUNDS = 6;

class Alarm {
  raised = $state.raw<Raised[]>([]);
  #known = new Set<string>();
  #whenSeen: () => void = () => {};
  #audio: AudioContext | undefined;
  #playing: OscillatorNode | undefined;

  /** Browsers let a page sound only once it was touched: the first touch anywhere will do. */
  start(): void {
    const unlock = () => {
      try {
        this.#audio ??= new AudioContext();
        void this.#audio.resume();
      } catch {
        // No sound on this device; the rest of the alarm needs none.
      }
    };
    document.addEventListener('pointerdown', unlock, { once: true, capture: true });
    document.addEventListener('keydown', unlock, { once: true, capture: true });
  }

  /** False when this was told of before. */
  raise(one: Raised): boolean {
    if (this.#known.has(one.id)) return false;
    this.#known.add(one.id);
    this.raised = [one, ...this.raised];
    this.#mark();
    if (settings.sound) this.#sound();
    // Not every device has it, and some only after a touch: both answer no and do no harm.
    navigator.vibrate?.([400, 150, 400, 150, 800]);
    return true;
  }

  /** One this phone raised itself, or one already acted on: nobody needs an alarm for it. */
  ignore(id: string): void {
    this.#known.add(id);
  }

  whenSeen(then: () => void): void {
    this.#whenSeen = then;
  }

  seen(): void {
    this.raised = [];
    this.#whenSeen();
    this.#mark();
    this.#playing?.stop();
    this.#playing = undefined;
    navigator.vibrate?.(0);
  }

  #mark(): void {
    const n = this.raised.length;
    markTitle(n > 0 ? `(${n}) ` : '');
    const badge = navigator as unknown as {
      setAppBadge?: (n: number) => Promise<void>;
      clearAppBadge?: () => Promise<void>;
    };
    void (n > 0 ? badge.setAppBadge?.(n) : badge.clearAppBadge?.())?.catch(() => {});
  }

  #sound(): void {
    const audio = this.#audio;
    if (audio?.state !== 'running') return;
    this.#playing?.stop();
    const [tone, loudness] = [audio.createOscillator(), audio.createGain()];
    tone.type = 'square';
    loudness.gain.value = 0.25;
    let at = audio.currentTime;
    for (let i = 0; i < ROUNDS * TONES.length; i += 1) {
      tone.frequency.setValueAtTime(TONES[i % TONES.length] ?? 880, at);
      at += TONE_SECONDS;
    }
    tone.connect(loudness).connect(audio.destination);
    tone.start();
    tone.stop(at);
    this.#playing = tone;
  }
}

export const alarm = new Alarm();
