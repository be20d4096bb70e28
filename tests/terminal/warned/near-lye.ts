import type { WarnedCase } from './row.ts';

/** What is said of soap, batter and powders that can hurt, outside a plan and a dose. */
export const nearLye: readonly WarnedCase[] = [
  [
    {
      en: '/diagnose words:"the bar crumbles when I cut it, dry and brittle"',
      es: '/diagnose words:"la pastilla se desmorona al cortarla, la corté al cuarto día"',
    },
    [
      [
        'may-be-lye-heavy',
        'pH paper on a wet bar before anybody uses it',
        'papel de pH sobre la pastilla mojada antes de que nadie la use',
      ],
    ],
  ],
  [
    {
      en: '/diagnose words:"white crackly veins on top, the soap got hot, oozing liquid, zaps"',
      es: '/diagnose words:"vetas blancas encima, el jabón se calentó mucho, supura líquido, pica en la lengua"',
    },
    [['do-not-use', 'it may hold free lye', 'puede tener sosa libre']],
  ],
  [
    '/batch poured made:"2 cups ultramarine blue 1/2 tsp; 1 cup plain" name:Tide',
    [
      [
        'raw-soap',
        'and keep it from children and animals',
        'quema uno o dos días: guantes y gafas, y lejos de niños y animales',
      ],
    ],
  ],
  [
    {
      en: 'my ultramarine blue soap smells a little of rotten eggs, is that normal?',
      es: '¿mi jabón con azul ultramar huele un poco a huevo podrido, es normal?',
    },
    [
      [
        'ultramarine-whiff',
        'stand back until it is gone, and keep every acid away',
        'apártate hasta que se vaya y ningún ácido cerca',
      ],
    ],
  ],
  [
    '/pour infusion',
    [['hot-oil', 'never over a flame, and never leave it', 'nunca sobre llama ni sin vigilar']],
  ],
  [
    {
      en: 'can I colour my soap with red wine, does it survive?',
      es: '¿puedo colorear el jabón con vino tinto, aguanta la sosa?',
    },
    [['plant-liquid', 'Never plain onto lye', 'Nunca tal cual sobre la sosa']],
  ],
  [
    ['/match target:"#8977b3"', '/press 4'],
    [
      [
        'gloves',
        'raw batter is caustic, and powders are no good to breathe',
        'la masa fresca es cáustica y los polvos no se deben respirar',
      ],
    ],
  ],
  [
    { en: 'can i sprinkle mica on top dry', es: '¿cómo espolvoreo mica por encima del jabón?' },
    [['powder-dust', 'a dust mask while it is dry, wipe up damp', 'mascarilla mientras esté seco']],
  ],
  [
    '/help',
    [
      [
        'lye',
        'Raw soap and lye burn. Gloves and goggles on',
        'La masa cruda y la sosa queman. Guantes y gafas',
      ],
    ],
  ],
  [
    { en: 'are you sure?', es: '¿estás segura? ayer me dijiste otra cantidad' },
    [['lye', 'Pour nothing until it is settled', 'No viertas nada hasta aclararlo']],
  ],
  [
    ['/dose colourant:"gold mica" portion:"1 cup"', '/dose colourant:"gold mica" portion:"1 cup"'],
    [['standing', 'Gloves and goggles on. No dust.', 'Guantes y gafas puestos. Sin polvo.']],
  ],
];
