import { around, type Canvas, type Linear, lay, linear, shade } from './canvas.ts';
import { type Chance, smoothNoise } from './chance.ts';

/** A flaw painted on a bar, its size in fractions of the bar's width, its strength as stated. */
export type Flaw =
  | {
      readonly kind: 'coloured-specks';
      readonly colour: string;
      readonly count: number;
      readonly radius: number;
    }
  | { readonly kind: 'white-specks'; readonly count: number; readonly radius: number }
  | {
      readonly kind: 'orange-spots';
      readonly count: number;
      readonly radius: number;
      readonly opacity: number;
    }
  | { readonly kind: 'pinholes'; readonly count: number; readonly radius: number }
  /** `light` multiplies the light sent back: below 1 darker veins, above 1 lighter. */
  | {
      readonly kind: 'translucent-veins';
      readonly count: number;
      readonly width: number;
      readonly light: number;
    }
  | {
      readonly kind: 'crackle-network';
      readonly cell: number;
      readonly width: number;
      readonly light: number;
    }
  | { readonly kind: 'crack-on-top'; readonly width: number }
  | { readonly kind: 'powdery-film'; readonly where: 'top' | 'face'; readonly opacity: number }
  | { readonly kind: 'dark-centre-ring'; readonly light: number; readonly edge: number }
  | { readonly kind: 'light-centre-ring'; readonly light: number; readonly edge: number }
  | { readonly kind: 'brown-outside-in'; readonly reach: number; readonly opacity: number };

const WHITE = linear('#f4f3f0');
const RUST = linear('#b5651d');
const BROWN = linear('#7a4a1e');

/** Paints a flaw over a finished face. */
export function paintFlaw(face: Canvas, flaw: Flaw, chance: Chance): void {
  switch (flaw.kind) {
    case 'coloured-specks':
      specks(face, flaw, linear(flaw.colour), chance);
      break;
    case 'white-specks':
      specks(face, flaw, WHITE, chance);
      break;
    case 'orange-spots':
      spots(face, flaw, chance);
      break;
    case 'pinholes':
      pits(face, flaw, chance);
      break;
    case 'translucent-veins':
      veins(face, flaw, chance);
      break;
    case 'crackle-network':
      crackle(face, flaw, chance);
      break;
    case 'crack-on-top':
      crack(face, flaw, chance);
      break;
    case 'powdery-film':
      film(face, flaw, chance);
      break;
    case 'dark-centre-ring':
    case 'light-centre-ring':
      ring(face, flaw, chance);
      break;
    case 'brown-outside-in':
      browning(face, flaw);
      break;
  }
}

type Of<Kind extends Flaw['kind']> = Extract<Flaw, { kind: Kind }>;

const somewhere = ({ width, height }: Canvas, chance: Chance) => ({
  x: chance.between(0.07, 0.93) * width,
  y: chance.between(0.09, 0.91) * height,
});

function specks(face: Canvas, of: { count: number; radius: number }, colour: Linear, chance: Chance): void {
  for (let i = 0; i < of.count; i++) {
    const { x, y } = somewhere(face, chance);
    const radius = of.radius * face.width * chance.between(0.75, 1.3);
    const stretch = chance.between(-0.25, 0.25);
    around(face, x, y, radius * 1.3 + 1, (pixel, distance, dx, dy) => {
      const shape = distance * (1 + (stretch * (dx * dx - dy * dy)) / (distance * distance + 1e-6));
      lay(face, pixel, colour, Math.min(1, Math.max(0, radius + 0.5 - shape)) * 0.9);
    });
  }
}

function spots(face: Canvas, of: Of<'orange-spots'>, chance: Chance): void {
  for (let i = 0; i < of.count; i++) {
    const { x, y } = somewhere(face, chance);
    const radius = of.radius * face.width * chance.between(0.8, 1.3);
    around(face, x, y, radius * 2, (pixel, distance) =>
      lay(face, pixel, RUST, of.opacity / (1 + Math.exp((distance - radius) / (radius * 0.12)))),
    );
  }
}

/** A round hole lit from above: its upper wall in shadow, its lower rim catching light. */
function pits(face: Canvas, of: Of<'pinholes'>, chance: Chance): void {
  for (let i = 0; i < of.count; i++) {
    const { x, y } = somewhere(face, chance);
    const radius = of.radius * face.width * chance.between(0.8, 1.3);
    around(face, x, y, radius * 1.35 + 1, (pixel, distance, _dx, dy) => {
      const inside = Math.min(1, Math.max(0, radius + 0.5 - distance));
      const slope = dy / Math.max(radius, 1);
      shade(face, pixel, 1 - inside * (1 - Math.min(1, Math.max(0.18, 0.42 + 0.3 * slope))));
      const rim = Math.max(0, 1 - Math.abs(distance - radius * 1.12) / (0.16 * radius + 0.5));
      if (dy > 0) shade(face, pixel, 1 + 0.22 * rim * slope);
    });
  }
}

/** Draws along a path with a soft round pen that multiplies light. */
function drawn(
  face: Canvas,
  strokes: readonly { x: number; y: number }[][],
  width: number,
  light: number,
): void {
  const cover = new Float32Array(face.width * face.height);
  const reach = width / 2 + 1;
  for (const stroke of strokes) {
    for (const { x, y } of stroke)
      around(face, x, y, reach, (pixel, distance) => {
        cover[pixel] = Math.max(cover[pixel]!, Math.min(1, Math.max(0, width / 2 + 0.5 - distance)));
      });
  }
  for (let i = 0; i < cover.length; i++) if (cover[i]! > 0) shade(face, i, 1 + (light - 1) * cover[i]!);
}

function wander(face: Canvas, x: number, y: number, heading: number, steps: number, chance: Chance) {
  const path: { x: number; y: number }[] = [];
  let turn = 0;
  let [px, py, at] = [x, y, heading];
  for (let i = 0; i < steps; i++) {
    turn = 0.92 * turn + 0.012 * chance.normal();
    at += turn;
    px += Math.cos(at);
    py += Math.sin(at);
    if (px < 3 || py < 3 || px > face.width - 3 || py > face.height - 3) break;
    path.push({ x: px, y: py });
  }
  return path;
}

function veins(face: Canvas, of: Of<'translucent-veins'>, chance: Chance): void {
  const strokes: { x: number; y: number }[][] = [];
  for (let i = 0; i < of.count; i++) {
    const { x, y } = somewhere(face, chance);
    const heading = chance.between(0, 2 * Math.PI);
    for (const way of [0, Math.PI]) {
      const path = wander(face, x, y, heading + way, face.width * chance.between(0.2, 0.4), chance);
      strokes.push(path);
      const fork = path[Math.floor(path.length * 0.6)];
      if (fork) strokes.push(wander(face, fork.x, fork.y, heading + way + 0.8, face.width * 0.15, chance));
    }
  }
  drawn(face, strokes, of.width * face.width, of.light);
}

/** A net of cells: the edges of the Voronoi diagram of scattered points. */
function crackle(face: Canvas, of: Of<'crackle-network'>, chance: Chance): void {
  const cell = of.cell * face.width;
  const points: { x: number; y: number }[] = [];
  for (let y = -cell; y < face.height + cell; y += cell)
    for (let x = -cell; x < face.width + cell; x += cell)
      points.push({ x: x + cell * chance.between(0.1, 0.9), y: y + cell * chance.between(0.1, 0.9) });
  const half = (of.width * face.width) / 2;
  const near = new Map<string, typeof points>();
  const key = (x: number, y: number) => `${Math.floor(x / cell)},${Math.floor(y / cell)}`;
  for (const point of points)
    near.set(key(point.x, point.y), [...(near.get(key(point.x, point.y)) ?? []), point]);
  for (let y = 0; y < face.height; y++) {
    for (let x = 0; x < face.width; x++) {
      let first = Number.POSITIVE_INFINITY;
      let second = first;
      for (let dy = -2; dy <= 2; dy++)
        for (let dx = -2; dx <= 2; dx++)
          for (const point of near.get(key(x + dx * cell, y + dy * cell)) ?? []) {
            const distance = Math.hypot(point.x - x, point.y - y);
            if (distance < first) {
              second = first;
              first = distance;
            } else if (distance < second) second = distance;
          }
      const cover = Math.min(1, Math.max(0, half + 0.5 - (second - first) / 2));
      if (cover > 0) shade(face, y * face.width + x, 1 + (of.light - 1) * cover);
    }
  }
}

function crack(face: Canvas, of: Of<'crack-on-top'>, chance: Chance): void {
  const wave = smoothNoise(Math.floor(chance.between(1, 1e6)));
  const middle = face.height * chance.between(0.3, 0.5);
  const from = face.width * chance.between(0.08, 0.2);
  const to = face.width * chance.between(0.75, 0.9);
  for (let x = from; x < to; x += 0.5) {
    const along = (x - from) / (to - from);
    const y = middle + face.height * (0.06 * wave(x / 60, 1) + 0.02 * wave(x / 9, 2));
    const half =
      of.width * face.width * (0.5 + 0.25 * wave(x / 25, 3)) * Math.sqrt(4 * along * (1 - along) + 0.05);
    for (let dy = -Math.ceil(half) - 1; dy <= Math.ceil(half) + 1; dy++) {
      const py = Math.round(y + dy);
      const cover = Math.min(1, Math.max(0, half + 0.5 - Math.abs(py - y)));
      // Each column is passed twice: half the pull each time.
      if (cover > 0) shade(face, py * face.width + Math.floor(x), Math.sqrt(1 - 0.8 * cover));
    }
  }
}

function film(face: Canvas, of: Of<'powdery-film'>, chance: Chance): void {
  const coarse = smoothNoise(Math.floor(chance.between(1, 1e6)));
  const reach = chance.between(0.09, 0.15) * face.height;
  for (let y = 0; y < face.height; y++) {
    for (let x = 0; x < face.width; x++) {
      const mottle = coarse(x / (face.width * 0.14), y / (face.width * 0.14));
      const fine = coarse(x / (face.width * 0.03) + 50, y / (face.width * 0.03));
      const here =
        of.where === 'top'
          ? Math.min(1, Math.max(0, (reach * (1 + 0.35 * mottle + 0.15 * fine) - y) / (0.25 * reach)))
          : Math.min(1, Math.max(0, (mottle + 0.25 * fine - 0.05) / 0.4));
      lay(face, y * face.width + x, WHITE, of.opacity * here * (1 + 0.12 * fine));
    }
  }
}

function ring(face: Canvas, of: Of<'dark-centre-ring' | 'light-centre-ring'>, chance: Chance): void {
  const [cx, cy] = [chance.between(0.47, 0.53), chance.between(0.46, 0.54)];
  const size = chance.between(0.55, 0.74);
  const wave = smoothNoise(Math.floor(chance.between(1, 1e6)));
  for (let y = 0; y < face.height; y++) {
    for (let x = 0; x < face.width; x++) {
      const u = Math.abs(x / face.width - cx) * 2;
      const v = Math.abs(y / face.height - cy) * 2;
      const radius = (u ** 2.6 + v ** 2.6) ** (1 / 2.6) + 0.03 * wave(x / 80, y / 80);
      const inside = 1 / (1 + Math.exp((radius - size) / of.edge));
      shade(face, y * face.width + x, 1 + (of.light - 1) * inside);
    }
  }
}

function browning(face: Canvas, of: Of<'brown-outside-in'>): void {
  const reach = of.reach * Math.min(face.width, face.height);
  for (let y = 0; y < face.height; y++) {
    for (let x = 0; x < face.width; x++) {
      // Air comes from all sides at once: the four distances melt into one, with no crease at the corners.
      const near = [x, y, face.width - x, face.height - y].reduce(
        (sum, d) => sum + Math.exp(-d / (0.6 * reach)),
        0,
      );
      const deep = Math.max(0, -0.6 * reach * Math.log(near));
      lay(face, y * face.width + x, BROWN, of.opacity * Math.exp(-((deep / reach) ** 1.5)));
    }
  }
}
