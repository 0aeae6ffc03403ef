// Opens a part that is folded away when there is a reason to, and leaves it to whoever reads it from then on: as an
// attribute, `open` is set again whenever something beside it changes, and folds up under their hands.

import type { Attachment } from 'svelte/attachments';

export function unfoldWhen(reason: () => boolean): Attachment<HTMLDetailsElement> {
  return (element) => {
    if (reason()) element.open = true;
  };
}
