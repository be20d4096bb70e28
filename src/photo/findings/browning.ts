import { median } from '../pixels/quantile.ts';
import type { Face } from '../scene/face.ts';
import type { Broad } from './broad.ts';
import { boxRound, rectangleOn } from './region.ts';
import type { Found } from './sight.ts';

/** Steps from the rim inwards, as shares of the depth. */
const STEPS = 6;
const SIDES = 4;

type Shift = { readonly dl: number; readonly da: number; readonly db: number };

/** Brown that is strongest at the rim and fades inwards: the profile of colour over depth below the outline. */
export function browningFinding(view: Broad, face: Face): Found[] {
  const heart = colourOf(view, i => view.depth[i]! > 0.6);
  const profile = Array.from({ length: STEPS }, (_, step) =>
    shiftFrom(
      heart,
      colourOf(view, i => Math.floor(view.depth[i]! * STEPS * 1.6) === step),
    ),
  );
  const rim = profile[0]!;
  const sides = Array.from({ length: SIDES }, (_, side) =>
    shiftFrom(
      heart,
      colourOf(view, i => view.depth[i]! < 1 / STEPS / 1.2 && sideOf(i, view) === side),
    ),
  );
  const agreeing = sides.filter(isBrown).length;
  const falling = profile.filter((shift, i) => i > 0 && size(shift) < size(profile[i - 1]!) + 0.5).length;
  if (!isBrown(rim) || agreeing < 3 || falling < STEPS - 2) return [];
  const outline = rectangleOn(face, 0.02, 0.03, 0.98, 0.97);
  const depth = profile.findIndex(shift => size(shift) < 0.4 * size(rim));
  return [
    {
      id: 'brown-outside-in',
      strength: Math.min(1, size(rim) / 30),
      clarity: Math.min(1, 0.3 + size(rim) / 12) * Math.min(1, 0.25 + agreeing * 0.2),
      size: face.width / 10,
      region: { box: boxRound([outline]), outlines: [outline] },
      measures: {
        lightness: rim.dl,
        yellowness: rim.db,
        redness: rim.da,
        depth: (depth < 0 ? STEPS : depth) / STEPS / 1.6,
      },
    },
  ];
}

const size = ({ dl, da, db }: Shift) => Math.hypot(dl, da, db);

/** Darker, and what hue it gains is between red-brown and yellow; or, on a strong ground, greyer with it. */
function isBrown({ dl, da, db }: Shift): boolean {
  const hue = (Math.atan2(db, da) * 180) / Math.PI;
  return dl < -2.8 && Math.hypot(da, db) > 1.5 && hue > 5 && hue < 115;
}

function colourOf({ l, level, a, b, inside }: Broad, chosen: (i: number) => boolean) {
  const picked: number[] = [];
  for (let i = 0; i < l.length; i++) if (inside[i] && chosen(i)) picked.push(i);
  const middle = (of: Float32Array) => median(picked.map(i => of[i]!));
  return { l: middle(level), a: middle(a), b: middle(b) };
}

function shiftFrom(
  heart: { l: number; a: number; b: number },
  here: { l: number; a: number; b: number },
): Shift {
  // In less light a colour greys as it darkens: only what goes beyond that is a change of colour.
  const share = (here.l + 16) / (heart.l + 16);
  return { dl: here.l - heart.l, da: here.a - heart.a * share, db: here.b - heart.b * share };
}

function sideOf(i: number, { width, height }: Broad): number {
  const u = ((i % width) + 0.5) / width - 0.5;
  const v = (Math.floor(i / width) + 0.5) / height - 0.5;
  if (Math.abs(u) > Math.abs(v)) return u < 0 ? 0 : 1;
  return v < 0 ? 2 : 3;
}
