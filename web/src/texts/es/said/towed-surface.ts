// What the core says of a towed running surface, in Spanish, keyed by its own English words.

export const towedSurface: Record<string, string> = {
  'Towed running surface': 'Superficie de carrera remolcada',
  'A performer runs on a mat that is towed along the ground. Covers the speeds, the mat used up, take-up and stop by friction and balance, and the run-out; leaves out wrinkles, wind under the mat and the push of the stride itself.':
    'Un especialista corre sobre una lona que se remolca por el suelo. Incluye las velocidades, la lona gastada, el arranque y la parada según rozamiento y equilibrio, y el escape; no incluye arrugas, viento bajo la lona ni el empuje de la propia zancada.',
  'Direction of the run': 'Sentido de la carrera',
  'Along the tow the two speeds add up over the ground, against it they are taken off each other.':
    'A favor del remolque las dos velocidades se suman sobre el suelo; en contra se restan.',
  'The way of the tow': 'A favor del remolque',
  'Against the tow': 'En contra del remolque',
  'Runner starts': 'El corredor arranca',
  'Together saves way for the tow but asks for more grip; standing asks for balance alone.':
    'A la vez ahorra recorrido al remolque pero pide más agarre; de pie solo pide equilibrio.',
  'Standing until the mat is at speed': 'De pie hasta que la lona va a su velocidad',
  'Together with the tow': 'A la vez que el remolque',
  'Mat length': 'Largo de la lona',
  'Length that may be run on, from hem to hem.': 'Largo por el que se puede correr, de borde a borde.',
  'Mat mass': 'Masa de la lona',
  'Mat, spreader bar and everything else that is towed along the ground.':
    'Lona, barra separadora y todo lo demás que se remolca por el suelo.',
  'Tow speed': 'Velocidad de remolque',
  'Of the mat over the ground during the shot.': 'De la lona sobre el suelo durante el plano.',
  'Take-up acceleration': 'Aceleración de arranque',
  'Highest acceleration of the mat as it is set moving, from a logged tow.':
    'Mayor aceleración de la lona al ponerse en marcha, según un remolque registrado.',
  'Stopping deceleration of the mat': 'Deceleración de parada de la lona',
  'Highest deceleration of the mat as it is stopped in the planned way.':
    'Mayor deceleración de la lona al pararla como está previsto.',
  'Time to full pull': 'Tiempo hasta el tiro completo',
  'How long the tow takes to build up its acceleration, and to ease it off again.':
    'Cuánto tarda el remolque en llegar a su aceleración, y en volver a soltarla.',
  'Running speed on the mat': 'Velocidad de carrera en la lona',
  'Relative to the mat, as the performer holds it on this mat.':
    'Respecto a la lona, la que el especialista mantiene en esta lona.',
  "Runner's acceleration": 'Aceleración del corredor',
  'Mean from standing to that speed, relative to the mat, timed.':
    'Media de parado a esa velocidad, respecto a la lona, cronometrada.',
  "Runner's slowing": 'Frenado del corredor',
  'Mean from that speed to standing, relative to the mat, timed.':
    'Medio de esa velocidad a parado, respecto a la lona, cronometrado.',
  'Shot at full speed': 'Plano a plena velocidad',
  'How long camera needs runner and mat both at full speed.':
    'Cuánto tiempo necesita la cámara corredor y lona a plena velocidad.',
  'Time to answer the call': 'Tiempo de respuesta al aviso',
  'From the end of the shot until tow and runner begin to slow.':
    'Del final del plano hasta que remolque y corredor empiezan a frenar.',
  'Mat behind the start': 'Lona detrás de la salida',
  'From the hem to where the runner stands at the start.': 'Del borde a donde está el corredor en la salida.',
  'Mat kept beyond the stop': 'Lona de reserva tras la parada',
  'From where the runner has stopped to the other hem.': 'De donde se ha parado el corredor al otro borde.',
  'Friction of shoe on mat': 'Rozamiento del zapato en la lona',
  'Pull that makes the shoe slide over the load on it, measured with these shoes on this mat.':
    'Tiro que hace resbalar el zapato entre su carga, medido con estos zapatos en esta lona.',
  'Friction of mat on ground': 'Rozamiento de la lona en el suelo',
  'Pull that keeps the loaded mat sliding over its load, measured on this ground.':
    'Tiro que mantiene deslizando la lona cargada entre su carga, medido en este suelo.',
  "Height of the body's weight": 'Altura del centro de masa',
  "Centre of mass above the mat, about 0.55 of a person's height.":
    'Centro de masa sobre la lona, cerca de 0,55 de la estatura.',
  'Reach of the feet for balance': 'Alcance de los pies para equilibrarse',
  "From below the body's weight to the furthest foothold: about 0.25 m in a stride stance.":
    'De debajo del centro de masa al apoyo más lejano: unos 0,25 m con un pie adelantado.',
  'Time to answer the pull': 'Tiempo de respuesta al tirón',
  'Until the body answers a pull; 0 for one who leans into a counted start.':
    'Hasta que el cuerpo responde a un tirón; 0 para quien se inclina en una salida contada.',
  'Tow strength': 'Resistencia del remolque',
  'Minimum breaking strength of the weakest part of the tow, hem and release included.':
    'Resistencia mínima a la rotura de la parte más débil del remolque, con borde y soltador.',
  'Clear way for the mat': 'Recorrido libre de la lona',
  'Way that the mat may slide, from its leading hem at the start, beyond which anything hard stands.':
    'Lo que la lona puede deslizar, desde su borde delantero en la salida, hasta lo primero que sea duro.',
  'Slowing beyond the mat': 'Frenado fuera de la lona',
  'Mean deceleration of a runner who comes off the end onto this ground.':
    'Deceleración media de un corredor que se sale por el extremo a este suelo.',
  'Clear run-out beyond the mat': 'Escape libre tras la lona',
  'Flat and free, from the hem the runner heads for: at the end of a tow along the run, at the start of one against it.':
    'Llano y libre, desde el borde hacia el que va el corredor: al final de un remolque a favor de la carrera, al principio de uno en contra.',
  "Top speed of the runner's legs": 'Velocidad máxima de las piernas',
  "Fastest run of this performer on firm ground, timed: what the legs can do if the mat's end comes.":
    'Carrera más rápida de este especialista en suelo firme, cronometrada: lo que dan las piernas si llega el final de la lona.',
  'Spotters with a stop': 'Vigilantes con parada',
  'People along the sides who can stop the tow at once and do nothing else.':
    'Personas a los lados que pueden parar el remolque al momento y no hacen nada más.',
  'Longest usable shot': 'Plano útil más largo',
  'At full speed with what the mat has left after start and stop; negative when that is nothing.':
    'A plena velocidad con la lona que queda tras arranque y parada; negativo si no queda nada.',
  'Speed over the ground': 'Velocidad sobre el suelo',
  "The runner's, tow and run together; negative when the tow carries the runner backward.":
    'La del corredor, remolque y carrera juntos; negativa si el remolque lo lleva hacia atrás.',
  'Mat used': 'Lona gastada',
  'By the runner in start, planned shot and stop.': 'Por el corredor en arranque, plano previsto y parada.',
  'Mat used to gather speed': 'Lona gastada al coger velocidad',
  'Until runner and tow are both at speed.': 'Hasta que corredor y remolque van a su velocidad.',
  'Mat used to stop': 'Lona gastada al parar',
  'From the end of the shot until the runner stands on the mat.':
    'Del final del plano hasta que el corredor está parado en la lona.',
  'Time on the moving mat': 'Tiempo en la lona en marcha',
  "From the runner's first step until all is still, planned shot included.":
    'Del primer paso del corredor hasta que todo está quieto, con el plano previsto.',
  'Time to full speed': 'Tiempo hasta la plena velocidad',
  'From the first pull until runner and tow are both at speed.':
    'Del primer tirón hasta que corredor y remolque van a su velocidad.',
  'Take-up time': 'Tiempo de arranque',
  'From the first pull until the mat is at speed.': 'Del primer tirón hasta que la lona va a su velocidad.',
  'Take-up way': 'Recorrido de arranque',
  'Of the mat over the ground until it is at speed.':
    'De la lona sobre el suelo hasta que va a su velocidad.',
  'Stopping way of the mat': 'Recorrido de parada de la lona',
  'Over the ground from the first slowing on.': 'Sobre el suelo desde que empieza a frenar.',
  'Way of the mat': 'Recorrido de la lona',
  'Over the ground from the first pull until it is still, planned shot included.':
    'Sobre el suelo del primer tirón hasta quedar quieta, con el plano previsto.',
  'Grip used at take-up': 'Agarre usado en el arranque',
  "Share of the shoe's friction that tow and runner ask for together; above 1 the foot slips.":
    'Parte del rozamiento del zapato que piden juntos remolque y corredor; por encima de 1 el pie resbala.',
  'Grip used at the stop': 'Agarre usado en la parada',
  'The same as mat and runner slow together.': 'Lo mismo cuando lona y corredor frenan a la vez.',
  'Base needed at take-up': 'Base necesaria en el arranque',
  "How far from under the body's weight the feet must reach to keep balance as the mat takes up.":
    'Cuánto deben alcanzar los pies desde debajo del centro de masa para mantener el equilibrio al arrancar la lona.',
  'Base needed at the stop': 'Base necesaria en la parada',
  "The same as the mat stops, without what the runner's own slowing adds to it along the tow.":
    'Lo mismo cuando la lona para, sin lo que el propio frenado del corredor le suma a favor del remolque.',
  'Base needed if the tow lets go': 'Base necesaria si se suelta',
  "The same if the tow parts and the ground slows the mat under the runner's weight.":
    'Lo mismo si el remolque se rompe y el suelo frena la lona bajo el peso del corredor.',
  'Shortest stop by friction': 'Parada más corta por rozamiento',
  'From the speed over the ground with all the friction of the shoe: no stop is shorter.':
    'Desde la velocidad sobre el suelo con todo el rozamiento del zapato: ninguna parada es más corta.',
  'Speed off the end': 'Velocidad al salirse',
  "That the runner's legs must follow on firm ground if the mat ends too soon, either way.":
    'La que las piernas deben seguir en suelo firme si la lona acaba antes de tiempo, en cualquier sentido.',
  'Run-out beyond the mat': 'Escape tras la lona',
  'If the runner comes off the end at the full speed over the ground.':
    'Si el corredor se sale por el extremo a plena velocidad sobre el suelo.',
  'Tow force': 'Fuerza de remolque',
  "Highest pull on the tow, from the mass that it moves, the ground's friction and the runner's push.":
    'Mayor tiro del remolque, por la masa que mueve, el rozamiento del suelo y el empuje del corredor.',
  'Tow factor': 'Factor del remolque',
  'Strength of the tow over that pull.': 'Resistencia del remolque entre ese tiro.',
  'Shot within the mat': 'El plano cabe en la lona',
  'Start and stop use {gather} and {stop} of the mat, which leaves {shot} at full speed; a longer mat or a slower run on it with a faster tow leaves more.':
    'Arranque y parada gastan {gather} y {stop} de lona, lo que deja {shot} a plena velocidad; una lona más larga, o correr más despacio en ella con un remolque más rápido, deja más.',
  'Start and stop use {gather} and {stop}, which is the whole mat: there is no shot at full speed in it.':
    'Arranque y parada gastan {gather} y {stop}, que es toda la lona: no cabe ningún plano a plena velocidad.',
  '{factor}: the tow of {strength} pulls up to {force}; hem and release are part of it.':
    '{factor}: el remolque de {strength} tira hasta {force}; borde y soltador forman parte de él.',
  'Grip at take-up': 'Agarre en el arranque',
  'Grip at the stop': 'Agarre en la parada',
  '{used} of a friction of {friction} is used as the mat takes up; a gentler tow or runner, or one after the other, leaves grip for the stride.':
    'Se usa {used} de un rozamiento de {friction} al arrancar la lona; un remolque o un corredor más suaves, o uno después de otro, dejan agarre para la zancada.',
  '{used} of a friction of {friction} is used as the mat stops; a gentler tow or runner, or one after the other, leaves grip for the stride.':
    'Se usa {used} de un rozamiento de {friction} al parar la lona; un remolque o un corredor más suaves, o uno después de otro, dejan agarre para la zancada.',
  'Balance at take-up': 'Equilibrio en el arranque',
  'Balance at the stop': 'Equilibrio en la parada',
  'Balance needs a foothold {needed} away as the mat takes up and there is {base}; a slower build-up of the pull, less of it or a counted start needs less.':
    'El equilibrio necesita un apoyo a {needed} al arrancar la lona y hay {base}; un tiro que suba más despacio, menos tiro o una salida contada necesitan menos.',
  'Balance needs a foothold {needed} away as the mat stops and there is {base}; a slower build-up of the pull, less of it or a counted start needs less.':
    'El equilibrio necesita un apoyo a {needed} al parar la lona y hay {base}; un tiro que suba más despacio, menos tiro o una salida contada necesitan menos.',
  'Balance if the tow lets go': 'Equilibrio si se suelta el remolque',
  'If the tow parts the ground stops the mat at once and balance needs {needed} where there is {base}: the runner must know how to roll.':
    'Si el remolque se rompe, el suelo frena la lona de golpe y el equilibrio necesita {needed} donde hay {base}: el corredor debe saber rodar.',
  'The mat slides {way}, up to {most} within the tolerances, where {clear} are clear; a harder take-up or stop, or a shorter shot, needs less.':
    'La lona desliza {way}, hasta {most} con las tolerancias, donde hay {clear} libres; un arranque o una parada más fuertes, o un plano más corto, necesitan menos.',
  'Off the end at {speed} the body comes to rest after {distance}, where {clear} are clear.':
    'Al salirse a {speed} el cuerpo se para tras {distance}, donde hay {clear} libres.',
  'Legs against the speed off the end': 'Piernas y velocidad al salirse',
  'The ground passes at {speed} and the legs can follow {legs}: above that, whoever comes off the mat falls, so the runner must stop on it.':
    'El suelo pasa a {speed} y las piernas pueden seguir {legs}: por encima, quien se sale de la lona se cae, así que el corredor debe parar en ella.',
  'Spotters who can stop the tow': 'Vigilantes que paran el remolque',
  '{n} along the sides with nothing else to do.': '{n} a los lados sin nada más que hacer.',
  'The run on the mat': 'La carrera en la lona',
  'Time from the first pull': 'Tiempo desde el primer tirón',
  'Speed of the mat': 'Velocidad de la lona',
  'Place on the mat': 'Lugar en la lona',
  'A towed hem takes the feet from under anyone who stands on it or before it. Measured from the leading hem at the start, the way of the tow.':
    'Un borde remolcado se lleva los pies de quien esté encima o delante. Medido desde el borde delantero en la salida, en el sentido del remolque.',
  'Where a runner who comes off the end of the mat runs on, falls or rolls.':
    'Donde un corredor que se sale por el extremo de la lona sigue corriendo, cae o rueda.',
  'The tow carries the runner backward at {speed}: whoever stumbles goes towards the tow.':
    'El remolque lleva al corredor hacia atrás a {speed}: quien tropieza va hacia el remolque.',
  'The foot slips as the mat takes up: {times} times the friction that there is would be needed.':
    'El pie resbala al arrancar la lona: haría falta {times} veces el rozamiento que hay.',
  'The foot slips as the mat stops: {times} times the friction that there is would be needed.':
    'El pie resbala al parar la lona: haría falta {times} veces el rozamiento que hay.',
  'The runner is at speed before the mat is and uses {length} of it waiting: start later, or stand until the mat is at speed.':
    'El corredor va a su velocidad antes que la lona y gasta {length} de ella esperando: salga más tarde, o espere de pie hasta que la lona vaya a su velocidad.',
  'From {speed} over the ground not even all the friction of the shoe stops a body in less than {length}: nothing hard may stand nearer.':
    'Desde {speed} sobre el suelo ni todo el rozamiento del zapato para un cuerpo en menos de {length}: nada duro puede estar más cerca.',
  'The foothold of {base} at take-up counts on a pull that builds up over {time}; slack in the tow makes it a jerk.':
    'El apoyo de {base} en el arranque cuenta con un tiro que sube en {time}; la holgura del remolque lo convierte en un tirón.',
  "The foothold of {base} at the stop counts the mat alone: the runner's own slowing the same way asks for {more} more, which only steps set well ahead give, so stop the one after the other.":
    'El apoyo de {base} en la parada cuenta solo la lona: el propio frenado del corredor, en el mismo sentido, pide {more} más, que solo dan pasos puestos bien por delante; pare uno después de otra.',
  'On a wet or dusty mat the run of {speed} does not hold: measure the friction again after any water, and stop when a hem lifts.':
    'En una lona mojada o con polvo la carrera de {speed} no vale: vuelva a medir el rozamiento tras cualquier agua, y pare si se levanta un borde.',
};
