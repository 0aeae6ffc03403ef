// What the core says of a ratchet pull, in Spanish, keyed by its own English words.

export const ratchetPull: Record<string, string> = {
  'Ratchet pull': 'Tirón de ratchet',
  "A gas-driven pull by a line on the harness. Covers gas, piston, line, what the body feels, the flight and the landing; leaves out neck whiplash, the valve's interlock and how the body turns.":
    'Un tirón a gas por un cable sujeto al arnés. Incluye el gas, el pistón, el cable, lo que siente el cuerpo, el vuelo y la llegada; no incluye el latigazo del cuello, el enclavamiento de la válvula ni cómo gira el cuerpo.',
  'Clothed and kitted, with harness and pads, weighed on the day.':
    'Vestido y equipado, con arnés y protecciones, pesado ese día.',
  'Pull direction on the body': 'Dirección del tirón en el cuerpo',
  'Which way the harness point pulls the body: it decides which limit of human tolerance holds.':
    'Hacia dónde tira el punto del arnés: decide qué límite de tolerancia humana se aplica.',
  'Backward, by the back': 'Hacia atrás, por la espalda',
  'Forward, by the chest': 'Hacia delante, por el pecho',
  Sideways: 'De lado',
  'Upward, by the shoulders': 'Hacia arriba, por los hombros',
  'Wanted distance': 'Distancia deseada',
  'Along the ground from standing to landing. The pressure for it is given back.':
    'Por el suelo, de donde está de pie a donde cae. Se devuelve la presión necesaria.',
  'Pull angle': 'Ángulo del tirón',
  'Angle of the line above the horizontal at the body, at rest.':
    'Ángulo del cable sobre la horizontal en el cuerpo, en reposo.',
  'Harness point height': 'Altura del punto del arnés',
  'Of the harness point above the floor, standing.': 'Del punto del arnés sobre el suelo, de pie.',
  'Landing surface': 'Superficie de llegada',
  "Top of the pads above the floor the body stands on; negative when it is lower. The body's centre is taken to land 0.3 m above it.":
    'Parte alta de las colchonetas sobre el suelo donde está de pie; negativa si queda más baja. Se toma que el centro del cuerpo llega 0,3 m por encima.',
  'Reservoir pressure': 'Presión del depósito',
  'Gauge pressure in the reservoir when the valve opens.':
    'Presión manométrica del depósito al abrirse la válvula.',
  'Rated pressure': 'Presión nominal',
  'Gauge pressure that the weakest of reservoir, valve, hose and cylinder is marked for.':
    'Presión manométrica marcada en el más débil de depósito, válvula, manguera y cilindro.',
  'Reservoir volume': 'Volumen del depósito',
  'Inside volume of the reservoir up to the valve.': 'Volumen interior del depósito hasta la válvula.',
  'Cylinder bore': 'Diámetro del cilindro',
  'Inside diameter of the cylinder.': 'Diámetro interior del cilindro.',
  'Rod diameter': 'Diámetro del vástago',
  'Diameter of the rod on the pressure side; 0 when the gas pushes the plain side.':
    'Diámetro del vástago en el lado de presión; 0 si el gas empuja el lado liso.',
  Stroke: 'Carrera',
  'How far the piston can go before its cushion.':
    'Cuánto puede recorrer el pistón antes de su amortiguador.',
  Purchase: 'Multiplicación',
  'How far the body moves for each metre of the piston: parts of line at the cylinder.':
    'Cuánto se mueve el cuerpo por cada metro del pistón: ramales de cable en el cilindro.',
  'Line efficiency': 'Rendimiento del cable',
  "Share of the piston's pull that reaches the body past all sheaves, about 2 % lost at each.":
    'Parte del tirón del pistón que llega al cuerpo tras todas las poleas; en cada una se pierde un 2 %.',
  'Dead volume': 'Volumen muerto',
  'Hose and cylinder end that must fill before the piston moves.':
    'Manguera y fondo de cilindro que deben llenarse antes de que se mueva el pistón.',
  'Valve conductance': 'Conductancia de la válvula',
  'Sonic conductance C of valve and hose together, as its maker states by ISO 6358.':
    'Conductancia sónica C de válvula y manguera juntas, según el fabricante por ISO 6358.',
  'Valve critical ratio': 'Relación crítica de la válvula',
  'Critical pressure ratio b of the same valve.': 'Relación de presiones crítica b de la misma válvula.',
  'Valve opening time': 'Tiempo de apertura',
  'From the trigger to fully open.': 'Del disparo a la apertura total.',
  'Moving mass': 'Masa móvil',
  'Piston, rod and running blocks.': 'Pistón, vástago y poleas móviles.',
  'Seal friction': 'Rozamiento de las juntas',
  'Force that just keeps the piston moving with no load.':
    'Fuerza que apenas mantiene en marcha el pistón sin carga.',
  'Line modulus': 'Módulo del cable',
  'Force per unit strain (EA) of the line: about 20 kN for a low-stretch rope, 900 kN for 3/16 in wire.':
    'Fuerza por unidad de deformación (EA): unos 20 kN en una cuerda semiestática, 900 kN en cable de 3/16 in.',
  'Line length': 'Largo del cable',
  "From the cylinder's last block to the harness point, at rest.":
    'De la última polea del cilindro al punto del arnés, en reposo.',
  'Line strength': 'Resistencia del cable',
  'Minimum breaking strength of the weakest part of the line as rigged, ends and links included.':
    'Carga mínima de rotura de la parte más débil tal como está montada, con terminales y conectores.',
  'Turn at the redirect': 'Giro en el desvío',
  'How far the line turns at its most loaded block; 180 degrees for straight back.':
    'Cuánto gira el cable en su polea más cargada; 180 grados si vuelve recto.',
  'Anchor strength': 'Resistencia del anclaje',
  'What the anchor of that block is known to hold.': 'Lo que se sabe que aguanta el anclaje de esa polea.',
  'Clear corridor': 'Pasillo libre',
  'Clear and padded length along the pull, from where the body stands.':
    'Largo libre y acolchado en la línea del tirón, desde donde está el cuerpo.',
  'Accepted peak on the body': 'Pico aceptado en el cuerpo',
  'Peak along the line that the coordinator accepts for this performer; 4 g is a habit.':
    'Pico a lo largo del cable que el coordinador acepta para este especialista; lo habitual son 4 g.',
  'Pulls on the day': 'Tirones ese día',
  'Hard pulls of this performer on the day, rehearsals included.':
    'Tirones fuertes de este especialista ese día, ensayos incluidos.',
  'Air temperature': 'Temperatura del aire',
  'Of the gas in the reservoir before the pull.': 'Del gas del depósito antes del tirón.',
  Distance: 'Distancia',
  "Along the ground from standing to where the body's centre lands.":
    'Por el suelo, de donde está de pie a donde cae el centro del cuerpo.',
  'Corridor needed': 'Pasillo necesario',
  'The distance and two metres more, for the slide.': 'La distancia y dos metros más, para el deslizamiento.',
  'Peak on the body': 'Pico en el cuerpo',
  "Highest pull of the line over the performer's mass.":
    'Mayor tiro del cable entre la masa del especialista.',
  'Mean on the body': 'Media en el cuerpo',
  'Release speed over the time from first movement to release.':
    'Velocidad al soltar entre el tiempo desde el primer movimiento.',
  'Release speed': 'Velocidad al soltar',
  'Speed along the line when it goes slack.': 'Velocidad en la línea del cable cuando se afloja.',
  'Pressure for the distance': 'Presión para la distancia',
  'Gauge pressure of the reservoir that gives the wanted distance.':
    'Presión manométrica del depósito que da la distancia deseada.',
  'Highest tension of the line at the harness.': 'Mayor tensión del cable en el arnés.',
  'Line peak': 'Pico del cable',
  "Highest tension of the line, at the cylinder's end of the blocks, which take their share.":
    'Mayor tensión del cable, en el lado del cilindro de las poleas, que se quedan su parte.',
  'Line factor': 'Factor del cable',
  'Strength of the line over its highest tension.': 'Resistencia del cable entre su mayor tensión.',
  'Anchor load': 'Carga del anclaje',
  'Highest load on the anchor of the redirect block.': 'Mayor carga en el anclaje de la polea de desvío.',
  'Anchor factor': 'Factor del anclaje',
  'Anchor strength over that load.': 'Resistencia del anclaje entre esa carga.',
  'How far the pull shakes the body along its direction (dynamic response model).':
    'Cuánto sacude el tirón al cuerpo en su dirección (modelo de respuesta dinámica).',
  'Rise time': 'Tiempo de subida',
  'From a tenth to nine tenths of the peak: a short rise is a hard jerk.':
    'De un décimo a nueve décimos del pico: una subida corta es un golpe seco.',
  'Pull time': 'Tiempo de tirón',
  'From the trigger to the slack line.': 'Del disparo al cable flojo.',
  'Travel on the line': 'Recorrido con el cable',
  'How far the body moves before the line goes slack.':
    'Cuánto se mueve el cuerpo antes de que el cable se afloje.',
  'Flight time': 'Tiempo de vuelo',
  'From the slack line to landing.': 'Del cable flojo a la llegada.',
  'Landing speed': 'Velocidad de llegada',
  'Speed at which the body meets the pads.': 'Velocidad con que el cuerpo llega a las colchonetas.',
  'Pressure left': 'Presión restante',
  'Gauge pressure in the reservoir when the line goes slack.':
    'Presión manométrica del depósito cuando el cable se afloja.',
  'no rise at all': 'ninguna subida',
  'a rise of {time}': 'una subida de {time}',
  'The line pulls with up to {peak} after {rise}; less pressure or a slower valve brings it down.':
    'El cable tira con hasta {peak} tras {rise}; menos presión o una válvula más lenta lo reducen.',
  'The jerk, {rise}, gives a dynamic response of {response}; a slower valve lowers it.':
    'El golpe, {rise}, da una respuesta dinámica de {response}; una válvula más lenta la baja.',
  'Force on the body': 'Fuerza en el cuerpo',
  'The harness takes up to {force}.': 'El arnés recibe hasta {force}.',
  'Hard pulls on the day': 'Tirones fuertes ese día',
  '{n} planned for this performer, rehearsals included; 3 hard pulls a day are the habit.':
    '{n} previstos para este especialista, ensayos incluidos; lo habitual son 3 tirones fuertes al día.',
  'Landing and slide in the corridor': 'Caída y deslizamiento en el pasillo',
  'The body lands {landing} from where it stood and may slide to {distance}, up to {most} within the tolerances, in a corridor of {corridor}.':
    'El cuerpo cae a {landing} de donde estaba y puede deslizarse hasta {distance}, {most} como mucho con las tolerancias, en un pasillo de {corridor}.',
  'Pressure against the rating': 'Presión frente a la nominal',
  'the marking on the equipment': 'el marcado del equipo',
  '{pressure} in equipment marked for {rated}.': '{pressure} en un equipo marcado para {rated}.',
  'Line factor at the peak': 'Factor del cable en el pico',
  '{factor}: the line peaks at {peak} by the cylinder; a stronger line or a softer pull raises it.':
    '{factor}: el pico del cable es {peak} junto al cilindro; un cable más fuerte o un tirón más suave lo suben.',
  "{factor}: the redirect's anchor takes up to {load} for the line's turn there.":
    '{factor}: el anclaje del desvío recibe hasta {load} por el giro del cable.',
  'Pull on the body': 'Tirón en el cuerpo',
  'Time from trigger': 'Tiempo desde el disparo',
  'Line pull': 'Tiro del cable',
  'Cylinder pressure': 'Presión del cilindro',
  'Gauge pressure': 'Presión manométrica',
  'Line and landing corridor': 'Pasillo del cable y de la llegada',
  'The line whips and the body slides; nobody stands or steps in here.':
    'El cable da latigazos y el cuerpo resbala; aquí no hay ni entra nadie.',
  "The pull could not be followed with these inputs: check the line's modulus and the moving mass.":
    'No se pudo seguir el tirón con estos datos: revise el módulo del cable y la masa móvil.',
  'At {pressure} the piston does not finish its stroke: the body is moved {distance} and not thrown.':
    'Con {pressure} el pistón no acaba su carrera: el cuerpo se mueve {distance} y no sale lanzado.',
  'No pressure from 0.1 to 40 bar gives {distance}: change the stroke, the purchase or the valve.':
    'Ninguna presión de 0,1 a 40 bar da {distance}: cambie la carrera, la multiplicación o la válvula.',
  '{pressure} gives {distance}, not the wanted {wanted}; that takes {needed}.':
    '{pressure} da {distance}, no los {wanted} deseados; para eso hacen falta {needed}.',
  'The wanted distance may take {pressure}, more than the equipment is marked for.':
    'La distancia deseada puede pedir {pressure}, más de lo que marca el equipo.',
  'The body lands at {speed}. Valve and seal friction differ from one rig to the next: start with weight bags well under this pressure and work up.':
    'El cuerpo llega a {speed}. La válvula y el rozamiento cambian de un montaje a otro: empiece con sacos de peso muy por debajo de esta presión y vaya subiendo.',
};
