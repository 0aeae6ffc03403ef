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
