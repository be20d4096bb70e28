import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { Colourant } from '../../src/engine/colourants/colourant.ts';
import { readPalette } from '../../src/engine/palettes/read-palette.ts';
import type { BuyAnswer, Purchase } from '../../src/engine/palettes/what-to-buy.ts';
import { shelfChoice, type Usable } from '../../src/presenting/colour/candidates.ts';
import { bestOf, lyeChanges, offersBeside, whatIsWorthBuying } from '../../src/presenting/colour/offers.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import { nameOf } from '../../src/presenting/dose.ts';
import type { Words } from '../../src/words/index.ts';
import { type SoapAsked, soapAsked } from './soap.ts';

/** The one or two generic colourants that bring a palette nearest, with before and after. */
export async function buyReply(
  asked: SoapAsked & { readonly colours: string },
  context: Context,
): Promise<Reply> {
  const { workers, asker, say } = context;
  const owner = { owner: asker.id };
  const { measures, written: _, ...soap } = await soapAsked(asked, context);
  const { colours } = readPalette(asked.colours);
  const own = (await shelfChoice(measures, context)).usable;
  const offered = await offersBeside(own, measures, context);
  const candidates = own.map(({ candidate }) => candidate);
  // The recipes that /palette make gives, so that both tell the same of the shelf as it is.
  const made = await Promise.all(
    colours.map(async ({ lab }) => {
      if (candidates.length === 0) return undefined;
      const ask = { target: lab, candidates, most: 2, recipes: 1, ...soap };
      const [best] = (await workers.run('matchJars', ask, owner)).recipes;
      return best && { hex: best.predicted.hex, deltaE: best.deltaE };
    }),
  );
  const answer = await whatIsWorthBuying(offered, jars =>
    workers.run(
      'whatToBuy',
      {
        targets: colours.map(({ lab }) => lab),
        own: candidates,
        made,
        offered: jars.map(({ candidate }) => candidate),
        ...soap,
      },
      owner,
    ),
  );
  const view: BuyView = { answer, offered, wanted: colours.map(({ hex }) => hex), ownCount: own.length, say };
  const { strips, alt } = picture(view);
  const png = await workers.run('paletteStrips', strips, owner);
  return {
    kind: 'reply',
    headline: headline(view),
    data: { wanted: view.wanted, ...answer },
    blocks: [...rows(view), { kind: 'picture', name: 'to-buy.png', png, alt }, ...notes(view)],
    cautions: lyeChanges(colourantsOf(bestOf(answer)?.ids ?? [], view), say),
  };
}

type BuyView = {
  readonly answer: BuyAnswer;
  readonly offered: readonly Usable[];
  readonly wanted: readonly string[];
  readonly ownCount: number;
  readonly say: Words;
};

const colourantsOf = (ids: readonly string[], { offered }: BuyView): readonly Colourant[] =>
  ids.map(id => offered.find(({ candidate }) => candidate.id === id)!.jar.colourant);

const namesOf = ({ ids }: Purchase, view: BuyView): readonly string[] =>
  colourantsOf(ids, view).map(colourant => nameOf(colourant, view.say));

function headline(view: BuyView): string {
  const { answer, say } = view;
  const best = bestOf(answer);
  const before = tenth(answer.now.mean);
  if (!best) return say.palettes.buyNothing({ off: before, reached: answer.now.off === 0 });
  return say.palettes.buy({ names: namesOf(best, view), off: tenth(best.mean), before });
}

function rows(view: BuyView): readonly Block[] {
  const { answer, say } = view;
  const row = (one: Purchase) => say.palettes.purchase({ names: namesOf(one, view), off: tenth(one.mean) });
  return [
    ...(answer.one.length > 0
      ? [{ kind: 'rows' as const, title: say.palettes.one, rows: answer.one.map(row) }]
      : []),
    ...(answer.two ? [{ kind: 'rows' as const, title: say.palettes.two, rows: [row(answer.two)] }] : []),
  ];
}

const notes = ({ ownCount, say }: BuyView): readonly Block[] => [
  ...(ownCount === 0 ? [{ kind: 'text' as const, text: say.palettes.emptyShelf }] : []),
  { kind: 'text', folds: true, fold: 'why', text: [say.palettes.buyNote, say.match.scale].join('\n') },
];

/** What is wanted, what the shelf gives, and what it would give with the purchase, strip under strip. */
function picture(view: BuyView) {
  const { answer, wanted, say } = view;
  const best = bestOf(answer);
  const reached = (reach: Purchase['reach']) =>
    reach.map(({ hex, deltaE }) => ({ hex, label: say.palettes.off({ hex, deltaE: tenth(deltaE) }) }));
  const strips = [
    { title: say.palettes.wanted, fields: wanted.map(hex => ({ hex, label: hex })) },
    { title: say.palettes.now, fields: reached(answer.now.reach) },
    ...(best
      ? [{ title: say.palettes.withIt({ names: namesOf(best, view) }), fields: reached(best.reach) }]
      : []),
  ];
  const list = strips.map(({ title, fields }) => `${title}: ${fields.map(({ label }) => label).join(', ')}`);
  return {
    strips: { title: say.palettes.buyTitle, rows: strips, note: say.palettes.pictureNote },
    alt: say.palettes.picture({ list: list.join('; ') }),
  };
}
