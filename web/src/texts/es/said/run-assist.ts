// What the core says of a counterweighted run assist, in Spanish, keyed by its own English words.

export const runAssist: Record<string, string> = {
  'Counterweighted run assist': 'Carrera asistida con contrapeso',
  "A counterweight overhead takes part of a runner's weight. Covers relief, reachable speed, the counterweight's inertia at every stride, the catch, loads and travel; leaves out sway across the run and how the harness sits.":
    'Un contrapeso desde arriba quita parte del peso de quien corre. Incluye el alivio, la velocidad alcanzable, la inercia del contrapeso en cada zancada, la retención, las cargas y el recorrido; no incluye el balanceo lateral ni cómo asienta el arnés.',
  Counterweight: 'Contrapeso',
  'All that hangs on the far end of the line, weighed.':
    'Todo lo que cuelga del otro extremo del cable, pesado.',
  'Counterweight purchase': 'Desmultiplicación del contrapeso',
  "How much further the performer's line runs than the counterweight: 1 for a plain line.":
    'Cuánto más recorre el cable del especialista que el contrapeso: 1 con cable simple.',
  'Counterweight is': 'El contrapeso está',
  'Hung from the trolley it must be brought up to speed and stopped by the runner too.':
    'Colgado del carro, el corredor también tiene que acelerarlo y pararlo.',
  'Fixed, line led so that travel does not move it':
    'Fijo, con el cable guiado para que el avance no lo mueva',
  'Hung from the trolley': 'Colgado del carro',
  "Counterweight's way to its stop": 'Recorrido del contrapeso al tope',
  'How far it may rise from where it hangs with the performer running, until its stop.':
    'Cuánto puede subir desde donde cuelga con el especialista corriendo, hasta su tope.',
  "Pulleys' inertia at the line": 'Inercia de las poleas en el cable',
  "Mass that the turning pulleys add at the performer's line: half of their mass for plain discs.":
    'Masa que añaden las poleas al girar en el cable del especialista: la mitad de la suya si son discos lisos.',
  'Pull lost in the pulleys': 'Tiro perdido en las poleas',
  'Share of the pull that rubbing takes, about 0.02 for each good pulley, from a logged lift.':
    'Parte del tiro que se lleva el roce, cerca de 0,02 por cada polea buena, según una elevación registrada.',
  'At the performer, of the whole line with any elastic part: pull over stretch, measured.':
    'En el especialista, de todo el cable con su parte elástica: tiro entre alargamiento, medida.',
  'Overhead strength': 'Resistencia de lo de arriba',
  'Breaking load of the weakest of track, trolley, pulleys and anchors, from the engineer.':
    'Carga de rotura de lo más débil entre carril, carro, poleas y anclajes, según el ingeniero.',
  "Trolley's mass": 'Masa del carro',
  'What rolls along the track above the runner, without the counterweight.':
    'Lo que rueda por el carril sobre el corredor, sin el contrapeso.',
  'Rolling resistance of the trolley': 'Resistencia a rodar del carro',
  'Pull that keeps the loaded trolley rolling over the load on it.':
    'Tiro que mantiene rodando el carro cargado entre su carga.',
  'Track length': 'Largo del carril',
  'Free way of the trolley between its end stops.': 'Recorrido libre del carro entre sus topes.',
  'Even speed that the shot asks for.': 'Velocidad constante que pide el plano.',
  'Top speed without the assist': 'Velocidad máxima sin asistencia',
  'Of this performer in this costume on this ground, timed.':
    'De este especialista con este vestuario en este suelo, cronometrada.',
  'Time of a step': 'Tiempo de un paso',
  "From one foot's touch to the other's, counted on a test run: about 0.24 s at full speed.":
    'Del apoyo de un pie al del otro, contado en una carrera de prueba: cerca de 0,24 s a plena velocidad.',
  'Way over the standing foot': 'Avance sobre el pie apoyado',
  'How far the body moves while one foot is on the ground, about the length of a leg.':
    'Cuánto avanza el cuerpo mientras un pie está en el suelo, cerca del largo de una pierna.',
  'Acceleration of the run': 'Aceleración de la carrera',
  'Mean from standing to full speed with the assist on.':
    'Media de parado a plena velocidad con la asistencia puesta.',
  'Slowing of the run': 'Frenado de la carrera',
  'Mean from full speed to standing with the assist on, by the feet alone.':
    'Medio de plena velocidad a parado con la asistencia puesta, solo con los pies.',
  'From the call to stop until the runner slows.': 'Del aviso de parar hasta que el corredor frena.',
  'Friction of the shoe': 'Rozamiento del zapato',
  'Pull that makes the shoe slide over the load on it, on this floor as it will be.':
    'Tiro que hace resbalar el zapato entre su carga, en este suelo tal como vaya a estar.',
  'How long camera needs the full speed.': 'Cuánto tiempo necesita la cámara la plena velocidad.',
  'Clear ground round the weight': 'Suelo libre junto al contrapeso',
  'Fenced off round the point below the counterweight, or round its whole way.':
    'Vallado alrededor del punto bajo el contrapeso, o de todo su recorrido.',
  Operators: 'Operadores',
  'People on counterweight and brake who do nothing else.':
    'Personas en contrapeso y freno que no hacen nada más.',
  Relief: 'Alivio',
  "Share of the performer's weight that the counterweight takes.":
    'Parte del peso del especialista que quita el contrapeso.',
  'Speed within reach': 'Velocidad alcanzable',
  "That the performer's own strongest push allows with the weight that is left.":
    'La que permite el mayor empuje propio del especialista con el peso que queda.',
  'Steady pull': 'Tiro constante',
  'Of the line on the harness, standing still.': 'Del cable en el arnés, en reposo.',
  'Push on the ground': 'Empuje en el suelo',
  'Mean while a foot is down, in body weights, that the planned speed asks for.':
    'Medio mientras un pie está apoyado, en pesos del cuerpo, que pide la velocidad prevista.',
  'Peak ground reaction': 'Reacción máxima del suelo',
  'Highest push of the ground at each step.': 'Mayor empuje del suelo en cada paso.',
  'Foot on the ground': 'Pie en el suelo',
  'For each step at the planned speed.': 'En cada paso a la velocidad prevista.',
  'Feet off the ground': 'Pies en el aire',
  'For each step.': 'En cada paso.',
  'Leg swing time': 'Tiempo de vuelo de la pierna',
  'Left to bring a foot forward to its next step.': 'El que queda para llevar un pie a su siguiente paso.',
  'Fall off the feet': 'Caída sin apoyo',
  'Downward acceleration once the feet leave the ground: as on a body with less weight.':
    'Aceleración hacia abajo cuando los pies dejan el suelo: como la de un cuerpo que pesa menos.',
  'Pull while falling': 'Tiro durante la caída',
  'Of the line, as performer and counterweight speed up together.':
    'Del cable, mientras especialista y contrapeso aceleran juntos.',
  'Highest pull at a stride': 'Mayor tiro en una zancada',
  'Of the line over an even step, counterweight and stretch moving.':
    'Del cable en un paso regular, con el contrapeso y el alargamiento en movimiento.',
  'Least pull at a stride': 'Menor tiro en una zancada',
  'Over the steady pull; at 0 the line is slack.': 'Entre el tiro constante; con 0 el cable está flojo.',
  Bounce: 'Rebote',
  'Rise and fall of the body at each step.': 'Subida y bajada del cuerpo en cada paso.',
  'Swing of the line': 'Vaivén del cable',
  'Time in which performer and counterweight swing against each other on the line.':
    'Tiempo en que especialista y contrapeso oscilan uno contra otro en el cable.',
  'Catch height': 'Altura de retención',
  'Of the harness point above the floor where a stumbling body is held; negative is the floor.':
    'Del punto del arnés sobre el suelo donde queda retenido un cuerpo que tropieza; negativa es el suelo.',
  'Speed at the catch': 'Velocidad en la retención',
  'Downward, as the counterweight meets its stop.': 'Hacia abajo, cuando el contrapeso llega a su tope.',
  'Pull at the catch': 'Tiro en la retención',
  'Highest of the line as it holds the body alone.': 'El mayor del cable al retener él solo el cuerpo.',
  'Overhead load': 'Carga arriba',
  'Both parts of the line at their highest, and the trolley.':
    'Los dos ramales del cable en su máximo, y el carro.',
  'Overhead factor': 'Factor de lo de arriba',
  'Overhead strength over that load.': 'Resistencia de lo de arriba entre esa carga.',
  'Travel to stop': 'Recorrido de parada',
  'From the call to standing still.': 'Del aviso a quedar quieto.',
  'Whole travel': 'Recorrido completo',
  'From the first step to standing still, planned shot included.':
    'Del primer paso a quedar quieto, con el plano previsto.',
  'Swing-up at a dead stop': 'Subida en una parada en seco',
  'How high the runner would be flung if the trolley met its end at full speed.':
    'A qué altura saldría el corredor si el carro llegara a su final a plena velocidad.',
  'Grip used': 'Agarre usado',
  "Share of the shoes' friction under the weight that is left; above 1 the feet slip.":
    'Parte del rozamiento de los zapatos con el peso que queda; por encima de 1 los pies resbalan.',
  'Lag of the line': 'Retraso del cable',
  'Lean of the line from upright as the runner speeds up and draws the trolley along.':
    'Inclinación del cable respecto a la vertical mientras el corredor acelera y arrastra el carro.',
  'The counterweight takes {share} of the weight with {pull}; a lighter one leaves more on the feet.':
    'El contrapeso quita {share} del peso con {pull}; uno más ligero deja más en los pies.',
  "With this relief the performer's own push is good for {speed}, and {planned} are planned; more relief allows more speed.":
    'Con este alivio el empuje propio del especialista da para {speed}, y hay previstos {planned}; más alivio permite más velocidad.',
  '{time} to bring a leg forward; longer steps in the air give more.':
    '{time} para llevar la pierna adelante; pasos más largos en el aire dan más.',
  'Line taut at every stride': 'Cable tenso en cada zancada',
  'Over a step the line falls to {share} of its steady pull and peaks at {peak}; more purchase or an elastic part evens it out.':
    'En un paso el cable baja a {share} de su tiro constante y llega a un pico de {peak}; más desmultiplicación o una parte elástica lo igualan.',
  "Bounce clear of the weight's stop": 'Rebote sin llegar al tope',
  "The body rises and falls by {bounce} at each step and the counterweight's stop leaves {room}; short of that every step would meet it.":
    'El cuerpo sube y baja {bounce} en cada paso y el tope del contrapeso deja {room}; con menos, cada paso daría en él.',
  'A stumbling body is held with its harness point at {height}; less way for the counterweight or a stiffer line holds it higher.':
    'Un cuerpo que tropieza queda retenido con el punto del arnés a {height}; menos recorrido del contrapeso o un cable más rígido lo retienen más arriba.',
  'Force on the body at the catch': 'Fuerza en el cuerpo al retener',
  'Caught at {speed} the harness takes {force}; a softer line brings it down.':
    'Retenido a {speed} el arnés recibe {force}; un cable más blando la baja.',
  '{factor} on the highest pull of stride and catch; a stronger line or less way for the counterweight raises it.':
    '{factor} sobre el mayor tiro de zancada y retención; un cable más fuerte o menos recorrido del contrapeso lo suben.',
  '{factor}: track and anchors take up to {load}.': '{factor}: carril y anclajes reciben hasta {load}.',
  'Travel within the track': 'El recorrido cabe en el carril',
  'The run takes {travel}, {stop} of it to stop, on a track of {track}; a shorter shot or a lower speed takes less.':
    'La carrera ocupa {travel}, de ellos {stop} para parar, en un carril de {track}; un plano más corto o menos velocidad ocupan menos.',
  'Grip under the weight left': 'Agarre con el peso que queda',
  '{share} of what the shoes can push is used; a gentler start and stop, less relief or a lighter trolley needs less.':
    'Se usa {share} de lo que los zapatos pueden empujar; arranque y parada más suaves, menos alivio o un carro más ligero necesitan menos.',
  'Nobody below the counterweight': 'Nadie bajo el contrapeso',
  "{clear} are fenced off round the counterweight's way.":
    'Hay {clear} vallados alrededor del recorrido del contrapeso.',
  'Operators on weight and brake': 'Operadores en contrapeso y freno',
  '{n} on counterweight and brake.': '{n} en contrapeso y freno.',
  'One step': 'Un paso',
  "Time from the foot's touch": 'Tiempo desde que apoya el pie',
  'Push of the ground': 'Empuje del suelo',
  'Rise of the body': 'Subida del cuerpo',
  'Lane under the track': 'Calle bajo el carril',
  'A runner who is held overhead cannot step aside, and swings out at a stumble. Measured from the first step.':
    'Quien corre sujeto desde arriba no puede apartarse, y se balancea hacia fuera si tropieza. Medido desde el primer paso.',
  'The line pulls {pull} on a performer of {mass}: the feet leave the ground and nothing else is computed.':
    'El cable tira {pull} de un especialista de {mass}: los pies dejan el suelo y no se calcula nada más.',
  'A foot is down for {contact} of a step of {step}: this is a walk, and the bounce of a run is not computed.':
    'El pie está apoyado {contact} en un paso de {step}: esto es andar, y no se calcula el rebote de una carrera.',
  'The counterweight cannot follow the stride: the line goes slack and snatches at {peak}.':
    'El contrapeso no puede seguir la zancada: el cable se afloja y da un tirón de {peak}.',
  'The strides never settle: the highest pull goes from {low} to {high} from one to the next, and in a longer run may go further, while one stride is what line and structure are held against. A line that stays taut steadies it.':
    'Las zancadas no se asientan nunca: el tiro más alto va de {low} a {high} de una a otra, y en una carrera más larga puede llegar más lejos, mientras que cable y estructura se comparan con una sola zancada. Un cable que se mantiene tenso lo calma.',
  "Performer and counterweight swing on the line in {period} and a step takes {step}: each step feeds the swing, so change the line's stiffness or the purchase.":
    'Especialista y contrapeso oscilan en el cable en {period} y un paso dura {step}: cada paso alimenta el vaivén, así que cambie la rigidez del cable o la desmultiplicación.',
  'At every rise and fall the counterweight counts as {mass} more to lift, so the body comes down at {fall} and not as its lighter weight alone would.':
    'En cada subida y bajada el contrapeso cuenta como {mass} más que levantar, así que el cuerpo baja a {fall} y no como lo haría solo por pesar menos.',
  'A stumbling body meets the floor before it is held: the catch would end {depth} below it.':
    'Un cuerpo que tropieza llega al suelo antes de quedar retenido: la retención acabaría {depth} por debajo.',
  'The fixed counterweight counts as neither moved by the travel nor pulling the trolley along, as when its line leads on through the trolley to the far end: on a plain line it would travel the whole run and drag the trolley with its pull.':
    'El contrapeso fijo se cuenta sin que el avance lo mueva ni él tire del carro, como cuando su cable sigue por el carro hasta el otro extremo: con un cable simple recorrería toda la carrera y arrastraría el carro con su tiro.',
  'At full speed the trolley must never meet its end: the runner could swing up by up to {rise}.':
    'A plena velocidad el carro no debe llegar nunca a su final: el corredor podría subir hasta {rise}.',
  'If the line parts the counterweight of {mass} falls free and the full weight comes back on the feet at once.':
    'Si el cable se rompe, el contrapeso de {mass} cae libre y todo el peso vuelve de golpe a los pies.',
};
