import { JAR, PLAN, POURED, type RefusedCases } from './row.ts';

export const books: RefusedCases = {
  'the batch book': [
    [
      [POURED, '/batch weigh weights:","'],
      'batch-weights-unreadable',
      'write each bar in grams',
      'escribe cada barra en gramos',
    ],
    [
      [
        POURED,
        '/batch weigh weights:"100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g, 100 g"',
      ],
      'batch-weights-many',
      'bars at a time',
      'barras a la vez',
    ],
    ['/batch show batch:Tide', 'batch-unknown', 'There is no batch', 'No hay ningún lote'],
    ['/batch cut', 'batch-unknown', 'keep a pour first with', 'guarda primero un vertido con'],
    [
      [POURED, '/batch cut on:soon'],
      'batch-day-unfit',
      'is no day that has been',
      'no es un día que haya pasado',
    ],
    [
      [POURED, '/batch cut on:2026-12-24'],
      'batch-day-unfit',
      'is no day that has been',
      'no es un día que haya pasado',
    ],
    [
      [POURED, '/batch cut on:2026-11-03'],
      'batch-day-before-pour',
      'nothing happened to it before that',
      'antes de eso no le pasó nada',
    ],
    ['/batch poured made:";"', 'batch-portion-unsized', 'How much batter is', 'Cuánta masa es'],
    [
      '/batch poured made:"1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain; 1 cup plain"',
      'batch-portions-many',
      'most 12 portions.',
      'Como mucho 12',
    ],
    ['/batch poured', 'batch-nothing-said', 'What did you pour', 'Planéalo antes con'],
    [
      '/batch poured recipe:Tide made:"2 cups plain"',
      'batch-two-sources',
      'or what you made in words',
      'o lo que hiciste en palabras',
    ],
    [
      [POURED, '^ /batch share'],
      'batch-not-here',
      'it can be shown only in the group where you noted it',
      'solo se puede mostrar en el grupo donde lo apuntaste',
    ],
    [
      [POURED, '/batch cured colours:"sky #aabbcc"'],
      'batch-colours-unreadable',
      'as a portion and its colour',
      'como una parte y su color',
    ],
  ],
  'plans and recipes': [
    ['/plan size:"500 g oils"', 'oils-missing', 'with the name of a recipe', 'con el nombre de una receta'],
    [
      [PLAN, '/recipe save name:Tide', '/recipe rescale recipe:Tide to:bigger'],
      'factor-unreadable',
      'I can’t rescale by',
      'No puedo escalar con',
    ],
    [
      [PLAN, '/recipe save name:Tide', '/recipe share recipe:Tide', '/recipe share recipe:Tide'],
      'recipe-shared-already',
      'To show a newer one',
      'Para mostrar una más nueva',
    ],
    [
      [
        PLAN,
        '/recipe save name:Tide',
        '/recipe share recipe:Tide',
        `@ines ${PLAN}`,
        '@ines /recipe save name:Tide',
        '@ines /recipe share recipe:Tide',
      ],
      'recipe-shared-name-taken',
      'copy yours under another name and share that',
      'copia la tuya con otro nombre y comparte esa',
    ],
  ],
  'batches and recipes': [
    [
      '/batch poured made:"2 cups ultramarine blue 1/2 tsp; 1 cup gold mica 1 tsp" changes:"2 tsp instead of 7"',
      'batch-change-unclear',
      'Which colour is',
      'Este lote lleva',
    ],
    [
      '/batch poured made:"2 cups ultramarine blue 1/2 tsp" changes:"a,b,c,d,e,f,g,h,i,j,k,l,m,n,o,p,q,r,s,t,u,v,w,x,y,z,a,b,c,d,e,f"',
      'batch-changes-many',
      'most 20 changes,',
      'Como mucho 20',
    ],
    [
      '/recipe show recipe:"Harbuor onw"',
      'recipe-unknown',
      'plan a batch and keep it with',
      'planea un lote y guárdalo con',
    ],
    [
      [
        '/plan oils:"olive 500 g" save-as:"Harbour one"',
        '/plan oils:"olive 500 g" save-as:"Harbour two"',
        '/recipe show recipe:Harbour',
      ],
      'recipe-ambiguous',
      '“Harbour” could be',
      '«Harbour» puede ser',
    ],
    [
      ['/plan oils:"olive 500 g" save-as:Tide', '/plan oils:"olive 400 g" save-as:Tide'],
      'recipe-name-taken',
      'You already have a recipe',
      'usa otro nombre o quita antes esa',
    ],
    [
      [
        '/plan oils:"olive 500 g" save-as:Tide',
        '/recipe share recipe:Tide',
        '~ @ines /recipe unshare recipe:Tide',
      ],
      'recipe-not-yours',
      'only they or a steward can take it back',
      'solo esa persona o quien administra el grupo puede retirarla',
    ],
    [
      [JAR, '/plan oils:"olive 500 g" portions:"1 cup Dusk"', '/batch poured changes:"2000 tsp Dusk"'],
      'batch-amount-absurd',
      'than soap holds together',
      'de lo que el jabón aguanta',
    ],
  ],
};
