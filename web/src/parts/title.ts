// The window's title, for tabs and for screen readers that announce a new page.

import { t } from '../texts/index.ts';

export function setTitle(title: string): void {
  document.title = title ? `${title} · ${t.app.name}` : t.app.name;
}
