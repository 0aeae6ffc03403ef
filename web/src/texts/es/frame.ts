// What is said of what stands around every screen, and what any of them may say, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const app: Texts['app'] = {
  name: 'Gagwright',
  demo: 'Demo',
  demoLong: 'Producción de demostración: personas inventadas, nada de esto es real.',
  skip: 'Ir al contenido',
  menu: 'Principal',
  loading: 'Leyendo …',
  yes: 'Sí',
  no: 'No',
  close: 'Cerrar',
  cancel: 'Cancelar',
  remove: 'Quitar',
  removed: (what) => `Quitado: ${what}`,
  showAll: 'Mostrar todo',
  undo: 'Deshacer',
  none: 'Ninguno',
  unknown: 'sin dato',
  notFound: 'Esta página no existe.',
  toToday: 'Ir a hoy',
  planningAid:
    'Una ayuda para planificar. Cada cifra tiene su fuente y su tolerancia; deciden la ley del lugar y las personas con licencia.',
  coreMissing: (why) =>
    `Las cifras todavía no se pueden calcular en este dispositivo: ${why}. Conéctese una vez y cargue la página de nuevo.`,
};

export const kept: Texts['kept'] = {
  offline: (ago) => `Sin conexión. Se muestra lo último que leyó este dispositivo, ${ago}.`,
  never: 'Sin conexión, y este dispositivo nunca ha leído esta página. Conéctese una vez para leerla.',
  justNow: 'ahora mismo',
};

export const problem: Texts['problem'] = {
  unreachable: 'El servidor no responde. Compruebe la conexión; no se ha perdido nada.',
  unexpected: (status) =>
    `El servidor dio una respuesta que esta aplicación no conoce (${status}). Inténtelo de nuevo.`,
  fix: 'Para corregirlo:',
  row: (row, column) => (column === undefined ? `Fila ${row}` : `Fila ${row}, ${column}`),
};

export const write: Texts['write'] = {
  sent: 'Guardado.',
  waiting: 'Queda en este dispositivo. Se envía solo al servidor cuando haya conexión.',
};

export const nav: Texts['nav'] = {
  today: 'Hoy',
  gags: 'Acciones',
  people: 'Personas',
  trail: 'Registro',
  hold: 'Alto',
  outbox: (n) => plural(n, 'anotación por enviar', 'anotaciones por enviar'),
  refused: (n) => plural(n, 'rechazada', 'rechazadas'),
  open: (name) => `Ajustes y salir, ${name}`,
};

export const device: Texts['device'] = { phone: 'Teléfono', tablet: 'Tableta', computer: 'Ordenador' };
