import type { WarnedCase } from './row.ts';

export const dose: readonly WarnedCase[] = [
  [
    '/dose colourant:"titanium dioxide" portion:"1 cup" with-1:"zinc oxide" with-2:"gold mica" with-3:"ultramarine blue"',
    [
      [
        'raw-batter',
        'raw batter burns skin and eyes for a day or two',
        'la masa cruda quema piel y ojos durante uno o dos días',
      ],
      [
        'dust',
        'and powder under the liquid before any power',
        'y el polvo bajo el líquido antes de encender nada',
      ],
      [
        'mix-scaled',
        'Together these colours are too much for one portion',
        'estos colores son demasiado para una porción',
      ],
      [
        'dish-test-first',
        'stir a pinch into a dish of water first',
        'prueba antes una pizca en un plato con agua',
      ],
      ['brittle', 'As little white as does it', 'más hace la barra quebradiza'],
      [
        'lye-changes',
        'Zinc oxide holds in some batches and not in others',
        'Óxido de zinc aguanta en unos lotes y en otros no',
      ],
      ['stick-blend-thickens', 'A stick-blended portion thickens', 'La porción pasada por batidora espesa'],
      [
        'superfat-rises',
        'The carrier oil lifts superfat in this portion from about',
        'El aceite añadido sube el sobreengrasado de esta porción de',
      ],
      [
        'lye-thins',
        'The carrier water thins the lye in this portion from about',
        'El agua añadida rebaja la sosa de esta porción de un',
      ],
    ],
  ],
  [
    [
      '/shelf add item:glow ingredients:"D&C Green No. 8"',
      '/dose colourant:glow portion:"1 cup" strength:48',
    ],
    [
      ['capped-at-ceiling', 'so that is what I give', 'y eso te doy'],
      ['capped-by-law', 'the dose is held under that', 'la dosis queda por debajo'],
      ['staining', 'cloths and counters', 'paños y encimera'],
      ['fades-in-light', 'cure and keep the bars in the dark', 'cura y guarda las barras a oscuras'],
    ],
  ],
  [
    '/dose colourant:"gold mica" portion:"20 ml"',
    [
      [
        'portion-small',
        'take what clings to the tip of a toothpick',
        'toma lo que quede en la punta de un palillo',
      ],
    ],
  ],
  [
    '/dose colourant:"gold mica" portion:"1 lb oils"',
    [
      [
        'typical-batter',
        'Your own recipe gives a closer answer',
        'Con tu receta la respuesta es más precisa',
      ],
    ],
  ],
  [
    '/dose colourant:"gold mica" portion:"1 cup" premix:unknown',
    [['premix-strength-unknown', 'and note what worked', 'sube y anota lo que funcionó']],
  ],
  [
    '/dose colourant:"gold mica" portion:"1 cup" strength:"2% of oils"',
    [['percent-of-oils', 'counts of the oils in this portion', 'cuenta sobre los aceites de esta porción']],
  ],
  [
    [
      '/shelf add item:Dusk colourant:"ultramarine blue" amount:"20 g"',
      '/shelf dish-test item:Dusk result:oil',
      '/dose colourant:Dusk portion:"1 cup" carrier:water',
    ],
    [
      [
        'dish-test-disagrees',
        'Your dish test of Ultramarine blue pointed to light oil',
        'Tu prueba del plato de Azul ultramar indicó aceite ligero',
      ],
    ],
  ],
  [
    '/dose colourant:"ultramarine blue" portion:"1 cup" strength:"0.9 tsp per cup"',
    [['coloured-lather', 'Never more than', 'Nunca más de']],
  ],
  [
    '/preview mix:"titanium dioxide 1 tsp + zinc oxide 1 tsp" portion:"1 cup"',
    [
      [
        'whites-scaled',
        'All white pigments count together and these are too much',
        'Los pigmentos blancos cuentan juntos y aquí son demasiado',
      ],
    ],
  ],
  [
    '/dose colourant:"activated charcoal" portion:"4 cups" strength:full carrier:oil',
    [['froth-cup-only', 'The frother is for the cup', 'El espumador es para el vaso']],
  ],
];
