// What is said of finding things, in Spanish.

import type { Texts } from '../en/index.ts';

export const find: Texts['find'] = {
  title: 'Buscar',
  type: 'Escriba el comienzo de una palabra',
  more: (n) => `${n} más: escriba otra letra`,
  nothing: 'Nada empieza así.',
  lead: 'Acciones, personas, certificados, altos, técnicas, ajustes, ayuda. Funciona sin señal, con lo que guarda este teléfono.',
  count: (n) => `Resultados: ${n}`,
  groups: {
    gag: 'Acciones',
    person: 'Personas',
    certificate: 'Certificados y habilidades',
    hold: 'Altos',
    technique: 'Técnicas',
    place: 'Pantallas y ajustes',
    help: 'Ayuda',
  },
  holders: (n) => `${n} en la lista`,
};

export const keys: Texts['keys'] = {
  title: 'Teclas',
  find: 'Buscar',
  move: 'Recorrer las filas',
  open: 'Abrir la fila',
  close: 'Cerrar lo que esté abierto',
  hold: 'Alto',
};
