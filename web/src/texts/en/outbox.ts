// What is said of entries on their way to the server, of room on the phone, of the clock and of new versions.

import { plural } from './plural.ts';

export const outbox = {
  givenUp: (about: string) =>
    `Not sent: it was built on “${about}”, which the server refused. Look at the plan as it is now, then do it again.`,
  waitsForRefused: (what: string) =>
    `Held back: “${what}” before it was refused. Put that right or take it off the list first.`,
  waitsForOrder: (what: string) => `Goes after “${what}”.`,
  again: 'Send again',
  kept: (n: number) => `${plural(n, 'entry is', 'entries are')} kept on this device.`,
  signInAgain: (n: number) =>
    `Sign in again; ${plural(n, 'entry is', 'entries are')} kept and will be sent then.`,
  othersWait: (name: string, n: number) =>
    name
      ? `${plural(n, 'entry', 'entries')} of ${name} ${n === 1 ? 'waits' : 'wait'} on this device. Only ${name} can send them, by signing in here.`
      : `${plural(n, 'entry', 'entries')} of somebody else ${n === 1 ? 'waits' : 'wait'} on this device, until they sign in here.`,
};
