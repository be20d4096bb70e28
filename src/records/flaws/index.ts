/*
 * Flaws that members of a group asked about: a case for a day or two, its answers one key each, and for good what it
 * turned out to be, with the picture of it where its maker gave that.
 */

export * from './case.ts';
export {
  forgetOutcomes,
  keepOutcome,
  type Learned,
  learnedIn,
  MOST_OF_ONE_MEMBER,
  type Outcome,
} from './outcome.ts';
export {
  dropPicture,
  type GivenPicture,
  givePicture,
  type LabelledPicture,
  labelledSet,
  MOST_PICTURES,
  picturesOf,
  relabelPicture,
  takePicturesBack,
} from './pictures.ts';
export { answers, outcomes } from './schema.ts';
