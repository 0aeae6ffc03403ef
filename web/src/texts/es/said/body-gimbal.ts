// What the core says of a body gimbal, in Spanish, keyed by its own English words.

export const bodyGimbal: Record<string, string> = {
  'Body gimbal': 'Giroscopio corporal',
  'A performer turned head over heels between two prongs. Covers the turn up to speed, what head and feet feel, balance, the stop and tipping; leaves out how the drive is controlled, a body that moves and bending prongs.':
    'Un especialista gira de cabeza a pies entre dos brazos. Incluye el arranque, lo que sienten cabeza y pies, el equilibrio, la parada y el vuelco; no incluye cómo se gobierna el accionamiento, un cuerpo que se mueve ni la flexión de los brazos.',
  'Turn rate': 'Velocidad de giro',
  'Fastest wanted rate head over heels, counted at rehearsal.':
    'La mayor velocidad de giro deseada, contada en el ensayo.',
  'Time at that rate': 'Tiempo a esa velocidad',
  'From reaching the rate until the brake is called.':
    'Desde que se alcanza la velocidad hasta que se pide el freno.',
  'Rate borne for long': 'Velocidad soportada mucho tiempo',
  'No slower turn is timed. Six turns a minute (NASA-STD-3000, 5.3, from memory); medic or performer may say less.':
    'No se cronometra un giro más lento. Seis vueltas por minuto (NASA-STD-3000, 5.3, de memoria); médico o intérprete pueden decir menos.',
  'Axis to top of head': 'Del eje a la coronilla',
  'From the line through the prongs to the top of the head, as strapped in.':
    'De la línea entre los brazos a la coronilla, ya sujeto.',
  'Axis to soles': 'Del eje a las plantas',
  'From the line through the prongs to the soles, as strapped in.':
    'De la línea entre los brazos a las plantas de los pies, ya sujeto.',
  "Body's mass off the axis": 'Masa del cuerpo fuera del eje',
  'From the axis to the balance point of the strapped-in body, from a tilt test that day.':
    'Del eje al punto de equilibrio del cuerpo sujeto, con una prueba de inclinación ese día.',
  "Body's radius of gyration": 'Radio de giro del cuerpo',
  'About its own balance point: about 0.42 m stretched out, 0.3 m tucked; from a timed test turn.':
    'Respecto a su punto de equilibrio: unos 0,42 m estirado, 0,3 m encogido; de un giro de prueba cronometrado.',
  'Turning cradle': 'Cuna giratoria',
  'All that turns with the body, counterweights apart; the cradle alone is balanced.':
    'Todo lo que gira con el cuerpo, salvo contrapesos; la cuna sola está equilibrada.',
  "Cradle's radius of gyration": 'Radio de giro de la cuna',
  'Of the cradle about the axis; the radius of a ring.': 'De la cuna respecto al eje; en un aro, su radio.',
  Counterweight: 'Contrapeso',
  "Weights opposite the body's balance point.": 'Pesas al lado opuesto del punto de equilibrio del cuerpo.',
  "Counterweight's arm": 'Brazo del contrapeso',
  'From the axis to where counterweights go, whether any are on or not.':
    'Del eje a donde van los contrapesos, estén puestos o no.',
  'Pivot friction': 'Rozamiento de los pivotes',
  'Torque that just keeps the balanced cradle turning, with a spring balance on the ring.':
    'Par que apenas mantiene girando la cuna equilibrada, con un dinamómetro en el aro.',
  'Drive torque': 'Par de accionamiento',
  'Steady torque about the axis that hands or motor give: force times radius.':
    'Par constante sobre el eje que dan las manos o el motor: fuerza por radio.',
  'Brake torque': 'Par de freno',
  'About the axis, measured; hands count as no brake.':
    'Sobre el eje, medido; las manos no cuentan como freno.',
  'Share on the worse prong': 'Parte en el brazo más cargado',
  'Half when the body hangs in the middle; all when one prong carries alone.':
    'La mitad si el cuerpo está en el centro; todo si un brazo carga solo.',
  'Prong strength': 'Resistencia del brazo',
  'What the weaker of prong, pivot and axle is known to hold across the axle.':
    'Lo que se sabe que aguanta, de través, el más débil de brazo, pivote y eje.',
  'Axis height': 'Altura del eje',
  'Of the line through the prongs above the floor.': 'De la línea entre los brazos sobre el suelo.',
  'Stand and ballast': 'Soporte y lastre',
  'All that stands still, ballast included.': 'Todo lo que no gira, con el lastre.',
  'Axis to tipping edge': 'Del eje al borde de vuelco',
  "Level distance from under the axis to the nearer edge or foot, along the turn; the stand's mass is under the axis.":
    'Distancia horizontal desde debajo del eje al borde o pie más próximo, en el sentido del giro; la masa del soporte está bajo el eje.',
  'Felt at the head, head down': 'En la cabeza, cabeza abajo',
  "The turn and the head's own weight together, towards the feet's side: it drives blood to the head.":
    'El giro y el peso de la propia cabeza juntos, desde el lado de los pies: lleva la sangre a la cabeza.',
  'Turning alone at the head': 'Solo el giro, en la cabeza',
  "Turn rate squared times the head's distance from the axis.":
    'Velocidad de giro al cuadrado por la distancia de la cabeza al eje.',
  'Turning alone at the feet': 'Solo el giro, en los pies',
  "Turn rate squared times the soles' distance from the axis.":
    'Velocidad de giro al cuadrado por la distancia de las plantas al eje.',
  'Felt at the head as it stops': 'En la cabeza al parar',
  'Head down at full rate with the brake at its hardest.':
    'Cabeza abajo a toda velocidad con el freno en su máximo.',
  'Time up to the rate': 'Tiempo de arranque',
  'From hanging at rest under the full drive torque.':
    'Desde el reposo, colgando, con todo el par de accionamiento.',
  'Turned by then': 'Girado hasta entonces',
  'How far it has turned when it reaches the rate.': 'Cuánto ha girado al alcanzar la velocidad.',
  'Stop time': 'Tiempo de parada',
  'From the brake biting to standing still, the offset against the brake.':
    'Desde que agarra el freno hasta quedar quieto, con el desequilibrio en contra.',
  'Turned while stopping': 'Giro durante la parada',
  'At the furthest, the offset against the brake.': 'Como máximo, con el desequilibrio contra el freno.',
  'Time turning faster than borne': 'Tiempo girando más de lo soportado',
  'Up to speed, at it and down again; none for a slower rate.':
    'Arranque, giro y parada; ninguno si se gira más despacio.',
  'Torque of the offset mass': 'Par de la masa descentrada',
  "Gravity's largest torque on what is left out of balance.":
    'El mayor par de la gravedad sobre lo que queda sin equilibrar.',
  'Counterweight for balance': 'Contrapeso para equilibrar',
  "What at that arm balances the body's offset.": 'Lo que en ese brazo equilibra el desvío del cuerpo.',
  'Drive over offset and friction': 'Accionamiento frente a lo que frena',
  'Drive torque over what holds it back at the worst place.':
    'Par de accionamiento sobre lo que lo retiene en el peor punto.',
  'Brake over the offset': 'Freno frente al desequilibrio',
  "Brake torque over the offset's torque, or over friction where that is more.":
    'Par de freno sobre el par del desequilibrio, o sobre el rozamiento si es mayor.',
  'Load of the worse prong': 'Carga del brazo más cargado',
  "Its share of all that turns and of the offset's swing.":
    'Su parte de todo lo que gira y del tirón del desequilibrio.',
  'Prong factor': 'Factor del brazo',
  'Strength over that load.': 'Resistencia sobre esa carga.',
  'Overturning moment': 'Momento de vuelco',
  "The offset's swing at the axis height with the full torque of drive or brake.":
    'El tirón del desequilibrio a la altura del eje con todo el par de accionamiento o freno.',
  'Tipping factor': 'Factor de vuelco',
  'Moment of all the weight about the edge, over the overturning moment.':
    'Momento de todo el peso respecto al borde, sobre el momento de vuelco.',
  'Gap to the floor': 'Hueco hasta el suelo',
  'From the furthest of head, soles and counterweight down to the floor.':
    'De lo más alejado de cabeza, plantas y contrapeso hasta el suelo.',
  'Turn rate that nobody bears': 'Velocidad de giro que nadie soporta',
  'Planned at {rate}, up to {high} within the tolerance; head over heels at {limit} is not borne by people without training.':
    'Se prevén {rate}, hasta {high} con la tolerancia; quien no está entrenado no soporta girar de cabeza a pies a {limit}.',
  'Turn rate by habit': 'Velocidad de giro habitual',
  '{rate} where {limit} is the habit; turn the camera faster rather than the performer.':
    '{rate} cuando lo habitual es {limit}; gire más deprisa la cámara y no al especialista.',
  'Time turning in one go': 'Tiempo seguido girando',
  '{time} of turning fast enough to make sick, up and down included; a shorter take or two takes with a rest bring it under {limit}.':
    '{time} girando tan deprisa como para marear, con arranque y parada; una toma más corta, o dos con descanso, lo bajan de {limit}.',
  'Blood driven to the head': 'Sangre hacia la cabeza',
  'At {rate} the head feels {g} when it is down; a slower turn or an axis nearer the head lowers it.':
    'A {rate} la cabeza siente {g} cuando está abajo; un giro más lento o un eje más cerca de la cabeza lo bajan.',
  'Head as it stops': 'La cabeza al parar',
  'Braked from {rate} head down the head feels {g}; a softer brake lowers it and takes longer.':
    'Al frenar desde {rate} cabeza abajo, la cabeza siente {g}; un freno más suave lo baja y tarda más.',
  'Drive over the offset': 'Accionamiento frente al desequilibrio',
  '{factor}: the offset pulls back with up to {torque}; {mass} of counterweight in all would balance it.':
    '{factor}: el desequilibrio tira con hasta {torque}; {mass} de contrapeso en total lo equilibrarían.',
  '{factor}: the brake must hold the performer wherever it stops, against up to {torque}.':
    '{factor}: el freno debe sujetar al especialista donde sea que pare, contra hasta {torque}.',
  'It turns on by {angle} in {time} after the brake bites; more brake, better balance or a slower turn shortens that.':
    'Sigue girando {angle} en {time} después de agarrar el freno; más freno, mejor equilibrio o un giro más lento lo acortan.',
  '{factor}: the worse prong carries {force}; a stronger prong or a body in the middle raises it.':
    '{factor}: el brazo más cargado lleva {force}; un brazo más resistente o el cuerpo centrado lo suben.',
  'Stand against tipping': 'Soporte frente al vuelco',
  '{factor}: up to {torque} try to turn the stand over; ballast, wider feet or better balance raises it.':
    '{factor}: hasta {torque} intentan volcar el soporte; lastre, pies más anchos o mejor equilibrio lo suben.',
  '{gap} are left under the furthest part that turns, where {wanted} are wanted; raise the axis.':
    'Quedan {gap} bajo lo más alejado que gira, y se desean {wanted}; suba el eje.',
  'One turn, at the head': 'Una vuelta, en la cabeza',
  'Angle from upright': 'Ángulo desde la vertical',
  'Towards the head, blood rising': 'Hacia la cabeza, sube la sangre',
  'In all': 'En total',
  'Up to the rate': 'Hasta la velocidad',
  'Time from the first push': 'Tiempo desde el primer empuje',
  'Angle turned': 'Ángulo girado',
  'Sweep of the body': 'Barrido del cuerpo',
  'Head, feet and weights come round here; only the two spotters stand at its edge, and nobody reaches in while it turns. Measured from under the axis.':
    'Aquí pasan cabeza, pies y pesas; solo los dos ayudantes están en su borde y nadie mete la mano mientras gira. Medido desde debajo del eje.',
  'Pushed from hanging with {drive} against an offset of {offset} it does not come up to {rate}: balance it before anybody pushes harder.':
    'Empujado desde abajo con {drive} contra un desequilibrio de {offset} no llega a {rate}: equilíbrelo antes de que nadie empuje más.',
  'A brake of {brake} may not stop an offset of {offset}: no stop is computed.':
    'Un freno de {brake} puede no parar un desequilibrio de {offset}: no se calcula la parada.',
  'It falls to its heavy side by itself: {mass} more counterweight at that arm balances it.':
    'Cae solo hacia su lado pesado: {mass} más de contrapeso en ese brazo lo equilibran.',
  "It falls to the counterweight's side by itself: {mass} less at that arm balances it.":
    'Cae solo hacia el lado del contrapeso: {mass} menos en ese brazo lo equilibran.',
  'A body that bends or reaches moves its balance point: 5 cm of it is {torque} more about the axis.':
    'Un cuerpo que se dobla o se estira mueve su punto de equilibrio: 5 cm son {torque} más sobre el eje.',
  'Static tilt, half the rate, then {rate} for a timed turn; the one named to stop it holds the brake, and a way to bring the head up by hand is tried first.':
    'Inclinación estática, media velocidad y luego {rate} en un giro cronometrado; quien debe pararlo tiene el freno, y antes se prueba cómo subir la cabeza a mano.',
};
