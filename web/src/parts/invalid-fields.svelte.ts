// Which fields on the screen hold something that cannot be read yet, so that saving waits for them.

import { SvelteSet } from 'svelte/reactivity';

class InvalidFields {
  #ids = new SvelteSet<string>();

  get count(): number {
    return this.#ids.size;
  }

  set(id: string, wrong: boolean): void {
    if (wrong) this.#ids.add(id);
    else this.#ids.delete(id);
  }
}

export const invalidFields = new InvalidFields();
