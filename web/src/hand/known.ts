// What this phone knows from what it has read: plans, names, and whose device has which key. It asks no server.

import type { Device, GagPage, ProductionPage } from '../api/types.ts';
import { database } from '../storage/database.ts';

export class Known {
  readonly #account: string;

  readonly #newest: ProductionPage | undefined;

  /** `newest` is the page of a production as it was just read, which may not be written down yet. */
  constructor(account: string, newest?: ProductionPage) {
    this.#account = account;
    this.#newest = newest;
  }

  async #read<T>(path: string): Promise<T | undefined> {
    return (await (await database()).get('reads', `${this.#account} ${path}`))?.value as T | undefined;
  }

  page(gag: string): Promise<GagPage | undefined> {
    return this.#read<GagPage>(`/gags/${gag}`);
  }

  async #production(id: string): Promise<ProductionPage | undefined> {
    if (this.#newest?.id === id) return this.#newest;
    return this.#read<ProductionPage>(`/productions/${id}`);
  }

  async nameOf(production: string, person: string, page: GagPage | undefined): Promise<string | undefined> {
    const named = page?.names[person] ?? page?.case.members.find((one) => one.person === person)?.name;
    if (named) return named;
    return (await this.#production(production))?.members.find((one) => one.person === person)?.name;
  }

  async device(id: string, production: string, page: GagPage | undefined): Promise<Device | undefined> {
    // The production's page is the wider one; a gag's page may be the newer.
    const devices = [page?.case.devices, (await this.#production(production))?.devices];
    return devices.flatMap((each) => each ?? []).find((one) => one.id === id);
  }
}
