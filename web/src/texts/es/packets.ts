// What is said of packets, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const packets: Texts['packets'] = {
  title: 'Dosieres',
  lead: 'El dosier impreso de cada acción: el plan, sus cifras y la prueba de quién firmó qué.',
  none: 'Ninguna acción tiene dosier todavía. Primero planifique una acción.',
  noDay: 'Sin día fijado',
  pick: (code) => `Elegir ${code}`,
  all: 'Elegir todo el día',
  keep: (n) => (n === 0 ? 'Guardar en este teléfono' : `Guardar ${n} en este teléfono`),
  print: (n) => (n < 2 ? 'Guardar en archivo para imprimir' : `Guardar ${n} archivos para imprimir`),
  open: 'Abrir',
  forget: 'Quitar de este teléfono',
  kept: (size, revision, when) => `Guardado aquí: ${size}, revisión ${revision}, ${when}`,
  old: (now) => `El plan va por la revisión ${now}: obténgalo de nuevo.`,
  notKept: 'No está en este teléfono',
  total: (n, size) => `En este teléfono: ${plural(n, 'dosier', 'dosieres')}, ${size}.`,
  fetching: (done, all) => `Obteniendo ${done} de ${all} …`,
  needsSignal: 'Sin conexión. Los dosieres los hace el servidor; los guardados aquí se pueden abrir.',
};
