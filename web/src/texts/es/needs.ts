// What is said of what a slot needs, in Spanish.

import type { Texts } from '../en/index.ts';

export const needs: Texts['needs'] = {
  title: 'Qué pide el puesto',
  add: 'Añadir un requisito',
  kind: 'Qué se pide',
  kinds: {
    skill: 'Una habilidad',
    certificate: 'Un certificado',
    measurement: 'Una medida',
    kitted_mass: 'Una masa, con ropa y equipo',
    age: 'Una edad',
    medical_clearance: 'Apto médico',
    availability: 'Disponible ese día',
    rest: 'Descanso antes de la citación',
    daily_exposure: 'Un límite de lo que el cuerpo aguanta en un día',
    consent: 'Consentimiento propio',
  },
  level: 'Nivel mínimo',
  withinDays: 'Usada en los últimos días (vacío: no se pide)',
  anyOf: 'Cualquiera de',
  orAnother: 'U otro certificado',
  coverDays: 'Válido aún tantos días después (por el tiempo)',
  measure: 'Qué medida',
  target: 'Del actor doblado',
  tolerance: 'Más o menos',
  least: 'Mínimo',
  most: 'Máximo',
  leastAge: 'Edad mínima',
  mostAge: 'Edad máxima',
  hours: 'Horas',
  adds: 'Esta acción añade',
  inADay: 'Máximo en un día',
  judged: 'Quién podría hacerlo, juzgado mientras usted escribe',
  noDay:
    'Fije primero el día de rodaje en Lugar y momento: los certificados y el descanso se juzgan para ese día.',
  first: (n, all) =>
    `Los primeros ${n} de ${all} especialistas. La página Reparto de la acción los ordena a todos.`,
  castHere: 'Cubrir este puesto',
};
