// What is said of today and the list of gags, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const today: Texts['today'] = {
  title: 'Hoy',
  sign: (n) => plural(n, 'firma por hacer', 'firmas por hacer'),
  nothingToSign: 'Nada por firmar',
  toSign: 'Le toca firmar',
  nothingLong: 'Nadie espera su firma.',
  held: 'En alto',
  heldCount: (n) => plural(n, 'alto abierto', 'altos abiertos'),
  everything: 'Todo',
  release: 'Ver el alto',
  next: 'Lo siguiente',
  noNext: 'Todavía no hay ninguna acción planificada.',
  firstGag: 'Planificar la primera acción',
  certificates: 'Certificados que vencen antes',
  lapses: (kind, on, before) => `${kind} vence el ${on}, antes del ${before}`,
  myParts: 'Dónde actúa usted',
  noParts: 'No tiene puesto en nada de lo que viene.',
  myCertificates: 'Sus certificados',
  allOfMe: 'Todo lo que consta de usted',
  nextDay: (day) => `Próximo día de rodaje: ${day}`,
  clearedOf: (cleared, all) => `Autorizadas: ${cleared} de ${all}`,
  medical: 'Cobertura médica de lo que viene',
  wholePlan: 'El plan entero',
  handedHold: (name) => `Lo dio ${name} y se entregó en mano. El servidor todavía no lo sabe.`,
  unsigned: 'Quién no ha firmado',
  noDay: 'Sin día fijado',
};

export const gags: Texts['gags'] = {
  title: 'Acciones',
  search: 'Buscar código, título, lugar',
  all: 'Todas',
  filter: 'Mostrar por estado',
  none: 'Ninguna acción coincide con la búsqueda.',
  empty: 'Todavía no hay ninguna acción planificada.',
  new: 'Acción nueva',
  signed: (have, need) => `${have} de ${need} firmas`,
  scene: (scene) => `Escena ${scene}`,
  revision: (n) => `Revisión ${n}`,
  count: (shown, all) =>
    shown === all ? plural(all, 'acción', 'acciones') : `${shown} de ${plural(all, 'acción', 'acciones')}`,
};

export const newGag: Texts['newGag'] = {
  title: 'Acción nueva',
  code: 'Código',
  codeHelp: 'Lo bastante corto para decirlo por radio, por ejemplo G07.',
  name: 'Título',
  technique: 'Cómo se hace',
  techniqueHelp: 'Toque para elegir entre los grupos, o escriba el principio de una palabra.',
  go: 'Crear la acción',
};
