import { Resvg } from '@resvg/resvg-js';

/** What a drawn photo shows. Colours are `#rrggbb` in daylight. */
export type Bar = {
  readonly colours: readonly [string, ...string[]];
  /** `specks`: undispersed pigment in the second colour, on a plain bar of the first. */
  readonly design: 'swirl' | 'layers' | 'specks';
  /** Same seed, same photo. */
  readonly seed: number;
};

const WIDTH = 960;
const HEIGHT = 720;
/** The face of the bar, pixels. */
const FACE = { x: 210, y: 250, width: 620, height: 340 };

/** A photo of an invented bar on a table, beside a white sheet of paper, as PNG. */
export function photographBar(bar: Bar): Uint8Array {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">
  <defs>
    <radialGradient id="light" cx="0.35" cy="0.2" r="1"><stop offset="0.3" stop-color="#fff" stop-opacity="0"/>
      <stop offset="1" stop-color="#000" stop-opacity="0.22"/></radialGradient>
    <filter id="soft" x="-10%" y="-10%" width="120%" height="120%"><feGaussianBlur stdDeviation="14"/></filter>
    <filter id="grain"><feTurbulence baseFrequency="0.9" numOctaves="2" seed="${bar.seed}"/>
      <feColorMatrix values="0 0 0 0 0.5  0 0 0 0 0.5  0 0 0 0 0.5  0 0 0 0.09 0"/></filter>
    <filter id="hand" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency="0.009"
      numOctaves="3" seed="${bar.seed}"/><feDisplacementMap in="SourceGraphic" scale="90" xChannelSelector="R" yChannelSelector="G"/></filter>
    <clipPath id="face"><rect x="${FACE.x}" y="${FACE.y}" width="${FACE.width}" height="${FACE.height}" rx="22"/></clipPath>
  </defs>
  <rect width="100%" height="100%" fill="#9a7b58"/>
  <rect x="60" y="40" width="840" height="170" fill="#f0f0f0" transform="rotate(-1.5 480 120)"/>
  <rect x="${FACE.x + 10}" y="${FACE.y + 22}" width="${FACE.width}" height="${FACE.height}" rx="24" fill="#000" opacity="0.4" filter="url(#soft)"/>
  <g clip-path="url(#face)"><rect x="0" y="0" width="100%" height="100%" fill="${bar.colours[0]}"/>${faceOf(bar)}</g>
  <rect width="100%" height="100%" fill="url(#light)"/>
  <rect width="100%" height="100%" filter="url(#grain)"/>
</svg>`;
  return new Resvg(svg).render().asPng();
}

function faceOf({ colours, design, seed }: Bar): string {
  const [, ...others] = colours;
  switch (design) {
    case 'layers':
      return `<g filter="url(#hand)">${others.map((colour, index) => layer(colour, (index + 1) / colours.length)).join('')}</g>`;
    case 'swirl':
      return `<g filter="url(#hand)">${others.map((colour, index) => swirl(colour, index)).join('')}</g>`;
    case 'specks':
      return specks(others[0] ?? '#000000', seed);
  }
}

const layer = (colour: string, share: number): string =>
  `<rect x="100" y="${FACE.y + share * FACE.height}" width="860" height="${FACE.height}" fill="${colour}"/>`;

/** Ribbons across the bar: the displacement makes them wander. */
function swirl(colour: string, index: number): string {
  const ribbons = [0, 1, 2].map(turn => {
    const y = FACE.y + 40 + turn * 110 + index * 46;
    return `<path d="M150 ${y}c150-90 260 90 400 0s230-60 330 20" fill="none" stroke="${colour}" stroke-width="38"/>`;
  });
  return ribbons.join('');
}

/** Small spots spread by a plain linear congruential sequence: chance from a seed, the same everywhere. */
function specks(colour: string, seed: number): string {
  let state = seed;
  const next = () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
  return Array.from({ length: 140 }, () => {
    const x = FACE.x + next() * FACE.width;
    const y = FACE.y + next() * FACE.height;
    return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${(1.5 + 3 * next()).toFixed(1)}" fill="${colour}"/>`;
  }).join('');
}
