import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/flaws/photo.ts';

export const photo: typeof en.photo = {
  findings: {
    'coloured-specks': 'puntos de color',
    smears: 'trazos de color corrido',
    'white-specks': 'puntos blancos',
    'translucent-veins': 'vetas',
    'crackle-network': 'una red de vetas finas',
    'powdery-film': 'una película pálida',
    'dark-centre-ring': 'un anillo: el centro más oscuro que el borde',
    'orange-spots': 'manchas naranjas',
    pinholes: 'agujeritos',
    crack: 'una grieta',
    'brown-outside-in': 'marrón de fuera hacia dentro',
    'colour-bled': 'color que se ha corrido',
    'drag-lines': 'rayas del corte',
    'layer-gap': 'capas que se separan',
    'wrinkled-top': 'una piel arrugada',
    'mould-dimples': 'hoyuelos del molde',
    'pit-or-speck': 'agujeritos o puntos oscuros: no sé distinguirlos',
  },
  barUnseen:
    'Aquí no veo jabón, así que no adivino. Enséñame la cara cortada junto a una ventana, con todos los bordes a la vista.',
  unread: {
    'no-soap':
      'No veo jabón en la foto. Enséñame la cara cortada junto a una ventana, con todos los bordes a la vista.',
    dark: 'La foto está demasiado oscura para leerla. Repítela junto a una ventana.',
    blur: 'La foto está demasiado movida o desenfocada: apoya las manos en la mesa, toca la pantalla para enfocar y repítela.',
  },
  fromDrawings:
    'Aprendí a ver defectos con barras dibujadas, no con fotografías: los porcentajes se midieron en dibujos. Fíate primero de tus ojos.',
  nothingSeen: 'Veo la barra, y ninguno de los defectos que me enseñaron.',
  seen: ({ name, percent }) => `${name}: se ve, ${percent} %`,
  possibly: ({ name, percent }) => `${name}: quizá, ${percent} %`,
  colours: ({ list }) => `Colores principales: ${list}.`,
  withWhite: ({ plusMinus }) =>
    `Equilibrado con la hoja blanca a la vista: con un margen de unos ${plusMinus} CIEDE2000.`,
  withoutWhite: ({ plusMinus }) => spaced`
    No hay papel blanco a la vista y no sé qué luz había: margen de unos ${plusMinus} CIEDE2000. Una hoja
    blanca junto a la barra, con luz de día, lo deja en la mitad.
  `,
  whiteBlownOut:
    'El papel blanco está quemado, así que sirve menos para los colores. Toca la barra en la pantalla antes de disparar.',
  poor: {
    blur: 'La foto está movida o desenfocada: apoya las manos en la mesa y toca la pantalla para enfocar.',
    noise: 'La foto tiene grano: acércate a una ventana.',
    glare: 'La barra brilla: gírala hasta que se vaya el reflejo.',
    resolution: 'La barra sale pequeña: acércate, con todos los bordes a la vista.',
  },
  markedTitle: 'Lo que veo',
  markedAlt: ({ list }) => `Tu foto con contornos numerados: ${list}.`,
  markedAltNothing: 'Tu foto con el contorno de la barra y nada más marcado.',
};

export const photoRefusals: typeof en.photoRefusals = {
  'photo-empty': () => 'Ese archivo está vacío. Envía otra vez la foto.',
  'photo-too-heavy': ({ megabytes, most }) =>
    `Ese archivo pesa ${megabytes} MB. Envía uno de hasta ${most} MB.`,
  'photo-too-large': ({ megapixels, most }) =>
    `Esa imagen dice tener ${megapixels} megapíxeles. Envía una de hasta ${most}.`,
  'photo-not-a-picture': () => 'No puedo abrir eso como foto. Envía un JPEG, PNG, WebP, HEIC o AVIF.',
  'photo-heif-unread': () =>
    'Esa foto HEIC o AVIF está dañada, o codificada de un modo que no puedo abrir. Envíala en JPEG o PNG: sirve una captura de pantalla de la foto.',
  'photo-moving': () => 'Eso es una imagen en movimiento. Envía una sola foto fija.',
  'photo-broken': () => 'Ese archivo está dañado o incompleto. Envía otra vez la foto.',
  'photo-too-small': ({ least }) =>
    `Esa imagen es demasiado pequeña. Envía una de al menos ${least} píxeles por lado.`,
  'photo-too-thin': ({ most }) =>
    `Esa imagen es una tira estrecha. Envía una que sea como mucho ${most} veces más larga que ancha.`,
  'photo-bar-unseen': () => photo.barUnseen,
};
