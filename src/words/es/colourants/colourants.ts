import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/colourants/colourants.ts';
import type { RefusalSentences } from '../../sentence.ts';

type Choices = readonly { readonly names: { readonly es: string } }[];

/** As many as a phone shows without scrolling. */
const shown = 6;
const named = (choices: Choices) => choices.slice(0, shown).map(choice => choice.names.es);
const either = (choices: Choices) =>
  `${named(choices).join('; ')}${choices.length > shown ? `; y ${choices.length - shown} más` : ''}`;

const metals = {
  aluminium: 'El aluminio desprende hidrógeno y calor con la sosa',
  copper: 'El cobre se corroe en la sosa y mancha el jabón',
  bronze: 'El bronce es cobre con otros metales y se corroe en la sosa',
  brass: 'El latón es cobre y zinc y se corroe en la sosa',
  tin: 'El estaño desprende hidrógeno con la sosa',
  zinc: 'El zinc metálico desprende hidrógeno con la sosa',
  leaf: 'El polvo o la hoja de color oro o plata suele ser latón, bronce o aluminio, y el aluminio desprende hidrógeno con la sosa',
  unnamed: 'La escama metálica suele ser aluminio, que desprende hidrógeno y calor con la sosa',
} as const;

export const colourants: typeof en.colourants = {
  kinds: {
    oxide: 'óxido de hierro',
    ultramarine: 'ultramar',
    chromium: 'verde de cromo',
    mica: 'mica',
    neon: 'neón',
    white: 'pigmento blanco',
    lake: 'laca',
    dye: 'colorante soluble',
    carbon: 'negro de carbón',
    clay: 'arcilla o tierra',
    botanical: 'polvo vegetal',
  },
  carriers: { water: 'agua', oil: 'aceite', glycerin: 'glicerina' },
  light: {
    holds: 'La luz no lo apaga.',
    'fades-slowly': 'La luz lo apaga poco a poco: guarda las pastillas lejos de la ventana.',
    fades: 'La luz lo apaga: guarda las pastillas a oscuras.',
  },
  hints: {
    'botanical-varies': 'El color vegetal cambia de cosecha en cosecha: haz una pastilla de prueba.',
    'brown-lather-above-ceiling': 'Más que esto da espuma marrón.',
    'choose-chromium-instead': 'Para un verde que dure, usa verde de cromo o una mica coloreada con él.',
    'choose-ultramarine-instead':
      'Para un azul o violeta que dure, usa ultramar o una mica coloreada con él.',
    'clay-drinks-water':
      'La arcilla bebe agua: mójala antes, o la masa espesa y la pastilla puede agrietarse.',
    'cocoa-for-brown': 'También se logra un buen marrón con cacao en polvo.',
    'coloured-lather-above-ceiling': 'Más que esto tiñe la espuma y la toalla.',
    'deepen-red-with-red-mica': 'Un poco de mica roja hace más profundo este rojo.',
    'deepen-violet-with-blue': 'Para un violeta profundo, añade una pizca de azul ultramar.',
    'deepens-true-red': 'Un poco de esta mica hace más profundo el rojo puro de la laca Rojo 30.',
    'dust-flies': 'Polvo muy fino: ábrelo despacio, mójalo enseguida y usa mascarilla.',
    'dye-migrates-and-stains':
      'Este colorante pasa al color vecino y mancha: úsalo solo, o en toda la pastilla.',
    'grey-lather-above-ceiling': 'Más que esto da espuma gris.',
    'greyer-blue': 'En la pastilla queda un azul más gris, como de mezclilla.',
    'infuse-in-oil': 'Deja la raíz en aceite tibio y cuélala: color más limpio y sin arenilla.',
    'interference-needs-dark-base':
      'Sobre jabón claro se ve blanca: su color solo aparece sobre fondo oscuro.',
    'keep-from-light': 'Cura y guarda las pastillas lejos de la luz del día.',
    'keeps-as-slurry': 'Mezclado con agua se conserva listo: agítalo antes de usarlo.',
    'lake-bleeds': 'Esta laca sangra en las vetas claras y puede manchar: empieza con poco y haz una prueba.',
    'less-gives-clean-pastels': 'Con menos salen pasteles limpios.',
    'never-in-water': 'Solo en aceite o glicerina: en agua nunca se dispersa.',
    'never-with-acid': 'Lejos de los ácidos: lo destruyen y huele a huevo podrido.',
    'not-listed-fluorescent': spaced`
      Los pigmentos neón de resina no están en la lista de colores cosméticos de EE. UU., y en la UE debe
      estar listado cada colorante que llevan: mira /colourant check.
    `,
    'not-listed-us':
      'No está en la lista de colores cosméticos de EE. UU. para jabón: mira /colourant check.',
    'pearl-hides-in-soap':
      'El jabón no es transparente: el brillo se ve poco dentro y luce en la superficie.',
    'read-what-coats-the-mica':
      'La mica es solo el soporte: decide lo que la recubre. Pasa su lista de ingredientes por /colourant check.',
    'scratchy-above-ceiling': 'Más que esto raspa.',
    'start-small-strong': 'Color fuerte: empieza con la mitad y mira.',
    'stick-blend-white':
      'Mézclalo con la batidora de mano; esa parte espesa: hazlo al final o cuenta con ello.',
    'sugar-heats': 'Es azúcar: esa parte se calienta más.',
    'test-violet-drift': 'Puede volverse más azul en sosa caliente y fuerte: haz una pastilla de prueba.',
    'true-red-instead': 'Para un rojo que dure, usa la laca Rojo 30.',
    'wet-before-batter': 'Hace grumos: mójalo bien antes de la masa. Ayuda más la paciencia que más líquido.',
    'white-brittle': 'Demasiado blanco hace pastillas quebradizas.',
    'white-crackles-when-hot':
      'El blanco se cuartea si el jabón se sobrecalienta: menos calor y menos blanco.',
    'white-least-that-does': 'Usa el mínimo blanco que te sirva.',
    'zinc-thickens': 'El óxido de zinc puede espesar la masa.',
  },
};

export const colourantsRefusals: Pick<
  RefusalSentences,
  'colourant-unknown' | 'colourant-ambiguous' | 'metal-never-in-lye' | 'metal-or-mica' | 'glitter-read-label'
> = {
  'colourant-unknown': ({ text, nearest }) =>
    text.trim() === ''
      ? `Di un colorante, por ejemplo: ${either(nearest)}.`
      : `No conozco el colorante «${text}». Los más parecidos: ${either(nearest)}.`,
  'colourant-ambiguous': ({ text, candidates }) =>
    `«${text}» puede ser varios. Di cuál: ${either(candidates)}.`,
  'metal-never-in-lye': ({ metal }) =>
    `Nunca pongas polvo ni escamas de metal en la masa de jabón. ${metals[metal]}. Para ese efecto, usa una mica coloreada con óxido de hierro.`,
  'metal-or-mica': ({ metal, instead }) =>
    `El metal mismo nunca debe entrar. ${metals[metal]}. Si hablas del polvo de ese color, di «${instead.names.es}».`,
  'glitter-read-label': () => spaced`
    La purpurina es una película de plástico, a menudo con aluminio, y el aluminio nunca debe tocar la
    sosa. Pasa su lista de ingredientes por /colourant check; deja la purpurina cosmética sencilla para
    adornar pastillas ya terminadas.
  `,
};
