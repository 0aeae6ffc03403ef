import { describe, expect, it } from 'vitest';
import { cosignedBody } from './cosigned.ts';

const LINE = '— witness.example/w1 6EmBcgAAAABkGFDL';

describe('what is sent of a pasted cosignature', () => {
  it('is the text as it came, line ends and all', () => {
    const note = `origin\r\n8\r\nroot\r\n\r\n${LINE}\r\n`;
    expect(cosignedBody(note, '')).toEqual({ cosigned: note });
  });

  it('has the number of entries only where one was typed', () => {
    expect(cosignedBody(LINE, ' 40 ')).toEqual({ cosigned: LINE, size: 40 });
    for (const none of ['', '  ', 'forty', '4.5', '-1']) {
      expect(cosignedBody(LINE, none)).toEqual({ cosigned: LINE });
    }
  });
});
