import { ENTER, JAR, OPEN, type RefusedCases } from './row.ts';

export const challenges: RefusedCases = {
  challenges: [
    [
      '/challenge enter title:Tide photo:BAR.jpg colourants:"gold mica"',
      'challenge-none-such',
      'No challenge here is taking entries now',
      'Ahora ningún reto de aquí admite barras',
    ],
    [
      [OPEN, '/challenge open title:"Red hour" entries-until:"in 2 days" votes-until:"in 4 days"', ENTER],
      'challenge-which',
      'Name it with the option',
      'Nómbralo con la opción',
    ],
    ['/challenge open title:Blue joined-before:lately', 'challenge-date-unreadable', 'as a day', 'como día'],
    [
      [
        '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days" entries:2',
        ENTER,
        '/challenge enter title:Foam photo:BAR.jpg colourants:"ultramarine blue"',
        '/challenge withdraw',
      ],
      'challenge-entry-which',
      'Which of your bars',
      'Cuál de tus barras',
    ],
    [
      [
        '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days" cure-days:28',
        '/challenge enter title:Tide photo:BAR.jpg colourants:"ultramarine blue" made:2026-11-19',
      ],
      'challenge-entry-unfit',
      'the bar cures at least',
      'la barra cura al menos',
    ],
    [
      [OPEN, '/challenge withdraw'],
      'challenge-entry-none',
      'You have no bar in this challenge',
      'No tienes ninguna barra en este reto',
    ],
    [
      [OPEN, '/challenge show', '/press 1', '/fill FORM photo:BAR.jpg title:" " colourants:"gold mica"'],
      'challenge-bar-title-unfit',
      'A bar needs a name of',
      'Una barra necesita un nombre de',
    ],
    [
      [OPEN, '/challenge enter title:Tide photo:BAR.jpg colourants:" , "'],
      'challenge-colourants-missing',
      'Say which colourants are in the bar',
      'Di qué colorantes lleva la barra',
    ],
    [
      '/challenge open title:Blue palette:"teal 60%, gold 20%"',
      'challenge-shares-unfit',
      'leave one without a part to take the rest',
      'deja una sin parte para que tome el resto',
    ],
    [
      '/challenge recipe recipe:Tide',
      'bar-not-won',
      'No bar of yours came first in a challenge here yet',
      'Ninguna barra tuya ha quedado primera aún en un reto de aquí',
    ],
  ],
  'a season’s palette': [
    [
      '/season propose title:Dusk colours:teal',
      'season-colours-unfit',
      'A season’s palette has',
      'La paleta de una temporada tiene de',
    ],
    [
      ['/season propose title:Dusk colours:"teal, gold, cream"', '/season vote palette:Dawn'],
      'season-palette-unknown',
      'No palette is called',
      'Ninguna paleta se llama',
    ],
    ['/season settle', 'season-nothing-put', 'Nothing is put forward yet', 'Aún no hay propuestas'],
    [
      [
        '/season propose title:Dusk colours:"teal, gold, cream"',
        '@ines /season propose title:Dawn colours:"rose, gold, cream"',
        '/season settle',
      ],
      'season-tie',
      'let members vote on before you settle it',
      'que se siga votando antes de fijarla',
    ],
    [
      [
        '/season propose title:Dusk colours:"teal, gold, cream"',
        '@ines /season propose title:Dusk colours:"rose, gold, cream"',
      ],
      'season-title-taken',
      'give yours another title',
      'dale otro título a la tuya',
    ],
  ],
  'challenges: rules, ballots and dates': [
    [
      [
        '/challenge open title:Tide entries-until:"in 2 days" votes-until:"in 4 days"',
        '/challenge open title:Tide entries-until:"in 2 days" votes-until:"in 4 days"',
      ],
      'challenge-title-taken',
      'give this one another title',
      'o cancela antes el otro',
    ],
    [
      [OPEN, ENTER, '+4000 /challenge vote ranking:best'],
      'vote-unreadable',
      `Write the bars' numbers`,
      'Escribe los números de las barras',
    ],
    [
      [OPEN, ENTER, '+3000 /challenge vote ranking:9'],
      'vote-number-unknown',
      'No bar in the running has the number',
      'Ninguna barra que participe tiene el número',
    ],
    [
      '/challenge open title:Tide palette:"teal,gold,red,blue,green,pink,white,black,grey" entries-until:"in 2 days"',
      'challenge-palette-unfit',
      'you gave',
      'a 6 colores;',
    ],
    [
      '/challenge open title:Tide entries-until:"in 4 days" votes-until:"in 2 days"',
      'challenge-times-order',
      'The end of entries must come before the end of the vote',
      'El fin de las inscripciones debe ir antes de el fin de la',
    ],
    [
      '/challenge open title:Tide entries-until:"in 2 days" votes-until:"in 900 days"',
      'challenge-times-far',
      'A challenge lasts at most',
      'Elige un final más cercano',
    ],
    [
      [OPEN, ENTER, `@ines ${ENTER}`, `@zoe ${ENTER}`, '+3000 @zoe /challenge vote ranking:"1,1"'],
      'vote-entry-twice',
      'One bar is on your ballot twice',
      'Una barra está dos veces en tu papeleta',
    ],
    [
      [
        '/challenge open title:Tide method:single entries-until:"in 2 days" votes-until:"in 4 days"',
        `@ines ${ENTER}`,
        `@zoe ${ENTER}`,
        '+3000 /challenge vote ranking:"1,2"',
      ],
      'vote-one-only',
      'Choose one bar',
      'Elige una barra',
    ],
    [
      [OPEN, ENTER, '+3000 /challenge vote ranking:1'],
      'vote-own-only',
      'Nobody votes for their own bar',
      'Nadie vota su propia barra',
    ],
    ['/challenge open title:Tide entries-until:someday', 'deadline-unreadable', 'as a time', 'como hora'],
    [
      '/challenge open title:Tide entries-until:friday',
      'deadline-time-missing',
      'needs a time of day',
      'le falta la hora',
    ],
    [
      '/challenge open title:Tide entries-until:"2020-01-01 18:00"',
      'deadline-past',
      'Choose a time still to come',
      'Elige una hora futura',
    ],
    ['/prefer zone:Atlantis', 'zone-unknown', `I don't know the time zone`, 'No conozco la zona horaria'],
    [
      '/challenge open title:Tide entries-until:"2026-02-31 18:00"',
      'date-impossible',
      'No calendar has the date',
      'no existe',
    ],
    [
      [OPEN, '/challenge extend entries-until:"in 1 days" reason:rain'],
      'challenge-extension-unfit',
      'and the vote must end after the entries',
      'Un plazo solo se puede mover a más tarde y antes de que venza',
    ],
    [
      [
        OPEN,
        '+3000 /challenge enter challenge:"Blue hour" title:Tide photo:BAR.jpg colourants:"ultramarine blue"',
      ],
      'challenge-not-now',
      'this works only while it is taking entries',
      'esto solo se puede mientras admite barras',
    ],
    [
      '/challenge palette colours:3',
      'palette-no-shelves',
      'No shelf in this group holds a colourant yet',
      'Ningún estante de este grupo tiene colorantes todavía',
    ],
    [
      [JAR, '/challenge palette colours:6'],
      'palette-out-of-reach',
      '% of the shelves can make',
      'Pide menos colores o menos estantes',
    ],
    [
      [
        OPEN,
        '/challenge cancel reason:rain',
        '/challenge extend challenge:"Blue hour" entries-until:"in 5 days" reason:rain',
      ],
      'challenge-over',
      'nothing more can change',
      'ya no se puede cambiar nada',
    ],
    [
      [OPEN, '/challenge disqualify entry:9 reason:rain'],
      'challenge-entry-unknown',
      'That entry is not in the running',
      'Esa barra no participa o no es tuya',
    ],
    [
      [OPEN, '/challenge show challenge:nothing'],
      'challenge-unknown',
      'I don’t know that challenge in this group',
      'No conozco ese reto en este grupo',
    ],
  ],
};
