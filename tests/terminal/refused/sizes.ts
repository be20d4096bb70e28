import type { RefusedCases } from './row.ts';

export const sizes: RefusedCases = {
  'sizes, portions and heat': [
    [
      '/plan oils:"olive 500 g" start:"90 C"',
      'start-too-hot',
      'batter foams up and burns',
      'es demasiado caliente para verter',
    ],
    [
      '/plan oils:"olive 100%" size:huge',
      'size-unreadable',
      'I can’t read the size',
      'No entiendo el tamaño',
    ],
    ['/plan oils:"olive 100%"', 'size-missing', 'or give the oils by weight', 'o da los aceites por peso'],
    [
      '/plan oils:"olive 100%" size:"2 l oils"',
      'size-oils-by-volume',
      'A volume is of batter',
      'Los aceites van por peso',
    ],
    ['/plan oils:"olive 100%" size:"5 g oils"', 'size-out-of-range', 'oils” is outside', 'g oils» está'],
    [
      '/plan oils:"olive 100%" size:"mould 25x9x7"',
      'mould-without-unit',
      'centimetres or inches',
      'centímetros o pulgadas',
    ],
    [
      '/plan oils:"olive 100%" size:"mould 25x9 cm"',
      'mould-sides',
      'a loaf mould needs length x width x height',
      'un molde de barra necesita largo x ancho x alto',
    ],
    [
      '/plan oils:"olive 500 g" portions:"1 cup gold mica in 10 g olive"',
      'carrier-by-mass',
      'measure a colour’s liquid by spoon or millilitre',
      'mide el líquido de un color con cuchara o en mililitros',
    ],
    [
      '/plan oils:"olive 500 g" portions:"gold mica"',
      'portion-without-amount',
      'Start with an amount',
      'Empieza con una cantidad',
    ],
    [
      '/plan oils:"olive 5000 g" portions:"1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain;1 part plain"',
      'portions-many',
      'portions are more than I plan',
      'partes son más de las que planifico',
    ],
    [
      '/plan oils:"olive 500 g" portions:"rest gold mica; rest plain"',
      'portions-two-rests',
      'Only one portion can be the rest',
      'Solo una parte puede ser el resto',
    ],
    [
      '/plan oils:"olive 500 g" portions:"1 cup gold mica + red iron oxide + ultramarine blue + titanium dioxide + silver mica + kaolin clay + black iron oxide"',
      'portion-colours-many',
      'colours in one portion at most',
      'colores en una parte',
    ],
    [
      '/plan oils:"olive 500 g" portions:"9 cups gold mica"',
      'portions-exceed-batter',
      'or make the batch bigger',
      'usa partes o agranda el lote',
    ],
    [
      '/plan oils:"olive 500 g" portions:"2 parts gold mica; rest plain"',
      'portions-parts-and-rest',
      'Parts share out everything that is left',
      'Las partes reparten todo lo que queda',
    ],
    ['/plan oils:"olive 500 g" reserve:90', 'reserve-out-of-range', '% of the batter', 'Una reserva de'],
    [
      ['/plan oils:"olive 500 g" save-as:Tide', '/recipe rescale recipe:Tide to:"1000"'],
      'rescale-out-of-range',
      'A factor of',
      'Un factor de',
    ],
    [
      '/plan oils:"olive 500 g" people:900',
      'class-out-of-range',
      'people and no more stations than people',
      'personas y no más mesas que personas',
    ],
    [
      '/plan oils:"olive 500 g" start:38',
      'temperature-without-unit',
      'Celsius or Fahrenheit',
      'Celsius o Fahrenheit',
    ],
    ['/plan oils:"olive 500 g" start:"500 C"', 'temperature-out-of-range', 'is outside -', 'está fuera de -'],
    [
      '/plan oils:"olive 500 g" process:oven material:plastic oven:"120 C"',
      'oven-too-hot',
      'then switched off',
      'y luego apagado',
    ],
    ['/plan oils:"olive 76100 g"', 'size-very-large', 'write the size in kilograms', 'da el tamaño en kilos'],
  ],
};
