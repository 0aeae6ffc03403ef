// What the core says of a switch behind an occluder, in Spanish.

export const occluderSwitch: Record<string, string> = {
  'Switch behind an occluder': 'Cambio tras un elemento que tapa',
  'An actor goes behind something and a double comes out, in one shot. Covers when both are wholly hidden from a moving camera, the frame, and the room to stop and to pass; leaves out shadows, reflections and the match itself.':
    'Un actor pasa detrás de algo y sale un doble, en un mismo plano. Incluye cuándo ambos quedan del todo ocultos para una cámara en movimiento, el encuadre y el espacio para frenar y cruzarse; no incluye sombras, reflejos ni el parecido.',
  'Focal length': 'Distancia focal',
  'As marked on the lens for this shot.': 'La marcada en el objetivo para este plano.',
  'Sensor width used': 'Ancho de sensor usado',
  'Width of the sensor or film that the frame uses, not the whole of it.':
    'Ancho del sensor o de la película que usa el encuadre, no el total.',
  'Camera height': 'Altura de cámara',
  'Lens above the ground that the people walk on.': 'Del suelo que pisan las personas al objetivo.',
  'Camera travel across': 'Recorrido lateral de cámara',
  'How far the camera moves to the right during the shot; negative is to the left. Places are measured from where it starts, facing straight away from it.':
    'Cuánto se mueve la cámara a la derecha durante el plano; negativo es a la izquierda. Las posiciones se miden desde donde empieza, mirando recto al frente.',
  'Camera travel forward': 'Avance de cámara',
  'How far the camera moves forward during the shot; negative is back.':
    'Cuánto avanza la cámara durante el plano; negativo es hacia atrás.',
  'Camera move begins': 'Empieza el movimiento de cámara',
  'Time after the actor sets off at which the camera starts to move.':
    'Tiempo desde que el actor arranca hasta que la cámara empieza a moverse.',
  'Camera move takes': 'Dura el movimiento de cámara',
  "From the start to the end of the camera's move, at a steady speed.":
    'Del principio al final del movimiento de cámara, a velocidad constante.',
  'Pan at the start': 'Panorámica al principio',
  'Where the lens points at first, to the right of straight ahead.':
    'Adónde apunta el objetivo al principio, a la derecha del frente.',
  'Pan at the end': 'Panorámica al final',
  "Where the lens points when the camera's move is over.":
    'Adónde apunta el objetivo cuando termina el movimiento de cámara.',
  'Occluder distance': 'Distancia al elemento que tapa',
  "From the camera's first position straight ahead to the front of what hides the switch.":
    'De la primera posición de cámara, recto al frente, hasta la cara delantera de lo que oculta el cambio.',
  'Occluder offset': 'Desvío del elemento que tapa',
  'Middle of the occluder to the right of straight ahead, when the actor sets off.':
    'Centro del elemento que tapa, a la derecha del frente, cuando el actor arranca.',
  'Occluder width': 'Ancho del elemento que tapa',
  'The narrowest width that hides: no gaps, glass or open doors in it.':
    'El ancho más estrecho que tapa: sin huecos, cristales ni puertas abiertas.',
  'Occluder thickness': 'Grosor del elemento que tapa',
  'From its front to its back.': 'De su cara delantera a la trasera.',
  'Occluder height': 'Altura del elemento que tapa',
  'From the ground to the lowest part of its top edge.':
    'Del suelo a la parte más baja de su borde superior.',
  'Gap under the occluder': 'Hueco bajo el elemento que tapa',
  'From the ground to its bottom edge: feet show under a vehicle.':
    'Del suelo a su borde inferior: bajo un vehículo se ven los pies.',
  'Occluder speed across': 'Velocidad lateral de lo que tapa',
  'Speed to the right of an occluder that passes, such as a vehicle or a crowd; 0 for one that stands.':
    'Velocidad hacia la derecha de algo que pasa, como un vehículo o un gentío; 0 si está quieto.',
  'Body width with costume': 'Ancho del cuerpo con vestuario',
  'The widest of the two people across the elbows, cape, pack or prop included.':
    'La más ancha de las dos personas entre codos, con capa, mochila o utilería.',
  "Actor's height": 'Estatura del actor',
  "Double's height": 'Estatura del doble',
  'With hat and shoes, upright as in the shot.': 'Con sombrero y calzado, erguido como en el plano.',
  'Actor starts, across': 'Salida del actor, lateral',
  "To the right of straight ahead of the camera's first position.":
    'A la derecha del frente de la primera posición de cámara.',
  'Actor starts, away': 'Salida del actor, al fondo',
  "Straight away from the camera's first position.": 'Recto al frente desde la primera posición de cámara.',
  "Actor's mark, across": 'Marca del actor, lateral',
  'Where the actor stops out of sight, to the right of straight ahead.':
    'Donde el actor se detiene oculto, a la derecha del frente.',
  "Actor's mark, away": 'Marca del actor, al fondo',
  "Where the actor stops out of sight, straight away from the camera's first position.":
    'Donde el actor se detiene oculto, recto al frente desde la primera posición de cámara.',
  "Actor's speed": 'Velocidad del actor',
  'Over the ground, timed at rehearsal; the tolerance is how far runs differ.':
    'Sobre el suelo, cronometrada en el ensayo; la tolerancia es cuánto varía entre pases.',
  'Double waits, across': 'Espera del doble, lateral',
  'Where the double waits out of sight, to the right of straight ahead.':
    'Donde el doble espera oculto, a la derecha del frente.',
  'Double waits, away': 'Espera del doble, al fondo',
  "Where the double waits out of sight, straight away from the camera's first position.":
    'Donde el doble espera oculto, recto al frente desde la primera posición de cámara.',
  'Double ends, across': 'Final del doble, lateral',
  "Where the double's path ends, to the right of straight ahead.":
    'Donde acaba el recorrido del doble, a la derecha del frente.',
  'Double ends, away': 'Final del doble, al fondo',
  "Where the double's path ends, straight away from the camera's first position.":
    'Donde acaba el recorrido del doble, recto al frente desde la primera posición de cámara.',
  "Double's speed": 'Velocidad del doble',
  "Double's cue": 'Señal del doble',
  'Time after the actor sets off at which the double sets off; the tolerance is how far cues differ.':
    'Tiempo desde que arranca el actor hasta que arranca el doble; la tolerancia es cuánto varía la señal.',
  'Shot length': 'Duración del plano',
  'From the actor setting off to the cut; nothing after it is looked at.':
    'Desde que arranca el actor hasta el corte; no se mira nada posterior.',
  'Rehearsed exchange time': 'Tiempo de cambio ensayado',
  'Longest time at rehearsal from the actor gone to the double ready at the edge, props handed over.':
    'El mayor tiempo en los ensayos desde que el actor desaparece hasta que el doble está listo en el borde, con la utilería entregada.',
  'Stopping rate on foot': 'Frenada a pie',
  'How hard the actor can brake out of sight. About 0.3 g on good ground is a habit; less when wet.':
    'Cuánto puede frenar el actor fuera de la vista. Lo habitual son unos 0,3 g en buen suelo; menos si está mojado.',
  'Margin over the exchange': 'Margen sobre el cambio',
  'Time that both are hidden less the rehearsed exchange time; negative is too little.':
    'Tiempo que ambos están ocultos menos el tiempo de cambio ensayado; negativo es insuficiente.',
  'Both hidden for': 'Ambos ocultos durante',
  'Longest time in which actor and double are wholly behind the occluder as the camera sees it.':
    'El mayor tiempo en que actor y doble están del todo tapados, tal como lo ve la cámara.',
  'Actor gone at': 'El actor desaparece a los',
  'Time after the actor sets off from which both are hidden.':
    'Tiempo desde que arranca el actor a partir del cual ambos están ocultos.',
  'Double appears at': 'El doble aparece a los',
  'Time after the actor sets off at which the first of the two shows again.':
    'Tiempo desde que arranca el actor en que se vuelve a ver al primero de los dos.',
  'Share wholly hidden': 'Parte del todo oculta',
  "Time that both are hidden, over the time from the actor's first edge covered to the double's last edge clear.":
    'Tiempo que ambos están ocultos, sobre el tiempo desde que se tapa el primer borde del actor hasta que se descubre el último del doble.',
  'Time seen when not meant': 'Tiempo a la vista sin deber',
  'Time that the actor is seen after going, or the double before coming.':
    'Tiempo que se ve al actor después de irse, o al doble antes de salir.',
  'Frame left at the edges': 'Encuadre que queda en los bordes',
  "Least share of the picture's width beside the actor who goes and the double who comes.":
    'La menor parte del ancho de la imagen junto al actor que se va y al doble que sale.',
  "Actor's speed at the edge": 'Velocidad del actor en el borde',
  "How fast the occluder's edge crosses the actor as the camera sees it.":
    'Con qué rapidez el borde tapa al actor, tal como lo ve la cámara.',
  "Double's speed at the edge": 'Velocidad del doble en el borde',
  "How fast the occluder's edge uncovers the double as the camera sees it.":
    'Con qué rapidez el borde descubre al doble, tal como lo ve la cámara.',
  'Least room between the two': 'Menor espacio entre los dos',
  'Between the bodies at their closest; negative is a collision.':
    'Entre los cuerpos cuando están más cerca; negativo es un choque.',
  'Least room behind the occluder': 'Menor espacio tras lo que tapa',
  "From the occluder's back to the nearer body beside it; negative is a collision.":
    'De la cara trasera al cuerpo más próximo; negativo es un choque.',
  'Room to stop out of sight': 'Espacio para frenar oculto',
  "Ground from going out of sight to the actor's mark, less what stopping takes.":
    'Suelo desde que desaparece hasta la marca del actor, menos lo que necesita para frenar.',
  'Both are hidden for {window} and the exchange took {exchange} at rehearsal, which leaves {margin}; a wider occluder, a slower camera or a later cue gives more than the {wanted} wanted.':
    'Ambos están ocultos {window} y el cambio llevó {exchange} en el ensayo, lo que deja {margin}; algo más ancho que tape, una cámara más lenta o una señal más tardía dan más de los {wanted} deseados.',
  'Nobody seen who should be hidden': 'Nadie a la vista que deba estar oculto',
  "One of the two is in the picture for {time} when only the other should be; move the mark or the wait deeper behind the occluder, or shorten the camera's move.":
    'Uno de los dos se ve durante {time} cuando solo debería verse el otro; lleve la marca o la espera más adentro, o acorte el movimiento de cámara.',
  'Edges inside the frame': 'Bordes dentro del encuadre',
  "At the least {share} of the picture's width is left beside the one who goes or comes; {wanted} is wanted, so pan, widen the lens or move the occluder.":
    'Como mínimo queda {share} del ancho de la imagen junto a quien se va o sale; se desea {wanted}: panoramice, abra el objetivo o mueva lo que tapa.',
  'Room between the two': 'Espacio entre los dos',
  "The two come within {room} of each other out of everybody's sight; {wanted} is wanted, so part their paths or cue the double later.":
    'Los dos llegan a {room} uno del otro sin que nadie los vea; se desean {wanted}: separe los recorridos o dé la señal más tarde.',
  'Room behind the occluder': 'Espacio tras lo que tapa',
  "A body passes the occluder's back with {room} to spare; {wanted} is wanted, so take the path further back.":
    'Un cuerpo pasa tras lo que tapa con {room} de sobra; se desean {wanted}: lleve el recorrido más atrás.',
  'After stopping the actor has {room} left to the mark; {wanted} is wanted, so move the mark on or slow the entry, and pad what stands behind it.':
    'Tras frenar, al actor le quedan {room} hasta la marca; se desean {wanted}: adelante la marca o reduzca la entrada, y acolche lo que haya detrás.',
  'How far inside the cover': 'Cuánto queda dentro de lo tapado',
  'The actor': 'El actor',
  'The double': 'El doble',
  Camera: 'Cámara',
  'Places across the shot': 'Posiciones a lo ancho del plano',
  'Both paths and the exchange': 'Ambos recorridos y el cambio',
  'Only the actor, the double and one person who cues them are in here: nobody runs blind into a helper.':
    'Aquí solo están el actor, el doble y quien les da la señal: nadie corre a ciegas contra un ayudante.',
  'At no time are both hidden: the switch cannot be seen to work in this shot.':
    'En ningún momento están ambos ocultos: el cambio no funciona en este plano.',
  'The window of {window} shrinks to {least} when every tolerance goes the wrong way at once.':
    'La ventana de {window} se reduce a {least} cuando todas las tolerancias van a la vez en contra.',
  "Nobody comes out before the shot ends at {end}: the double's cue or path is not what it should be.":
    'Nadie sale antes de que el plano acabe a los {end}: la señal o el recorrido del doble no son los debidos.',
  "Feet may show under the gap of {gap}; it counts here from the camera's height, not in reflections on wet ground.":
    'Pueden verse los pies por el hueco de {gap}; aquí se cuenta desde la altura de cámara, no en reflejos sobre suelo mojado.',
  'The two differ in height by {difference}, which the same frame will show at the edge.':
    'Los dos difieren {difference} de estatura, y el mismo encuadre lo mostrará en el borde.',
};
