// What the core says of a tempered glass exit, in Spanish. Keyed by its own English words.

export const glassExit: Record<string, string> = {
  'Tempered glass exit': 'Salida por vidrio templado',
  'A run through a tempered pane that is broken by a charge on cue. Covers lead time and its spread, the crack, falling glass and a pane that stays whole; takes charge, delay and fragment radius as the licensed operator gives them and leaves out cuts and the landing.':
    'Una carrera a través de un vidrio templado que una carga rompe a la señal. Incluye la antelación y su dispersión, la grieta, el vidrio que cae y el vidrio que queda entero; toma la carga, el retardo y el radio de fragmentos tal como los da el operador con licencia y no incluye los cortes ni la llegada.',
  'Class 1 (1,200 mm)': 'Clase 1 (1200 mm)',
  'Class 2 (450 mm)': 'Clase 2 (450 mm)',
  'Class 3 (190 mm)': 'Clase 3 (190 mm)',
  'Not classified': 'Sin clasificar',
  'At a corner': 'En una esquina',
  'At the middle of the sill': 'En el centro del borde inferior',
  'In the centre': 'En el centro',
  "Performer's mass": 'Masa del especialista',
  'Clothed and kitted as for the take, weighed on the day.':
    'Vestido y equipado como en la toma, pesado ese día.',
  'Run speed': 'Velocidad de carrera',
  'Mean speed from the cue mark to the pane, read from rehearsal video.':
    'Velocidad media de la marca de señal al vidrio, leída en el vídeo de los ensayos.',
  'Spread of run speed': 'Dispersión de la velocidad',
  'One standard deviation over at least ten rehearsal runs.':
    'Una desviación típica en al menos diez carreras de ensayo.',
  'Cue mark to pane': 'De la marca de señal al vidrio',
  'From where the leading part of the body is at the cue to the pane.':
    'De donde está la parte delantera del cuerpo en la señal hasta el vidrio.',
  'Spread of the cue mark': 'Dispersión de la marca',
  'One standard deviation of where the leading part is when the cue comes.':
    'Una desviación típica de dónde está la parte delantera cuando llega la señal.',
  'Cue to the firing button': 'De la señal al botón de disparo',
  'From the performer passing the mark to the button, from rehearsals; 0 for a light gate.':
    'Desde que el especialista pasa la marca hasta el botón, según los ensayos; 0 con barrera de luz.',
  'Spread of the button': 'Dispersión del botón',
  'One standard deviation of that time over rehearsals; 0 for a light gate.':
    'Una desviación típica de ese tiempo en los ensayos; 0 con barrera de luz.',
  'Firing delay as given': 'Retardo de disparo indicado',
  'From the button to the charge at the glass, as the licensed operator gives it.':
    'Del botón a la carga en el vidrio, tal como lo da el operador con licencia.',
  'Spread of the firing delay': 'Dispersión del retardo',
  'One standard deviation of the firing delay, as the licensed operator gives it.':
    'Una desviación típica del retardo, tal como la da el operador con licencia.',
  'Least lead as given': 'Antelación mínima indicada',
  'The shortest time from charge to contact that the licensed operator allows.':
    'El menor tiempo de la carga al contacto que permite el operador con licencia.',
  'Longest lead wanted': 'Antelación máxima deseada',
  'The longest time from charge to contact for which the shot still works.':
    'El mayor tiempo de la carga al contacto con el que el plano todavía sirve.',
  'Chance of no fire as given': 'Probabilidad de fallo indicada',
  'The chance that the charge does not fire, as the licensed operator gives it.':
    'La probabilidad de que la carga no dispare, tal como la da el operador con licencia.',
  'Pane width': 'Ancho del vidrio',
  'Of the glass itself, across the path.': 'Del vidrio mismo, a través del recorrido.',
  'Pane height': 'Alto del vidrio',
  'Of the glass itself, from its lower to its upper edge.':
    'Del vidrio mismo, del borde inferior al superior.',
  'Sill above the ground': 'Altura del borde inferior',
  "From the pane's lower edge down to where its fragments land.":
    'Del borde inferior del vidrio a donde caen sus fragmentos.',
  'Pane thickness': 'Espesor del vidrio',
  'Of one sheet; laminated glass has no place here.': 'De una sola hoja; el vidrio laminado no vale aquí.',
  'Where the charge sits': 'Dónde va la carga',
  'As the licensed operator places it: the crack runs from there to the farthest corner.':
    'Donde la coloca el operador con licencia: la grieta corre desde ahí hasta la esquina más lejana.',
  'Pendulum class of the pane': 'Clase de péndulo del vidrio',
  "From the maker's test report under EN 12600.": 'Del informe de ensayo del fabricante según EN 12600.',
  'Fragments in 50 mm square': 'Fragmentos en 50 mm de lado',
  'The fewest counted in any 50 by 50 mm of a test pane from the same batch.':
    'El menor número contado en 50 por 50 mm de un vidrio de prueba del mismo lote.',
  'Test panes fired': 'Vidrios de prueba disparados',
  'Panes of the same batch fired with the same rig, with nobody near.':
    'Vidrios del mismo lote disparados con el mismo montaje, sin nadie cerca.',
  'Give of a whole pane': 'Cedencia de un vidrio entero',
  "How far a pane that did not break bends and the body's front gives, from a weight-bag swing.":
    'Cuánto se dobla un vidrio que no se rompió y cede el frente del cuerpo, según un saco de peso en péndulo.',
  'Fragment radius as given': 'Radio de fragmentos indicado',
  'How far from the pane fragments may land, as the licensed operator gives it.':
    'A qué distancia del vidrio pueden caer fragmentos, según el operador con licencia.',
  'Nearest unshielded person': 'Persona sin pantalla más cercana',
  'From the pane to the nearest person without a shield, the performer aside.':
    'Del vidrio a la persona sin pantalla más cercana, aparte del especialista.',
  'Lead from charge to contact': 'Antelación de carga a contacto',
  'Cue mark over run speed, less button and firing delay; below nothing the body comes first.':
    'Distancia de la marca entre la velocidad, menos botón y retardo; por debajo de cero el cuerpo llega antes.',
  'Chance of a whole pane': 'Probabilidad de vidrio entero',
  'Chance that the body meets glass that has not broken across, misfires included.':
    'Probabilidad de que el cuerpo encuentre vidrio sin romper del todo, fallos de disparo incluidos.',
  'Chance of a short lead': 'Probabilidad de antelación corta',
  'Chance that contact comes sooner than the least lead as given, misfires included.':
    'Probabilidad de que el contacto llegue antes de la antelación mínima indicada, fallos de disparo incluidos.',
  'Chance of a long lead': 'Probabilidad de antelación larga',
  'Chance that contact comes later than the longest lead wanted.':
    'Probabilidad de que el contacto llegue después de la antelación máxima deseada.',
  'Body energy at the pane': 'Energía del cuerpo en el vidrio',
  'Energy of motion of the whole body: m v² / 2.': 'Energía de movimiento de todo el cuerpo: m v² / 2.',
  'Same speed by a drop of': 'Misma velocidad cayendo',
  "The drop that gives this speed, to set beside a pendulum's drop height: v² / 2 g.":
    'La caída que da esta velocidad, para comparar con la altura de un péndulo: v² / 2 g.',
  'Cue to contact': 'De la señal al contacto',
  'From the cue until the leading part meets the pane.':
    'Desde la señal hasta que la parte delantera llega al vidrio.',
  'Cue to charge': 'De la señal a la carga',
  'Button and firing delay together.': 'Botón y retardo de disparo juntos.',
  'Crack across, slow front': 'Grieta completa, frente lento',
  'From the charge to the farthest corner at 1,458 m/s, the slower of two measured fronts.':
    'De la carga a la esquina más lejana a 1458 m/s, el más lento de dos frentes medidos.',
  'Crack across, fast front': 'Grieta completa, frente rápido',
  'The same at 1,700 m/s, the faster of two measured fronts.':
    'Lo mismo a 1700 m/s, el más rápido de dos frentes medidos.',
  'Stop on a whole pane, mean': 'Parada en vidrio entero, media',
  'What the body meets on average if the pane holds: v² / 2 over its give.':
    'Lo que recibe el cuerpo de media si el vidrio aguanta: v² / 2 entre lo que cede.',
  'Head criterion on a whole pane': 'Criterio de cabeza en vidrio entero',
  "HIC over 15 ms for a head that stops in the pane's give, as a half sine.":
    'HIC en 15 ms para una cabeza que para en lo que cede el vidrio, en medio seno.',
  'Last fragments down': 'Últimos fragmentos en el suelo',
  'From the charge until fragments of the upper edge land, without drag, which would be later.':
    'Desde la carga hasta que caen los fragmentos del borde superior, sin aire, que lo retrasaría.',
  "Cloud's upper edge has dropped": 'Bajada del borde de la nube',
  'How far the upper edge of the falling glass is below the frame when the body passes.':
    'Cuánto ha bajado el borde superior del vidrio que cae respecto al marco cuando pasa el cuerpo.',
  'Opening still full of glass': 'Hueco aún lleno de vidrio',
  'Share of the opening that falling glass still covers when the body passes.':
    'Parte del hueco que el vidrio que cae aún cubre cuando pasa el cuerpo.',
  'Glass still in the opening': 'Vidrio aún en el hueco',
  'Mass of the falling glass in the opening when the body passes.':
    'Masa del vidrio que cae en el hueco cuando pasa el cuerpo.',
  'Lead against the least given': 'Antelación frente a la mínima',
  'Contact comes {lead} after the charge at the least; the licensed operator allows no less than {least}. Move the cue mark away from the pane to gain lead.':
    'El contacto llega como mínimo {lead} después de la carga; el operador con licencia no permite menos de {least}. Aleje del vidrio la marca de señal para ganar antelación.',
  'Lead against the longest wanted': 'Antelación frente a la máxima',
  'Contact comes {lead} after the charge at the most; past {most} the shot no longer works. Move the cue mark towards the pane.':
    'El contacto llega como máximo {lead} después de la carga; pasados {most} la toma ya no sirve. Acerque al vidrio la marca de señal.',
  'The pane is whole at contact in {chance} of all runs, in {misfire} because nothing fires; the limit is {limit}. A longer cue distance, a light gate or a steadier run lowers it.':
    'El vidrio está entero en el contacto en {chance} de todas las carreras, en {misfire} porque nada dispara; el límite es {limit}. Más distancia de señal, una barrera de luz o una carrera más regular la reducen.',
  'The lead is shorter than the operator allows in {chance} of runs; the limit is {limit}.':
    'La antelación es más corta de lo que permite el operador en {chance} de las carreras; el límite es {limit}.',
  'The lead is longer than the shot can use in {chance} of runs; the limit is {limit}.':
    'La antelación es más larga de lo que sirve al plano en {chance} de las carreras; el límite es {limit}.',
  'under 1 in a million': 'menos de 1 entre un millón',
  '1 in {n}': '1 entre {n}',
  "Body against the pane's class": 'Cuerpo frente a la clase del vidrio',
  'pendulum classes': 'clases de péndulo',
  'The body brings {energy} and the pendulum showed how this pane behaves up to {class}; past that nothing says how a whole pane breaks.':
    'El cuerpo trae {energy} y el péndulo mostró cómo se comporta este vidrio hasta {class}; más allá nada dice cómo rompe un vidrio entero.',
  'Body against safety glazing': 'Cuerpo frente a vidrio de seguridad',
  'category II, 48 in': 'categoría II, 48 in',
  'The body brings {energy}; safety glazing is tested with up to {tested}, so the label says nothing about this run into a whole pane.':
    'El cuerpo trae {energy}; el vidrio de seguridad se ensaya con hasta {tested}, así que la etiqueta no dice nada de esta carrera contra un vidrio entero.',
  'Head on a whole pane, 15 ms': 'Cabeza en vidrio entero, 15 ms',
  'If nothing fires and the pane holds, HIC is {hic} at this speed; lead with arms and shoulder, and stop the run on a call.':
    'Si nada dispara y el vidrio aguanta, el HIC es {hic} a esta velocidad; vaya por delante con brazos y hombro, y pare la carrera a la voz.',
  'Thickness the count holds for': 'Espesor para el que vale el recuento',
  '40 fragments from 4 to 12 mm': '40 fragmentos de 4 a 12 mm',
  "The pane is {thickness} thick; thicker ones than the standard's break coarser and fall heavier.":
    'El vidrio tiene {thickness} de espesor; los más gruesos que los de la norma rompen en trozos mayores y más pesados.',
  'Thinnest the count holds for': 'Espesor mínimo para el que vale el recuento',
  "The pane is {thickness} thick; for thinner ones than the standard's its count of fragments says nothing.":
    'El vidrio tiene {thickness} de espesor; para los más finos que los de la norma su recuento de fragmentos no dice nada.',
  'Fragments of a test pane': 'Fragmentos de un vidrio de prueba',
  'fragments in 50 by 50 mm': 'fragmentos en 50 por 50 mm',
  '{n} fragments in the coarsest 50 by 50 mm of a test pane; fewer means long splinters: refuse the batch.':
    '{n} fragmentos en los 50 por 50 mm más gruesos de un vidrio de prueba; con menos salen astillas largas: rechace el lote.',
  '{n} panes of this batch were fired with nobody near; each shows delay, break and where fragments land.':
    'Se dispararon {n} vidrios de este lote sin nadie cerca; cada uno muestra el retardo, la rotura y dónde caen los fragmentos.',
  'People clear of fragments': 'Personas fuera de los fragmentos',
  'The nearest person without a shield is {distance} from the pane; the operator gives {radius} for fragments.':
    'La persona sin pantalla más cercana está a {distance} del vidrio; el operador da {radius} para los fragmentos.',
  'The run and the falling glass': 'La carrera y el vidrio que cae',
  'Time from the cue': 'Tiempo desde la señal',
  'Still to the pane': 'Falta hasta el vidrio',
  'Upper edge of the glass': 'Borde superior del vidrio',
  'How leads vary': 'Cómo varía la antelación',
  Lead: 'Antelación',
  'Chance of a shorter one': 'Probabilidad de una más corta',
  'Fragments, as given': 'Fragmentos, según lo indicado',
  'The licensed operator expects fragments here; nobody without a shield but the performer.':
    'El operador con licencia espera fragmentos aquí; nadie sin pantalla salvo el especialista.',
  'The pane is whole at contact in {chance} of draws; it then meets {energy} and, if it holds, stops the body at {stop} on average.':
    'El vidrio está entero en el contacto en {chance} de los casos; recibe entonces {energy} y, si aguanta, para el cuerpo a {stop} de media.',
  'Two measured crack fronts disagree: this pane is broken across in {slow} or in {fast}; chances take the longer.':
    'Dos frentes de grieta medidos no coinciden: este vidrio se rompe del todo en {slow} o en {fast}; las probabilidades toman el mayor.',
  'On these figures the body reaches the pane {time} before the charge; it must never fire on a body that touches the glass.':
    'Con estas cifras el cuerpo llega al vidrio {time} antes que la carga; nunca debe disparar con un cuerpo tocando el vidrio.',
  'When the body passes, falling glass still covers {share} % of the opening, {mass} of it; the last lands no sooner than {fall} after the charge, so eyes stay shut and covered.':
    'Cuando pasa el cuerpo, el vidrio que cae aún cubre el {share} % del hueco, {mass} en total; lo último no cae antes de {fall} tras la carga, así que los ojos siguen cerrados y cubiertos.',
};
