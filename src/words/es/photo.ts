import type * as en from '../en/photo.ts';

export const photo: typeof en.photo = {
  findings: {
    'coloured-specks': 'puntos de color',
    'white-specks': 'puntos blancos',
    'orange-spots': 'manchas naranjas',
    pinholes: 'agujeritos',
    'translucent-veins': 'vetas',
    'crackle-network': 'una red de vetas finas',
    'drag-lines': 'rayas del corte',
    'crack-on-top': 'una grieta',
    'powdery-film': 'una película pálida',
    'dark-centre-ring': 'un anillo: el centro más oscuro que el borde',
    'light-centre-ring': 'un anillo: el centro más claro que el borde',
    'colour-bled': 'color que se ha corrido',
    'brown-outside-in': 'marrón de fuera hacia dentro',
  },
  barUnseen:
    'No veo una barra entera, así que no adivino. Ponla sobre una superficie lisa, con todos los bordes a la vista, y repite la foto.',
  nothingSeen: 'Veo la barra, y en ella ningún defecto que yo sepa medir.',
  sure: ({ percent }) => `seguro al ${percent} %`,
  colours: ({ list }) => `Colores principales: ${list}.`,
  withWhite: ({ plusMinus }) =>
    `Equilibrado con la hoja blanca a la vista: con un margen de unos ${plusMinus} CIEDE2000.`,
  withoutWhite: ({ plusMinus }) =>
    `No hay papel blanco a la vista y no sé qué luz había: margen de unos ${plusMinus} CIEDE2000. Una hoja blanca junto a la barra, con luz de día, lo deja en la mitad.`,
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
  'photo-empty': () => 'Ese archivo está vacío. Envía otra vez la foto en JPEG, PNG o WebP.',
  'photo-too-heavy': ({ megabytes, most }) =>
    `Ese archivo pesa ${megabytes} MB. Envía un JPEG, PNG o WebP de hasta ${most} MB.`,
  'photo-too-large': ({ megapixels, most }) =>
    `Esa imagen dice tener ${megapixels} megapíxeles. Envía una de hasta ${most}.`,
  'photo-not-a-picture': () => 'No puedo abrir eso como foto. Envía un JPEG, PNG o WebP.',
  'photo-heic': () =>
    'No puedo abrir fotos HEIC ni AVIF. Envíala en JPEG o PNG: sirve una captura de pantalla de la foto.',
  'photo-moving': () => 'Eso es una imagen en movimiento. Envía una sola foto fija en JPEG, PNG o WebP.',
  'photo-broken': () => 'Ese archivo está dañado o incompleto. Envía otra vez la foto.',
  'photo-too-small': ({ least }) =>
    `Esa imagen es demasiado pequeña. Envía una de al menos ${least} píxeles por lado.`,
  'photo-bar-unseen': () => photo.barUnseen,
};
