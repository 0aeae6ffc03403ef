import { beforeEach, expect, it, vi } from 'vitest';
import { database } from '../storage/database.ts';
import { outbox } from '../storage/outbox.svelte.ts';
import { deviceName, existingKey, forgetKey, keyFor, publicKey } from './device-key.ts';
import { fromBase64url, payloadOf, signCompact } from './jws.ts';

beforeEach(async () => {
  await (await database()).clear('keys');
  vi.spyOn(outbox, 'post').mockResolvedValue({ state: 'sent', answer: undefined as never });
});

it('makes one key for a person, keeps it, registers its public half, and gives the same one again', async () => {
  const made = await keyFor('p', 'ada');
  const again = await keyFor('p', 'ada');
  expect(again.device).toBe(made.device);
  expect(outbox.post).toHaveBeenCalledTimes(1);
  const write = vi.mocked(outbox.post).mock.calls[0]?.[0];
  expect(write?.path).toBe('/productions/p/devices');
  expect(write?.body).toMatchObject({ id: made.device, key: { kty: 'EC', crv: 'P-256' } });
  expect(write?.body).toHaveProperty('key.x', expect.stringMatching(/^[\w-]{43}$/));
});

it('keeps the private half where nothing can read it out', async () => {
  const { pair } = await keyFor('p', 'ada');
  expect(pair.privateKey.extractable).toBe(false);
  await expect(crypto.subtle.exportKey('jwk', pair.privateKey)).rejects.toThrow();
});

it('never lends a key to another person or production', async () => {
  const ada = await keyFor('p', 'ada');
  expect((await keyFor('p', 'bo')).device).not.toBe(ada.device);
  expect((await keyFor('q', 'ada')).device).not.toBe(ada.device);
});

it('makes a new key after the old one was forgotten', async () => {
  const old = await keyFor('p', 'ada');
  await forgetKey('p', 'ada');
  expect(await existingKey('p', 'ada')).toBeUndefined();
  expect((await keyFor('p', 'ada')).device).not.toBe(old.device);
});

it('signs a compact ES256 JWS that the public key alone verifies', async () => {
  const { pair, device } = await keyFor('p', 'ada');
  const payload = '{"a":"é","b":1}';
  const jws = await signCompact(payload, device, pair.privateKey);
  const [head = '', body = '', signature = ''] = jws.split('.');
  expect(JSON.parse(new TextDecoder().decode(fromBase64url(head)))).toEqual({
    alg: 'ES256',
    typ: 'gagwright-signoff+jws',
    kid: device,
  });
  expect(payloadOf(jws)).toEqual({ a: 'é', b: 1 });
  expect(fromBase64url(signature)).toHaveLength(64);
  const jwk = await publicKey(pair);
  const key = await crypto.subtle.importKey(
    'jwk',
    { ...jwk },
    { name: 'ECDSA', namedCurve: 'P-256' },
    false,
    ['verify'],
  );
  const how = { name: 'ECDSA', hash: 'SHA-256' };
  const bytes = (text: string) => new TextEncoder().encode(text);
  const signed = new Uint8Array(fromBase64url(signature));
  expect(await crypto.subtle.verify(how, key, signed, bytes(`${head}.${body}`))).toBe(true);
  expect(await crypto.subtle.verify(how, key, signed, bytes(`${head}.${body}x`))).toBe(false);
});

it('names the device so that its owner knows it', () => {
  expect(deviceName('Mozilla/5.0 (Linux; Android 15) Mobile')).toBe('Phone');
  expect(deviceName('Mozilla/5.0 (iPad; CPU OS 18)')).toBe('Tablet');
  expect(deviceName('Mozilla/5.0 (X11; Linux x86_64)')).toBe('Computer');
});
