import { JAR, type RefusedCases } from './row.ts';

export const mixing: RefusedCases = {
  'mixing and matching': [
    [
      '/match target:teal from:shelf',
      'match-without-colourants',
      'There is nothing to choose from',
      'añade un colorante a tu estante o pide del catálogo',
    ],
    ['/match', 'match-without-target', 'Say which colour you want', 'o adjunta una foto de él'],
    [
      '/match target:teal photo:BAR.jpg',
      'match-two-targets',
      'Give a colour or a photo',
      'Da un color o una foto',
    ],
    [
      '/match target:blue with:"prussian blue"',
      'match-of-nothing',
      'Lye spoils every colourant that you named',
      'La sosa echa a perder todos los colorantes que nombraste',
    ],
    [
      [JAR, '/calibrate bars item:Dusk photo:BAR.jpg'],
      'calibration-photo-without-dose',
      'Say the dose of the bar in the photo too',
      'Di también la dosis de la barra de la foto',
    ],
    [
      [JAR, '/calibrate bars item:Dusk photo:WOOD.jpg dose:"1/4 tsp per cup"'],
      'calibration-photo-without-white',
      'I see no white sheet in that photo',
      'No veo ninguna hoja blanca en esa foto',
    ],
    [
      [JAR, '/calibrate bars item:Dusk bar-1:"0, #f0e8d8"'],
      'calibration-without-bars',
      'I need at least one bar with colour in it',
      'Necesito al menos una barra con color',
    ],
    [
      '/calibrate plan',
      'plan-bars-without-jars',
      'There is no jar to plan for',
      'pon uno en tu estantería con',
    ],
    [
      '/calibrate plan jars:"ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue, ultramarine blue"',
      'plan-bars-too-many',
      'the rest in a second',
      'y el resto en otro',
    ],
    [
      [JAR, '/calibrate plan jars:Dusk portion:"2 l"'],
      'plan-bars-portion',
      'cups of batter into each',
      'no hace una barra de prueba',
    ],
    ['/palette make colours:"sunset, twelve layers"', 'palette-size', 'to 8 colours,', 'a 8 colores,'],
    [
      '/palette today',
      'palette-without-jars',
      'Your shelf has nothing to colour with yet',
      'Tu estantería aún no tiene con qué dar color',
    ],
  ],
  'wetting and dosing': [
    [
      '/dose colourant:"ultramarine blue" portion:"2 cups" carrier:vodka',
      'carrier-is-alcohol',
      'it is no wetting liquid here',
      'no sirve aquí para humedecer',
    ],
    [
      '/dose colourant:"ultramarine blue" portion:"2 cups" carrier:water premix:"1:3 in olive oil"',
      'premix-carrier-twice',
      'name different liquids',
      'no son lo mismo',
    ],
  ],
};
