// What the core says of any technique's figures and of quantities as they are written, in Spanish.

export const mechanics: Record<string, string> = {
  'The model gives no answer for these inputs; see the cautions.':
    'El modelo no da respuesta con estos datos; vea las advertencias.',
  'The body does not rise to what it should land on: lower the landing, or throw it higher or steeper.':
    'El cuerpo no sube hasta donde debería caer: baje la llegada, o láncelo más alto o más empinado.',
  'Not known until entered: {list}.': 'Sin dato hasta indicar: {list}.',
  'Nothing is computed before these are entered: {list}.': 'No se calcula nada hasta indicar: {list}.',
  'these inputs together give no finite value for this figure; check the largest and smallest of them':
    'con estos datos juntos esta cifra no tiene un valor finito; revise el mayor y el menor',
  '1 in a million': '1 entre un millón',
  '1 in a thousand million': '1 entre mil millones',
  '1 in {#n} million': '1 entre {n} millones',
  'common practice': 'práctica habitual',
  '{name}: is not a finite number; give a {quantity} from {range}':
    '{name}: no es un número finito; indique {quantity} de {range}',
  '{name}: {value} is outside what this model covers; give a {quantity} from {range}':
    '{name}: {value} queda fuera de lo que abarca este modelo; indique {quantity} de {range}',
  '{name}: give one of: {list}': '{name}: indique una de: {list}',
  '{#low} to {#high} ({#from} to {#to})': '{low} a {high} ({from} a {to})',
  '{#low} to {#high}': '{low} a {high}',
  'nothing was written; give a {quantity}, in {units}': 'no hay nada escrito; indique {quantity}, en {units}',
  '"{text}" does not start with a number; give a {quantity}, in {units}':
    '«{text}» no empieza por un número; indique {quantity}, en {units}',
  '"{text}" is not a finite number; give an ordinary {quantity}, in {units}':
    '«{text}» no es un número finito; indique {quantity} corriente, en {units}',
  '"{text}": the comma could be read as {decimal} or as {thousands}; write one of those':
    '«{text}»: se puede leer como {decimal} o como {thousands}; escriba uno de los dos',
  '"{text}" has no unit; write it with one of {units}': 'A «{text}» le falta la unidad; use una de {units}',
  '"{unit}" in "{text}" is a unit of {other}, not of {quantity}; use {units}':
    '«{unit}» en «{text}» es unidad de {other}, no de {quantity}; use {units}',
  '"{unit}" in "{text}" is not a unit of {quantity}; use {units}':
    '«{unit}» en «{text}» no es unidad de {quantity}; use {units}',
  'the tolerance in "{text}": {problem}': 'la tolerancia de «{text}»: {problem}',
  '"{text}" is below absolute zero (-273.15 °C); check the number and its unit':
    '«{text}» está por debajo del cero absoluto (-273,15 °C); revise el número y su unidad',
  '"{text}" is not a whole number of things; write 0, 1, 2 and so on':
    '«{text}» no es un número entero; escriba 0, 1, 2, etc.',
  // The tools.
  '{figure} is {#value} for any {parameter} from {#from} to {#to}.':
    '{figure}: {value} con cualquier {parameter} de {from} a {to}.',
  '{figure} does not become {#wanted} for {parameter} from {#from} to {#to}: it goes from {#low} to {#high}.':
    '{figure}: no llega a {wanted} con {parameter} de {from} a {to}; va de {low} a {high}.',
  '{figure} is not given anywhere in this range.': '{figure}: no se da en ninguna parte de este margen.',
  '{figure} is not given anywhere in this range; not entered: {list}.':
    '{figure}: no se da en ninguna parte de este margen; falta indicar: {list}.',
  '{#have} measured shots cannot settle {#count} coefficients and show how sure they are: log at least {#more} more, or fit fewer coefficients.':
    '{have} pruebas medidas no bastan para fijar {count} coeficientes y decir con qué certeza: anote al menos {more} más, o ajuste menos coeficientes.',
  'these are too many shots for so many coefficients; fit fewer coefficients, or the newest shots':
    'son demasiadas pruebas para tantos coeficientes; ajuste menos coeficientes, o use las pruebas más recientes',
  'these shots cannot settle {coefficient}: what they measure does not depend on it apart from the other coefficients.':
    'estas pruebas no pueden fijar {coefficient}: lo que miden no depende de ello aparte de los demás coeficientes.',
  'A shot with {input} at {#at}, measuring {figure}, would tell most.':
    'Lo que más diría es una prueba con {input} en {at}, midiendo {figure}.',
  'No single shot of this technique would tell: enter what is missing first, or fit fewer coefficients.':
    'Ninguna prueba sola de esta técnica lo diría: indique primero lo que falta, o ajuste menos coeficientes.',
  'there is nothing in this technique for test shots to settle':
    'en esta técnica no hay nada que puedan fijar las pruebas medidas',
  'is where the fit starts; enter your best guess of it':
    'es por donde empieza el ajuste; indique su mejor estimación',
  'the model gives no answer near these shots; see that their inputs are whole':
    'el modelo no da respuesta cerca de estas pruebas; vea que sus datos estén completos',
  'the model gives no answer near the fit': 'el modelo no da respuesta cerca del ajuste',
  'the model gives no such figure for the inputs of shot {#n}; see that they are whole':
    'el modelo no da esa cifra con los datos de la prueba {n}; vea que estén completos',
  length: 'longitud',
  mass: 'masa',
  time: 'tiempo',
  speed: 'velocidad',
  acceleration: 'aceleración',
  force: 'fuerza',
  pressure: 'presión',
  temperature: 'temperatura',
  energy: 'energía',
  'heat flux': 'flujo de calor',
  angle: 'ángulo',
  stiffness: 'rigidez',
  volume: 'volumen',
  area: 'área',
  'mass per area': 'masa por área',
  'sonic conductance': 'conductancia sónica',
  'turn rate': 'velocidad de giro',
  torque: 'par',
  power: 'potencia',
  'number of pixels': 'número de píxeles',
  ratio: 'proporción',
  count: 'cantidad',
};
