// What the core says of a motorcycle jump, in Spanish, keyed by its own English words.

export const motorcycleJump: Record<string, string> = {
  'Motorcycle jump': 'Salto en moto',
  "A motorcycle jumps a gap, with or without a flip. Covers in-run, flight with drag, the window in speed, the landing, crosswind drift and turning; leaves out suspension on the ramp, gusts and the rider's corrections.":
    'Una moto salta un hueco, con o sin mortal. Incluye carrera, vuelo con resistencia del aire, margen de velocidad, llegada, deriva por viento lateral y giro; no incluye la suspensión en la rampa, las rachas ni las correcciones del piloto.',
  'Clothed and kitted, with helmet and body armour, weighed on the day.':
    'Vestido y equipado, con casco y protecciones, pesado ese día.',
  "Motorcycle's mass": 'Masa de la moto',
  'Fuelled as for the jump, with anything built on.': 'Con el combustible del salto y lo que lleve montado.',
  'Take-off speed': 'Velocidad de salida',
  'At the lip, measured with a timing pair there and not read from the dial alone.':
    'En el labio, medida allí con un par de células y no solo leída en el velocímetro.',
  'Take-off angle': 'Ángulo de salida',
  "Of the last metre of the ramp, with the motorcycle's weight on it.":
    'Del último metro de la rampa, con el peso de la moto encima.',
  'Height of the lip': 'Altura del labio',
  'Over the ground that the gap is measured on.': 'Sobre el suelo en que se mide el hueco.',
  'Curve of the ramp': 'Curva de la rampa',
  "Radius of the ramp's curve where it meets the lip: it presses the rider and turns the motorcycle.":
    'Radio de la curva de la rampa junto al labio: aprieta al piloto y hace girar la moto.',
  Gap: 'Hueco',
  'Along the ground from the lip to the near edge of the landing.':
    'Por el suelo, del labio al borde cercano de la llegada.',
  "Height of the landing's edge": 'Altura del borde de llegada',
  'Of its near edge, over the same ground.': 'De su borde cercano, sobre el mismo suelo.',
  'Landing slope': 'Pendiente de llegada',
  'How steeply the landing falls away from the lip; 0 for level.':
    'Cuánto cae la llegada alejándose del labio; 0 si es llana.',
  'Length of the landing': 'Largo de la llegada',
  'Along the ground, from its near edge to where the slope ends.':
    'Por el suelo, de su borde cercano a donde acaba la pendiente.',
  'Fall of the ground at the landing': 'Caída del suelo en la llegada',
  'How far the ground at the foot of the slope lies below the ground that the gap is measured on; 0 for level.':
    'Cuánto queda el suelo al pie de la pendiente por debajo del suelo en que se mide el hueco; 0 si es llano.',
  'Width of the landing': 'Ancho de la llegada',
  'Of the part that carries the motorcycle.': 'De la parte que aguanta la moto.',
  'Margin at each edge': 'Margen en cada borde',
  'No landing is planned nearer to the near or far edge than this: about a wheelbase.':
    'No se prevé llegar más cerca que esto del borde cercano o lejano: como la distancia entre ejes.',
  'Drag area': 'Área de arrastre',
  'Drag coefficient times frontal area, rider standing: about 0.7 m2.':
    'Coeficiente de arrastre por área frontal, piloto de pie: unos 0,7 m2.',
  'Drag area from the side': 'Área de arrastre de lado',
  'Drag coefficient times side area of motorcycle and rider: about 1.2 m2.':
    'Coeficiente de arrastre por área lateral de moto y piloto: unos 1,2 m2.',
  'Tail wind': 'Viento de cola',
  'Along the jump, positive when it pushes; a headwind is negative.':
    'A lo largo del salto, positivo si empuja; de cara es negativo.',
  'Crosswind limit': 'Límite de viento lateral',
  'The highest wind across, gusts included, in which the jump will be done.':
    'El viento lateral máximo, rachas incluidas, con que se hará el salto.',
  'Clear in-run': 'Carrera libre',
  'Straight, firm and level ground before the foot of the ramp.':
    'Suelo recto, firme y llano antes del pie de la rampa.',
  'Acceleration on the in-run': 'Aceleración en la carrera',
  'Steady, on this surface, from timed runs past the ramp.':
    'Constante, en este firme, según pasadas cronometradas junto a la rampa.',
  'Steady speed before the ramp': 'Velocidad fija antes de la rampa',
  'For the rider to read the speed and still turn away.':
    'Para que el piloto lea la velocidad y aún pueda apartarse.',
  'Clear run-out': 'Escape libre',
  'Clear ground after the far end of the landing.': 'Suelo libre tras el extremo lejano de la llegada.',
  'Braking on the run-out': 'Frenado en el escape',
  'Steady, on that surface, from runs.': 'Constante, en ese firme, según pasadas.',
  'Whole flips': 'Mortales enteros',
  'Backward turns in the air; 0 when the motorcycle only tips over to the landing slope.':
    'Giros hacia atrás en el aire; 0 si la moto solo se inclina hasta la pendiente de llegada.',
  'Turn rate the rider adds': 'Giro que añade el piloto',
  'Backward positive, as shown into foam or air bag on this motorcycle, beyond what the ramp gives.':
    'Hacia atrás positivo, como se ha visto en foso de espuma o colchón con esta moto, aparte de lo que da la rampa.',
  'Travel of suspension and legs': 'Recorrido de suspensión y piernas',
  'How far the body moves while the landing stops its fall: suspension and knees together.':
    'Cuánto se mueve el cuerpo mientras la llegada frena su caída: suspensión y rodillas juntas.',
  'Accepted chance to miss': 'Probabilidad admitida de fallar',
  'Chance in one jump of landing outside the margins; a person chooses it and answers for it.':
    'Probabilidad en un salto de llegar fuera de los márgenes; alguien la elige y responde de ella.',
  'Landing place': 'Lugar de llegada',
  'Along the ground from the lip, of the middle of the motorcycle.':
    'Por el suelo desde el labio, del centro de la moto.',
  'Slowest good take-off': 'Salida buena más lenta',
  'Lands at the near margin of the landing.': 'Llega al margen cercano de la llegada.',
  'Fastest good take-off': 'Salida buena más rápida',
  'Lands at the far margin of the landing.': 'Llega al margen lejano de la llegada.',
  'Take-off window': 'Margen de salida',
  'Between those two: how much the speed may vary in all.':
    'Entre esas dos: cuánto puede variar en total la velocidad.',
  'Chance to miss the landing': 'Probabilidad de fallar la llegada',
  'Of landing outside the margins, from the tolerances of speed, angle, drag and wind along.':
    'De llegar fuera de los márgenes, según las tolerancias de velocidad, ángulo, resistencia y viento a lo largo.',
  'Spread of the landing': 'Dispersión de la llegada',
  'One standard deviation; a tolerance counts as two.':
    'Una desviación típica; una tolerancia cuenta como dos.',
  'Spare at the near edge': 'Sobra en el borde cercano',
  "From the near edge to the landing, negative when it is short: then to where it sinks past the edge's height.":
    'Del borde cercano a la llegada, negativo si se queda corto: entonces, a donde baja de la altura del borde.',
  'Spare at the far edge': 'Sobra en el borde lejano',
  'From the landing to the far edge, or to where the slope meets the ground; negative when it is long.':
    'De la llegada al borde lejano, o a donde la pendiente toca el suelo; negativo si se pasa.',
  'Air time': 'Tiempo en el aire',
  'From the lip to the landing.': 'Del labio a la llegada.',
  'Highest point': 'Punto más alto',
  'Over the ground.': 'Sobre el suelo.',
  'Along the path.': 'A lo largo de la trayectoria.',
  'Speed into the slope': 'Velocidad contra la pendiente',
  'Part of the landing speed that is square to the landing.':
    'Parte de la velocidad de llegada perpendicular a la superficie.',
  'Equivalent fall height': 'Altura de caída equivalente',
  'The drop onto level ground that meets it as hard: the square of that speed over 2 g.':
    'La caída sobre suelo llano igual de dura: el cuadrado de esa velocidad entre 2 g.',
  'Mean felt at landing': 'Media que siente al llegar',
  'That fall stopped over suspension and legs, gravity included.':
    'Esa caída parada en suspensión y piernas, gravedad incluida.',
  'Felt on the ramp': 'Lo que siente en la rampa',
  "Pressed into the ramp's curve at the lip.": 'Apretado contra la curva de la rampa en el labio.',
  'Crosswind drift': 'Deriva por viento lateral',
  'Sideways at the landing, at the wind limit.': 'Hacia un lado en la llegada, en el límite de viento.',
  'Turn in the air': 'Giro en el aire',
  "Backward, from the lip's slope to the landing's, whole flips included; negative is forward.":
    'Hacia atrás, de la pendiente del labio a la de llegada, mortales incluidos; negativo es hacia delante.',
  'Turn rate needed': 'Velocidad de giro necesaria',
  'That turn over the air time.': 'Ese giro entre el tiempo en el aire.',
  'Turn rate the ramp gives': 'Giro que da la rampa',
  'Speed over the radius of its curve at the lip.': 'Velocidad entre el radio de su curva en el labio.',
  'Turn that ramp and rider give': 'Giro que dan rampa y piloto',
  'Over the air time, as stated: backward positive, forward negative.':
    'Durante el tiempo en el aire, según lo indicado: hacia atrás positivo, hacia delante negativo.',
  'Turned off the slope': 'Desvío del giro',
  'Turn given less turn in the air needed: positive is nose up to the slope, negative nose down.':
    'Giro dado menos giro necesario en el aire: positivo es morro alto ante la pendiente, negativo morro bajo.',
  'Run-out needed': 'Escape necesario',
  'Braking from the landing speed.': 'Frenando desde la velocidad de llegada.',
  'no speed': 'ninguna velocidad',
  'In-run needed': 'Carrera necesaria',
  'To the take-off speed from rest, and the steady time before the ramp.':
    'Hasta la velocidad de salida desde parado, y el tiempo fijo antes de la rampa.',
  'The landing is {place} from the near edge, {least} at the worst of the tolerances; {wanted} is wanted, and take-off from {slow} to {fast} gives it.':
    'La llegada queda a {place} del borde cercano, {least} en lo peor de las tolerancias; se quieren {wanted}, y lo da salir de {slow} a {fast}.',
  'The landing is {place} from the far edge, {least} at the worst of the tolerances; {wanted} is wanted, and take-off from {slow} to {fast} gives it.':
    'La llegada queda a {place} del borde lejano, {least} en lo peor de las tolerancias; se quieren {wanted}, y lo da salir de {slow} a {fast}.',
  'Take-off may lie anywhere within {window} in all, from {slow} to {fast}; {wanted} is wanted, and a longer landing widens it.':
    'La salida puede variar {window} en total, de {slow} a {fast}; se quieren {wanted}, y una llegada más larga lo amplía.',
  'The chance is {#chance} with landings spread by {spread}; {accepted} is accepted, so aim at the middle or hold the speed closer.':
    'La probabilidad es {chance} con llegadas dispersas en {spread}; se admite {accepted}: apunte al centro o ajuste más la velocidad.',
  'The landing is met as hard as a drop of {fall} onto the level, {most} at the worst; {wanted} is the habit, and a slope nearer to the path softens it.':
    'La llegada es tan dura como caer {fall} en llano, {most} en lo peor; lo habitual es {wanted}, y una pendiente más próxima a la trayectoria la suaviza.',
  '{felt} on the mean over suspension and legs; more travel or a softer landing lowers it.':
    '{felt} de media en suspensión y piernas; más recorrido o una llegada más suave lo bajan.',
  'The ramp presses with {felt}; over {limit} suspension bottoms out, so a wider curve is wanted.':
    'La rampa aprieta con {felt}; por encima de {limit} la suspensión hace tope: hace falta una curva más abierta.',
  'Turned past the slope': 'Giro pasado de la pendiente',
  'Turned short of the slope': 'Giro corto de la pendiente',
  'Ramp and rider turn the motorcycle {given}, {low} to {high} within the tolerances, where {turn} meet the slope; it may be off by {off}, and {needed} are needed of which the ramp gives {ramp}.':
    'Rampa y piloto giran la moto {given}, de {low} a {high} con las tolerancias, y con {turn} llega según la pendiente; puede desviarse {off}; hacen falta {needed}, de los que la rampa da {ramp}.',
  "Drift against the landing's width": 'Deriva frente al ancho de llegada',
  'Wind across at its limit carries the jump {drift} aside, {most} at the worst, where {room} are left beside the handlebars, {least} at the least.':
    'El viento lateral en su límite lleva el salto {drift} hacia un lado, {most} en lo peor, donde quedan {room} junto al manillar, como mínimo {least}.',
  'The jump may go in {wind} across, gusts included; {limit} is the habit.':
    'El salto puede hacerse con {wind} de lado, rachas incluidas; lo habitual es {limit}.',
  'Length of the in-run': 'Largo de la carrera',
  '{needed} are needed to gather speed and read it, {most} at the worst; {clear} are clear, {least} at the least.':
    'Hacen falta {needed} para coger velocidad y leerla, {most} en lo peor; hay {clear} libres, como mínimo {least}.',
  'Length of the run-out': 'Largo del escape',
  'Braking from the landing takes {needed}, {most} at the worst; {clear} are clear, {least} at the least.':
    'Frenar desde la llegada pide {needed}, {most} en lo peor; hay {clear} libres, como mínimo {least}.',
  'The flight': 'El vuelo',
  'Distance from the lip': 'Distancia desde el labio',
  Height: 'Altura',
  Speed: 'Velocidad',
  'Ramp, gap, landing and run-out': 'Rampa, hueco, llegada y escape',
  'The motorcycle and the rider may come down apart anywhere in here: nobody is inside, cameras stand alone.':
    'La moto y el piloto pueden caer por separado en cualquier punto de aquí: no hay nadie dentro, las cámaras están solas.',
  'The rider turns away before the ramp below {low} or above {high}: {planned} is planned.':
    'El piloto se aparta antes de la rampa por debajo de {low} o por encima de {high}: se prevén {planned}.',
  'With these margins no take-off speed lands well: lengthen the landing.':
    'Con estos márgenes ninguna velocidad de salida llega bien: alargue la llegada.',
  'The jump comes down {distance} short of the landing.': 'El salto cae {distance} antes de la llegada.',
  'The jump comes down {past} past the foot of the slope, on level ground.':
    'El salto cae {past} más allá del pie de la pendiente, en suelo llano.',
  'The slope meets the ground {length} past its near edge, short of its stated length: raise the edge, shorten it, or say how far the ground falls.':
    'La pendiente toca el suelo a {length} de su borde cercano, antes del largo indicado: suba el borde, acórtela o indique cuánto cae el suelo.',
  'The jump strikes the face of the landing {under} under its edge, as into a wall.':
    'El salto choca con el frente de la llegada {under} por debajo de su borde, como contra un muro.',
  'No take-off speed reaches the landing at this angle: raise the lip or steepen the ramp.':
    'Ninguna velocidad de salida alcanza la llegada con este ángulo: suba el labio o empine la rampa.',
  'A flip takes {rate} all the way through: foam or air bag first, and no jump after a turn that stops short.':
    'Un mortal pide {rate} de principio a fin: antes, espuma o colchón de aire, y ningún salto tras un giro que se queda corto.',
};
