// What the core says of a high fall, in Spanish. Keyed by its own English words: when those change, the test of
// this catalogue fails and the page shows them as they are.

export const highFall: Record<string, string> = {
  'High fall': 'Caída de altura',
  "A fall from an edge into boxes or an air bag. Covers flight with drag and wind, the stop, what the body feels, and the chance of missing; leaves out the catcher's own strength and air supply.":
    'Una caída desde un borde a cajas o a un colchón de aire. Incluye el vuelo con resistencia del aire y viento, la frenada, lo que siente el cuerpo y la probabilidad de fallar; no incluye la resistencia del receptor ni su suministro de aire.',
  'Drop height': 'Altura de caída',
  "From the body's centre at the exit to the top of the catcher, measured with the catcher up.":
    'Del centro del cuerpo en la salida a la parte alta del receptor, medida con el receptor montado.',
  "Performer's mass": 'Masa del especialista',
  'Clothed and kitted as for the take, weighed on the day.':
    'Vestido y equipado como en la toma, pesado ese día.',
  'Drag area': 'Área de arrastre',
  'Drag coefficient times frontal area. A flat adult has about 0.5 m²; loose costume adds to it.':
    'Coeficiente de arrastre por área frontal. Un adulto extendido tiene unos 0,5 m²; el vestuario suelto la aumenta.',
  'Landing attitude': 'Postura al llegar',
  'How the body meets the catcher: it decides which limit of human tolerance holds.':
    'Cómo llega el cuerpo al receptor: decide qué límite de tolerancia humana se aplica.',
  'Flat on the back': 'Plano, de espaldas',
  'Face down': 'Boca abajo',
  'On the side': 'De costado',
  'Seated or feet first': 'Sentado o de pie',
  'Exit speed': 'Velocidad de salida',
  'Speed on leaving the edge, read from rehearsal video. The tolerance is how far it varies from one rehearsal to the next.':
    'Velocidad al dejar el borde, leída en el vídeo de los ensayos. La tolerancia es cuánto varía de un ensayo a otro.',
  'Exit angle': 'Ángulo de salida',
  'Angle of that speed above the horizontal: 0 for a step off, 90 degrees for straight up.':
    'Ángulo de esa velocidad sobre la horizontal: 0 si se da un paso al vacío, 90 grados si se salta recto hacia arriba.',
  'Exit direction': 'Dirección de salida',
  'Angle to the side of the line to the catcher; the tolerance is how far it varies.':
    'Ángulo hacia un lado de la línea al receptor; la tolerancia es cuánto varía.',
  Catcher: 'Receptor',
  'What takes the fall. Each has its own published ceiling.':
    'Lo que recibe la caída. Cada uno tiene su tope publicado.',
  'Box rig': 'Cama de cajas',
  'Air bag': 'Colchón de aire',
  'Catcher depth': 'Fondo del receptor',
  'From the top of the catcher, inflated or stacked, to the ground or deck.':
    'De la parte alta del receptor, inflado o apilado, al suelo o a la tarima.',
  'Usable share of depth': 'Parte útil del fondo',
  'Share of the depth that gives way before the body would bottom out, from weight-bag drops. 0.7 is a habit for crushed paper and boxes; measure it for this catcher.':
    'Parte del fondo que cede antes de tocar el suelo, según pruebas con sacos de peso. 0,7 es lo habitual con papel y cajas; mídalo en este receptor.',
  'Pulse shape': 'Forma del impulso',
  "How the catcher's push rises and falls. Haversine gives the highest peak and is right when nothing was measured.":
    'Cómo sube y baja el empuje del receptor. El semiverseno da el pico más alto y es lo correcto si no se ha medido nada.',
  Square: 'Cuadrado',
  'Half sine': 'Medio seno',
  Haversine: 'Semiverseno',
  Triangle: 'Triangular',
  'Catcher length': 'Largo del receptor',
  'Along the line of the fall, usable top only.': 'En la línea de la caída, solo la superficie útil.',
  'Catcher width': 'Ancho del receptor',
  'Across the line of the fall, usable top only.':
    'A través de la línea de la caída, solo la superficie útil.',
  'Catcher distance': 'Distancia al receptor',
  'Along the ground from below the exit edge to the middle of the catcher.':
    'Por el suelo, desde la vertical del borde hasta el centro del receptor.',
  'Landing margin': 'Margen de llegada',
  "How far inside the edge of the catcher the body's centre must come down to count as caught.":
    'Cuánto hacia dentro del borde del receptor debe caer el centro del cuerpo para darlo por recogido.',
  'Accepted chance of missing': 'Probabilidad de fallo aceptada',
  'The chance of missing the catcher that the production accepts; it sets the size needed.':
    'La probabilidad de no dar en el receptor que acepta la producción; fija el tamaño necesario.',
  'Wind limit at the lip': 'Límite de viento en el borde',
  'The highest wind, gusts included, in which the fall will be done, read at the exit.':
    'El viento máximo, rachas incluidas, con el que se hará la caída, medido en la salida.',
  'Site elevation': 'Altitud del lugar',
  'Height of the place above sea level; thin air brakes less.':
    'Altura del lugar sobre el nivel del mar; el aire poco denso frena menos.',
  Spotters: 'Vigilantes del receptor',
  "People at the catcher's edges who watch the body down.":
    'Personas en los bordes del receptor que siguen el cuerpo hasta abajo.',
  'Emergency medical providers': 'Sanitarios de emergencia',
  'Trained providers standing by for this fall and nothing else.':
    'Sanitarios formados, dedicados a esta caída y a nada más.',
  Ambulances: 'Ambulancias',
  'Ambulances standing by, not counting an alternate that replaces one that leaves.':
    'Ambulancias de guardia, sin contar la que releva a una que se marcha.',
  'Falls on the day': 'Caídas ese día',
  'Falls from this height or more for this performer on the day, rehearsals included.':
    'Caídas desde esta altura o más de este especialista ese día, ensayos incluidos.',
  'Accepted mean while stopping': 'Media aceptada al frenar',
  "The mean the coordinator accepts for this performer in this catcher; a production's own value.":
    'La media que el coordinador acepta para este especialista en este receptor; un valor propio de la producción.',
  'Impact speed': 'Velocidad de impacto',
  'Speed when the body meets the catcher, with air drag.':
    'Velocidad cuando el cuerpo llega al receptor, con resistencia del aire.',
  'Fall time': 'Tiempo de caída',
  'From leaving the edge to the catcher.': 'Desde que deja el borde hasta el receptor.',
  'Stopping distance': 'Distancia de frenada',
  'Depth of the catcher that is used to stop: depth times its usable share.':
    'Fondo del receptor que se usa para frenar: el fondo por su parte útil.',
  'Mean while stopping': 'Media al frenar',
  'What the body feels on average while stopping, gravity included: v² / (2 s) + g, of the speed downward alone.':
    'Lo que siente el cuerpo de media al frenar, con la gravedad: v² / (2 s) + g, solo con la velocidad hacia abajo.',
  'Peak while stopping': 'Pico al frenar',
  'Highest the body feels while stopping, by the pulse shape, gravity included.':
    'Lo máximo que siente el cuerpo al frenar, según la forma del impulso, con la gravedad.',
  'Stop time': 'Tiempo de frenada',
  'From touching the catcher to standing still.': 'Desde que toca el receptor hasta quedar quieto.',
  'Dynamic response': 'Respuesta dinámica',
  "How far the stop shakes the body along the landing attitude's axis (dynamic response model).":
    'Cuánto sacude la frenada al cuerpo en el eje de la postura (modelo de respuesta dinámica).',
  'Head injury criterion': 'Criterio de lesión en la cabeza',
  "HIC over 15 ms for a head that follows the body's own stop.":
    'HIC en 15 ms para una cabeza que sigue la frenada del cuerpo.',
  'Energy to absorb': 'Energía que absorber',
  'Energy of motion the catcher must take up, speed along included, with the drop through its own depth.':
    'Energía de movimiento que debe absorber el receptor, con la velocidad a lo largo y la caída en su propio fondo.',
  'Landing distance': 'Distancia de llegada',
  'Along the ground from below the edge to where the body comes down, in still air.':
    'Por el suelo, desde la vertical del borde hasta donde cae el cuerpo, sin viento.',
  'Landing scatter along': 'Dispersión a lo largo',
  'Half the length of the ellipse that holds 99 of 100 landings.':
    'La mitad del largo de la elipse que contiene 99 de cada 100 llegadas.',
  'Landing scatter across': 'Dispersión a lo ancho',
  'Half the width of the ellipse that holds 99 of 100 landings.':
    'La mitad del ancho de la elipse que contiene 99 de cada 100 llegadas.',
  'Chance of missing': 'Probabilidad de fallar',
  "Chance that the body's centre comes down outside the catcher less its margin. 1 in a thousand million means that or less.":
    'Probabilidad de que el centro del cuerpo caiga fuera del receptor menos su margen. 1 entre mil millones significa eso o menos.',
  'Catcher length needed': 'Largo de receptor necesario',
  'Length, placed as planned, for the accepted chance of missing.':
    'Largo, colocado según el plan, para la probabilidad de fallo aceptada.',
  'Catcher width needed': 'Ancho de receptor necesario',
  'Width for the accepted chance of missing.': 'Ancho para la probabilidad de fallo aceptada.',
  'Wind at the lip': 'Viento en el borde',
  'The fall may go in wind up to {wind}; the habit is to stop at 5 to 7 m/s at the lip.':
    'La caída puede hacerse con viento de hasta {wind}; lo habitual es parar entre 5 y 7 m/s en el borde.',
  'an air bag': 'un colchón de aire',
  'a box rig': 'una cama de cajas',
  "Drop against the catcher's ceiling": 'Caída frente al tope del receptor',
  '{drop} into {catcher}, whose ceiling is {ceiling}; lower the drop or change the catcher to gain margin.':
    '{drop} sobre {catcher}, cuyo tope es {ceiling}; baje la caída o cambie de receptor para ganar margen.',
  'Chance of missing the catcher': 'Probabilidad de no dar en el receptor',
  'The chance of coming down outside the catcher less its margin is {chance}; {length} by {width} at this place would bring it to {wanted}.':
    'La probabilidad de caer fuera del receptor menos su margen es {chance}; con {length} por {width} en este sitio bajaría a {wanted}.',
  'under 1 in a thousand million': 'menos de 1 entre mil millones',
  '1 in {n}': '1 entre {n}',
  'The stop gives a dynamic response of {response} in {depth}; a deeper catcher or a lower drop brings it down.':
    'La frenada da una respuesta dinámica de {response} en {depth}; un receptor más hondo o una caída más baja la reducen.',
  'The body feels {mean} on average over {depth}; this does not depend on the pulse shape.':
    'El cuerpo siente {mean} de media en {depth}; no depende de la forma del impulso.',
  'Dynamic response, low risk': 'Respuesta dinámica, riesgo bajo',
  'low risk': 'riesgo bajo',
  'Dynamic response, medium risk': 'Respuesta dinámica, riesgo medio',
  'medium risk': 'riesgo medio',
  'Spine, ejection criterion': 'Columna, criterio de eyección',
  'Seated or feet first the spine answers with {response}; 18 g is where ejection seats hurt up to one in twenty.':
    'Sentado o de pie la columna responde con {response}; con 18 g los asientos eyectables lesionan hasta a uno de cada veinte.',
  '18: at most 5 % injured': '18: como máximo un 5 % de lesionados',
  'Head injury criterion, 15 ms': 'Criterio de lesión en la cabeza, 15 ms',
  'HIC is {hic} for a head that stops with the body; a head that strikes a hard part would take far more.':
    'El HIC es {hic} para una cabeza que frena con el cuerpo; una cabeza que golpea algo duro recibiría mucho más.',
  "{n} spotters planned; above 4.57 m at least 2 watch the catcher's edges.":
    '{n} vigilantes previstos; por encima de 4,57 m al menos 2 vigilan los bordes del receptor.',
  'Emergency providers': 'Sanitarios de emergencia',
  '{n} standing by; the guideline generally expects 2 providers for a high fall.':
    '{n} de guardia; la guía espera en general 2 sanitarios en una caída de altura.',
  Ambulance: 'Ambulancia',
  '{n} standing by; the guideline generally expects an ambulance for a high fall.':
    '{n} de guardia; la guía espera en general una ambulancia en una caída de altura.',
  '{n} planned for this performer, rehearsals included; 2 or 3 of the highest a day is the habit.':
    '{n} previstas para este especialista, ensayos incluidos; lo habitual son 2 o 3 de las más altas al día.',
  'The fall': 'La caída',
  Time: 'Tiempo',
  Height: 'Altura',
  Speed: 'Velocidad',
  'Distance along': 'Distancia',
  'What the body feels': 'Lo que siente el cuerpo',
  'Time from contact': 'Tiempo desde el contacto',
  Felt: 'Lo que siente',
  'Landing ellipse, 99 %': 'Elipse de llegada, 99 %',
  '99 of 100 bodies come down inside it; nothing hard and nobody stands here.':
    '99 de cada 100 cuerpos caen dentro; aquí no hay nada duro ni nadie.',
  'Catcher and spotters': 'Receptor y vigilantes',
  'Only spotters stand within 2 m of the catcher.': 'A menos de 2 m del receptor solo están los vigilantes.',
  'The peak of {peak} rests on the pulse shape entered; only the mean of {mean} follows from energy alone. Measure the shape with an instrumented weight bag.':
    'El pico de {peak} depende de la forma de impulso indicada; solo la media de {mean} sale de la energía. Mida la forma con un saco de peso instrumentado.',
  "Whether {usable} of this catcher's {depth} give way evenly under {mass} is not computed: drop weight bags of rising mass first.":
    'No se calcula si {usable} de los {depth} del receptor ceden de forma uniforme bajo {mass}: lance antes sacos de masa creciente.',
  "A steady wind of {wind} moves the landing by {shift}; a bag's top moves in it too.":
    'Un viento constante de {wind} desplaza la llegada {shift}; la superficie del colchón también se mueve.',
};
