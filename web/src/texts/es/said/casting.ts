// Why a person fits a slot or does not, in Spanish, keyed by the judge's own English sentences.

export const casting: Record<string, string> = {
  '{reason}; too late for {what}, the last day was {date}':
    '{reason}; ya es tarde para {what}, el último día era el {date}',
  // Skill.
  'No grade for {skill} on record, level {n} is needed': 'No consta grado en {skill}, hace falta nivel {n}',
  'Level {n} for {skill} is off the scale of 0 to {most}, so it proves nothing':
    'El nivel {n} en {skill} queda fuera de la escala de 0 a {most}, así que no prueba nada',
  'Level {n} for {skill} where {need} is needed, {short} short':
    'Nivel {n} en {skill} y hace falta {need}, le faltan {short}',
  'Level {n} for {skill} where {need} is needed, last used {days} before the shooting day (at most {most})':
    'Nivel {n} en {skill} y hace falta {need}, practicado {days} antes del día de rodaje (máximo {most})',
  'Level {n} for {skill} where {need} is needed, assessed {days} before the shooting day (at most {most})':
    'Nivel {n} en {skill} y hace falta {need}, evaluado {days} antes del día de rodaje (máximo {most})',
  'Level {n} for {skill} where {need} is needed, but last used {days} before the shooting day, {over} past the limit of {most}':
    'Nivel {n} en {skill} y hace falta {need}, pero practicado {days} antes del día de rodaje, {over} más que el límite de {most}',
  'Level {n} for {skill} where {need} is needed, but assessed {days} before the shooting day, {over} past the limit of {most}':
    'Nivel {n} en {skill} y hace falta {need}, pero evaluado {days} antes del día de rodaje, {over} más que el límite de {most}',
  'Level {n} for {skill} where {need} is needed, but no use or assessment before the shooting day is on record (at most {days})':
    'Nivel {n} en {skill} y hace falta {need}, pero no consta práctica ni evaluación antes del día de rodaje (máximo {days})',
  'Level {n} for {skill} where {need} is needed': 'Nivel {n} en {skill} y hace falta {need}',
  'a check-ride before the shooting day': 'una prueba antes del día de rodaje',
  '1 day': '1 día',
  '{#n} days': '{n} días',
  // Body.
  'The {what} asked for is not a number': 'La medida pedida ({what}) no es un número',
  'The {what} on record is not a number': 'La medida que consta ({what}) no es un número',
  'No {what} on record, {value} is needed': 'No consta {what}, hace falta {value}',
  'measuring {what}': 'medir {what}',
  '{what} {value} where {target} is doubled, {difference} (at most {tolerance})':
    '{what} {value} para doblar {target}, {difference} (máximo {tolerance})',
  '{what} {value} where {target} is doubled, {difference} and {over} more than the {tolerance} allowed':
    '{what} {value} para doblar {target}, {difference}, {over} más de los {tolerance} admitidos',
  'the same': 'igual',
  '{#amount} heavier': '{amount} más pesado',
  '{#amount} lighter': '{amount} más ligero',
  '{#amount} more': '{amount} más',
  '{#amount} less': '{amount} menos',
  chest: 'pecho',
  waist: 'cintura',
  hip: 'cadera',
  inseam: 'entrepierna',
  sleeve: 'manga',
  neck: 'cuello',
  shoulder: 'hombros',
  head: 'cabeza',
  'shoe size': 'talla de calzado',
  "The rig's range or the kit's mass is not a number to rig by":
    'El rango del montaje o la masa del equipo no es un número con el que montar',
  'No mass on record, {min} to {max} kitted is needed':
    'No consta masa, hacen falta de {min} a {max} con equipo',
  'weighing, clothed and kitted': 'pesar, vestido y equipado',
  'weighing again, clothed and kitted': 'pesar de nuevo, vestido y equipado',
  'The mass on record is not a number above zero': 'La masa que consta no es un número mayor que cero',
  "{total} with {kit} of kit, {under} under the rig's least of {min}":
    '{total} con {kit} de equipo, {under} por debajo del mínimo del montaje, {min}',
  "{total} with {kit} of kit, {over} over the rig's most of {max}":
    '{total} con {kit} de equipo, {over} por encima del máximo del montaje, {max}',
  "{total} with {kit} of kit is inside the rig's range, but weighed {days} before the shooting day, {over} past the limit of {limit}":
    '{total} con {kit} de equipo está en el rango del montaje, pero se pesó {days} antes del día de rodaje, {over} más que el límite de {limit}',
  "{total} with {kit} of kit is inside the rig's range, but weighed after the shooting day":
    '{total} con {kit} de equipo está en el rango del montaje, pero se pesó después del día de rodaje',
  "{total} with {kit} of kit, {margin} inside the rig's {min} to {max}; weigh again at the rig":
    '{total} con {kit} de equipo, {margin} dentro de los {min} a {max} del montaje; pese de nuevo en el montaje',
  "{total} with {kit} of kit, {margin} inside the rig's {min} to {max}":
    '{total} con {kit} de equipo, {margin} dentro de los {min} a {max} del montaje',
  'No birthday on record': 'No consta la fecha de nacimiento',
  'a sight of an identity document': 'ver un documento de identidad',
  'Born on {date}, after the shooting day': 'Nacimiento el {date}, después del día de rodaje',
  '{n} years old on the shooting day where {least} is the least, {short} short':
    '{n} años el día de rodaje y el mínimo es {least}, le faltan {short}',
  '{n} years old on the shooting day where {most} is the most, {over} over':
    '{n} años el día de rodaje y el máximo es {most}, le sobran {over}',
  '{n} years old on the shooting day where {min} to {max} is asked':
    '{n} años el día de rodaje y se piden de {min} a {max}',
  '{n} years old on the shooting day where at least {min} is asked':
    '{n} años el día de rodaje y se piden al menos {min}',
  '{n} years old on the shooting day where at most {max} is asked':
    '{n} años el día de rodaje y se piden como máximo {max}',
  '{n} years old on the shooting day': '{n} años el día de rodaje',
  // Certificates.
  'No kind of certificate is named': 'No se indica ningún tipo de certificado',
  'The catalogue has no certificate kind `{kind}`, so nothing can prove it':
    'El catálogo no tiene el tipo de certificado «{kind}», así que nada puede acreditarlo',
  'No {kinds} on record': 'No consta: {kinds}',
  '{title} valid through {last}, {days} past the {day}':
    '{title} válido hasta el {last}, {days} después del {day}',
  '{title} held, it does not expire': '{title} en vigor, no vence',
  '{title} {problem}; too late for {what}, the last day was {date}':
    '{title} {problem}; ya es tarde para {what}, el último día era el {date}',
  'shooting day': 'día de rodaje',
  'shooting day and its cover day': 'día de rodaje y su día de reserva',
  'shooting day and its {n} cover days': 'día de rodaje y sus {n} días de reserva',
  'last cover day': 'último día de reserva',
  '{title} was withdrawn on {date}': '{title} retirado el {date}',
  '{title} carries no category where {wanted} is needed': '{title} sin categoría y hace falta {wanted}',
  '{title} is for category {category} where {wanted} is needed':
    '{title} es de categoría {category} y hace falta {wanted}',
  '{title} counts from {date}, {days} after the shooting day':
    '{title} vale desde el {date}, {days} después del día de rodaje',
  '{title} has no expiry date on record': '{title} sin fecha de vencimiento registrada',
  '{title} expires on {date}, {days} before the shooting day, and it cannot be renewed':
    '{title} vence el {date}, {days} antes del día de rodaje, y no se puede renovar',
  '{title} expires on {date}, {days} short of the {day}, and it cannot be renewed':
    '{title} vence el {date}, {days} antes de cubrir el {day}, y no se puede renovar',
  '{title} expires on {date}, {days} before the shooting day':
    '{title} vence el {date}, {days} antes del día de rodaje',
  '{title} expires on {date}, {days} short of the {day}':
    '{title} vence el {date}, {days} antes de cubrir el {day}',
  '{title} was last used on {date}, {days} past the {months} months allowed by the {day}':
    '{title} usado por última vez el {date}, {days} más que los {months} meses admitidos el {day}',
  '{title} has not been checked by anyone': '{title} sin comprobar por nadie',
  '{title} was checked on {date}, before this one was issued on {issued}':
    '{title} comprobado el {date}, antes de que se emitiera este el {issued}',
  '{title} was only checked on {date}, after the day':
    '{title} comprobado solo el {date}, después de ese día',
  '{first}, and has not been checked by anyone': '{first}, y sin comprobar por nadie',
  'the date on the document recorded': 'anotar la fecha del documento',
  'a renewal begun {days} ahead': 'una renovación empezada {days} antes',
  'a sight of the original': 'ver el original',
  '{first}, and a sight of the original': '{first}, y ver el original',
  // Time and the day.
  "the medic's word that they are fit": 'la palabra del sanitario de que está apto',
  'Medically clear through {date}, {days} past the shooting day':
    'Apto médico hasta el {date}, {days} después del día de rodaje',
  'Medically clear only through {date}, {days} short of the shooting day':
    'Apto médico solo hasta el {date}, {days} antes del día de rodaje',
  'No medical clearance on record': 'No consta apto médico',
  'Nothing on record says whether they can work on {date}': 'No consta si puede trabajar el {date}',
  'asking them': 'preguntárselo',
  'Not available from {from} through {to}': 'No disponible del {from} al {to}',
  'Available on {date}': 'Disponible el {date}',
  'A rest of {hours} h is not a figure to judge by':
    'Un descanso de {hours} h no es una cifra con la que evaluar',
  'No last wrap on record, so rest is unknown': 'No consta el último corte, así que no se sabe el descanso',
  'asking when they last wrapped': 'preguntar cuándo cortó por última vez',
  'The call is not set, so rest since the wrap at {when} is unknown':
    'No hay citación, así que no se sabe el descanso desde el corte del {when}',
  'setting the call': 'fijar la citación',
  'Still working until {when}, after the call': 'Trabaja hasta el {when}, después de la citación',
  '{have} of rest where {need} is needed, {short} short; a call at {when} would do':
    '{have} de descanso y hacen falta {need}, faltan {short}; serviría una citación el {when}',
  '{have} of rest where {need} is needed, {short} short':
    '{have} de descanso y hacen falta {need}, faltan {short}',
  '{have} of rest where {need} is needed': '{have} de descanso y hacen falta {need}',
  '{so} taken that day and {adds} here make {total} for {what} where {max} is the most, {spare} to spare':
    '{so} hechas ese día y {adds} aquí suman {total} de {what}; el máximo es {max}, quedan {spare}',
  '{so} taken that day and {adds} here make {total} for {what} where {max} is the most, {over} over':
    '{so} hechas ese día y {adds} aquí suman {total} de {what}; el máximo es {max}, sobran {over}',
  'Consents to revision {n}': 'Da su consentimiento a la revisión {n}',
  'Withdrew consent to revision {n} at {when}': 'Retiró su consentimiento a la revisión {n} el {when}',
  'Consented to revision {other}, not to revision {n}':
    'Dio su consentimiento a la revisión {other}, no a la {n}',
  'Has not consented to revision {n}': 'No ha dado su consentimiento a la revisión {n}',
  'their own consent to this revision': 'su propio consentimiento a esta revisión',
};
