// What is said of the tools on a figure, of what moved between two plans, of test shots and of the handbook of
// techniques, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const tools: Texts['tools'] = {
  open: 'Qué la mueve, lograrla, con qué certeza',
  about: (figure) => `Sobre ${figure}`,
  part: 'Qué mirar',
  moves: 'Qué la mueve',
  movesLead:
    'Cada dato por separado, del extremo inferior al superior de su tolerancia. El que más la mueve va primero.',
  movesNone: 'Ningún dato tiene una tolerancia que la mueva.',
  ends: (low, high) => `${low} en su extremo inferior, ${high} en el superior`,
  share: (percent) => (percent < 1 ? 'menos del 1 % de la variación' : `${percent} % de la variación`),
  notGiven: 'sin valor',
  make: 'Lograrla …',
  makeLead: 'Qué valor de un dato da la cifra que quiere, con todo lo demás como está.',
  by: 'Cambiando',
  wanted: 'Se quiere',
  find: 'Calcularlo',
  now: (value) => `Ahora es ${value}.`,
  notEntered: 'Aún no está indicado.',
  roots: (title, wanted) => `${title} para llegar a ${wanted}`,
  range: (from, to) => `Se buscó de ${from} a ${to}.`,
  reach: (low, high) => `En ese margen la cifra va de ${low} a ${high}.`,
  never: 'En ese margen la cifra no llega a darse.',
  take: (value) => `Poner ${value} en el plan`,
  taken: (title, value) =>
    `${title} vale ahora ${value} en su borrador. Mire las demás cifras antes de guardar.`,
  sure: 'Con qué certeza',
  sureLead:
    'Cada dato se sortea dentro de su tolerancia, una y otra vez, y la cifra se calcula en cada sorteo.',
  low: 'El 5 % queda por debajo de',
  median: 'La mitad queda por debajo de',
  high: 'El 95 % queda por debajo de',
  outside: (n, of) =>
    n === 0
      ? `Fuera del límite en ninguno de ${of} sorteos.`
      : n === of
        ? `Fuera del límite en todos los ${of} sorteos.`
        : `Fuera del límite en ${n} de ${of} sorteos.`,
  outsideGiven: (n, of) =>
    n === 0
      ? `Fuera del límite en ninguno de los ${of} sorteos que dieron un valor.`
      : n === of
        ? `Fuera del límite en todos los ${of} sorteos que dieron un valor.`
        : `De los sorteos que dieron un valor, fuera del límite en ${n} de ${of}.`,
  noValue: (n, of) =>
    n === of ? 'Ningún sorteo dio un valor.' : `${plural(n, 'sorteo', 'sorteos')} de ${of} sin valor.`,
  otherLimits: 'Los demás límites',
  noLimit: 'Esta cifra no se compara con ningún límite.',
  drawn: (draws, seed) =>
    `${draws} sorteos, semilla ${seed}: los mismos sorteos dan lo mismo en cualquier dispositivo.`,
  moreDraws: (draws) => `Sortear ${draws} veces`,
  working: 'Calculando …',
  missing: 'Esta parte de la aplicación no se cargó. Vuelva a cargar la página cuando haya señal.',
};

export const moved: Texts['moved'] = {
  title: 'Qué se movió',
  none: 'No se movió ninguna cifra ni ninguna comprobación.',
  otherTechnique: 'Cambió la técnica misma, así que las cifras no pueden ponerse una junto a otra.',
  was: (low, high) => `antes de ${low} a ${high}`,
  is: (low, high) => `ahora de ${low} a ${high}`,
  unknown: 'sin dato',
  absent: 'no se comprueba',
  checks: 'Comprobaciones',
  figures: 'Cifras',
  since: (n) => `Qué se movió desde la revisión ${n}`,
  yours: 'Qué se mueve si se toma lo suyo en lugar de lo ajeno',
  unread: 'La revisión anterior no está en este dispositivo. Conéctese para ver qué se movió.',
};

export const shots: Texts['shots'] = {
  title: 'Pruebas medidas',
  lead: 'Primero un saco, con ajustes cada vez mayores; después una persona. Lo medido fija lo que el modelo solo supone.',
  none: 'Aún no hay ninguna prueba medida anotada.',
  log: 'Anotar una prueba medida',
  load: 'Con qué se probó',
  bag: 'Saco de peso',
  person: 'Persona',
  settings: 'Cómo estaba ajustado',
  settingsHelp:
    'Empieza con lo que dice el plan. Cambie lo que se ajustó de otro modo, como la masa del saco.',
  otherSettings: 'Otros ajustes',
  measured: 'Qué se midió',
  figure: 'Cifra',
  value: 'Medido',
  addMeasured: 'Otra cifra medida',
  dropMeasured: 'Dejar esta fuera',
  needMeasured: 'Indique al menos una cifra medida.',
  note: 'Qué se vio',
  go: 'Anotar la prueba',
  by: (who) => `de ${who}`,
  waiting: 'Pendiente de enviar',
  refused: (n) => plural(n, 'prueba medida fue rechazada.', 'pruebas medidas fueron rechazadas.'),
  seeEntries: 'Ver por qué',
  otherTechnique: (title) => `Se hizo para ${title}: aquí no cuenta.`,
  differs: 'Ajustado de otro modo que el plan:',
  asPlanned: 'Ajustado como dice el plan.',
  calibrated: 'Calibrado con las pruebas medidas',
  coefficients: 'Qué fijan las pruebas',
  which: 'Fijar estos; los demás quedan como se suponían.',
  inFit: (n, of) => `Ajustado con ${n} de ${plural(of, 'prueba', 'pruebas')}`,
  leaveOut: 'Desmarque una prueba mal escrita o fallida: queda anotada, pero fuera del ajuste.',
  newest: (most) => `En un ajuste entran ${most} como máximo: las más recientes de las marcadas.`,
  noneIn: 'Marque al menos una prueba con la que ajustar.',
  stated: 'supuesto al principio',
  fitted: 'según las pruebas',
  confidence: (percent) =>
    `Los márgenes contienen el valor verdadero en ${percent} de 100 series de prueba como esta.`,
  rows: 'Lo medido frente al modelo ajustado',
  shot: (n) => `Prueba ${n}`,
  row: (measured, fitted) => `medido ${measured}, ajustado ${fitted}`,
  prediction: 'El plan tal como está',
  model: 'solo el modelo',
  nothing: 'Esta técnica no supone nada que una prueba medida pueda fijar.',
  notYet: 'Aún sin fijar',
};

export const handbook: Texts['handbook'] = {
  title: 'Manual de técnicas',
  lead: 'Qué calcula cada técnica, qué datos pide y qué puede fijar una prueba medida.',
  asks: 'Qué pide',
  gives: 'Qué calcula',
  settles: 'Qué puede fijar una prueba medida',
  settlesNone: 'Aquí no se supone nada que una prueba medida pueda fijar.',
  range: (min, max) => `de ${min} a ${max}`,
  standard: (value) => `si se deja vacío, se toma ${value}`,
  noDefault: 'nunca se supone',
  tolerance: (value) => `más o menos ${value}, salvo que se indique otra cosa`,
  options: 'Uno de:',
  part: (facet) => `en ${facet}`,
};

export const groups: Texts['groups'] = {
  falls: 'Caídas y cables de detención',
  pulls: 'Tirones y lanzamientos',
  wires: 'Vuelo con cables y estructuras',
  fire: 'Fuego',
  blast: 'Vidrio, explosión y fogueo',
  vehicles: 'Vehículos',
  bodies: 'Cuerpo: pelea, escaleras, caballo, agua',
  camera: 'Cámara',
  other: 'Otras',
};
