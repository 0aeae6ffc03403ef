import { describe, expect, it } from 'vitest';
import { codeOf, ordered } from './risk.ts';

describe('risks', () => {
  // MIL-STD-882E writes severity as 1 to 4 and probability as A to F.
  it('writes a rating as its number and letter', () => {
    expect(codeOf({ severity: 'catastrophic', probability: 'frequent' })).toBe('1A');
    expect(codeOf({ severity: 'marginal', probability: 'improbable' })).toBe('3E');
    expect(codeOf({ severity: 'negligible', probability: 'eliminated' })).toBe('4F');
  });

  it('puts controls in the order of the hierarchy and leaves equals as they were', () => {
    const written = [
      { kind: 'protect', what: 'pads' },
      { kind: 'organise', what: 'a caller' },
      { kind: 'remove', what: 'no glass' },
      { kind: 'organise', what: 'a lock-up' },
    ] as const;
    expect(ordered([...written]).map((one) => one.what)).toEqual([
      'no glass',
      'a caller',
      'a lock-up',
      'pads',
    ]);
  });
});
