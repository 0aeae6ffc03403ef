// What the core says of a horse fall and a drag, in Spanish. What it shares with other techniques is said there.

export const horseFall: Record<string, string> = {
  'Horse fall and drag': 'Caída de caballo y arrastre',
  "A rider comes off at speed onto a soft bed, or is drawn behind the horse. Covers flight, stop, slide and scatter, the horse's run, line, release and heat; leaves out what a horse decides and stirrups that hold.":
    'Un jinete cae a velocidad sobre una cama blanda, o es arrastrado tras el caballo. Incluye vuelo, frenada, deslizamiento y dispersión, la carrera del caballo, la línea, el desenganche y el calor; no incluye lo que decida un caballo ni los estribos que retienen.',
  Action: 'Acción',
  'What is done: each part is judged only where it is done.':
    'Lo que se hace: cada parte se juzga solo donde se hace.',
  Fall: 'Caída',
  Drag: 'Arrastre',
  'Fall and drag': 'Caída y arrastre',
  'What the horse does': 'Lo que hace el caballo',
  'A horse that falls too must be trained to, on a bed of its own size.':
    'Un caballo que también cae debe estar adiestrado para ello, sobre una cama de su tamaño.',
  'Horse goes on': 'El caballo sigue',
  'Horse falls too': 'El caballo también cae',
  'Speed at the fall': 'Velocidad en la caída',
  'Walk about 1.7 m/s, trot 4, canter 6, gallop 12; timed over the last 10 m at rehearsal.':
    'Paso unos 1,7 m/s, trote 4, galope corto 6, galope 12; cronometrada en los últimos 10 m del ensayo.',
  "Rider's height": 'Altura del jinete',
  'From the ground to the middle of the rider in the saddle.': 'Del suelo al centro del jinete en la silla.',
  'Push to the side': 'Impulso lateral',
  'Speed at which the rider leaves sideways, off rehearsal video.':
    'Velocidad lateral con que sale el jinete, según el vídeo del ensayo.',
  'How the body meets the bed: it decides which limit of human tolerance holds.':
    'Cómo llega el cuerpo a la cama: decide qué límite de tolerancia humana se aplica.',
  'Scatter of the moment': 'Dispersión del momento',
  'How far before or after the mark riders come off, nineteen times in twenty.':
    'Cuánto antes o después de la marca caen los jinetes, diecinueve de cada veinte veces.',
  'Scatter of the direction': 'Dispersión de la dirección',
  'How far to the side of the line they go, nineteen times in twenty.':
    'Cuánto se apartan de la línea, diecinueve de cada veinte veces.',
  'Accepted chance of missing': 'Probabilidad de fallo aceptada',
  'The chance of missing the bed that the production accepts; it sets the size needed.':
    'La probabilidad de no dar en la cama que acepta la producción; fija el tamaño necesario.',
  'Bed depth': 'Fondo de la cama',
  'Loose depth to hard ground after raking, at the shallowest of five probes.':
    'Fondo suelto hasta el suelo duro tras rastrillar, en el menor de cinco sondeos.',
  'Share of the depth that gives way under a body, from weight-bag drops; packed or wet dirt gives less.':
    'Parte del fondo que cede bajo un cuerpo, según pruebas con sacos de peso; la tierra apelmazada o mojada cede menos.',
  "Height of the bed's top": 'Altura de la cama',
  'Above the ground that the horse runs on; 0 for a bed dug in.':
    'Sobre el suelo por el que corre el caballo; 0 si la cama está excavada.',
  "How the bed's push rises and falls. Haversine gives the highest peak and is right when nothing was measured.":
    'Cómo sube y baja el empuje de la cama. El semiverseno da el pico más alto y es lo correcto si no se ha medido nada.',
  'Friction in the bed': 'Rozamiento en la cama',
  'Of clothing in the bed, from a bag thrown at speed: speed squared over twice g times the slide.':
    'De la ropa en la cama, según un saco lanzado a velocidad: velocidad al cuadrado entre dos veces g por el deslizamiento.',
  'Bed length': 'Largo de la cama',
  'Along the run, raked and free of stones.': 'A lo largo de la carrera, rastrillado y sin piedras.',
  'Bed width': 'Ancho de la cama',
  'Across the run, raked and free of stones.': 'A través de la carrera, rastrillado y sin piedras.',
  "How far inside the bed's edge the body's middle must come down to count as caught.":
    'Cuánto dentro del borde de la cama debe caer el centro del cuerpo para darse por recibido.',
  "Horse's clear ground": 'Suelo despejado del caballo',
  'Clear ground ahead of the fall for the horse, to the first fence, person or camera.':
    'Suelo despejado por delante de la caída para el caballo, hasta la primera valla, persona o cámara.',
  'Horse caught after': 'El caballo se recoge a los',
  'Time until a loose horse begins to slow for its handler or pick-up rider.':
    'Tiempo hasta que un caballo suelto empieza a frenar para su cuidador o el jinete de recogida.',
  'Horse slows at': 'El caballo frena a',
  'How hard a loose horse slows on this ground, from rehearsal.':
    'Cuánto frena un caballo suelto en este suelo, según el ensayo.',
  'Falls a horse a day': 'Caídas por caballo y día',
  'Falls asked of the same horse on the day, rehearsals included; 0 when the horse goes on.':
    'Caídas pedidas al mismo caballo en el día, ensayos incluidos; 0 si el caballo sigue.',
  'Horse handlers': 'Cuidadores de caballos',
  'Trained handlers at the horse and at the end of its run, who do nothing else.':
    'Cuidadores formados junto al caballo y al final de su carrera, que no hacen otra cosa.',
  Veterinarians: 'Veterinarios',
  'At the place while horses work, with the kit to treat one.':
    'En el lugar mientras trabajan los caballos, con el equipo para tratar a uno.',
  'Drag speed': 'Velocidad de arrastre',
  'Speed of the horse while it draws the performer.':
    'Velocidad del caballo mientras arrastra al especialista.',
  'Drag distance': 'Distancia de arrastre',
  'From the slack out to the release as planned.':
    'Desde que se tensa la línea hasta el desenganche previsto.',
  'Horse speeds up at': 'El caballo acelera a',
  'How hard the horse speeds up with the performer on the line.':
    'Cuánto acelera el caballo con el especialista en la línea.',
  'Friction on the ground': 'Rozamiento en el suelo',
  'Of the drag suit on this ground: a steady pull on a bag over its weight.':
    'Del traje de arrastre en este suelo: un tirón constante sobre un saco entre su peso.',
  'Line stiffness': 'Rigidez de la línea',
  'Of the whole drag line with its shock piece: force over stretch.':
    'De toda la línea de arrastre con su amortiguador: fuerza entre estiramiento.',
  'Slack runs out at': 'La holgura se acaba a',
  'How much faster the horse is than the performer when the line comes tight.':
    'Cuánto más rápido va el caballo que el especialista cuando se tensa la línea.',
  'Line strength': 'Resistencia de la línea',
  'Least breaking strength of anything between saddle and harness, as rigged.':
    'La menor carga de rotura de lo que hay entre silla y arnés, tal como está montado.',
  'Release opens under': 'El desenganche abre bajo',
  'Highest load at which the quick release was seen to open with one hand.':
    'La mayor carga con que se vio abrir el desenganche rápido con una mano.',
  'Release takes': 'El desenganche tarda',
  "From the hand's pull to the line gone, the slowest of ten under load.":
    'Del tirón de la mano a la línea suelta, el más lento de diez bajo carga.',
  'Reaction to let go': 'Reacción para soltar',
  "From something wrong to the hand's pull, by the performer or the second release.":
    'Desde que algo va mal hasta el tirón de la mano, del especialista o del segundo desenganche.',
  'Clear ground after release': 'Suelo despejado tras soltar',
  'Clear ground past the planned release, to the first hard thing, person or horse.':
    'Suelo despejado tras el desenganche previsto, hasta lo primero duro, persona o caballo.',
  'Padding that rubs': 'Acolchado que roza',
  'Area of the drag plate or padding that lies on the ground.':
    'Área de la placa de arrastre o del acolchado que apoya en el suelo.',
  'Heat into the padding': 'Calor hacia el acolchado',
  "Share of the rubbing's heat that goes into the padding and not the ground; a taped thermometer after a bag drag settles it.":
    'Parte del calor del roce que va al acolchado y no al suelo; un termómetro pegado tras arrastrar un saco lo determina.',
  'Ground temperature': 'Temperatura del suelo',
  'Of the ground and the padding before the drag; dark ground in the sun is hot.':
    'Del suelo y del acolchado antes del arrastre; el suelo oscuro al sol quema.',
  'Drags on the day': 'Arrastres en el día',
  'Drags for this performer on the day, rehearsals included.':
    'Arrastres de este especialista en el día, ensayos incluidos.',
  'Second releases': 'Segundos desenganches',
  'People other than the performer who can each let the line go by themselves.':
    'Personas, además del especialista, que pueden soltar la línea por sí solas.',
  'Bed probes': 'Sondeos de la cama',
  'Places where the bed was probed for depth and stones since it was last raked.':
    'Sitios donde se sondeó el fondo y las piedras desde que se rastrilló por última vez.',
  'Downward speed at the bed': 'Velocidad vertical en la cama',
  "The part of the landing speed that the bed's depth must stop.":
    'La parte de la velocidad de llegada que debe parar el fondo de la cama.',
  'Speed at the bed': 'Velocidad en la cama',
  'Forward and downward speed together when the body meets the bed.':
    'Velocidad hacia delante y hacia abajo juntas cuando el cuerpo llega a la cama.',
  'Along the run from coming off to meeting the bed.':
    'A lo largo de la carrera, desde que se suelta hasta que llega a la cama.',
  'Slide in the bed': 'Deslizamiento en la cama',
  "Distance in which the bed's friction stops the forward speed.":
    'Distancia en que el rozamiento de la cama para la velocidad hacia delante.',
  'What the body feels on average while stopping, gravity included: v² / (2 s) + g.':
    'Lo que siente el cuerpo de media al frenar, con la gravedad: v² / (2 s) + g.',
  'Gap to the horse': 'Distancia al caballo',
  'Between rider and horse as it passes, or as both lie still; negative is under the horse.':
    'Entre jinete y caballo cuando este pasa, o cuando ambos quedan quietos; negativo es bajo el caballo.',
  'Bed length needed': 'Largo de cama necesario',
  'Length, slide included, for the accepted chance of missing.':
    'Largo, deslizamiento incluido, para la probabilidad de fallo aceptada.',
  'Bed width needed': 'Ancho de cama necesario',
  'Chance of missing the bed': 'Probabilidad de no dar en la cama',
  'Chance that the body comes down or slides outside the bed less its margin. 1 in a thousand million means that or less.':
    'Probabilidad de que el cuerpo caiga o se deslice fuera de la cama menos su margen. 1 entre mil millones significa eso o menos.',
  "Horse's run": 'Carrera del caballo',
  'How far the horse runs on until it is caught, or slides when it falls.':
    'Cuánto sigue el caballo hasta que se recoge, o cuánto se desliza al caer.',
  'Ground left for the horse': 'Suelo que le queda al caballo',
  'Clear ground ahead of the horse less its run.': 'Suelo despejado ante el caballo menos su carrera.',
  'Line tension while dragging': 'Tensión de línea al arrastrar',
  'Friction and speeding up together, steady.': 'Rozamiento y aceleración juntos, en régimen constante.',
  'Peak line tension': 'Tensión máxima de línea',
  'When the slack runs out on a line of this stiffness.':
    'Cuando se acaba la holgura en una línea de esta rigidez.',
  'Line factor': 'Factor de la línea',
  'Line strength over peak tension.': 'Resistencia de la línea entre la tensión máxima.',
  'Release factor': 'Factor del desenganche',
  'Load at which the release opens over peak tension.':
    'Carga con que abre el desenganche entre la tensión máxima.',
  'Distance after trouble': 'Distancia tras un problema',
  'From something wrong to lying still: reaction, release and slide.':
    'Desde que algo va mal hasta quedar quieto: reacción, desenganche y deslizamiento.',
  'Ground left after that': 'Suelo que queda después',
  'Clear ground past the planned release less the distance after trouble.':
    'Suelo despejado tras el desenganche previsto menos la distancia tras un problema.',
  'Heat of the drag': 'Calor del arrastre',
  'Friction times distance: shared between the padding and the ground.':
    'Rozamiento por distancia: se reparte entre el acolchado y el suelo.',
  "Padding's face at the end": 'Cara del acolchado al final',
  'Temperature of the padding where it rubs, at the end of the drag.':
    'Temperatura del acolchado donde roza, al final del arrastre.',
  'Drag time': 'Tiempo de arrastre',
  'Drag distance over drag speed.': 'Distancia de arrastre entre velocidad de arrastre.',
  "The bed's stop gives a dynamic response of {response}; a deeper or looser bed brings it down.":
    'La frenada de la cama da una respuesta dinámica de {response}; una cama más honda o más suelta la reduce.',
  "HIC is {hic} for a head that stops with the body; a hoof, a stone or the bed's edge would give far more.":
    'El HIC es {hic} para una cabeza que frena con el cuerpo; un casco, una piedra o el borde de la cama darían mucho más.',
  'The chance of leaving the bed less its margin is {chance}; {length} by {width}, placed round the landing and the slide, brings it to {wanted}.':
    'La probabilidad de salirse de la cama menos su margen es {chance}; {length} por {width}, en torno a la llegada y al deslizamiento, la deja en {wanted}.',
  'Depth of the bed': 'Fondo de la cama de tierra',
  'The bed is {depth} deep; loose dirt alone over hard ground is {habit} or more by habit.':
    'La cama tiene {depth} de fondo; la tierra suelta sola sobre suelo duro es de {habit} o más por costumbre.',
  'Probes of the bed': 'Sondeos hechos en la cama',
  'Places probed since the last raking: {n}; at least {habit} find a stone or a shallow spot.':
    'Sitios sondeados desde el último rastrillado: {n}; con al menos {habit} aparece una piedra o un punto poco hondo.',
  'Gap between rider and horse': 'Distancia entre jinete y caballo',
  'Rider and horse come within {gap}; {wanted} is wanted, so push off harder to the side or fall from the side away from the legs.':
    'Jinete y caballo llegan a {gap}; se desean {wanted}: impúlsese más hacia el lado o caiga por el lado opuesto a las patas.',
  'Ground ahead of the horse': 'Suelo ante el caballo',
  'The horse needs {run} and {left} are left beyond; {wanted} is wanted, so move people and fences back or post the pick-up rider earlier.':
    'El caballo necesita {run} y quedan {left} más allá; se desean {wanted}: aparte a la gente y las vallas o ponga antes al jinete de recogida.',
  'Line against the peak': 'Línea frente al pico',
  'The line holds {factor} times the peak of {peak}; {wanted} is wanted, so take up the slack slowly, add stretch or a stronger line.':
    'La línea aguanta {factor} veces el pico de {peak}; se desea {wanted}: recoja la holgura despacio, añada elasticidad o una línea más fuerte.',
  'Release under load': 'Desenganche bajo carga',
  'The release was seen to open under {factor} times the peak of {peak}; {wanted} is wanted, so test it at more load or change it.':
    'El desenganche se vio abrir bajo {factor} veces el pico de {peak}; se desea {wanted}: pruébelo con más carga o cámbielo.',
  'Ground after trouble': 'Suelo tras un problema',
  'From trouble to lying still takes {after} and leaves {left}; {wanted} is wanted, so slow down, clear more ground or drill the release.':
    'Del problema a quedar quieto hacen falta {after} y quedan {left}; se desean {wanted}: reduzca la velocidad, despeje más suelo o practique el desenganche.',
  'Heat at the padding': 'Calor en el acolchado',
  "The padding's face reaches {temperature} in {time}; over {limit} plastics soften and the next layer burns, so shorten the drag, wet the ground or widen the plate.":
    'La cara del acolchado llega a {temperature} en {time}; por encima de {limit} los plásticos se ablandan y la capa siguiente se quema: acorte el arrastre, moje el suelo o ensanche la placa.',
  'Second release': 'Segundo desenganche',
  'People besides the performer who can let go: {n}; at least {habit} is the habit.':
    'Personas además del especialista que pueden soltar: {n}; lo habitual es al menos {habit}.',
  'Falls asked of one horse': 'Caídas pedidas a un caballo',
  'Falls asked of the same horse on the day: {n}; {habit} is the habit, fewer on a hot day.':
    'Caídas pedidas al mismo caballo en el día: {n}; lo habitual son {habit}, menos en un día caluroso.',
  'Handlers who do nothing else: {n}; at least {habit} is the habit, one at each end of the run.':
    'Cuidadores que no hacen otra cosa: {n}; lo habitual son al menos {habit}, uno en cada extremo de la carrera.',
  'Veterinarian present': 'Veterinario presente',
  'Veterinarians at the place: {n}; at least {habit} is the habit whenever a horse falls or draws.':
    'Veterinarios en el lugar: {n}; lo habitual es al menos {habit} siempre que un caballo cae o arrastra.',
  'Off the horse': 'Fuera del caballo',
  'Height over the bed': 'Altura sobre la cama',
  'Line as the slack runs out': 'La línea al acabarse la holgura',
  'Time from tight': 'Tiempo desde que se tensa',
  Tension: 'Tensión',
  'Time from the start': 'Tiempo desde el inicio',
  "Padding's face": 'Cara del acolchado',
  'Bed, measured from the fall': 'Cama, medida desde la caída',
  'Raked and free of stones; nobody stands in it or within two strides of its edge.':
    'Rastrillada y sin piedras; nadie está en ella ni a menos de dos zancadas de su borde.',
  'A loose horse comes through here; only its handler and a pick-up rider are in it.':
    'Por aquí pasa un caballo suelto; solo están su cuidador y un jinete de recogida.',
  'Drag path and what follows': 'Camino de arrastre y lo que sigue',
  'Walked for stones, roots and pegs before each drag; nobody and no wheel crosses it.':
    'Se recorre en busca de piedras, raíces y estacas antes de cada arrastre; no lo cruza nadie ni rueda alguna.',
  "At {speed} into {depth} of dirt only a horse trained to fall is asked to, on its rider's cue and never by a wire, a pit or a trip; the animal's own guardian may stop it at any time.":
    'A {speed} sobre {depth} de tierra solo se le pide a un caballo adiestrado para caer, a la señal de su jinete y nunca con un cable, un foso o una zancadilla; quien vela por el animal puede pararlo en cualquier momento.',
  'The mean of {mean} is the stop downward; the slide of {slide} adds its own pull and rolls the body, which is not computed. Throw a bag from the saddle at speed first.':
    'La media de {mean} es la frenada vertical; el deslizamiento de {slide} añade su propio tirón y hace rodar el cuerpo, lo que no se calcula. Lance antes un saco desde la silla a velocidad.',
  "{heat} of heat are made over {distance}; the padding's face is a mean over its area, and an edge or a buckle runs hotter.":
    'Se producen {heat} de calor en {distance}; la cara del acolchado es una media de su área, y un borde o una hebilla se calientan más.',
  'The slack makes {peak} out of a steady {steady}: the horse walks the line tight before it is let go.':
    'La holgura convierte {steady} constantes en {peak}: el caballo tensa la línea al paso antes de soltarlo.',
};
