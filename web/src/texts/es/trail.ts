// What is said of the trail, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const trail: Texts['trail'] = {
  title: 'Registro',
  lead: (size) =>
    plural(size, 'entrada, nunca cambiada ni borrada.', 'entradas, ninguna cambiada ni borrada jamás.'),
  verify: 'Comprobar la prueba',
  checking: 'Comprobando …',
  holds: 'La prueba es válida: esta entrada está en el árbol que tiene esta raíz.',
  fails: (why) => `La prueba no es válida: ${why}`,
  newest: 'A lo más reciente',
  older: 'Entradas anteriores',
  export: 'Exportar el registro',
  root: 'Raíz',
  hash: 'Huella de la hoja',
  entry: (n) => `Entrada ${n}`,
  facts: 'Lo que dice la entrada',
  empty: 'Todavía no ha ocurrido nada.',
  checkAll: 'Las pruebas se comprueban en este dispositivo, no en el servidor.',
};

export const witnesses: Texts['witnesses'] = {
  title: 'Testigos',
  lead: 'Alguien de fuera que mira el registro de vez en cuando y firma que desde entonces solo ha crecido. Ve cuánto mide, y ni una palabra de lo que contiene.',
  none: 'Todavía nadie vigila este registro.',
  saw: (size, when) => `Vio ${plural(size, 'entrada', 'entradas')}, firmado ${when}`,
  earlier: (n) => `y ${plural(n, 'anterior', 'anteriores')}`,
  nothing: 'Todavía no ha contrafirmado nada.',
  since: (n) => plural(n, 'entrada añadida desde entonces.', 'entradas añadidas desde entonces.'),
  removed: (when) => `Retirado ${when}. Lo contrafirmado queda.`,
  remove: 'Retirar',
  removeAsk: (name) => `No se aceptará nada más que contrafirme ${name}. Lo contrafirmado queda.`,
  removeYes: 'Sí, retirarlo',
  add: 'Añadir un testigo',
  key: 'Nombre y clave del testigo',
  keyHelp:
    'La línea que escribió «gagwright witness key», nombre+huella+clave. El nombre queda para siempre en el registro: que no sea el de una persona.',
  bring: 'Traer una contrafirma',
  checkpoint: 'Guardar el punto de control para contrafirmar',
  cosigned: 'Lo que devolvió el testigo',
  cosignedHelp: 'La nota entera, o solo la línea del testigo.',
  entries: 'Si es solo la línea: para cuántas entradas',
  taken: 'Es válida y se guarda con el registro.',
};
