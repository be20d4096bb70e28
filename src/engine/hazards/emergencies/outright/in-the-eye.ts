import { spaced } from '../../../over-lines.ts';
import { pairs } from '../lexicon/pairs.ts';

/** Ideas that tell outright of an eye or a face that lye got into. Written as in `lexicon.ts`. */
export const IN_THE_EYE = {
  splash:
    'splash, splashed, splashes, splashback, splattered, spattered, sprayed, squirted, flew, salpico, salpique, salpicadura, salto',
  inface: pairs('in, into, at, en, a', 'my face, his face, her face, their face, la cara'),
  ineye: `${pairs(
    'in, into, inside, en, a, dentro de',
    spaced`
    ${pairs('my, his, her, the, our, one, both', 'eye, eyes')}, el ojo, los ojos, un ojo, mi ojo, mis ojos,
    su ojo, sus ojos
  `,
  )}, los ojos, el ojo, un ojo, ${pairs('my, his, her', 'eye, eyes, eyeball')}`,
  aneye: `${pairs('my, his, her, one, both', 'eye, eyes, eyeball, eyeballs')}, ${pairs('el, los, un, mi, mis, su, sus', 'ojo, ojos')}`,
  sting: spaced`
    sting, stings, stinging,
    stung,
    burn, burns, burning,
    hurt, hurts, hurting,
    on fire,
    arde, arden, ardiendo, ardor,
    escuece, escuecen, duele, duelen,
    quema, queman, quemando,
    me pica, me pican, le pica, le pican
  `,
  lens: 'contact lens, contact lenses, lentilla, lentillas, lente de contacto, lentes de contacto, pupilentes',
  glove:
    'glove, gloves, gloved, soapy hands, soapy fingers, guante, guantes, manos con jabon, manos enjabonadas',
  dim: spaced`
    cloudy vision, blurry vision, blurred vision, hazy vision,
    foggy vision,
    vision is cloudy, vision is blurry, vision went,
    lost my sight, lost his sight, lost her sight, lost vision,
    vista nublada, vista borrosa, vision borrosa, vision nublada,
    veo borroso, ve borroso, veo nublado,
    no veo nada, no ve nada, ya no veo, ya no ve,
    cant see anything, cant see anymore, cant see right,
    cant see properly, cant see out, cannot see anything,
    now i cant see, and i cant see, now he cant see, now she cant see,
    he cant see, she cant see, i cant see now, i cannot see
  `,
  view: spaced`
    swirl, swirls, colour, colours,
    difference, layer, layers,
    line, lines, trace, mica,
    bubbles, design, pattern, glitter,
    specks, remolino, colores, diferencia,
    capa, traza, scale, thermometer,
    display, numbers, label
  `,
} as const;
