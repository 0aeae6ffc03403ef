// A take that is to be written down as a test shot: asked for where takes are listed, and answered by the form.

import type { InputValue } from '../../api/types.ts';

export interface AskedShot {
  gag: string;
  note: string;
  /** What was read when it was shot, where the technique asks for it. */
  own: Record<string, InputValue>;
}

class Asked {
  shot = $state.raw<AskedShot | undefined>();
}

export const asked = new Asked();
