// What the core says of an air ram, in Spanish, keyed by its own English words.

export const airRam: Record<string, string> = {
  'Air ram': 'Plataforma neumática',
  "A plate on a hinged arm, driven by compressed air, throws a body up and forward. Covers gas, arm, what legs and spine feel, flight, scatter and mat; leaves out the body's own jump, turns and ankles.":
    'Una placa en un brazo con bisagra, movida por aire comprimido, lanza el cuerpo hacia arriba y adelante. Incluye gas, brazo, lo que sienten piernas y columna, vuelo, dispersión y colchoneta; no incluye el salto propio, los giros ni los tobillos.',
  'Feet from the hinge': 'Pies a la bisagra',
  'From the hinge to the middle of the feet, where the plate is marked.':
    'De la bisagra al centro de los pies, donde está la marca de la placa.',
  'Feet off the mark': 'Pies fuera de la marca',
  'How far off the mark feet land, short or long, in nineteen of twenty rehearsals.':
    'Cuánto se apartan los pies de la marca, cortos o largos, en diecinueve de veinte ensayos.',
  'Pressure from shot to shot': 'Presión de un disparo a otro',
  'How far the pressure at the trigger is off, up or down, in nineteen of twenty shots.':
    'Cuánto se aparta la presión al disparar, por arriba o por abajo, en diecinueve de veinte disparos.',
  'Forward speed kept': 'Velocidad de avance que conserva',
  'What the body keeps of its run on to the plate; 0 from standing. The tolerance is how far it varies.':
    'Lo que conserva el cuerpo de su carrera hasta la placa; 0 desde parado. La tolerancia es cuánto varía.',
  'Lean of the body': 'Inclinación del cuerpo',
  "Of the line from feet to the body's centre, forward of the vertical.":
    'De la línea de los pies al centro del cuerpo, por delante de la vertical.',
  "Height of the body's centre": 'Altura del centro del cuerpo',
  "From the feet to the body's centre, in the stance of the launch.":
    'De los pies al centro del cuerpo, en la postura del lanzamiento.',
  'Launch direction': 'Dirección del lanzamiento',
  'Angle to the side of the line to the mat; the tolerance is how far it varies.':
    'Ángulo hacia un lado de la línea a la colchoneta; la tolerancia es cuánto varía.',
  'Arm at rest': 'Brazo en reposo',
  'Angle of arm and plate over the floor before the launch.':
    'Ángulo de brazo y placa sobre el suelo antes del lanzamiento.',
  'Arm at its stop': 'Brazo en su tope',
  'Angle over the floor at the end of the stroke: the higher, the flatter the launch.':
    'Ángulo sobre el suelo al final de la carrera: cuanto mayor, más plano el lanzamiento.',
  'Arm length': 'Largo del brazo',
  'From the hinge to the far edge of the plate.': 'De la bisagra al borde lejano de la placa.',
  'Arm mass': 'Masa del brazo',
  'Arm and plate, with the rod that moves with them.':
    'Brazo y placa, con el vástago que se mueve con ellos.',
  'Height of the hinge': 'Altura de la bisagra',
  'Above the floor; negative when the ram is dug in.':
    'Sobre el suelo; negativa si la plataforma está enterrada.',
  'Pin from the hinge': 'Pasador a la bisagra',
  'From the hinge to where the cylinder pushes the arm.':
    'De la bisagra a donde el cilindro empuja el brazo.',
  'Cylinder foot behind the hinge': 'Pie del cilindro tras la bisagra',
  "Along the floor from the hinge, towards the performer, to the cylinder's lower pin.":
    'Por el suelo desde la bisagra, hacia el especialista, al pasador inferior del cilindro.',
  'Cylinder foot below the hinge': 'Pie del cilindro bajo la bisagra',
  "How far the cylinder's lower pin lies under the hinge.":
    'Cuánto queda el pasador inferior del cilindro por debajo de la bisagra.',
  'What the cylinder can give before its own end.': 'Lo que da el cilindro antes de su propio final.',
  'Plate and arm strength': 'Resistencia de placa y brazo',
  'Push at the feet that plate, arm and hinge are known to hold.':
    'Empuje en los pies que se sabe que aguantan placa, brazo y bisagra.',
  'Inside diameter; of two cylinders side by side, 1.41 times the diameter of one.':
    'Diámetro interior; con dos cilindros en paralelo, 1,41 veces el de uno.',
  'Hose and cylinder end that must fill before the arm moves.':
    'Manguera y fondo de cilindro que deben llenarse antes de que se mueva el brazo.',
  'Of the gas in the reservoir before the launch.': 'Del gas del depósito antes del lanzamiento.',
  "Top of the mat above the floor the ram stands on; negative when it is lower. The body's centre is taken to land 0.3 m above it.":
    'Parte alta de la colchoneta sobre el suelo de la plataforma; negativa si queda más baja. Se toma que el centro del cuerpo llega 0,3 m por encima.',
  'Mat distance': 'Distancia a la colchoneta',
  'Along the floor from the marked feet to the middle of the mat.':
    'Por el suelo, de la marca de los pies al centro de la colchoneta.',
  'Mat length': 'Largo de la colchoneta',
  'Along the launch, usable top only.': 'En la línea del lanzamiento, solo la superficie útil.',
  'Mat width': 'Ancho de la colchoneta',
  'Across the launch, usable top only.': 'A través del lanzamiento, solo la superficie útil.',
  'Mat depth': 'Fondo de la colchoneta',
  'From the top of the mat to the ground.': 'De la parte alta de la colchoneta al suelo.',
  'Share of the depth that gives way before the body would bottom out, from weight-bag drops.':
    'Parte del fondo que cede antes de tocar el suelo, según pruebas con sacos de peso.',
  "How far inside the edge of the mat the body's centre must come down to count as caught.":
    'Cuánto hacia dentro del borde de la colchoneta debe caer el centro del cuerpo para darlo por recogido.',
  'The chance of missing the mat that the production accepts; it sets the size needed.':
    'La probabilidad de no dar en la colchoneta que acepta la producción; fija el tamaño necesario.',
  "The mean the coordinator accepts for this performer on this mat; a production's own value.":
    'La media que el coordinador acepta para este especialista en esta colchoneta; un valor propio de la producción.',
  'Clear height': 'Altura libre',
  'From the floor to the lowest thing above the flight.': 'Del suelo a lo más bajo que haya sobre el vuelo.',
  'Wind limit': 'Límite de viento',
  'The highest wind, gusts included, in which the launch will be done; 0 indoors.':
    'El viento máximo, rachas incluidas, con el que se hará el lanzamiento; 0 en interior.',
  'Launches on the day': 'Lanzamientos ese día',
  'Launches of this performer on the day, rehearsals included.':
    'Lanzamientos de este especialista ese día, ensayos incluidos.',
  'Spotters at the mat': 'Vigilantes de la colchoneta',
  "People at the mat's edges who watch the body down.":
    'Personas en los bordes de la colchoneta que siguen el cuerpo hasta abajo.',
  'Launch speed': 'Velocidad de lanzamiento',
  'Of the body as it leaves the plate.': 'Del cuerpo al dejar la placa.',
  'Launch angle': 'Ángulo de lanzamiento',
  'Of that speed above the horizontal.': 'De esa velocidad sobre la horizontal.',
  'Highest point': 'Punto más alto',
  "Of the body's centre above the floor.": 'Del centro del cuerpo sobre el suelo.',
  "Along the floor from the marked feet to where the body's centre lands, in still air.":
    'Por el suelo, de la marca de los pies a donde cae el centro del cuerpo, sin viento.',
  'Peak through the legs': 'Pico en las piernas',
  'Highest along the body while the plate pushes, gravity included.':
    'Lo mayor a lo largo del cuerpo mientras empuja la placa, con la gravedad.',
  'How far the launch shakes the spine upward (dynamic response model).':
    'Cuánto sacude el lanzamiento la columna hacia arriba (modelo de respuesta dinámica).',
  "Chance that the body's centre comes down outside the mat less its margin. 1 in a thousand million means that or less.":
    'Probabilidad de que el centro del cuerpo caiga fuera de la colchoneta menos su margen. 1 entre mil millones significa eso o menos.',
  'From leaving the plate to landing.': 'De dejar la placa a la llegada.',
  'Speed at which the body meets the mat.': 'Velocidad con que el cuerpo llega a la colchoneta.',
  'What the body feels on average in the mat, gravity included: v² / (2 s) + g.':
    'Lo que siente el cuerpo de media en la colchoneta, con la gravedad: v² / (2 s) + g.',
  Headroom: 'Espacio por encima',
  "From the highest point of the body's centre to what is above it.":
    'Del punto más alto del centro del cuerpo a lo que tenga encima.',
  'From a tenth to nine tenths of the way to the peak: a short rise is a hard kick.':
    'De un décimo a nueve décimos del camino al pico: una subida corta es un golpe seco.',
  'Push time': 'Tiempo de empuje',
  'From the first movement to leaving the plate.': 'Del primer movimiento a dejar la placa.',
  'Time from the trigger': 'Tiempo desde el disparo',
  "From the trigger to leaving the plate: how early to fire on the performer's cue.":
    'Del disparo a dejar la placa: con cuánta antelación disparar a la señal del especialista.',
  'Push of the plate': 'Empuje de la placa',
  'Highest on the feet, square to the plate.': 'El mayor en los pies, perpendicular a la placa.',
  'Plate factor': 'Factor de la placa',
  'Strength of plate and arm over that push.': 'Resistencia de placa y brazo entre ese empuje.',
  'Stroke needed': 'Carrera necesaria',
  'What the arm asks of the cylinder from rest to its stop.':
    'Lo que pide el brazo al cilindro del reposo a su tope.',
  "Energy at the arm's stop": 'Energía en el tope del brazo',
  'Of the arm alone when the body has left.': 'Del brazo solo, cuando el cuerpo ya salió.',
  'Gauge pressure in the reservoir when the body leaves.':
    'Presión manométrica del depósito cuando sale el cuerpo.',
  'Mat length needed': 'Largo de colchoneta necesario',
  'Mat width needed': 'Ancho de colchoneta necesario',
  'The kick gives the spine a dynamic response of {response}; a slower valve or less pressure lowers it.':
    'El golpe da a la columna una respuesta dinámica de {response}; una válvula más lenta o menos presión la bajan.',
  'The legs take up to {peak} with {rise}; less pressure, a longer arm or a slower valve lowers it.':
    'Las piernas reciben hasta {peak} con {rise}; menos presión, un brazo más largo o una válvula más lenta lo bajan.',
  '{pressure}, up to {most} from shot to shot, in equipment marked for {rated}.':
    '{pressure}, hasta {most} de un disparo a otro, en un equipo marcado para {rated}.',
  'Stroke of the cylinder': 'Carrera del cilindro',
  'The arm asks for {needed} of a cylinder that gives {stroke}; short of that the piston strikes its end before the arm meets its stop.':
    'El brazo pide {needed} a un cilindro que da {stroke}; si no llega, el pistón golpea su final antes de que el brazo toque su tope.',
  '{factor}: the plate pushes the feet with up to {push}; a stronger plate and hinge raise it.':
    '{factor}: la placa empuja los pies con hasta {push}; una placa y una bisagra más fuertes lo suben.',
  'Chance of missing the mat': 'Probabilidad de no dar en la colchoneta',
  'The body lands {place} from the marked feet; the chance of coming down outside the mat less its margin is {chance}, and {length} by {width} there would bring it to {wanted}.':
    'El cuerpo cae a {place} de la marca de los pies; la probabilidad de caer fuera de la colchoneta menos su margen es {chance}, y con {length} por {width} allí bajaría a {wanted}.',
  'The mat stops the body with {mean} on average over {depth}; a deeper mat lowers it.':
    'La colchoneta frena el cuerpo con {mean} de media en {depth}; una más honda lo baja.',
  "The body's centre rises to {apex}, {headroom} under what is above it; arms and legs reach further.":
    'El centro del cuerpo sube a {apex}, {headroom} por debajo de lo que tiene encima; brazos y piernas llegan más lejos.',
  'Wind in the flight': 'Viento en el vuelo',
  'The launch may go in wind up to {wind}; a body thrown high drifts with it.':
    'El lanzamiento puede hacerse con viento de hasta {wind}; un cuerpo lanzado alto deriva con él.',
  '{n} at the mat, and the operator watches the feet and nothing else.':
    '{n} en la colchoneta, y el operador mira los pies y nada más.',
  '{n} planned for this performer, rehearsals included; ankles tire before the rest does.':
    '{n} previstos para este especialista, ensayos incluidos; los tobillos se cansan antes que lo demás.',
  'Through the legs': 'En las piernas',
  'Speed of the feet': 'Velocidad de los pies',
  'Cylinder and arm': 'Cilindro y brazo',
  'Angle of the arm': 'Ángulo del brazo',
  'The flight': 'El vuelo',
  'Time from leaving the plate': 'Tiempo desde que deja la placa',
  'Ram and flight': 'Plataforma y vuelo',
  'Pressurised, the plate may go at any moment; only the performer steps in here, on the word. Measured from the marked feet.':
    'Con presión, la placa puede saltar en cualquier momento; aquí solo entra el especialista, cuando se le avisa. Medido desde la marca de los pies.',
  'From {start} to {end} the cylinder does not push this arm upward all along: check the angles and where its pins are.':
    'De {start} a {end} el cilindro no empuja este brazo hacia arriba todo el tiempo: revise los ángulos y dónde están los pasadores.',
  "The launch could not be followed with these inputs: check the arm's mass and the cylinder.":
    'No se pudo seguir el lanzamiento con estos datos: revise la masa del brazo y el cilindro.',
  'At {pressure} the arm stops at {angle}: the body is lifted and not thrown.':
    'Con {pressure} el brazo se para en {angle}: el cuerpo se eleva y no sale lanzado.',
  "The feet leave the plate at {left}, before the arm's stop at {stop}: the rest of the stroke throws nobody.":
    'Los pies dejan la placa en {left}, antes del tope del brazo en {stop}: el resto de la carrera no lanza a nadie.',
  'The feet are marked {feet} from the hinge on an arm of {arm}.':
    'Los pies están marcados a {feet} de la bisagra en un brazo de {arm}.',
  'Feet at {near} from the hinge land the body at {first}, at {far} they land it at {second}: the operator fires only on feet that are on the mark.':
    'Con los pies a {near} de la bisagra el cuerpo cae a {first}, con los pies a {far} cae a {second}: el operador dispara solo con los pies en la marca.',
  '{pressure} stay in the reservoir after the launch: vent it, and never fill it again while anybody stands on the plate.':
    'Quedan {pressure} en el depósito tras el lanzamiento: vacíelo, y no lo llene nunca con alguien sobre la placa.',
  'Start with weight bags well under {pressure} and work up; the body is gone from the plate {time} after the trigger.':
    'Empiece con sacos de peso muy por debajo de {pressure} y vaya subiendo; el cuerpo deja la placa {time} después del disparo.',
};
