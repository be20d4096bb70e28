import type { RefusalSentences } from '../../sentence.ts';

export const photo = {
  /** What was seen, as it stands in a list beside its number on the marked photo. */
  findings: {
    'coloured-specks': 'specks of colour',
    smears: 'smears of colour',
    'white-specks': 'white specks',
    'translucent-veins': 'veins',
    'crackle-network': 'a network of fine veins',
    'powdery-film': 'a pale film',
    'dark-centre-ring': 'a ring: centre darker than the rim',
    'orange-spots': 'orange spots',
    pinholes: 'small holes',
    crack: 'a crack',
    'brown-outside-in': 'brown from the outside in',
    'colour-bled': 'colour run over its edge',
    'drag-lines': 'drag lines from the cut',
    'layer-gap': 'layers that part',
    'wrinkled-top': 'a wrinkled skin',
    'mould-dimples': 'dents from the mould',
    'pit-or-speck': 'small holes or dark specks: I can’t tell which',
  },
  barUnseen: 'I see no soap here, so I won’t guess. Show me the cut face by a window, all edges in view.',
  unread: {
    'no-soap': 'I see no soap in the picture. Show me the cut face by a window, all edges in view.',
    dark: 'The picture is too dark to read. Take it again by a window.',
    blur: 'The picture is too blurred to read: rest your hands on the table, tap to focus, and take it again.',
  },
  /** Once in every answer from a picture. */
  fromDrawings:
    'I learned to see flaws from drawn bars, not from photographs: the percentages were measured on drawings. Trust your own eyes first.',
  nothingSeen: 'I see the bar, and none of the flaws that I was taught.',
  seen: (v: { name: string; percent: number }) => `${v.name}: seen, ${v.percent} %`,
  possibly: (v: { name: string; percent: number }) => `${v.name}: possibly, ${v.percent} %`,
  colours: (v: { list: string }) => `Main colours: ${v.list}.`,
  withWhite: (v: { plusMinus: number }) =>
    `Balanced by the white sheet in view: within about ${v.plusMinus} CIEDE2000.`,
  withoutWhite: (v: { plusMinus: number }) =>
    `No white paper in view, so the light is unknown: within about ${v.plusMinus} CIEDE2000. A sheet of white paper beside the bar, in daylight, halves that.`,
  whiteBlownOut:
    'The white paper is overexposed, so the colours lean on it less. Tap the bar on your screen before you shoot.',
  /** Why a reading is unsure, one for each way a picture can be poor. */
  poor: {
    blur: 'The picture is blurred: rest your hands on the table and tap to focus.',
    noise: 'The picture is grainy: go nearer a window.',
    glare: 'The bar shines: turn it until the bright patch is gone.',
    resolution: 'The bar is small in the picture: go closer, all edges still in view.',
  },
  markedTitle: 'What I see',
  markedAlt: (v: { list: string }) => `Your photo with numbered outlines: ${v.list}.`,
  markedAltNothing: 'Your photo with the bar outlined and nothing else marked.',
};

export const photoRefusals: Pick<
  RefusalSentences,
  | 'photo-empty'
  | 'photo-too-heavy'
  | 'photo-too-large'
  | 'photo-not-a-picture'
  | 'photo-heif-unread'
  | 'photo-moving'
  | 'photo-broken'
  | 'photo-too-small'
  | 'photo-too-thin'
  | 'photo-bar-unseen'
> = {
  'photo-empty': () => 'That file is empty. Send the photo again.',
  'photo-too-heavy': ({ megabytes, most }) => `That file is ${megabytes} MB. Send one of up to ${most} MB.`,
  'photo-too-large': ({ megapixels, most }) =>
    `That picture claims ${megapixels} megapixels. Send one of up to ${most}.`,
  'photo-not-a-picture': () => 'I can’t open that as a photo. Send a JPEG, PNG, WebP, HEIC or AVIF.',
  'photo-heif-unread': () =>
    'That HEIC or AVIF photo is damaged, or coded in a way I can’t open. Send it as JPEG or PNG: a screenshot of the photo will do.',
  'photo-moving': () => 'That is a moving picture. Send one still photo.',
  'photo-broken': () => 'That file is damaged or cut short. Send the photo again.',
  'photo-too-small': ({ least }) =>
    `That picture is too small to read. Send one of at least ${least} pixels each way.`,
  'photo-too-thin': ({ most }) =>
    `That picture is a thin strip. Send one at most ${most} times as long as it is wide.`,
  'photo-bar-unseen': () => photo.barUnseen,
};
