// Every sign-off in the demo's exported trail verifies with the npm package `jose` (RFC 7515 ES256), with
// the key that the trail itself registers for the device; a changed one does not.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { compactVerify, importJWK } from 'jose';

const lines = readFileSync(`${process.env.GAGWRIGHT_DEMO}/trail.jsonl`, 'utf8').trim().split('\n');
const facts = lines.slice(1, -1).map((line) => JSON.parse(line).entry.facts);
const keys = new Map(facts.filter((one) => one.key).map((one) => [one.device, one.key]));
const signoffs = facts.filter((one) => one.jws).map((one) => one.jws);

const keyOf = (header) => importJWK(keys.get(header.kid), 'ES256');

test('every sign-off verifies', async () => {
  assert.ok(signoffs.length >= 10, `only ${signoffs.length} sign-offs in the trail`);
  const types = new Set();
  for (const jws of signoffs) {
    const { payload, protectedHeader } = await compactVerify(jws, keyOf, { algorithms: ['ES256'] });
    const statement = JSON.parse(new TextDecoder().decode(payload));
    assert.equal(statement.device, protectedHeader.kid);
    types.add(protectedHeader.typ);
  }
  assert.deepEqual([...types].sort(), ['gagwright-day-signoff+jws', 'gagwright-signoff+jws']);
});

test('a sign-off under another device key does not verify', async () => {
  const jws = signoffs[0];
  const { kid } = JSON.parse(Buffer.from(jws.split('.')[0], 'base64url'));
  const other = [...keys.keys()].find((device) => device !== kid);
  await assert.rejects(compactVerify(jws, await importJWK(keys.get(other), 'ES256')));
});
