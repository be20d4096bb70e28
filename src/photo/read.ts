import { decodePhoto, type Pixels } from './decode.ts';
import { bleedFinding } from './findings/bleed.ts';
import { broadView } from './findings/broad.ts';
import { browningFinding } from './findings/browning.ts';
import { weighed } from './findings/confidence.ts';
import { filmFinding, offWhite } from './findings/film.ts';
import type { Line } from './findings/lines.ts';
import { ringFinding } from './findings/ring.ts';
import { type Found, type Sight, sightOf } from './findings/sight.ts';
import { speckFindings } from './findings/speck-kinds.ts';
import { specksOf } from './findings/specks.ts';
import { lineFindings, offLines } from './findings/veins.ts';
import { corners } from './pixels/polygon.ts';
import type { Bar, Box, PhotoQuality, PhotoReading, Point } from './reading.ts';
import { faceOf } from './scene/face.ts';
import { lightOf } from './scene/light.ts';
import type { Thing } from './scene/objects.ts';
import { type Scene, sceneOf } from './scene/scene.ts';
import { pictureBlur } from './scene/sharpness.ts';

/**
 * Reads a photo of soap: bars, white reference, main colours and flaws; see {@link PhotoReading}. Flaws and colours are
 * the largest bar's. Where no bar can be told from its background the lists are empty.
 * Throws the Refusals of `decodePhoto`.
 */
export async function readPhoto(bytes: Uint8Array): Promise<PhotoReading> {
  return readPixels(await decodePhoto(bytes));
}

/** {@link readPhoto} for a picture that is open already. */
export function readPixels(photo: Pixels): PhotoReading {
  const scene = sceneOf(photo);
  const light = lightOf(scene);
  const size = { width: photo.width, height: photo.height };
  const bars = scene.bars.map(bar => barOf(bar, scene));
  const [first] = scene.bars;
  if (!first) {
    const quality = { blur: 0, noise: 0, glare: 0, resolution: 0 };
    return { ...size, bars, whiteReference: light.reference, colours: [], findings: [], quality };
  }
  const face = faceOf(photo, first, scene.factor, light.matrix);
  const sight = sightOf(face, light.plusMinus, pictureBlur(photo) * face.scale);
  const quality: PhotoQuality = {
    blur: sight.blur / face.barWidth,
    noise: sight.noise,
    glare: face.glare,
    resolution: Math.max(face.width, face.height),
  };
  return {
    ...size,
    bars,
    whiteReference: light.reference,
    colours: sight.colours,
    findings: weighed(findingsOf(sight), quality),
    quality,
  };
}

function findingsOf(sight: Sight): Found[] {
  const film = filmFinding(sight);
  const specks = specksOf(sight).filter(
    ({ x, y, contrast, ground }) => !film.veils(x, y, offWhite(contrast, ground)),
  );
  const lines = lineFindings(sight, specks, line => film.veils(...middleOf(line, sight), 0));
  const view = broadView(sight);
  const browning = browningFinding(view, sight.face);
  const bleed = bleedFinding(sight);
  return [
    ...speckFindings(sight, offLines(specks, lines.lines, sight.face)),
    ...lines.found,
    ...film.found,
    ...browning,
    // Brown at the rim makes the heart lighter, and film makes soft borders: those are not findings of their own.
    ...(browning.length > 0 ? [] : ringFinding(view, sight.face)),
    ...(browning.length > 0 || film.found.length > 0 ? [] : bleed),
  ];
}

/** The middle pixel of a line. */
function middleOf({ pixels }: Line, { face }: Sight): [number, number] {
  const at = pixels[pixels.length >> 1] ?? 0;
  return [at % face.width, Math.floor(at / face.width)];
}

function barOf({ rectangle, rectangularity }: Thing, { small }: Scene): Bar {
  const outline = corners(rectangle).map(({ x, y }): Point => ({ x: x / small.width, y: y / small.height }));
  return { box: boxOf(outline), outline, rectangularity };
}

function boxOf(points: readonly Point[]): Box {
  const clamp = (value: number) => Math.min(1, Math.max(0, value));
  const xs = points.map(({ x }) => clamp(x));
  const ys = points.map(({ y }) => clamp(y));
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
