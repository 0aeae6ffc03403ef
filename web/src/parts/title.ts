// The window's title: what this screen is, then the app, and before both a mark while there is an alarm.

import { t } from '../texts/index.ts';

let mark = '';
let screen = '';

function write(): void {
  document.title = mark + (screen ? `${screen} · ${t.app.name}` : t.app.name);
}

export function setTitle(title: string): void {
  screen = title;
  write();
}

export function markTitle(with_: string): void {
  mark = with_;
  write();
}
