import { colourDifference, type Lab, labOfHex } from '../spectra/cielab.ts';

/**
 * Plain colour words and the middle of what people mean by them, as soap shows it: duller than on a screen. From memory; a
 * test holds each beside what a survey of colour names measured (tests/standards/colour-words.test.ts).
 */
const MIDDLES = {
  white: '#f8f7f3',
  cream: '#f1e7cd',
  ivory: '#ece5d8',
  beige: '#d9c6a5',
  tan: '#b99a6f',
  brown: '#7b5233',
  'dark-brown': '#4a3122',
  'reddish-brown': '#7e3b2b',
  black: '#161616',
  charcoal: '#3a3a3c',
  grey: '#808080',
  'light-grey': '#cdcfcb',
  'pale-pink': '#f3d0d3',
  pink: '#f08fb0',
  'hot-pink': '#ff3fa0',
  'dusty-rose': '#c48a8c',
  rose: '#d4567c',
  red: '#cc1f2a',
  'dark-red': '#8c1520',
  maroon: '#5d1a28',
  brick: '#a5402d',
  coral: '#f47a63',
  peach: '#f6bf99',
  orange: '#f0801f',
  'burnt-orange': '#bb5a1e',
  gold: '#cf9f35',
  mustard: '#c29a25',
  yellow: '#f4d726',
  'pale-yellow': '#f3e9a0',
  olive: '#7a7a35',
  'olive-green': '#5d6b34',
  lime: '#a6dd34',
  'bright-green': '#3fc94a',
  green: '#3a8a44',
  'dark-green': '#1f4d30',
  sage: '#a3b18a',
  mint: '#b2e3c5',
  teal: '#1f7d7d',
  turquoise: '#3bbdb5',
  'pale-blue': '#bcd7ea',
  'sky-blue': '#79b4e3',
  blue: '#2f5fc4',
  'dusty-blue': '#7f93b5',
  'deep-blue': '#223a8f',
  navy: '#1c2547',
  periwinkle: '#8e93d6',
  lavender: '#cbc1e4',
  lilac: '#c3a0d4',
  violet: '#6f4db3',
  'deep-violet': '#3f2a7a',
  purple: '#7d3a96',
  plum: '#5a2950',
  mauve: '#a9809c',
  magenta: '#c2268f',
} as const;

export type ColourWord = keyof typeof MIDDLES;

const WORDS = Object.entries(MIDDLES).map(([word, hex]) => ({
  word: word as ColourWord,
  lab: labOfHex(hex),
}));

/** Words of what has no hue to speak of, and how little chroma that is where it is not pale. From memory. */
const GREYS: ReadonlySet<ColourWord> = new Set(['black', 'charcoal', 'grey', 'light-grey']);
const HUELESS_CHROMA = 10;
const PALE = 80;

/** The plain word whose middle lies nearest, by CIEDE2000; what is nearly grey is called so, whatever its hue is nearest to. */
export function nearestWord(lab: Lab): ColourWord {
  let nearest: ColourWord = 'white';
  let least = Number.POSITIVE_INFINITY;
  const isGrey = lab.l < PALE && Math.hypot(lab.a, lab.b) < HUELESS_CHROMA;
  for (const { word, lab: middle } of WORDS) {
    if (isGrey && !GREYS.has(word)) continue;
    const difference = colourDifference(lab, middle);
    if (difference < least) {
      least = difference;
      nearest = word;
    }
  }
  return nearest;
}
