// What is said of entries on their way to the server, of room on the phone, of the clock, of new versions, of the
// alarm at a hold, and of what is kept for the day, in English.

import { plural } from './plural.ts';

export const outbox = {
  givenUp: (about: string) =>
    `Not sent: it was built on “${about}”, which the server refused. Look at the plan as it is now, then do it again.`,
  waitsForRefused: (what: string) =>
    `Held back: it was built on “${what}”, which was refused. Put that right or take it off the list.`,
  waitsForOrder: (what: string) => `Goes after “${what}”.`,
  again: 'Send again',
  takeBack: 'Take back',
  takeBackAsk:
    'It has not left this device. Taken back, it is gone for good, as if it had never been written.',
  takeBackYes: 'Yes, take it back',
  takeBackNo: 'Keep it',
  signInAgain: (n: number) => `${plural(n, 'entry is', 'entries are')} kept and will be sent then.`,
  othersWait: (name: string, n: number) =>
    `${plural(n, 'entry', 'entries')} of ${name} ${n === 1 ? 'waits' : 'wait'} on this device. Only ${name} can send them, by signing in here.`,
  someoneElse: 'somebody else',
  give: 'Send as a code or a file',
};

export const storage = {
  title: 'Room on this device',
  used: (used: string, quota: string) => `${used} of ${quota} used.`,
  unknown: 'This browser does not say how much room there is.',
  persisted: 'The system keeps what is stored here until you remove it.',
  notPersisted:
    'The system may clear what is stored here when it runs out of room. Send what waits as soon as you can.',
  ask: 'Ask the system to keep it',
  askedInVain: 'The system did not agree. Adding the app to the home screen often helps.',
  low: (left: string) => `This device is nearly full: ${left} left. Free some room before the day begins.`,
  notKept: 'This is NOT kept.',
  notKeptWhy: (what: string) =>
    `${what}: the device has no room left, so it is neither kept here nor sent. Keep this page open.`,
  free: 'Make room and try again',
  freed: 'It is kept now.',
  stillFull: 'There is still no room. Remove photos or other apps, then try again.',
  sendNow: 'Send it now, without keeping it',
  sentNow: 'The server has it.',
  notSentNow: 'The server did not answer. It is neither kept nor sent.',
};

export const clock = {
  behind: (how: string) =>
    `The clock of this device is ${how} behind the server’s. Signatures carry the server’s time; set the clock right.`,
  ahead: (how: string) =>
    `The clock of this device is ${how} ahead of the server’s. Signatures carry the server’s time; set the clock right.`,
};

export const update = {
  ready: 'A new version is ready.',
  go: 'Load it now',
  later: 'Later',
};

export const alarm = {
  gag: (code: string) => `Hold: ${code}`,
  all: 'Hold: everything',
  by: (name: string) => `Raised by ${name}`,
  byCode: 'Raised with the code of the day',
  handed: (name: string) => `Raised by ${name}, handed over without a network`,
  see: 'See the hold',
  incidentOn: (code: string) => `Near miss or incident: ${code}`,
  incident: 'Near miss or incident',
  incidentBy: (name: string) => `Reported by ${name}.`,
  incidentHanded: (name: string) => `Reported by ${name}, handed over without a network.`,
  frozen: 'The plan is frozen.',
  allFrozen: 'Every plan is frozen.',
  seeIncident: 'See what happened',
  heard: 'I have seen it',
  more: (n: number) => `${plural(n, 'more alert', 'more alerts')}`,
  sound: 'Sound at a hold or an incident',
  soundOn: 'On',
  soundOff: 'Off',
  soundHelp: 'The alert on the screen and the vibration stay on.',
};

export const ready = {
  title: 'With no signal',
  gags: (kept: number, all: number, when: string) =>
    `${kept} of ${plural(all, 'gag is', 'gags are')} on this device, read ${when}.`,
  none: 'Nothing is kept for a day with no signal yet.',
  take: 'Take everything for the day',
  taking: (done: number, all: number) => `Reading ${done} of ${all} …`,
  done: 'Gags, people and holds are on this device. Packets are kept one by one, under Packets.',
  cutShort: 'The connection went away. What was read so far is kept; take the rest when there is signal.',
};

export const draft = {
  kept: (when: string) => `Not saved yet: you wrote this ${when}. It is kept on this device.`,
  discard: 'Begin again',
};
