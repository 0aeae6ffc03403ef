// A message as a file: the text of one frame that holds all of it, under a line for whoever opens the file
// elsewhere. A plain text file, because the share sheets of phones take those.

import { saveFile } from '../parts/save-file.ts';
import { t } from '../texts/index.ts';
import { HandError } from './bytes.ts';
import { Collector, frameText } from './frames.ts';

/** Room for the longest message in base45, and for whatever a chat adds around it. */
const LONGEST = 2_000_000;

export function fileOf(message: Uint8Array, name: string): File {
  const text = `${t.hand.fileLead}\n${frameText(message, 0, 1)}\n`;
  return new File([text], `${name}.txt`, { type: 'text/plain' });
}

/** Offers it to the share sheet; where there is none, or it takes no files, keeps it among the downloads. */
export async function share(file: File): Promise<'shared' | 'saved' | 'left'> {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: file.name });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
      // The sheet may refuse what it said it takes: the file must still get out.
    }
  }
  saveFile(file, file.name);
  return 'saved';
}

/** The message in a file. Throws a `HandError` for any other file. */
export async function messageIn(file: Blob): Promise<Uint8Array> {
  if (file.size > LONGEST) throw new HandError('too_big', `the file is ${file.size} bytes`);
  const lines = (await file.text()).split(/\r?\n/).filter((line) => /^GW\d+:/.test(line));
  const collector = new Collector();
  for (const line of lines) {
    const { message } = collector.take(line);
    if (message) return message;
  }
  throw new HandError(lines.length > 0 ? 'damaged' : 'not_ours', 'no whole message is in the file');
}
