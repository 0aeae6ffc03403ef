// What is said of a gag at a past moment, in Spanish.

import type { Texts } from '../en/index.ts';

export const past: Texts['past'] = {
  title: 'Quién sabía qué y cuándo',
  lead: 'Una acción tal como estaba en un momento pasado, reconstruida solo con el registro. No se usa nada posterior.',
  gag: 'Acción',
  chooseGag: 'Elija una acción',
  moment: 'El momento, según el reloj de este dispositivo',
  afterEntry: (n) => `Después de la entrada ${n}`,
  byTime: 'Elegir una hora en su lugar',
  here: 'Una acción tal como estaba aquí',
  look: 'Mostrar',
  looking: 'Reconstruyendo …',
  answer: 'Tal como estaba',
  stood: (code, leaf, at, revision) =>
    `${code} después de la entrada ${leaf}, recibida ${at}: revisión ${revision}`,
  unknown: (things) => `${things} cosas que no se saben`,
  notKnown: 'Ya no se puede saber',
  signed: 'Quién había firmado y qué había leído',
  nobody: 'No había firmado nadie.',
  hadRead: (revision, facets) => `Había leído la revisión ${revision}: ${facets}`,
  received: (at) => `recibida ${at}`,
  byDevice: (at) => `firmada ${at} según el reloj de su dispositivo`,
  ahead: (minutes) => `su reloj iba ${minutes} min adelantado`,
  known: 'Lo que se sabía',
  hold: (raised, released) =>
    released ? `Alto dado ${raised}, levantado ${released}.` : `Alto dado ${raised}, todavía en pie.`,
  nothing: 'Ningún alto, ninguna medición y ningún ensayo.',
  after: 'Lo que vino después',
  nothingAfter: 'Nada desde entonces.',
};
