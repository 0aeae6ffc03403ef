import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { base64url } from '../sign/jws.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { COORDINATOR, emptyCase, MEDIC, signed, startCore } from '../testing/case.ts';
import { concat, crc32, fromBase45, HandError, toBase45, toHex } from './bytes.ts';
import { codeOf } from './code.ts';
import { frameText, partsOf } from './frames.ts';
import { pack, unpack } from './message.ts';

beforeAll(startCore);

const text = (value: string) => base64url(new TextEncoder().encode(value));
const jwsOf = (header: string, payload: string, signature = new Uint8Array(64).fill(7)) =>
  `${text(header)}.${text(payload)}.${base64url(signature)}`;

async function refusal(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  return error instanceof HandError ? error.refusal : String(error);
}

describe('base45 and the checksum', () => {
  it('are the ones of their standards', () => {
    const bytes = (value: string) => new TextEncoder().encode(value);
    // RFC 9285, section 4.3 and 4.4.
    expect(toBase45(bytes('AB'))).toBe('BB8');
    expect(toBase45(bytes('Hello!!'))).toBe('%69 VD92EX0');
    expect(new TextDecoder().decode(fromBase45('QED8WEX0'))).toBe('ietf!');
    // The check value of CRC-32/ISO-HDLC.
    expect(toHex(crc32(bytes('123456789')))).toBe('cbf43926');
  });

  it('give any bytes back', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        expect(toHex(fromBase45(toBase45(bytes)))).toBe(toHex(bytes));
      }),
    );
  });

  it.each(['A', 'ABCD', 'ab', ':::', '::', 'A~1'])('refuse %s', (wrong) => {
    expect(() => fromBase45(wrong)).toThrow(HandError);
  });
});

describe('a message', () => {
  it('gives back the very JWS, whatever JSON and key it holds', async () => {
    const uuid = fc.uuid().map((id) => id.toLowerCase());
    const hash = fc.uint8Array({ minLength: 32, maxLength: 32 }).map(toHex);
    const json = fc.jsonValue().chain((value) => fc.tuple(fc.constant(value), uuid, hash, fc.string()));
    await fc.assert(
      fc.asyncProperty(
        json,
        uuid,
        fc.uint8Array({ minLength: 64, maxLength: 64 }),
        async (value, key, signature) => {
          const jws = jwsOf(`{"kid":"${key}"}`, JSON.stringify(value), signature);
          expect(await unpack(await pack({ kind: 'sign_off', jws, key }))).toEqual({
            kind: 'sign_off',
            jws,
            key,
          });
          expect(await unpack(await pack({ kind: 'request', jws }))).toEqual({ kind: 'request', jws });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes the texts that a sign-off commits to along, and nothing where there are none', async () => {
    const jws = jwsOf('{"kid":"x"}', '{"reason":"y"}');
    const key = uuidv7();
    const openings = [
      { salt: '07'.repeat(32), text: 'Zoë: no cover\nuntil 14:00' },
      { salt: 'ab'.repeat(32), text: '00'.repeat(32) },
    ];
    const handed = { kind: 'sign_off' as const, jws, key, openings };
    expect(await unpack(await pack(handed))).toEqual(handed);
    expect(await unpack(await pack({ ...handed, openings: [] }))).toEqual({ kind: 'sign_off', jws, key });
  });

  it('is refused with any byte changed or missing', async () => {
    const message = await pack({ kind: 'request', jws: jwsOf('{"kid":"x"}', '{"a":"héllo"}') });
    await fc.assert(
      fc.asyncProperty(
        fc.nat({ max: message.length - 1 }),
        fc.integer({ min: 1, max: 255 }),
        async (at, by) => {
          const changed = message.slice();
          changed[at] = (changed[at] ?? 0) ^ by;
          expect(['damaged', 'newer']).toContain(await refusal(unpack(changed)));
          expect(await refusal(unpack(message.subarray(0, at)))).toBe('damaged');
        },
      ),
      { numRuns: 80 },
    );
  });

  it('of a later version is said to be newer, not damaged', async () => {
    const message = await pack({ kind: 'request', jws: jwsOf('{}', '{}') });
    expect(await refusal(unpack(concat(Uint8Array.of(9), message.subarray(1))))).toBe('newer');
    expect(await refusal(unpack(concat(message.subarray(0, 1), Uint8Array.of(9), message.subarray(2))))).toBe(
      'newer',
    );
  });

  it('carries nothing that would not come out as it went in', async () => {
    const of = (jws: string) => refusal(pack({ kind: 'request', jws }));
    expect(await of('a.b')).toBe('not_carried');
    expect(await of(`${text('{}')}.e31.${base64url(new Uint8Array(64))}`)).toBe('not_carried');
    expect(await of(jwsOf('{}', '{}', new Uint8Array(63)))).toBe('not_carried');
    expect(await of(jwsOf('{}', 'a raw \u0001 in it'))).toBe('not_carried');
    expect(await of(jwsOf('{\n}', '{}'))).toBe('not_carried');
    expect(await refusal(pack({ kind: 'sign_off', jws: jwsOf('{}', '{}'), key: 'no uuid' }))).toBe(
      'not_carried',
    );
    const notUtf8 = `${text('{}')}.${base64url(Uint8Array.of(0xff, 0xfe))}.${base64url(new Uint8Array(64))}`;
    expect(await of(notUtf8)).toBe('not_carried');
  });

  it('does not fill the phone when it was made to', async () => {
    expect(await refusal(pack({ kind: 'request', jws: jwsOf('{}', ' '.repeat(600_000)) }))).toBe('too_big');
    const deflated = await new Response(
      new Blob([new Uint8Array(3_000_000)]).stream().pipeThrough(new CompressionStream('deflate-raw')),
    ).arrayBuffer();
    const rest = concat(new Uint8Array(64), Uint8Array.of(0), new Uint8Array(deflated));
    const hash = new Uint8Array(
      await crypto.subtle.digest('SHA-256', concat(Uint8Array.of(1, 2), rest) as Uint8Array<ArrayBuffer>),
    );
    expect(await refusal(unpack(concat(Uint8Array.of(1, 2), hash, rest)))).toBe('too_big');
  });
});

describe('a sign-off as one code', () => {
  it('of every facet is at most version 21 at level L, of a medic 19', async () => {
    const version = async (role: 'coordinator' | 'medic', who: string) => {
      const one = await signed(emptyCase(), role, who);
      const message = await pack({ kind: 'sign_off', jws: one.signoffs[0]?.jws ?? '', key: uuidv7() });
      expect(partsOf(message)).toBe(1);
      return codeOf(frameText(message, 0, 1), 'L').version;
    };
    expect(await version('coordinator', COORDINATOR)).toBeLessThanOrEqual(21);
    expect(await version('medic', MEDIC)).toBeLessThanOrEqual(19);
  });
});
