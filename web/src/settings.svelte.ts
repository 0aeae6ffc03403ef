// Choices of this phone: theme, units, language and sound. Kept here, sent nowhere.

import { getSetting, setSetting } from './storage/database.ts';
import type { LanguageWish } from './texts/language.ts';

export type Theme = 'system' | 'slate' | 'daylight';
export type Units = 'metric' | 'imperial';

class Settings {
  theme = $state<Theme>('system');
  units = $state<Units>('metric');
  language = $state<LanguageWish>('system');
  /** Whether a hold is heard as well as seen. */
  sound = $state(true);

  async start(): Promise<void> {
    const [theme, units, sound, language] = await Promise.all([
      getSetting<Theme>('theme'),
      getSetting<Units>('units'),
      getSetting<boolean>('sound'),
      getSetting<LanguageWish>('language'),
    ]);
    this.#apply(theme ?? 'system');
    this.units = units ?? 'metric';
    this.sound = sound ?? true;
    this.language = language ?? 'system';
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => this.#apply(this.theme));
  }

  #apply(theme: Theme): void {
    this.theme = theme;
    document.documentElement.dataset.theme = theme;
    // The bar round the app has the colour of the app's own bar, as the theme makes it.
    const bar = document.querySelector('meta[name="theme-color"]');
    const dark =
      theme === 'slate' || (theme === 'system' && matchMedia('(prefers-color-scheme: dark)').matches);
    bar?.setAttribute('content', dark ? '#13191b' : '#e6e3d8');
  }

  async setTheme(theme: Theme): Promise<void> {
    this.#apply(theme);
    await setSetting('theme', theme);
  }

  async setUnits(units: Units): Promise<void> {
    this.units = units;
    await setSetting('units', units);
  }

  async setSound(sound: boolean): Promise<void> {
    this.sound = sound;
    await setSetting('sound', sound);
  }

  /** Sentences are read once at the start, so a change is kept and the page is loaded again. */
  async setLanguage(language: LanguageWish): Promise<void> {
    await setSetting('language', language);
    location.reload();
  }
}

export const settings = new Settings();
