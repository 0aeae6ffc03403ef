// What is said of hazards weighed, in Spanish. The levels themselves are the core's.

import type { Texts } from '../en/index.ts';

export const risk: Texts['risk'] = {
  severity: {
    catastrophic: 'Catastrófica',
    critical: 'Crítica',
    marginal: 'Moderada',
    negligible: 'Leve',
  },
  severityHelp: {
    catastrophic: 'alguien podría morir o no volver a trabajar',
    critical: 'lesión duradera, o varias personas en el hospital',
    marginal: 'una lesión que cuesta días de trabajo',
    negligible: 'una lesión que no cuesta ningún día de trabajo',
  },
  probability: {
    frequent: 'Frecuente',
    probable: 'Bastante probable',
    occasional: 'Ocasional',
    remote: 'Remota',
    improbable: 'Muy improbable',
    eliminated: 'Eliminada',
  },
  probabilityHelp: {
    frequent: 'cabe esperarla a menudo',
    probable: 'pasará varias veces',
    occasional: 'pasará alguna vez',
    remote: 'difícil, pero posible',
    improbable: 'se puede suponer que no pasará',
    eliminated: 'no puede pasar: el peligro ya no existe',
  },
  level: {
    high: 'Alto',
    serious: 'Serio',
    medium: 'Medio',
    low: 'Bajo',
    eliminated: 'Eliminado',
  },
  control: {
    remove: 'Quitar',
    substitute: 'Sustituir',
    engineer: 'Medios técnicos',
    organise: 'Organización',
    protect: 'Equipo de protección',
  },
  prompt: 'Una puntuación invita a pensar; nunca es un permiso.',
  source: 'Niveles según MIL-STD-882E, tabla III.',
  before: 'Sin hacer nada',
  after: 'Con las medidas',
  howBad: 'Gravedad',
  howLikely: 'Probabilidad',
  answers: 'Responde',
  add: 'Añadir un riesgo',
  addControl: 'Añadir una medida',
  kind: 'Tipo de medida',
  order: 'Al guardar se ordenan las medidas, primero el tipo más fuerte.',
  noEvent: 'Un riesgo aún sin nombre',
};
