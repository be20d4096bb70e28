import type { PhotoReading } from '../photo/reading.ts';
import { drawMarkedPhoto } from '../pictures/marked-photo.ts';
import type { BarePhoto } from './bare-photo.ts';

export type PhotoToMark = {
  readonly photo: BarePhoto;
  readonly reading: Pick<PhotoReading, 'bars' | 'findings'>;
  readonly title: string;
  readonly labels: readonly string[];
};

/**
 * The photo with what was seen outlined and numbered, as PNG: finding `i` of the reading gets number `i + 1` and
 * `labels[i]` in the legend. A finding whose label is missing is left out.
 */
export function markPhoto({ photo, reading, title, labels }: PhotoToMark): Promise<Uint8Array> {
  return drawMarkedPhoto({
    photo: { bytes: photo.jpeg, width: photo.width, height: photo.height },
    title,
    bars: reading.bars.map(bar => bar.outline),
    marks: reading.findings.flatMap(({ region, answer }, i) => {
      const label = labels[i];
      return label === undefined
        ? []
        : [{ number: i + 1, sure: answer === 'seen', outlines: region.outlines, label }];
    }),
  });
}
