import type { RefusalSentences } from '../sentence.ts';

export const photo = {
  /** What was seen, as it stands in a list beside its number on the marked photo. */
  findings: {
    'coloured-specks': 'specks of colour',
    'white-specks': 'white specks',
    'orange-spots': 'orange spots',
    pinholes: 'small holes',
    'translucent-veins': 'veins',
    'crackle-network': 'a network of fine veins',
    'drag-lines': 'drag lines from the cut',
    'crack-on-top': 'a crack',
    'powdery-film': 'a pale film',
    'dark-centre-ring': 'a ring: centre darker than the rim',
    'light-centre-ring': 'a ring: centre lighter than the rim',
    'colour-bled': 'colour run over its edge',
    'brown-outside-in': 'brown from the outside in',
  },
  barUnseen:
    'I can’t see a whole bar, so I won’t guess. Lay it on a plain surface, all edges in view, and take it again.',
  nothingSeen: 'I see the bar, and no flaw on it that I know how to measure.',
  sure: (v: { percent: number }) => `${v.percent} % sure`,
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
  | 'photo-heic'
  | 'photo-moving'
  | 'photo-broken'
  | 'photo-too-small'
  | 'photo-bar-unseen'
> = {
  'photo-empty': () => 'That file is empty. Send the photo again as JPEG, PNG or WebP.',
  'photo-too-heavy': ({ megabytes, most }) =>
    `That file is ${megabytes} MB. Send a JPEG, PNG or WebP of up to ${most} MB.`,
  'photo-too-large': ({ megapixels, most }) =>
    `That picture claims ${megapixels} megapixels. Send one of up to ${most}.`,
  'photo-not-a-picture': () => 'I can’t open that as a photo. Send a JPEG, PNG or WebP.',
  'photo-heic': () =>
    'I can’t open HEIC or AVIF photos. Send it as JPEG or PNG: a screenshot of the photo will do.',
  'photo-moving': () => 'That is a moving picture. Send one still photo as JPEG, PNG or WebP.',
  'photo-broken': () => 'That file is damaged or cut short. Send the photo again.',
  'photo-too-small': ({ least }) =>
    `That picture is too small to read. Send one of at least ${least} pixels each way.`,
  'photo-bar-unseen': () => photo.barUnseen,
};
