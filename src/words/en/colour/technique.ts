import { techniqueAsked } from './technique/asked.ts';
import { techniqueAskedOfPowders } from './technique/asked-of-powders.ts';
import { techniqueBars } from './technique/bars.ts';
import { techniqueBench } from './technique/bench.ts';
import { techniqueBeside } from './technique/beside.ts';
import { techniqueChoosing } from './technique/choosing.ts';
import { techniqueHues } from './technique/hues.ts';
import { techniqueIngredients } from './technique/ingredients.ts';
import { techniqueMatters } from './technique/matters.ts';
import { techniqueNamed } from './technique/named.ts';
import { techniqueOutright } from './technique/outright.ts';
import { colourGiven, techniquePlants } from './technique/plants.ts';
import { techniquePowders } from './technique/powders.ts';
import { techniqueScents } from './technique/scents.ts';
import { techniqueSwirls } from './technique/swirls.ts';
import { techniqueTrace } from './technique/trace.ts';

/** What is said to how coloured batter is worked with: first what to do, then why, and what comes next. */
export const technique = {
  rawBatter: 'Gloves and goggles on: lye and raw batter burn, the batter for a day or two.',
  dust: 'Fine powder: no draught, a dust mask while it is dry, wipe up damp.',
  topics: {
    ...techniqueTrace,
    ...techniqueSwirls,
    ...techniquePowders,
    ...techniqueChoosing,
    ...techniqueScents,
    ...techniqueBeside,
    ...techniqueIngredients,
    ...techniqueBench,
  },
  named: {
    ...techniqueNamed,
    ...techniqueHues,
    ...techniquePlants,
    ...techniqueOutright,
    ...techniqueAsked,
    ...techniqueAskedOfPowders,
    ...techniqueBars,
  },
  given: colourGiven,
  matters: techniqueMatters,
};
