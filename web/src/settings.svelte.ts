// Choices of this phone: theme and units. Kept here, sent nowhere.

import { getSetting, setSetting } from './storage/database.ts';

export type Theme = 'system' | 'slate' | 'daylight';
export type Units = 'metric' | 'imperial';

class Settings {
  theme = $state<Theme>('system');
  units = $state<Units>('metric');

  async start(): Promise<void> {
    this.#apply((await getSetting<Theme>('theme')) ?? 'system');
    this.units = (await getSetting<Units>('units')) ?? 'metric';
  }

  #apply(theme: Theme): void {
    this.theme = theme;
    document.documentElement.dataset.theme = theme;
  }

  async setTheme(theme: Theme): Promise<void> {
    this.#apply(theme);
    await setSetting('theme', theme);
  }

  async setUnits(units: Units): Promise<void> {
    this.units = units;
    await setSetting('units', units);
  }
}

export const settings = new Settings();
