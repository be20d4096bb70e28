import { JAR, type RefusedCases } from './row.ts';

export const shelf: RefusedCases = {
  'the shelf': [
    [
      [JAR, '/shelf compare one:Dusk other:Dusk'],
      'compare-with-itself',
      'That is the same jar twice',
      'Es el mismo bote dos veces',
    ],
    [
      [JAR, '/shelf add item:Snow colourant:"titanium dioxide"', '/shelf compare one:Dusk other:Snow'],
      'compare-white-with-colour',
      'A white and a colour do different work',
      'Un blanco y un color hacen cosas distintas',
    ],
    [
      '/shelf add item:Dusk price:"8 €"',
      'price-without-size',
      'Without it I cannot tell what a spoon costs',
      'Sin él no sé lo que cuesta una cuchara',
    ],
    [
      '/shelf add item:Dusk size:"50 g"',
      'size-without-price',
      'A size needs its price too',
      'El tamaño necesita su precio',
    ],
    [
      '/plan oils:"olive 100%" size:"500 g oils" prices:";"',
      'oil-price-unreadable',
      'Write them like',
      'como precios de aceites',
    ],
    [
      [JAR, '/shelf use item:Dusk amount:"5 g"', '+40 /press 1'],
      'undo-too-late',
      'put it right with the command that made it',
      'corrígelo con el comando con que se hizo',
    ],
    [
      [JAR, '/shelf restock item:Dusk amount:"20 g"', '/shelf use item:Dusk amount:"60 g"', '/press 1'],
      'shelf-undo-not-enough',
      'less than was put there',
      'menos de lo repuesto',
    ],
    [
      '/shelf undo',
      'undo-nothing',
      'what changes your records can be undone for',
      'lo que cambia tus registros se puede deshacer durante',
    ],
    [
      ['/shelf add item:Mystery', '/dose colourant:Mystery portion:"2 cups"'],
      'jar-unidentified',
      'such as colourant',
      'No sé de qué está hecho',
    ],
    [
      ['/shelf add item:Mystery amount:"50 g"', '/shelf use item:Mystery amount:"2 tsp"'],
      'spoons-not-weighed',
      'or weigh a level teaspoon with',
      'No sé cuánto pesa una cucharada de',
    ],
  ],
  'a jar, what it cost and weighs': [
    [
      '/shelf add item:Dusk amount:"50 g" price:cheap',
      'price-unreadable',
      'as a price',
      'No entiendo «cheap»',
    ],
    [
      '/shelf add item:Dusk amount:"50 g" price:8.50',
      'price-without-currency',
      'needs one currency',
      'le falta una moneda',
    ],
    [
      '/shelf add item:Dusk amount:"50 g" price:"1,250 €"',
      'price-ambiguous',
      'Please write it without the mark',
      'Escríbelo sin la marca o con dos decimales',
    ],
    [
      '/shelf add item:Dusk amount:"50 g" price:"0 €"',
      'price-out-of-range',
      'and up to a hundred million',
      'y hasta cien millones',
    ],
    ['/prefer owned:many', 'spoons-owned-unreadable', 'List those you own', 'Di las que tienes'],
    [
      ['/shelf add item:Dusk', '/shelf use item:Dusk amount:"5 g"'],
      'shelf-amount-unknown',
      'I don’t know how much',
      'restock y llevaré la cuenta',
    ],
    [
      ['/shelf add item:"Deep sea"', '/shelf add item:"Deep red"', '/shelf show item:Deep'],
      'shelf-item-ambiguous',
      '“Deep” could be',
      '«Deep» puede ser',
    ],
    ['/shelf show item:Dusk', 'shelf-item-unknown', 'and nothing else is yet', 'no está en tu estantería'],
    [
      [JAR, JAR],
      'shelf-name-taken',
      'or add this one under another name',
      'abre un lote nuevo o añade este con otro nombre',
    ],
    [
      [JAR, '/shelf use item:Dusk amount:"90 g"'],
      'shelf-not-enough',
      'take that much or less',
      'saca eso o menos',
    ],
    [
      [JAR, '/shelf weigh item:Dusk amount:"0.01 g"'],
      'shelf-spoon-unfit',
      'A level spoon like that holds between',
      'Una cucharada rasa así pesa entre',
    ],
    [
      [JAR, '/shelf weigh item:Dusk amount:"1/2 tsp"'],
      'spoon-weight-unreadable',
      'is no weight of a spoon',
      'no es el peso de una cuchara',
    ],
    [
      '/shelf add item:"​"',
      'shelf-name-unfit',
      'A name needs at least one letter or digit and at most',
      'Un nombre lleva al menos una letra o cifra y como mucho',
    ],
    [
      [JAR, '/shelf new-lot item:Dusk', '/shelf weigh item:Dusk amount:"2.4 g"', '/press 1'],
      'undo-changed-since',
      'Something else has been noted for',
      'Desde entonces se ha anotado otra cosa de',
    ],
  ],
};
