import type { Context } from '../../src/conversation/context.ts';
import type { Block } from '../../src/conversation/reply.ts';
import type { MatchAnswer } from '../../src/engine/colour/matching/match.ts';
import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { hexOfLab, type Lab } from '../../src/engine/colour/spectra/cielab.ts';
import type { Colourant } from '../../src/engine/colourants/colourant.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import type { Usable } from '../../src/presenting/colour/candidates.ts';
import { bestOf, offersBeside, whatIsWorthBuying } from '../../src/presenting/colour/offers.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import { nameOf } from '../../src/presenting/dose.ts';

/** What would bring a colour nearer that the shelf does not reach. */
export type ToBuy = {
  readonly ids: readonly string[];
  readonly names: readonly string[];
  readonly colourants: readonly Colourant[];
  /** CIEDE2000 from the target, and the colour it would be, at the best doses. */
  readonly deltaE: number;
  readonly hex: string;
};

/** A purchase that brings less than this (CIEDE2000) is not worth its money. */
const WORTH = 1;

type Soap = {
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly portion: { readonly cups: number; readonly grams: number };
};

/** The one or two generic colourants that bring a target out of reach nearest; undefined where none brings much. */
export async function toBuy(
  target: Lab,
  {
    own,
    soap,
    answer,
    measures,
  }: { own: readonly Usable[]; soap: Soap; answer: MatchAnswer; measures: Measures },
  context: Context,
): Promise<ToBuy | undefined> {
  if (answer.reached) return undefined;
  const offered = await offersBeside(own, measures, context);
  const [made] = answer.recipes;
  const found = await whatIsWorthBuying(offered, jars =>
    context.workers.run(
      'whatToBuy',
      {
        targets: [target],
        made: [made && { hex: made.predicted.hex, deltaE: made.deltaE }],
        own: own.map(({ candidate }) => candidate),
        offered: jars.map(({ candidate }) => candidate),
        ...soap,
      },
      { owner: context.asker.id },
    ),
  );
  const best = bestOf(found);
  const reach = best?.reach[0];
  const before = made?.deltaE ?? found.now.mean;
  if (!best || !reach || before - reach.deltaE < WORTH) return undefined;
  const { ids } = best;
  const colourants = ids.map(id => offered.find(({ candidate }) => candidate.id === id)!.jar.colourant);
  return { ids, colourants, names: colourants.map(one => nameOf(one, context.say)), ...reach };
}

/** The same for programs. */
export const toldBuy = ({ ids, names, deltaE, hex }: ToBuy): object => ({ ids, names, deltaE, hex });

/** What to buy in a line, and in a fold how it looks before and after. */
export async function buyBlocks(
  { deltaE, hex, names }: ToBuy,
  target: Lab,
  { recipes }: MatchAnswer,
  { workers, asker, say }: Context,
): Promise<readonly Block[]> {
  const [best] = recipes;
  const now = best ? { hex: best.predicted.hex, deltaE: best.deltaE } : undefined;
  const words = say.palettes;
  const field = (one: { hex: string; deltaE: number }) => ({
    hex: one.hex,
    label: words.off({ hex: one.hex, deltaE: tenth(one.deltaE) }),
  });
  const rows = [
    { title: words.wanted, fields: [{ hex: hexOfLab(target), label: hexOfLab(target) }] },
    ...(now ? [{ title: words.now, fields: [field(now)] }] : []),
    { title: words.withIt({ names }), fields: [field({ hex, deltaE })] },
  ];
  const strips = { title: words.buyTitle, rows, note: words.pictureNote };
  const png = await workers.run('paletteStrips', strips, { owner: asker.id });
  const list = rows.map(({ title, fields }) => `${title}: ${fields[0]!.label}`).join('; ');
  return [
    { kind: 'text', text: say.match.buy({ names, off: tenth(deltaE) }) },
    { kind: 'picture', name: 'to-buy.png', png, alt: words.picture({ list }), fold: 'others' },
    { kind: 'text', folds: true, fold: 'why', text: words.buyNote },
  ];
}
