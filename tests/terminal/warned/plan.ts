import type { WarnedCase } from './row.ts';

export const plan: readonly WarnedCase[] = [
  [
    '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain" liquid:"goat milk" fragrance:"3%, vanillin 8%" additives:"honey 30 g, salt 5%"',
    [
      ['lye-burns', 'and so does raw batter for a day or two', 'queman gravemente la piel y los ojos'],
      [
        'lye-gear',
        'long sleeves and closed shoes until all is washed up',
        'manga larga y zapato cerrado hasta fregarlo todo',
      ],
      ['lye-first-aid', 'rinse at once with running water for at least', 'ropa fuera y aclara mucho rato'],
      ['lye-into-water', 'Add lye slowly to cold water', 'Echa la sosa despacio en agua fría'],
      ['lye-air', 'and keep your face away from the steam', 'Mézclala al aire libre o con mucha corriente'],
      ['lye-children', 'Keep children and pets out of the room', 'Nunca dejes la sosa sola'],
      ['lye-by-scale', 'never by spoon or cup', 'Pesa la sosa en una báscula'],
      [
        'lye-aluminium',
        'lye attacks them and aluminium gives off flammable hydrogen',
        'y el aluminio suelta hidrógeno inflamable',
      ],
      [
        'lye-vessel',
        'Use heatproof polypropylene or stainless steel',
        'Usa polipropileno resistente al calor o acero inoxidable',
      ],
      ['lye-label', 'before it is filled', 'Etiqueta la jarra'],
      [
        'tested-recipe',
        'your local rules or a licensed product assessment',
        'las normas de tu zona ni una evaluación profesional del',
      ],
      [
        'superfat-shifted',
        'fat that wets colours or is in a liquid adds to it',
        'suma la grasa que moja los colores o que trae un líquido',
      ],
      ['purity-assumed', 'superfat is a little higher than shown', 'si lo es menos'],
      ['milk-keep-cold', 'Its water counts as jug water', 'se quema y puede subir con la sosa'],
      ['liquid-fat', 'points of the superfat shown', 'puntos del sobreengrasado que ves'],
      [
        'hold-back-short',
        'lye needs at least its own weight of water',
        'el álcali necesita al menos su peso en agua',
      ],
      ['fragrance-browns', 'leave the one whose colour matters unscented', 'Vainillina'],
      ['additive-heats', 'do not insulate', 'calienta y acelera la masa'],
      ['additive-browns', 'expect a tan base', 'Cuenta con una base beige'],
      ['additive-hardens', 'it can crumble later', 'luego puede desmenuzarse'],
    ],
  ],
  [
    '/plan oils:"beeswax 25%, olive 75%" size:"500 g oils" start:"75 C"',
    [
      ['start-hot', 'hotter than cold process is poured', 'más de lo que se vierte en frío'],
      ['boils-over', 'caustic batter out like a volcano', 'y lanzar masa caliente y cáustica como un volcán'],
      ['lye-rounded-down', 'Lye is rounded down by', 'El álcali se redondea'],
      ['wax-stays', 'never becomes soap', 'menos espuma y tacto ceroso'],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" water:"45% lye"',
    [
      [
        'lye-strong',
        'it traces fast and leaves little time for colour',
        'La traza llega rápido y deja poco tiempo para el color',
      ],
      ['jug-strong', 'a little lye at a time', 'En la jarra la sosa queda al'],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"1000 g oils" portions:"2 cups gold mica in 3 Tbsp dipped oil; rest plain"',
    [
      [
        'dip-lowers-pot',
        'Oil dipped for colour leaves the pot at',
        'El aceite apartado para el color deja la olla en',
      ],
      [
        'portion-superfat-negative',
        'or use oil of its own for the colour instead of dipping it',
        'o usa aceite aparte para el color en vez de sacarlo del lote',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" fragrance:"2% lily of the valley" swirl:drop',
    [
      [
        'fragrance-speeds',
        'a simple pour instead of a swirl that takes time',
        'mejor verter sin más que un dibujo que lleva tiempo',
      ],
      [
        'fragrance-unknown',
        'ask whoever sells the scent whether it speeds up the batter',
        'pregunta a quien vende el aroma si acelera la masa o la',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" superfat:35',
    [
      [
        'superfat-high',
        'so much of the oil stays loose that it is hardly soap',
        'queda tanto aceite suelto que apenas es jabón',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" superfat:0',
    [
      [
        'superfat-may-go-negative',
        'If your oils sit at the low end of their ranges',
        'Sube el sobreengrasado o usa el valor del certificado de tu',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" water:"25% lye"',
    [['portion-lye-weak', 'use less water for its colour', 'usa menos agua para su color']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" lye:"KOH"',
    [['koh-paste', 'nothing to unmould or cut', 'no se desmolda ni se corta']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" lye:"NaOH 60% + KOH 40%"',
    [['koh-soft', 'a softer bar that sets and unmoulds later', 'que cuaja y se desmolda más tarde']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" lye:"50% lye solution"',
    [['lye-kept-dissolved', 'Dissolved it from flakes yourself', 'templa el envase hasta que aclare']],
  ],
  [
    '/plan oils:"coconut 100%" size:"500 g oils" additives:"salt 60%"',
    [['salt-bar', 'or it crumbles', 'córtalo antes de']],
  ],
  [
    '/plan oils:"olive 90%, beeswax 10%" size:"500 g oils"',
    [['melts-above-pour', 'grains or a false trace', 'Saldrán granos o una falsa traza']],
  ],
  [
    '/plan oils:"olive 70%, stearic acid 30%" size:"500 g oils" start:"60 C"',
    [
      [
        'acid-thickens-at-once',
        'the batter thickens at once',
        'reacciona con la sosa en segundos y la masa espesa de golpe',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" liquid:"beer"',
    [['boil-off-alcohol', 'and alcohol thickens the batter at once', 'y el alcohol espesa la masa de golpe']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" liquid:"vinegar 20 g"',
    [['liquid-eats-lye', 'A weaker one leaves lye in the bar', 'Ácido y sosa calientan y salpican']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" liquid:"brine"',
    [['liquid-salt', 'Dissolve the salt fully before the lye', 'Disuelve del todo la sal antes de la sosa']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" liquid:"cream 50 g in the oils"',
    [['liquid-goes-into-oils', 'the lye needs the plain water', 'el álcali necesita el agua sola']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" liquid:"hydrosol"',
    [['liquid-read-label', 'glycerin or a preservative', 'glicerina o conservante']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" additives:"citric acid 10 g"',
    [['citric-eats-lye', 'Does the label say anhydrous', 'el más flojo de los dos que se venden']],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" fragrance:"0.4% clove, certificate 0.5%"',
    [['scent-hurts', 'dose by its IFRA certificate', 'dosis según su certificado IFRA']],
  ],
  [
    '/plan oils:"olive 100%" size:"30000 g oils"',
    [
      [
        'batch-large',
        'and so much lye needs the equipment and rules of a workplace',
        'la estimación de calor es de una sola barra y no vale',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" fragrance:"6%"',
    [
      [
        'fragrance-limit',
        'check the maximum on its IFRA certificate',
        'mira el máximo en su certificado IFRA',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" additives:"clay 20 g, oatmeal 20 g, sodium lactate 10 g, sugar 10 g"',
    [
      [
        'additive-drinks-water',
        'wet it in one to three times its weight of water first',
        'Mójala antes en una a tres veces su peso de agua',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"1000 g oils" water:"22% lye" portions:"1/4 cup gold mica in 4 Tbsp water; rest plain"',
    [
      [
        'lye-weak',
        'and more risk of glycerin rivers and warping',
        'y hay más riesgo de vetas de glicerina y de que se deforme',
      ],
    ],
  ],
  [
    '/plan oils:"olive 100%" size:"500 g oils" additives:"honey 20 g" liquid:"milk" process:insulated',
    [['water-over-asked', 'and none can be spared in the lye jug', 'y de la jarra no se puede quitar']],
  ],
  [
    '/plan oils:"olive 100%" size:"2000 g oils" superfat:8 portions:"1 cup gold mica in 4 Tbsp oil; rest plain"',
    [
      [
        'portion-superfat-high',
        'or dip it from the batch',
        'Usa menos aceite para el color o apártalo de la receta',
      ],
    ],
  ],
];
