// Printed packets kept on this phone, to be opened with no signal. Kept for one account and let go with its
// sign-out.

import { send } from '../api/client.ts';

export interface KeptPacket {
  gag: string;
  revision: number;
  size: number;
  keptAt: number;
}

const NAME = 'packets ';
const cacheOf = (account: string) => caches.open(NAME + account);
/** An address of our own: what is kept does not depend on the paper or on the server's parameters. */
const keyOf = (gag: string) => `/kept-packets/${gag}`;

function described(gag: string, response: Response): KeptPacket {
  const number = (name: string) => Number(response.headers.get(name) ?? 0);
  return {
    gag,
    revision: number('x-revision'),
    size: number('content-length'),
    keptAt: number('x-kept-at'),
  };
}

export async function keptPackets(account: string): Promise<Map<string, KeptPacket>> {
  const cache = await cacheOf(account);
  const found = new Map<string, KeptPacket>();
  for (const request of await cache.keys()) {
    const gag = new URL(request.url).pathname.split('/').at(-1) ?? '';
    const response = await cache.match(request);
    if (response) found.set(gag, described(gag, response));
  }
  return found;
}

/** Letter paper where the device's region uses it. */
function paper(): string {
  return /-(US|CA|MX|PH|CL|CO)$/.test(navigator.language) ? 'letter' : 'a4';
}

/** Asks the server for the packet as it is now. */
export async function freshPacket(gag: string): Promise<Blob> {
  return await (await send(`/gags/${gag}/packet?paper=${paper()}`)).blob();
}

export async function keepPacket(account: string, gag: string, revision: number): Promise<Blob> {
  const file = await freshPacket(gag);
  const headers = {
    'content-type': 'application/pdf',
    'content-length': String(file.size),
    'x-revision': String(revision),
    'x-kept-at': String(Date.now()),
  };
  await (await cacheOf(account)).put(keyOf(gag), new Response(file, { headers }));
  return file;
}

export async function keptPacket(account: string, gag: string): Promise<Blob | undefined> {
  return await (await (await cacheOf(account)).match(keyOf(gag)))?.blob();
}

export async function forgetPacket(account: string, gag: string): Promise<void> {
  await (await cacheOf(account)).delete(keyOf(gag));
}

/** With a sign-out everything that was read goes, and so do these. */
export async function forgetPackets(account: string): Promise<void> {
  if ('caches' in globalThis) await caches.delete(NAME + account);
}

/** 12 kB, 3.4 MB: as much as tells whether it matters. */
export function sizeInWords(bytes: number, locale: string): string {
  const [unit, value] = bytes < 1_000_000 ? ['kilobyte', bytes / 1000] : ['megabyte', bytes / 1_000_000];
  return new Intl.NumberFormat(locale, {
    style: 'unit',
    unit,
    maximumFractionDigits: unit === 'kilobyte' ? 0 : 1,
  }).format(value);
}
