import { ANIMAL_FATS } from './animal-fats.ts';
import { BUTTERS } from './butters.ts';
import { KITCHEN_OILS } from './kitchen-oils.ts';
import { NUT_OILS } from './nut-oils.ts';
import type { Oil } from './oil.ts';
import { PALM_AND_LAURIC } from './palm-and-lauric.ts';
import { SPECIALITY_OILS } from './speciality-oils.ts';
import { SUNFLOWER_AND_SAFFLOWER } from './sunflower-and-safflower.ts';
import { WAXES_AND_ACIDS } from './waxes-and-acids.ts';

/** Every oil, fat, butter and wax we know, each with its saponification range and where it stands. */
export const OILS: readonly Oil[] = [
  ...PALM_AND_LAURIC,
  ...KITCHEN_OILS,
  ...SUNFLOWER_AND_SAFFLOWER,
  ...NUT_OILS,
  ...BUTTERS,
  ...SPECIALITY_OILS,
  ...ANIMAL_FATS,
  ...WAXES_AND_ACIDS,
];
