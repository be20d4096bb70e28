import sharp from 'sharp';
import { type ChallengeBars, drawChallengeBars } from '../pictures/challenge-bars.ts';
import { drawMeasuredEntry, type MeasuredEntry } from '../pictures/challenge-measured.ts';
import { type ChallengeResults, drawChallengeResults } from '../pictures/challenge-results.ts';

/** Pixels along the side of a small photo: twice what a board shows it at. */
const SMALL = 420;

/** Small, and whole: a bar seldom lies in the middle once a white sheet lies beside it. */
async function withSmallPhotos<Shown extends { readonly photo?: Uint8Array | undefined }>(
  list: readonly Shown[],
): Promise<readonly Shown[]> {
  return await Promise.all(
    list.map(async one =>
      one.photo === undefined
        ? one
        : {
            ...one,
            photo: await sharp(one.photo)
              .resize(SMALL, SMALL, { fit: 'inside' })
              .jpeg({ quality: 80 })
              .toBuffer(),
          },
    ),
  );
}

/** The bars of a challenge side by side, as PNG. */
export const challengeBars = async (given: ChallengeBars): Promise<Uint8Array> =>
  drawChallengeBars({ ...given, bars: await withSmallPhotos(given.bars) });

/** The board of results, as PNG. */
export const challengeResults = async (given: ChallengeResults): Promise<Uint8Array> =>
  drawChallengeResults({ ...given, rows: await withSmallPhotos(given.rows) });

/** What was measured on an entry, as PNG; `photo` is a kept photo. */
export async function challengeMeasured({
  photo,
  ...given
}: Omit<MeasuredEntry, 'photo'> & { readonly photo: Uint8Array }): Promise<Uint8Array> {
  const { width, height } = await sharp(photo).metadata();
  return drawMeasuredEntry({ ...given, photo: { bytes: photo, width, height } });
}
