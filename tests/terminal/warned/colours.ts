import type { WarnedCase } from './row.ts';

/** What is said of jars that others know better, of labels, and of bars that cannot be believed. */
export const colours: readonly WarnedCase[] = [
  [
    ['/shelf add item:glow ingredients:"Mica, Carmine"', '/dose colourant:glow portion:"1 cup"'],
    [
      [
        'label-lye-changes',
        'glow shifts in raw soap: it goes purple',
        'glow cambia en jabón crudo: se vuelve morado',
      ],
    ],
  ],
  [
    [
      '/colourant report item:"carmine mica" result:faded process:gel',
      '/dose colourant:"carmine mica" portion:"1 cup"',
    ],
    [['seen-here', '0 of 1 here saw pink mica', '0 de 1 aquí vieron aguantar mica rosa']],
  ],
  [
    '/colourant label market:eu of:"gold mica, blurfle"',
    [['label-left-out', "because I don't recognise it: blurfle", 'porque no lo reconozco: blurfle']],
  ],
  [
    [
      '/shelf add item:may ingredients:"Mica, may contain Carmine, Titanium Dioxide"',
      '/colourant label market:us of:may',
    ],
    [
      [
        'label-unsure',
        'Ask your supplier whether these are really in it: Carmine, Titanium Dioxide',
        'Pregunta a tu proveedor si de verdad los lleva: Carmine, Titanium Dioxide',
      ],
    ],
  ],
  [
    // The share that is allowed: 21 CFR 74.2208.
    '/colourant label market:us of:"D&C Green No. 8, gold mica"',
    [
      [
        'label-legal-most',
        'US law: at most 0.01 % of D&C Green No. 8 in the finished bar',
        'Ley de EE. UU.: como mucho un 0,01 % de D&C Green No. 8 en la pastilla acabada',
      ],
      ['label-standing', 'US: listed with limits (Green 8)', 'EE. UU.: listado con límites (Green 8)'],
    ],
  ],
  [
    '/colourant label market:eu of:"neon pink"',
    [
      [
        'label-standing',
        'our copy of Annex IV has no row for Neon pink: check before you sell',
        'nuestra copia del anexo IV no trae Neon pink: compruébalo antes de vender',
      ],
    ],
  ],
  [
    [
      '/shelf add item:Dusk amount:"50 g" colourant:"ultramarine blue"',
      '/calibrate bars item:Dusk bar-1:"1/4 tsp per cup, #ffd700" bar-2:"1/2 tsp per cup, #111111"',
    ],
    [
      [
        'poor-fit',
        'check which jar, the doses and the light',
        'Ninguna fuerza de este colorante explica estas barras',
      ],
    ],
  ],
  [
    [
      '/shelf add item:Soot amount:"50 g" colourant:"activated charcoal"',
      // Far paler than such doses usually give.
      '/calibrate bars item:Soot bar-1:"1/4 tsp per cup, #6d6d6c" bar-2:"1/2 tsp per cup, #6d6d6c" bar-3:"1 tsp per cup, #6d6d6c" bar-4:"1/2 tsp per cup, #5b5b5a" bar-5:"1 tsp per cup, #5b5b5a" bar-6:"2 tsp per cup, #5b5b5a"',
    ],
    [['at-bound', 'over six times off its kind', 'más de seis veces de su tipo']],
  ],
];
