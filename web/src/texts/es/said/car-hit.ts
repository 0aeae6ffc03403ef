// What the core says of a car hit by lock-off, in Spanish, keyed by its own English words.

export const carHit: Record<string, string> = {
  'Car hit by lock-off': 'Atropello por cámara fija',
  "A car's pass and a performer's pull, shot apart under one locked camera and combined. Covers times, marks, the car's stop, flight, landing and a plausible throw; leaves out the pull's gas and changing light. Both live at once is refused.":
    'El paso de un coche y el tirón de un intérprete, rodados por separado con una cámara fija y combinados. Incluye tiempos, marcas, parada del coche, vuelo, caída y un lanzamiento creíble; no incluye el gas del tirón ni la luz que cambia. Ambos a la vez se rechaza.',
  'How the passes are shot': 'Cómo se ruedan los pasos',
  'Shot apart and combined': 'Por separado y combinados',
  'Car and performer together': 'Coche e intérprete juntos',
  'By lock-off the car and the performer are never in the place together; anything else is refused here.':
    'Con cámara fija el coche y el intérprete nunca están juntos en el lugar; lo demás se rechaza aquí.',
  "Performer's pass begins": 'Empieza el paso del intérprete',
  "On the clock of the day, from the start of the car's pass; negative when the performer goes first.":
    'En el reloj del día, desde el inicio del paso del coche; negativo si el intérprete va primero.',
  "Length of the car's pass": 'Duración del paso del coche',
  'From its start until the engine is off and the key is out.':
    'Desde su inicio hasta que el motor está parado y la llave fuera.',
  "Length of the performer's pass": 'Duración del paso del intérprete',
  'From its start until the performer is off the line and out of the place.':
    'Desde su inicio hasta que el intérprete está suelto y fuera del lugar.',
  'Car parked away': 'Coche aparcado lejos',
  "From the contact mark to the car's nearest part during the performer's pass, key out.":
    'De la marca de contacto a la parte más cercana del coche durante el paso del intérprete, llave fuera.',
  "Car's mass": 'Masa del coche',
  'With driver and cage, for the picture only: nobody is struck.':
    'Con conductor y jaula, solo para la imagen: no se golpea a nadie.',
  'Of the car at its start mark, held until it brakes.':
    'Del coche en su marca de inicio, mantenida hasta que frena.',
  'Start mark to contact mark': 'De marca de inicio a contacto',
  'Way of the nose from where the clap or flash of the pass is taken to the contact mark.':
    'Recorrido del morro desde donde se toma la claqueta o el destello hasta la marca de contacto.',
  'Braking before contact': 'Frenado antes del contacto',
  'How far before the contact mark the wheels lock; negative when it brakes past the mark.':
    'Cuánto antes de la marca de contacto se bloquean las ruedas; negativo si frena pasada la marca.',
  Friction: 'Rozamiento',
  'Of the sliding tyres, from braked runs on this surface: dry asphalt about 0.6 to 0.8, wet 0.45 to 0.7.':
    'De los neumáticos deslizando, según frenadas en este firme: asfalto seco de 0,6 a 0,8, mojado de 0,45 a 0,7.',
  'Clear way past contact': 'Camino libre tras el contacto',
  "From the contact mark along the car's way to the first person or camera.":
    'De la marca de contacto, por el camino del coche, a la primera persona o cámara.',
  'Start mark to trigger': 'De marca de inicio al disparo',
  "From the clap or flash of the performer's pass to the trigger of the pull.":
    'De la claqueta o el destello del paso del intérprete al disparo del tirón.',
  'Trigger to first movement': 'Del disparo al primer movimiento',
  'Valve, slack and stretch, from weight-bag pulls seen frame by frame.':
    'Válvula, holgura y alargamiento, según tirones con saco vistos fotograma a fotograma.',
  'Frames slipped in the edit': 'Fotogramas corridos al montar',
  "How many frames later the performer's plate is laid; whole numbers.":
    'Cuántos fotogramas más tarde se coloca la toma del intérprete; números enteros.',
  'Frames each second': 'Fotogramas por segundo',
  'As both passes are shot.': 'Como se ruedan ambos pasos.',
  "Of the performer when the line goes slack, from the pull's own assessment and weight-bag pulls.":
    'Del intérprete cuando el cable se afloja, según la evaluación del tirón y tirones con saco.',
  'Travel on the line': 'Recorrido en el cable',
  'How far the performer moves until the line goes slack.':
    'Cuánto se mueve el intérprete hasta que el cable se afloja.',
  'Of the line above the horizontal at the body.': 'Del cable sobre la horizontal, en el cuerpo.',
  'Top of the pads above the floor the performer stands on.':
    'Parte alta de las colchonetas sobre el suelo donde está el intérprete.',
  'Stopping distance in the pads': 'Distancia de parada en colchoneta',
  'How far the pads give under a body, from weight-bag landings.':
    'Cuánto ceden las colchonetas bajo un cuerpo, según caídas con saco.',
  'Near edge of the pads': 'Borde cercano de las colchonetas',
  'Far edge of the pads': 'Borde lejano de las colchonetas',
  'From where the performer stands, along the pull.': 'Desde donde está el intérprete, a lo largo del tirón.',
  'Friction of a thrown body': 'Rozamiento de un cuerpo lanzado',
  'For the picture: published throws of clothed dummies on asphalt sit near 0.66.':
    'Para la imagen: los lanzamientos publicados de maniquíes vestidos sobre asfalto rondan 0,66.',
  'Throw shown in the picture': 'Lanzamiento que se ve',
  "From contact to rest as the audience sees it: the dummy's or double's throw, or the performer's with the roll.":
    'Del contacto al reposo como lo ve el público: el lanzamiento del maniquí o doble, o el del intérprete con la rodada.',
  'Drag area of the body': 'Área de arrastre del cuerpo',
  'Drag coefficient times area; an adult has about 0.5 m2.':
    'Coeficiente de arrastre por área; un adulto tiene unos 0,5 m2.',
  'People before a live car': 'Personas ante un coche en marcha',
  'Performers in the place while the car runs: none when the passes are shot apart.':
    'Intérpretes en el lugar mientras corre el coche: ninguno si los pasos se ruedan por separado.',
  'Time between the passes': 'Tiempo entre los pasos',
  'From the end of the earlier pass to the start of the later; negative when they overlap.':
    'Del fin del primer paso al inicio del segundo; negativo si se solapan.',
  'Room to the parked car': 'Espacio hasta el coche aparcado',
  "From the parked car to the furthest place of the performer's pass.":
    'Del coche aparcado al punto más lejano del paso del intérprete.',
  'Car at the contact mark': 'Coche en la marca de contacto',
  "From the start mark of the car's pass.": 'Desde la marca de inicio del paso del coche.',
  "Performer's first movement": 'Primer movimiento del intérprete',
  "From the start mark of the performer's pass.": 'Desde la marca de inicio del paso del intérprete.',
  'Contact out of step, frames': 'Desfase del contacto, fotogramas',
  "Frames between the car's contact and the performer's first movement as the plates are laid.":
    'Fotogramas entre el contacto del coche y el primer movimiento del intérprete según están colocadas las tomas.',
  'Frames to slip': 'Fotogramas que correr',
  "Whole frames to lay the performer's plate later by, so that contact fits best.":
    'Fotogramas enteros que retrasar la toma del intérprete para que el contacto encaje mejor.',
  'Speed at the contact mark': 'Velocidad en la marca de contacto',
  'Of the car as it passes where the performer stood or will stand.':
    'Del coche al pasar por donde estuvo o estará el intérprete.',
  'Stop past the contact mark': 'Parada tras la marca de contacto',
  'Way of the nose from the contact mark to rest.': 'Recorrido del morro de la marca de contacto a parar.',
  'Room past the stop': 'Espacio tras la parada',
  'From the resting nose to the first person or camera.': 'Del morro parado a la primera persona o cámara.',
  'Speed after a real impact': 'Velocidad tras un impacto real',
  'Of car and body together, momentum kept; for the picture and as a warning.':
    'De coche y cuerpo juntos, conservando el momento; para la imagen y como aviso.',
  'Plausible throw, least': 'Lanzamiento creíble, mínimo',
  'Of a body struck at that speed that slides all the way.':
    'De un cuerpo golpeado a esa velocidad que desliza todo el camino.',
  'Plausible throw, most': 'Lanzamiento creíble, máximo',
  'Of a body struck at that speed and projected at its best angle.':
    'De un cuerpo golpeado a esa velocidad y proyectado con su mejor ángulo.',
  'Throw off what is plausible': 'Lanzamiento fuera de lo creíble',
  'How far the throw in the picture lies outside that span; 0 inside it.':
    'Cuánto queda el lanzamiento de la imagen fuera de ese margen; 0 dentro de él.',
  'Least speed the throw tells': 'Velocidad mínima que sugiere',
  'The slowest impact that would throw a body as far as the picture shows.':
    'El impacto más lento que lanzaría un cuerpo tan lejos como se ve.',
  'Mean pull on the body': 'Tirón medio en el cuerpo',
  'Release speed squared over twice the travel on the line.':
    'Velocidad de suelta al cuadrado entre el doble del recorrido en el cable.',
  Landing: 'Caída',
  "Of the body's middle from where the performer stood.":
    'Del centro del cuerpo desde donde estaba el intérprete.',
  'Trigger to landing': 'Del disparo a la caída',
  "For the spotters' count.": 'Para la cuenta de los ayudantes.',
  'Peak in the pads': 'Pico en las colchonetas',
  'From the downward speed and the stopping distance, as one raised cosine.':
    'Según la velocidad de bajada y la distancia de parada, como un coseno elevado.',
  'Head injury criterion, landing': 'Criterio de lesión craneal, caída',
  'HIC over at most 15 ms of that stop, the head taken to move with the body.':
    'HIC en 15 ms como mucho de esa parada, con la cabeza moviéndose con el cuerpo.',
  'Never both live': 'Nunca ambos a la vez',
  '{#count} people stand before a car that runs; by lock-off the car and the performer are shot apart, and anything else needs a plan of its own.':
    'Hay {count} personas ante un coche en marcha; con cámara fija coche e intérprete se ruedan por separado, y lo demás necesita su propio plan.',
  '{gap} lie between the end of one pass and the start of the other; {wanted} are wanted to clear the place and say so.':
    'Hay {gap} entre el fin de un paso y el inicio del otro; se quieren {wanted} para despejar el lugar y decirlo.',
  'The parked car stands {gap} from the furthest place of the pull; {wanted} is wanted, so park it further away.':
    'El coche aparcado está a {gap} del punto más lejano del tirón; se quieren {wanted}: apárquelo más lejos.',
  'Contact in step': 'Contacto sincronizado',
  "As laid, contact and first movement are {#frames} frames apart; slip the performer's plate by {slip} frames.":
    'Tal como están, contacto y primer movimiento distan {frames} fotogramas; corra la toma del intérprete {slip} fotogramas.',
  "Room past the car's stop": 'Espacio tras la parada del coche',
  'The car rests {gap} short of the first person or camera, {least} at the worst of the tolerances; {wanted} is wanted.':
    'El coche para a {gap} de la primera persona o cámara, {least} en lo peor de las tolerancias; se quieren {wanted}.',
  'Throw the audience believes': 'Lanzamiento que el público cree',
  "At {speed} a body is thrown {least} to {most}; the picture is {off} outside that, so change the throw or the car's speed and not the other way about with people.":
    'A {speed} un cuerpo sale lanzado de {least} a {most}; la imagen queda {off} fuera: cambie el lanzamiento o la velocidad del coche, nunca a costa de las personas.',
  "Car's speed at the contact mark": 'Velocidad del coche en el contacto',
  'The car passes the mark at {speed}; over {limit} a slower car shot at fewer frames looks the same.':
    'El coche pasa la marca a {speed}; por encima de {limit}, un coche más lento rodado a menos fotogramas se ve igual.',
  '{felt} on the mean over the pull; a longer travel or less speed lowers it.':
    '{felt} de media en el tirón; más recorrido o menos velocidad lo bajan.',
  'Landing before the far edge': 'Caída antes del borde lejano',
  "The body's middle lands at {place}, up to {most} within the tolerances, on pads that end at {edge}; a body needs 1 m of them beyond its middle.":
    'El centro del cuerpo cae a {place}, hasta {most} con las tolerancias, en colchonetas que acaban a {edge}; un cuerpo necesita 1 m más allá de su centro.',
  'Landing past the near edge': 'Caída tras el borde cercano',
  "The body's middle lands at {place}, as little as {least} within the tolerances, on pads that begin at {edge}; a body needs 1 m of them before its middle.":
    'El centro del cuerpo cae a {place}, hasta {least} con las tolerancias, en colchonetas que empiezan a {edge}; un cuerpo necesita 1 m antes de su centro.',
  '{#criterion} with a peak of {peak} in the pads, the head moving with the body; deeper pads lower it.':
    '{criterion} con un pico de {peak} en las colchonetas, moviéndose la cabeza con el cuerpo; unas más hondas lo bajan.',
  "The car's pass": 'El paso del coche',
  'Nose past the contact mark': 'Morro tras la marca de contacto',
  "The performer's pass": 'El paso del intérprete',
  'Performer past the mark': 'Intérprete tras la marca',
  'The car runs here in its own pass: nobody at all is inside, the performer least of all.':
    'El coche corre aquí en su propio paso: no hay nadie dentro, y menos el intérprete.',
  'The performer flies and lands here with the car parked away and its key out.':
    'El intérprete vuela y cae aquí con el coche aparcado lejos y la llave fuera.',
  'A real impact would bring the performer to {speed} within centimetres: the passes stay apart even at rehearsal.':
    'Un impacto real llevaría al intérprete a {speed} en centímetros: los pasos van separados también en los ensayos.',
  'Car and performer together is not this technique and is not computed as one.':
    'Coche e intérprete juntos no es esta técnica y no se calcula como tal.',
  'The passes overlap by {time} on the clock of the day.': 'Los pasos se solapan {time} en el reloj del día.',
  'The car rests {distance} before the contact mark: brake later or come faster.':
    'El coche para {distance} antes de la marca de contacto: frene más tarde o venga más deprisa.',
  'Timing alone puts contact out by up to {#frames} frames from take to take: shoot the pass with the freer timing first and set the other to it.':
    'Solo por el tiempo, el contacto se desfasa hasta {frames} fotogramas entre tomas: ruede primero el paso de tiempo más libre y ajuste el otro a él.',
  'Not all can be computed before these are entered: {list}.':
    'No se puede calcular todo hasta indicar: {list}.',
};
