import type { Box, Outline, Point } from '../reading.ts';
import type { Face } from '../scene/face.ts';

/** The box round some outlines. */
export function boxRound(outlines: readonly Outline[]): Box {
  const points = outlines.flatMap((outline): Point[] => {
    if (outline.kind === 'path') return [...outline.points];
    const { at, radius } = outline;
    return [
      { x: at.x - radius, y: at.y - radius },
      { x: at.x + radius, y: at.y + radius },
    ];
  });
  const left = Math.max(0, Math.min(...points.map(({ x }) => x)));
  const top = Math.max(0, Math.min(...points.map(({ y }) => y)));
  const right = Math.min(1, Math.max(...points.map(({ x }) => x)));
  const bottom = Math.min(1, Math.max(...points.map(({ y }) => y)));
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** A rectangle of the face (fractions of its width and height) as a closed outline in the picture. */
export function rectangleOn(face: Face, left: number, top: number, right: number, bottom: number): Outline {
  const corner = (u: number, v: number) => face.place(u * face.width, v * face.height);
  return {
    kind: 'path',
    points: [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)],
    closed: true,
  };
}
