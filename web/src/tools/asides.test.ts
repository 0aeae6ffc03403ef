import { describe, expect, it } from 'vitest';
import { type Answerer, Asides, type Question, type Reply, type Start } from './asides.ts';

/** An answerer that answers when it is told to, and how often one was started and ended. */
function bench() {
  const seen = { started: 0, ended: 0, posted: [] as Question[] };
  let say: (reply: Reply) => void = () => {};
  let fail = () => {};
  const start: Start = (reply, failed): Answerer => {
    seen.started += 1;
    [say, fail] = [reply, failed];
    return {
      post: (question) => seen.posted.push(question),
      end: () => {
        seen.ended += 1;
      },
    };
  };
  const here = (question: Question) => {
    if (question.tool === 'bad') throw new Error('no such tool');
    return `here ${question.request}`;
  };
  return { seen, asides: new Asides(start, here), say: (reply: Reply) => say(reply), fail: () => fail() };
}

describe('questions asked aside', () => {
  it('go one at a time, in order, to one answerer', async () => {
    const { asides, seen, say } = bench();
    const [a, b] = [asides.ask('spread', 'high-fall', '1'), asides.ask('compare', 'high-fall', '2')];
    expect(seen.posted.map((one) => one.request)).toEqual(['1']);
    say({ id: 1, answer: 'one' });
    expect(await a.answer).toBe('one');
    say({ id: 2, failure: 'it cannot' });
    await expect(b.answer).rejects.toThrow('it cannot');
    expect(seen).toMatchObject({ started: 1, ended: 0 });
  });

  it('are cut off when nobody waits for them, and the next is begun anew', async () => {
    const { asides, seen, say } = bench();
    const [a, b, c] = ['1', '2', '3'].map((one) => asides.ask('spread', 'high-fall', one));
    a?.drop();
    expect(seen).toMatchObject({ started: 2, ended: 1 });
    c?.drop();
    expect(seen.ended).toBe(1);
    // What the first would have answered, had it been quicker, answers nobody.
    say({ id: 1, answer: 'late' });
    say({ id: 2, answer: 'two' });
    expect(await b?.answer).toBe('two');
    expect(seen.posted.map((one) => one.request)).toEqual(['1', '2']);
    b?.drop();
    expect(seen.ended).toBe(1);
  });

  it('are worked out in the page when there is no other place', async () => {
    const { asides, seen, fail } = bench();
    const [a, b] = [asides.ask('spread', 'high-fall', '1'), asides.ask('bad', 'high-fall', '2')];
    fail();
    fail();
    expect(await a.answer).toBe('here 1');
    await expect(b.answer).rejects.toThrow('no such tool');
    expect(await asides.ask('spread', 'high-fall', '3').answer).toBe('here 3');
    expect(seen.started).toBe(1);
  });
});
