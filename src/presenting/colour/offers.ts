import type { Context } from '../../conversation/context.ts';
import type { Caution } from '../../conversation/reply.ts';
import type { Colourant } from '../../engine/colourants/colourant.ts';
import type { BuyAnswer, Purchase } from '../../engine/palettes/what-to-buy.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import type { Words } from '../../words/index.ts';
import { catalogueChoice, type Usable } from './candidates.ts';

/** What may be bought beside the jars there are: generic colourants that hold and are lawful, none that is owned. */
export async function offersBeside(
  own: readonly Usable[],
  measures: Measures,
  context: Context,
): Promise<readonly Usable[]> {
  const kinds = new Set(own.map(({ jar }) => jar.colourant.id));
  const { usable } = await catalogueChoice(measures, context);
  return usable.filter(({ jar }) => !kinds.has(jar.colourant.id));
}

/** The best there is to buy, one colourant or two; undefined where nothing is worth it. */
export const bestOf = ({ one, two }: BuyAnswer): Purchase | undefined => two ?? one[0];

/** What a difference must be on average to be seen, CIEDE2000. */
const SEEN = 2;

/**
 * What to buy of what is offered: of what holds in every lye, unless that does not get there and what holds only in some batches
 * comes nearer by a step that is seen.
 */
export async function whatIsWorthBuying(
  offered: readonly Usable[],
  search: (jars: readonly Usable[]) => Promise<BuyAnswer>,
): Promise<BuyAnswer> {
  const sure = await search(offered.filter(({ jar }) => jar.colourant.alkali.behaviour === 'stable'));
  const reach = (answer: BuyAnswer) => bestOf(answer) ?? answer.now;
  if (reach(sure).off === 0) return sure;
  const all = await search(offered);
  return reach(sure).mean - reach(all).mean >= SEEN ? all : sure;
}

/** What lye may do to colourants that do not simply hold. */
export const lyeChanges = (colourants: readonly Colourant[], say: Words): readonly Caution[] =>
  colourants.flatMap(({ names: colourant, alkali: { behaviour } }) =>
    behaviour === 'stable' || behaviour === 'never'
      ? []
      : [{ id: 'lye-changes', text: say.dosing.cautions['lye-changes']({ colourant, behaviour }) }],
  );
