import type { techniquePlants as english } from '../../../en/colour/technique/plants.ts';

/** Respuestas a una parte de una técnica con plantas, cuando la pregunta la nombra. */
export const techniquePlants: typeof english = {
  'lavender-buds': {
    answer: [
      'Las flores de lavanda siempre se ponen marrones, dentro en seguida y encima en semanas.',
      'Para el color: ultramar violeta.',
    ],
    why: [
      'Dentro dejan cercos; encima parecen cagarrutas.',
      'Pocas, secas, apretadas al día siguiente es lo mejor que hay.',
      'El olor no se queda.',
    ],
  },
  'coffee-grounds': {
    answer: [
      'El café molido da puntos marrones que raspan, poco color.',
      'Marrón parejo: café frío en vez de agua, o cacao.',
    ],
    why: [
      'Posos secos y finos, como mucho 1 cdta por 500 g de aceites.',
      'Café en vez de agua: fuerte y helado, la sosa despacio; huele mal unos días y acaba beige.',
      'El cacao, 1 a 2 cdta por 500 g de aceites, da más marrón.',
    ],
  },
  'charcoal-suds': {
    answer: ['La espuma gris es normal con mucho carbón: con 1 cdta por 500 g de aceites sale casi blanca.'],
    why: [
      'El polvo no se disuelve, se lava y queda en la pileta y el paño; no hace daño y se limpia.',
      'Para un negro hondo con menos: la mitad óxido negro, y gel.',
    ],
  },
  'annatto-in-oil': {
    answer: [
      'Achiote: 1 a 2 cda de semillas en 250 ml (1 taza) de aceite tibio, colado; poco da amarillo, mucho naranja.',
    ],
    why: [
      'Dos horas al baño maría de 50 a 60 °C (122 a 140 °F), o cuatro semanas en frío y a oscuras.',
      'Sustituye del 5 al 25 % de los aceites y cuenta entre ellos.',
      'Palidece despacio con la luz.',
      'En polvo: 1/2 cdta por 500 g de aceites, con motas.',
    ],
  },
  'natural-pink': {
    answer: [
      'Rosa natural: arcilla rosa, 1 a 3 cdta por 500 g de aceites, o rubia, que es más rosa.',
      'Las dos se quedan.',
    ],
    why: [
      'La arcilla se humedece en tres veces su volumen de agua, la rubia en aceite.',
      'Remolacha, jamaica y frutos rojos se vuelven marrones.',
      'Sin mica y mineral: ultramar rosa.',
    ],
  },
  'natural-blue': {
    answer: [
      'Azul natural: añil, 1/4 a 1/2 cdta por 500 g de aceites, de vaquero a gris azulado; el pastel de tintes es más claro.',
    ],
    why: [
      'Humedecido en aceite, o en el agua de sosa quien lo conoce; de más tiñe la espuma.',
      'Guisante azul, col morada y flores azules se van a marrón o verde.',
    ],
  },
  'natural-green': {
    answer: [
      'Verde natural que se queda: arcilla verde, gris verdoso.',
      'Espirulina, ortiga y hojas se van a caqui.',
    ],
    why: [
      'A oscuras duran unas semanas más.',
      'El verde óxido de cromo es mineral y aguanta.',
      'Arcilla 1 a 3 cdta por 500 g de aceites, humedecida en agua.',
    ],
  },
  'natural-red': {
    answer: [
      'Ninguna planta da un rojo que se quede: la rubia va de rosa a ladrillo, la arcilla roja a terracota.',
      'El óxido rojo también es ladrillo.',
    ],
    why: [
      'Rubia, 1 a 2 cdta por 500 g de aceites, con gel.',
      'Para un rojo vivo: mica o laca roja que diga estable en frío, dosis llena, sin blanco.',
      'Remolacha y jamaica se vuelven marrones.',
    ],
  },
  'natural-yellow': {
    answer: [
      'Amarillo natural: el aceite de achiote es el que más dura; la cúrcuma es viva y se va.',
      'Arcilla amarilla: ocre.',
    ],
    why: [
      'Achiote: en aceite, 5 % de los aceites da amarillo.',
      'Cúrcuma 1/4 a 1/2 cdta por 500 g de aceites.',
      'El óxido amarillo se queda siempre.',
      'Los pétalos de caléndula guardan su amarillo en motas.',
    ],
  },
  'natural-orange': {
    answer: [
      'Naranja natural: achiote o pimentón, macerados en aceite.',
      'El achiote dura más, el pimentón da durazno.',
    ],
    why: [
      'Más de ese aceite, más naranja: 10 a 25 % de los aceites.',
      'La zanahoria es más pálida y se va.',
      'Un mineral que se queda: óxido naranja.',
    ],
  },
  'natural-purple': {
    answer: [
      'Morado natural: alcaneta en aceite, de lila a gris azulado.',
      'Maíz morado, frutos rojos y col se vuelven marrones.',
    ],
    why: [
      'Se apaga despacio y se agrisa cuanto más alcalino es el jabón.',
      'La arcilla morada es un malva grisáceo que se queda.',
      'Un mineral que sigue morado: ultramar violeta.',
    ],
  },
  'natural-brown': {
    answer: [
      'Marrón natural: cacao, 1 a 2 cdta por 500 g de aceites, en aceite; café o cáscara de nuez.',
      'Todos se quedan.',
    ],
    why: [
      'Sin azúcar; de más tiñe la espuma.',
      'Canela y clavo irritan la piel.',
      'Leche, miel y vainilla ya oscurecen solas.',
    ],
  },
  'natural-black': {
    answer: ['Negro natural: carbón activado, 1 a 1 1/2 cdta por 500 g de aceites, con gel y sin blanco.'],
    why: [
      'Menos es gris; más agrisa la espuma.',
      'Humedecido en aceite, despacio: vuela.',
      'Nada de carbón de barbacoa.',
    ],
  },
};

/** Qué color da una planta o un mineral en jabón de proceso en frío, por su id del catálogo. */
export const colourGiven: Readonly<Record<string, string>> = {
  alkanet:
    'Alcaneta: de lila a gris azulado, más azul cuanto más alcalino; macerada en aceite. Se apaga despacio.',
  madder: 'Rubia: rosa con poca, rojo ladrillo con mucha; se queda. En aceite, o en el agua de sosa.',
  annatto: 'Achiote: amarillo con poco, naranja con mucho; macerado en aceite. Palidece despacio.',
  turmeric: 'Cúrcuma: dorado a naranja pardo al principio; se va con la luz.',
  paprika: 'Pimentón: durazno a naranja; macerado en aceite, porque el polvo raspa. Palidece.',
  coffee: 'Café: beige a marrón en vez de agua; molido da puntos marrones que raspan.',
  'cocoa-powder': 'Cacao: un marrón cálido que se queda; mucho tiñe la espuma.',
  indigo: 'Añil: de vaquero a gris azulado; se queda. De más tiñe la espuma.',
  woad: 'Pastel de tintes: gris azulado suave, más claro que el añil.',
  spirulina: 'Espirulina: verde unas semanas, luego caqui y beige, antes con luz.',
  'leaf-green-powder': 'Hojas: verde oliva que va a caqui y luego beige.',
  nettle: 'Ortiga: gris verdoso que va a caqui con la luz.',
  beetroot: 'Remolacha: nada de rosa; amarillo y luego marrón en la sosa.',
  hibiscus: 'Jamaica: nada de rojo; gris pardo en la sosa.',
  'butterfly-pea': 'Guisante azul: nada de azul; amarillo verdoso y luego marrón en la sosa.',
  'walnut-hull': 'Cáscara de nuez: marrón cálido a oscuro; se queda.',
  calendula: 'Caléndula: motas amarillas que se quedan; su aceite da apenas amarillo.',
  carrot: 'Zanahoria: amarillo pálido a durazno; se va.',
  henna: 'Alheña: caqui a marrón.',
  'red-sandalwood': 'Sándalo rojo: malva a granate pardo.',
  safflower: 'Cártamo: amarillo pálido; se va.',
};
