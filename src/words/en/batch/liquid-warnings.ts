import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { additives, bareLiquids } from './liquid-names.ts';

const { one, whole } = numbersIn('en');
const g = (grams: number) => `${one(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const name = (id: AdditiveId) => additives[id];
/** Without the state that it is in by then. */
const bare = (id: AdditiveId) => ({ ...additives, ...bareLiquids })[id];

type Warned =
  | 'milk-keep-cold'
  | 'liquid-goes-into-oils'
  | 'boil-off-alcohol'
  | 'liquid-salt'
  | 'liquid-read-label'
  | 'liquid-eats-lye'
  | 'liquid-fat'
  | 'lye-kept-dissolved'
  | 'jug-strong'
  | 'water-over-asked'
  | 'melts-above-pour'
  | 'acid-thickens-at-once'
  | 'wax-stays'
  | 'koh-paste'
  | 'koh-soft'
  | 'salt-bar';

/** What is warned of where a liquid, a wax or another lye is in the plan. */
export const liquidWarnings: { readonly [Id in Warned]: (values: PlanWarnings[Id]) => string } = {
  'milk-keep-cold': ({ additive }) =>
    `${capital(name(additive))} scorches and may foam up with lye: frozen, a spoonful of lye at a time, the jug in an ice bath. Its water counts as jug water.`,
  'liquid-goes-into-oils': ({ additive, grams }) =>
    `${g(grams)} ${name(additive)} goes into the oils, not into the lye jug: the lye needs the plain water. Its own water is counted.`,
  'boil-off-alcohol': ({ additive, percent, fizzes }) => spaced`
    ${capital(bare(additive))} holds about ${pc(percent)} alcohol${fizzes ? ', and gas' : ''}: lye makes it
    boil over, and alcohol thickens the batter at once. Boil it off first, not over an open flame; weigh
    what is left.
  `,
  'liquid-salt': ({ additive, grams, percent }) => spaced`
    The ${name(additive)} brings ${g(grams)} of salt (${pc(percent)} of the oils): a harder bar with less
    lather. Dissolve the salt fully before the lye, and cut early.
  `,
  'liquid-read-label': ({ additive }) =>
    `Bought ${name(additive)} may hold alcohol, glycerin or a preservative: read its label. With alcohol in it, boil that off first, not over an open flame.`,
  'liquid-eats-lye': ({ additive, grams, lyeGrams }) => spaced`
    ${g(grams)} ${name(additive)} eats about ${g(lyeGrams)} of lye with its acid; that much is added. A
    weaker one leaves lye in the bar: read the % on the label. Acid and lye heat and spit: mix it in before
    any lye.
  `,
  'liquid-fat': ({ additive, points }) =>
    `The fat of the ${name(additive)} is ${one(points)} points of the superfat shown.`,
  'lye-kept-dissolved': ({ percent }) => spaced`
    Your lye is taken as ${pc(percent)} pure alkali by weight, as bottles are labelled. Dissolved it from
    flakes yourself? Give their purity. Stir it before weighing; if crystals or a crust show, warm it until
    clear, lid loose.
  `,
  'jug-strong': ({ percent }) =>
    `In the jug the lye is ${pc(percent)}: it comes near boiling. Ice-cold water, a little lye at a time, stir until clear.`,
  'water-over-asked': ({ grams }) =>
    `${g(grams)} more water than you asked: honey and the like bring it, and none can be spared in the lye jug.`,
  'melts-above-pour': ({ oil, percent, meltsC, startC }) => spaced`
    ${oil.en} (${pc(percent)}) is solid below about ${degrees(meltsC)}, and you pour at ${degrees(startC)}:
    grains or a false trace. Pour hotter (start:“${whole(Math.ceil(meltsC))} C”) or use less.
  `,
  'acid-thickens-at-once': ({ oil, percent }) =>
    `${oil.en} (${pc(percent)}) reacts with lye in seconds: the batter thickens at once. Have the mould ready; plan no swirl.`,
  'wax-stays': ({ oil, percent }) =>
    `About half of ${midSentence(oil.en)} (${pc(percent)}) never becomes soap: less lather, a waxy feel.`,
  'koh-paste': ({ percent }) =>
    `${pc(percent)} KOH gives a soft paste, not a bar: nothing to unmould or cut.`,
  'koh-soft': ({ percent }) => `${pc(percent)} KOH: a softer bar that sets and unmoulds later.`,
  'salt-bar': ({ percent, toHours }) =>
    `${pc(percent)} salt sets fast: cut within ${toHours} hours, gloves on, or it crumbles.`,
};
