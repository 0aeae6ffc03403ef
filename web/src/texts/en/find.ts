// What is said of finding things, in English.

export const find = {
  title: 'Find',
  type: 'Type the beginning of a word',
  more: (n: number) => `${n} more: type another letter`,
  nothing: 'Nothing begins like that.',
  lead: 'Gags, people, certificates, holds, techniques, settings, help. Works with no signal, on what this phone holds.',
  count: (n: number) => `${n} found`,
  groups: {
    gag: 'Gags',
    person: 'People',
    certificate: 'Certificates and skills',
    hold: 'Holds',
    technique: 'Techniques',
    place: 'Screens and settings',
    help: 'Help',
  },
  holders: (n: number) => `${n} on the roster`,
};

export const keys = {
  title: 'Keys',
  find: 'Find',
  move: 'Through the rows',
  open: 'Open the row',
  close: 'Close what is open',
  hold: 'Hold',
};
