// The text of a frame as a QR code: which squares are dark. Drawing is for whoever shows it.

import qrcode from 'qrcode-generator';

export type Level = 'L' | 'M';

export interface Code {
  /** Squares along one side, without the quiet ground around it. */
  size: number;
  /** The symbol's version, 1 to 40. */
  version: number;
  /** An SVG path of the dark squares, one unit a square. */
  path: string;
}

/** Squares of quiet ground that a code needs on every side. */
export const QUIET = 4;

export function codeOf(text: string, level: Level = 'M'): Code {
  const made = qrcode(0, level);
  made.addData(text, 'Alphanumeric');
  made.make();
  const size = made.getModuleCount();
  let path = '';
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      if (!made.isDark(row, column)) continue;
      // Dark squares side by side are drawn as one, so that no hairline shows between them.
      const from = column;
      while (column + 1 < size && made.isDark(row, column + 1)) column += 1;
      path += `M${from} ${row}h${column + 1 - from}v1h-${column + 1 - from}z`;
    }
  }
  return { size, version: (size - 17) / 4, path };
}
