import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HandError } from './bytes.ts';
import { codeOf } from './code.ts';
import { Collector, frameText, partsOf, readFrame, STILL } from './frames.ts';

/** Bytes that no compressor would shorten, the same for the same seed. */
function noise(length: number, seed: number): Uint8Array {
  let state = seed >>> 0 || 1;
  return Uint8Array.from({ length }, () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state & 0xff;
  });
}

const message = fc
  .tuple(fc.integer({ min: 40, max: 4000 }), fc.integer())
  .map(([length, seed]) => noise(length, seed));

const hex = (bytes: Uint8Array | undefined) => bytes && Buffer.from(bytes).toString('hex');

function refusalOf(work: () => unknown): string {
  try {
    work();
    return 'taken';
  } catch (error) {
    return error instanceof HandError ? error.refusal : String(error);
  }
}

describe('frames', () => {
  it('give the message back in any order, twice over', () => {
    fc.assert(
      fc.property(message, fc.integer(), (whole, seed) => {
        const parts = partsOf(whole);
        const order = noise(parts * 2, seed).map((byte) => byte % parts);
        const texts = [...order, ...Array.from({ length: parts }, (_, i) => parts - 1 - i)];
        const collector = new Collector();
        let done: Uint8Array | undefined;
        for (const index of texts) {
          done = collector.take(frameText(whole, index, parts)).message;
          if (done) break;
        }
        expect(hex(done)).toBe(hex(whole));
      }),
      { numRuns: 40 },
    );
  });

  it('make up for lost ones with about as many others', () => {
    fc.assert(
      fc.property(message, fc.integer(), fc.integer({ min: 0, max: 80 }), (whole, seed, lostPercent) => {
        const parts = partsOf(whole);
        const luck = noise(parts * 40 + 400, seed);
        const collector = new Collector();
        let caught = 0;
        let done: Uint8Array | undefined;
        for (let index = 0; index < luck.length && !done; index += 1) {
          if (((luck[index] ?? 0) * 100) / 256 < lostPercent) continue;
          caught += 1;
          done = collector.take(frameText(whole, index, parts)).message;
        }
        expect(hex(done)).toBe(hex(whole));
        // Random mixtures rarely repeat what is known: the chance of needing k more than the parts is 2^-k.
        expect(caught).toBeLessThanOrEqual(parts + 30);
      }),
      { numRuns: 40 },
    );
  });

  it('of two messages may arrive in turns', () => {
    fc.assert(
      fc.property(message, message, (one, other) => {
        fc.pre(one.subarray(2, 6).toString() !== other.subarray(2, 6).toString());
        const collector = new Collector();
        const got: Uint8Array[] = [];
        const most = Math.max(partsOf(one), partsOf(other));
        for (let index = 0; index < most; index += 1) {
          for (const whole of [one, other]) {
            if (index >= partsOf(whole)) continue;
            const { message: done } = collector.take(frameText(whole, index, partsOf(whole)));
            if (done) got.push(done);
          }
        }
        expect(got.map(hex).sort()).toEqual([one, other].map(hex).sort());
      }),
      { numRuns: 40 },
    );
  });

  it('say how far it is, and count a repeat once', () => {
    const whole = noise(2000, 5);
    const collector = new Collector();
    expect(collector.take(frameText(whole, 1, 5))).toMatchObject({ have: 1, parts: 5 });
    expect(collector.take(frameText(whole, 1, 5))).toMatchObject({ have: 1, parts: 5 });
    expect(collector.take(frameText(whole, 3, 5))).toMatchObject({ have: 2, parts: 5 });
  });

  it('carry 60 kB that does not compress', () => {
    const whole = noise(60_000, 9);
    const parts = partsOf(whole);
    const collector = new Collector();
    let done: Uint8Array | undefined;
    // Every third frame is missed.
    for (let index = 0; !done && index < parts * 2; index += 1) {
      if (index % 3 !== 0) done = collector.take(frameText(whole, index, parts)).message;
    }
    expect(hex(done)).toBe(hex(whole));
    expect(codeOf(frameText(whole, 300, parts)).version).toBeLessThanOrEqual(16);
  });

  it('are refused with one character changed, and what was gathered stays', () => {
    const whole = noise(1500, 3);
    const collector = new Collector();
    collector.take(frameText(whole, 0, 2));
    const right = frameText(whole, 1, 2);
    fc.assert(
      fc.property(fc.nat({ max: right.length - 5 }), fc.constantFrom(...'ABC019:/ '), (at, char) => {
        const wrong = right.slice(0, at + 4) + char + right.slice(at + 5);
        fc.pre(wrong !== right);
        expect(refusalOf(() => collector.take(wrong))).toBe('damaged');
      }),
    );
    expect(hex(collector.take(right).message)).toBe(hex(whole));
  });

  it('of other makers are not ours, and of a later version newer', () => {
    expect(refusalOf(() => readFrame('https://salt-meridian.example/hold#4417'))).toBe('not_ours');
    expect(refusalOf(() => readFrame(''))).toBe('not_ours');
    expect(refusalOf(() => readFrame('GW2:ABC'))).toBe('newer');
    expect(refusalOf(() => readFrame('GW1:'))).toBe('damaged');
  });

  it('never take more than there is room for', () => {
    expect(refusalOf(() => frameText(noise(1_100_000, 1), 0, 1000))).toBe('too_big');
    expect(refusalOf(() => frameText(noise(2000, 1), 0, 1025))).toBe('too_big');
  });
});

describe('a code', () => {
  it('that stands still is version 25 or less at level L', () => {
    expect(codeOf(frameText(noise(STILL, 2), 0, 1), 'L').version).toBeLessThanOrEqual(25);
    expect(partsOf(noise(STILL, 2))).toBe(1);
    expect(partsOf(noise(STILL + 1, 2))).toBe(3);
  });

  it('for a camera that is not good is small', () => {
    const whole = noise(800, 4);
    expect(codeOf(frameText(whole, 0, partsOf(whole, true))).version).toBeLessThanOrEqual(10);
  });
});
