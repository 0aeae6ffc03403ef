// What the core says of a fight, in Spanish, keyed by its own English words.

export const fight: Record<string, string> = {
  Fight: 'Pelea',
  'Performers strike at each other unarmed, with blunt weapons or breakaway props. Covers distance, the chance and force of a hit by mistake, tiring over takes and effort in heat; leaves out eyes and teeth, throws, falls and tempers.':
    'Los intérpretes se golpean desarmados, con armas romas o con atrezo que se rompe. Incluye distancia, probabilidad y fuerza de un golpe por error, cansancio en las tomas y esfuerzo con calor; no incluye ojos ni dientes, lanzamientos, caídas ni enfados.',
  'Of the one who is struck at, the lighter of the two; the head counts as a share of it.':
    'De quien recibe los golpes, el más ligero de los dos; la cabeza cuenta como una parte.',
  'What strikes': 'Con qué se golpea',
  Unarmed: 'Sin armas',
  'Blunt training weapon': 'Arma roma de ensayo',
  'Breakaway prop': 'Atrezo que se rompe',
  'A hand or foot, a training weapon with no edge or point, or a prop made to break.':
    'Mano o pie, un arma de ensayo sin filo ni punta, o atrezo hecho para romperse.',
  'Distance at the strike': 'Distancia en el golpe',
  "Striker's shoulder to the partner's nearest part, both on their marks.":
    'Del hombro de quien golpea a la parte más cercana del otro, ambos en sus marcas.',
  'Reach of the strike': 'Alcance del golpe',
  "Shoulder to knuckles, or to the weapon's tip, at the end of the strike.":
    'Del hombro a los nudillos, o a la punta del arma, al final del golpe.',
  'Speed of a step in': 'Velocidad de un paso adelante',
  'Of the two towards each other as the strike goes; nought only with the feet still.':
    'De uno hacia otro mientras va el golpe; cero solo con los pies quietos.',
  'Reaction to a partner out of place': 'Reacción a un compañero fuera de sitio',
  'From the partner being wrong to the strike or the step being held, from rehearsal.':
    'Desde que el otro se equivoca hasta contener el golpe o el paso, según los ensayos.',
  'Grip of the shoes': 'Agarre del calzado',
  'On the floor of the shot as it will be, wet or dusty; measured by a pull on a weighted shoe.':
    'En el suelo del plano tal como estará, mojado o con polvo; se mide tirando de un zapato lastrado.',
  'Scatter of the distance': 'Dispersión de la distancia',
  'One standard deviation of the gap at the strike, fresh, from pictures of the rehearsals.':
    'Una desviación típica del hueco en el golpe, descansados, según imágenes de los ensayos.',
  'Scatter added when spent': 'Dispersión añadida al agotarse',
  'As a share of the fresh scatter: 1 doubles it. From rehearsals run until they tire.':
    'Como parte de la dispersión descansados: 1 la duplica. De ensayos hasta cansarse.',
  'Strikes in a take': 'Golpes en una toma',
  'Those that go towards a person, by both sides.': 'Los que van hacia una persona, de ambas partes.',
  'Accepted chance of a hit': 'Probabilidad de golpe admitida',
  'Chance on the day that one strike lands; a person chooses it and answers for it.':
    'Probabilidad en el día de que un golpe llegue; alguien la elige y responde de ella.',
  'Speed of the strike': 'Velocidad del golpe',
  "Of the hand or the weapon's tip before it is slowed, from pictures.":
    'De la mano o la punta del arma antes de frenarla, según imágenes.',
  'Way a strike is slowed over': 'Recorrido en que se frena',
  'Before the end of its reach; a strike that goes through has hardly any.':
    'Antes del final de su alcance; un golpe que atraviesa apenas lo tiene.',
  'Step a partner may be wrong by': 'Paso de error del compañero',
  'Half a pace is a common mistake; the hit that lands is reckoned from it.':
    'Medio paso es un error común; de ahí se calcula el golpe que llega.',
  'Mass behind the strike': 'Masa tras el golpe',
  'About 3 kg for a fist, from memory; for a weapon what a scale reads at its tip with the grip held.':
    'Unos 3 kg en un puño, de memoria; en un arma lo que marca una báscula en la punta con la empuñadura sujeta.',
  'Padding on what strikes': 'Acolchado de lo que golpea',
  'Thickness over knuckles, edge and tip.': 'Grosor sobre nudillos, canto y punta.',
  'Share of padding that gives': 'Parte del acolchado que cede',
  'How far it presses before it is hard, from a press or a dropped weight.':
    'Cuánto se aplasta antes de endurecerse, con una prensa o un peso que cae.',
  'Give of a face': 'Lo que cede una cara',
  'Flesh over bone and what the striking hand or weapon bends; about 10 mm at a cheek.':
    'Carne sobre el hueso y lo que se dobla la mano o el arma; unos 10 mm en un pómulo.',
  'Force that breaks the prop': 'Fuerza que rompe el atrezo',
  'The highest of at least three broken on a scale; only a breakaway prop uses it.':
    'La más alta de al menos tres rotos en una báscula; solo cuenta en atrezo que se rompe.',
  'Radius of edge and tip': 'Radio de canto y punta',
  'The sharpest place on the weapon or prop, nicks included.':
    'El lugar más afilado del arma o del atrezo, mellas incluidas.',
  'Fighters to the nearest person': 'De la pelea a la persona más cercana',
  'From the nearest that a fighter comes to anyone not in the fight, camera crew included.':
    'Lo más cerca que un luchador pasa de quien no está en la pelea, incluido el equipo de cámara.',
  'Time of a take': 'Tiempo de una toma',
  'Of fighting, from the first beat to the last.': 'De pelea, del primer tiempo al último.',
  'Rest between takes': 'Descanso entre tomas',
  "From one take's last beat to the next one's first, seated and out of the sun.":
    'Del último tiempo de una toma al primero de la siguiente, sentados y sin sol.',
  'Takes on the day': 'Tomas en el día',
  'At full speed, rehearsals at full speed included.':
    'A toda velocidad, incluidos los ensayos a toda velocidad.',
  'Time to being spent': 'Tiempo hasta agotarse',
  'How long the less fit of the two keeps form going flat out in costume, from rehearsal.':
    'Cuánto mantiene la forma el menos en forma de los dos, a tope y con vestuario, según los ensayos.',
  Recovery: 'Recuperación',
  'Rest in which about two thirds of the effort come back; five to ten minutes is common.':
    'Descanso en que vuelven unos dos tercios del esfuerzo; lo común son de cinco a diez minutos.',
  'Sun or shade': 'Sol o sombra',
  'In the sun': 'Al sol',
  'In shade or indoors': 'A la sombra o en interior',
  'Where they fight; the globe thermometer hangs there.': 'Donde pelean; allí cuelga el termómetro de globo.',
  'Air temperature': 'Temperatura del aire',
  'In the shade, out of the wind of fans.': 'A la sombra, fuera del viento de ventiladores.',
  'Humidity of the air': 'Humedad del aire',
  'Relative, at the same place and hour.': 'Relativa, en el mismo lugar y hora.',
  'Natural wet bulb': 'Bulbo húmedo natural',
  'A wetted thermometer in the sun and wind that people are in, not a whirled one.':
    'Un termómetro mojado al sol y al viento en que está la gente, no uno girado.',
  'Globe temperature': 'Temperatura de globo',
  'A black globe at the same place; under lamps it is hotter than the air.':
    'Un globo negro en el mismo lugar; bajo los focos está más caliente que el aire.',
  'Costume in the heat': 'Vestuario con calor',
  'One layer of cloth': 'Una capa de tela',
  'Two layers of cloth': 'Dos capas de tela',
  'Closed or coated suit': 'Traje cerrado o recubierto',
  'Armour, coats and padding count as two layers; rubber, foil and coated cloth as closed.':
    'Armaduras, abrigos y acolchados cuentan como dos capas; goma, lámina y tela recubierta, como cerrado.',
  'Used to the heat': 'Habituado al calor',
  'Not used to the heat': 'No habituado al calor',
  'Only after a week or more of work in it; of the two performers, the one who is not.':
    'Solo tras una semana o más trabajando con calor; de los dos, el que no lo esté.',
  'Run-throughs on the day': 'Pases en el día',
  'Whole fight, below speed, with the same partners, weapons and floor.':
    'La pelea entera, a menos velocidad, con los mismos compañeros, armas y suelo.',
  'First aiders at the set': 'Socorristas en el set',
  'With ice, eye wash and what a broken tooth or nose needs.':
    'Con hielo, lavaojos y lo necesario para un diente o una nariz rotos.',
  'Distance to spare': 'Distancia de sobra',
  'Distance at the strike less what reach, reaction and stopping a step need.':
    'Distancia en el golpe menos lo que piden el alcance, la reacción y parar un paso.',
  'Distance needed': 'Distancia necesaria',
  'Reach, the way closed in the reaction time, and the slide of the shoes.':
    'Alcance, lo que se acorta durante la reacción y lo que resbala el calzado.',
  'Gap at the end of the strike': 'Hueco al final del golpe',
  'Distance less reach with both on their marks; the lens angle hides it.':
    'Distancia menos alcance con ambos en sus marcas; el ángulo del objetivo lo oculta.',
  'Chance of a hit on the day': 'Probabilidad de golpe en el día',
  'That at least one strike lands in all takes. 1 in a thousand million means that or less.':
    'De que al menos un golpe llegue en todas las tomas. 1 entre mil millones significa eso o menos.',
  'Chance in a fresh strike': 'Probabilidad en un golpe descansado',
  'That one strike at the end of the first take lands.':
    'De que llegue un golpe al final de la primera toma.',
  'Chance in a tired strike': 'Probabilidad en un golpe cansado',
  'That one strike at the end of the last take lands.': 'De que llegue un golpe al final de la última toma.',
  'Scatter at the end': 'Dispersión al final',
  'One standard deviation of the gap at the end of the last take.':
    'Una desviación típica del hueco al final de la última toma.',
  'Speed of a hit by mistake': 'Velocidad de un golpe por error',
  'What is left of the strike and the step in when the partner is a step too near.':
    'Lo que queda del golpe y del paso adelante cuando el otro está un paso demasiado cerca.',
  'Energy of a hit by mistake': 'Energía de un golpe por error',
  'What face, hand and padding take up as strike and head come to one speed.':
    'Lo que absorben cara, mano y acolchado hasta que golpe y cabeza van a la misma velocidad.',
  'Force of a hit by mistake': 'Fuerza de un golpe por error',
  'Peak of a half-sine stop; a breakaway prop lets no more through than breaks it.':
    'Máximo de una frenada de medio seno; el atrezo que se rompe no transmite más de lo que lo rompe.',
  'Head in a hit by mistake': 'Cabeza en un golpe por error',
  'Peak of a free head.': 'Máximo de una cabeza libre.',
  'HIC of a hit by mistake': 'HIC de un golpe por error',
  'Head injury criterion, windows up to 15 ms.': 'Criterio de lesión de cabeza, con ventanas de hasta 15 ms.',
  'Reserve at the end': 'Reserva al final',
  'From 1, fresh, to 0, spent, at the end of the last take.':
    'De 1, descansado, a 0, agotado, al final de la última toma.',
  'First beat to last': 'Del primer tiempo al último',
  'All takes and the rests between them.': 'Todas las tomas y los descansos entre ellas.',
  'Work left by the heat': 'Trabajo que deja el calor',
  'Share of each hour that the heat allows at this effort less the share that is planned.':
    'Parte de cada hora que el calor permite con este esfuerzo menos la prevista.',
  'Work that the heat allows': 'Trabajo que permite el calor',
  'Share of each hour at very high effort with rests in the same place.':
    'Parte de cada hora con esfuerzo muy alto y descansos en el mismo lugar.',
  'Work that is planned': 'Trabajo previsto',
  'Time of a take over take and rest.': 'Tiempo de toma entre toma y descanso.',
  'Wet-bulb globe temperature': 'Temperatura de globo y bulbo húmedo',
  'ISO 7243, with what the costume adds.': 'ISO 7243, con lo que añade el vestuario.',
  'Heat index': 'Índice de calor',
  'What heat and humidity feel like in the shade, by the United States weather service.':
    'La sensación de calor y humedad a la sombra, según el servicio meteorológico de Estados Unidos.',
  'Gap to the crew': 'Distancia al equipo',
  'What is left when a fighter is a step wrong, strikes and runs on.':
    'Lo que queda cuando un luchador se equivoca un paso, golpea y sigue de largo.',
  'Run-on of a step': 'Lo que sigue un paso',
  'Way closed in the reaction time and in stopping.': 'Lo que se acorta durante la reacción y al parar.',
  'Distance between the fighters': 'Distancia entre los luchadores',
  'Reach, reaction and a step need {needed} and {left} are left; {limit} is wanted, so stand further apart and let the lens close the gap, or keep the feet still.':
    'Alcance, reacción y un paso piden {needed} y quedan {left}; se desean {limit}: sepárense más y que el objetivo cierre el hueco, o dejen los pies quietos.',
  'Chance that a strike lands': 'Probabilidad de que llegue un golpe',
  'The chance that one strike lands on the day is {#chance}, and {#tired} for each tired one; {#limit} is accepted, so widen the gap, cut strikes or takes, or rest longer.':
    'La probabilidad de que llegue un golpe en el día es {chance}, y {tired} en cada uno cansado; se admite {limit}: amplíe el hueco, quite golpes o tomas, o descanse más.',
  'With a step wrong and a run-on of {run}, {left} are left to the nearest person; {limit} is wanted, so move the camera back or use a longer lens.':
    'Con un paso de error y {run} de más, quedan {left} hasta la persona más cercana; se desean {limit}: aleje la cámara o use un objetivo más largo.',
  'With the partner a step too near the strike lands at {speed} with a peak of {force}; {limit} is the most by habit, so slow it earlier, pad it or aim it beside the face.':
    'Con el otro un paso demasiado cerca el golpe llega a {speed} con un máximo de {force}; por costumbre el máximo es {limit}: frénelo antes, acólchelo o apúntelo al lado de la cara.',
  'That hit at {speed} carries {energy}; {limit} is the most by habit, so use a lighter prop or a strike that is slowed over more of its way.':
    'Ese golpe a {speed} lleva {energy}; por costumbre el máximo es {limit}: use atrezo más ligero o un golpe que se frene en más recorrido.',
  'HIC is {#hic} where {#limit} is the limit; it is a limit of the brain, and a face breaks long before it.':
    'El HIC es {hic} y el límite es {limit}; es un límite del cerebro, y una cara se rompe mucho antes.',
  'Edge and tip of the weapon': 'Canto y punta del arma',
  'The sharpest place has a radius of {radius}; at least {limit} is the habit, so file nicks out after each take and keep the sharp one for the close shot.':
    'El lugar más afilado tiene un radio de {radius}; lo habitual es al menos {limit}: lime las mellas tras cada toma y deje el afilado para el plano corto.',
  'Work and rest in the heat': 'Trabajo y descanso con calor',
  'At {temperature} of wet-bulb globe temperature, costume counted, {#allowed} of the hour may be fought and {#planned} is planned, which leaves {#left}; rest longer, in shade, or fight at a cooler hour.':
    'Con {temperature} de temperatura de globo y bulbo húmedo, contando el vestuario, se puede pelear {allowed} de la hora y se prevé {planned}, lo que deja {left}; descanse más, a la sombra, o pelee a una hora más fresca.',
  'The heat index is {index} in the shade; the chart reads danger from {limit}, with exertion and sun making it worse.':
    'El índice de calor es {index} a la sombra; la tabla marca peligro desde {limit}, y el esfuerzo y el sol lo empeoran.',
  'Reserve at the end of the day': 'Reserva al final del día',
  "After the last take {#reserve} of a fresh performer's effort is left; {#limit} is wanted, so rest longer, split the fight or change performers.":
    'Tras la última toma queda {reserve} del esfuerzo de alguien descansado; se desea {limit}: descanse más, parta la pelea o cambie de intérpretes.',
  'Takes at full speed': 'Tomas a toda velocidad',
  'Takes at full speed on the day: {n}; {limit} is the most by habit, so cut the fight into shorter shots.':
    'Tomas a toda velocidad en el día: {n}; por costumbre el máximo es {limit}: parta la pelea en planos más cortos.',
  'Run-through on the day': 'Pase en el día',
  'Run-throughs of the whole fight on the day: {n}; at least {limit} is the habit, with the same partners, weapons and floor.':
    'Pases de la pelea entera en el día: {n}; lo habitual es al menos {limit}, con los mismos compañeros, armas y suelo.',
  'First aiders at the set: {n}; at least {limit} is the habit.':
    'Socorristas en el set: {n}; lo habitual es al menos {limit}.',
  'Tiring over the takes': 'Cansancio en las tomas',
  'Time from the first beat': 'Tiempo desde el primer tiempo',
  Reserve: 'Reserva',
  'Reach of the fight': 'Alcance de la pelea',
  'Round the two fighters wherever they move: nobody else, no stand and no cable within a wrong step and a strike of them.':
    'En torno a los dos luchadores, vayan donde vayan: nadie más, ni soportes ni cables a menos de un paso en falso y un golpe de ellos.',
  'Not everything is computed before these are entered: {list}.': 'No se calcula todo hasta indicar: {list}.',
  'A strike in the last take is {#times} times as likely to land as in the first: shoot the closest beats first.':
    'Un golpe de la última toma es {times} veces más probable que llegue que en la primera: ruede antes los tiempos más cercanos.',
  'The gap of {gap} is {#times} times the scatter at the end: a forgotten move or a changed order is not in that scatter.':
    'El hueco de {gap} es {times} veces la dispersión al final: un movimiento olvidado o un orden cambiado no están en esa dispersión.',
  'A partner a step too near is met at {speed} with {force}: an eye or a tooth is hurt by far less than breaks bone.':
    'A un compañero un paso demasiado cerca se le golpea a {speed} con {force}: un ojo o un diente se dañan con mucho menos de lo que rompe un hueso.',
  "A partner wrong by {step} is not yet in reach; a larger mistake would be met at up to the strike's whole speed and that of the step in.":
    'Un compañero que se equivoca en {step} aún no queda al alcance; un error mayor recibiría hasta la velocidad entera del golpe y la del paso adelante.',
  'The prop breaks at {force}: one that is old, cold or wet does not, so break one of the same batch on the day; its pieces fly and the eyes are turned away.':
    'El atrezo se rompe con {force}: si está viejo, frío o mojado no lo hace, así que rompa uno del mismo lote ese día; los trozos vuelan y se apartan los ojos.',
  'At {temperature} of wet-bulb globe temperature the body cannot fight on without rests, however it feels: water, shade and a watch over both performers.':
    'Con {temperature} de temperatura de globo y bulbo húmedo el cuerpo no puede pelear sin descansos, se sienta como se sienta: agua, sombra y vigilar a los dos intérpretes.',
};
