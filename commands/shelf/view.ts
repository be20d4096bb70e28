import type { Block, Caution, Reply } from '../../src/conversation/reply.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import type { Price } from '../../src/engine/cost/money.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { wholeVerdict } from '../../src/presenting/check.ts';
import { kindName } from '../../src/presenting/check-dose.ts';
import { itemWarning, warningSentence } from '../../src/presenting/warning.ts';
import type { LedgerLine, Outcome, ShelfItem } from '../../src/records/shelf/index.ts';
import type { WhatItIs } from '../../src/records/shelf/jars/what-it-is.ts';
import { meantByItem } from '../../src/records/shelf/meant.ts';
import type { Words } from '../../src/words/index.ts';
import { jarSwatchHex } from './jar-swatch.ts';

/** An item in one line: what is left of it first, then what is known of it. */
export function itemRow(item: ShelfItem, say: Words): string {
  const { name, colourant, pigmentFraction, price, lot, stock } = item;
  const kind = colourant === undefined ? undefined : colourantById(colourant);
  const known = kind?.names[say.language];
  const facts = [
    known && known.toLowerCase() !== name.toLowerCase() ? known : undefined,
    kind && jarSwatchHex(item, kind),
    pigmentFraction === undefined ? undefined : say.shelf.pigment({ percent: pigmentFraction * 100 }),
    price && priceView(price, say),
    lot.number > 1 || lot.label !== undefined ? say.shelf.lot(lot) : undefined,
    lot.dishTest && say.shelf.dishTests[lot.dishTest],
    lot.spoonWeight && say.shelf.spoon(lot.spoonWeight),
    itemWarning(item, say),
    stock.low && stock.grams !== undefined ? say.shelf.low({ name, left: stock.grams }) : undefined,
  ].filter(Boolean);
  const left = stock.grams === undefined ? say.shelf.amountUnknown : say.shelf.grams(stock.grams);
  return `${name}: ${[left, ...facts].join('; ')}`;
}

const priceView = (price: Price, say: Words): string =>
  say.costs.ofJar({ money: say.costs.money(price), grams: price.grams });

/** What a change did, with a word when little is left or when it was counted before. */
export function changedReply(headline: string, outcome: Outcome, say: Words): Reply {
  const { name, left, low, repeated } = outcome;
  const notices = [
    ...(repeated ? [say.shelf.repeated] : []),
    ...(low && left !== undefined ? [say.shelf.low({ name, left })] : []),
  ];
  return {
    kind: 'reply',
    headline,
    data: outcome,
    blocks: notices.map(notice => ({ kind: 'text', text: notice })),
    cautions: [],
  };
}

/** What an item was found to be: its kind and what lye does to it, as the words of a new or described item. */
function foundBlocks({ colourant, report }: WhatItIs, outcome: Outcome, say: Words): readonly Block[] {
  const lines = [
    ...(report ? [say.checking.keptKind({ kind: kindName(report.kind, say) })] : []),
    // A warning says it again, among the cautions.
    ...(report && !warningSentence(outcome.name, { report, colourant }, say)
      ? [wholeVerdict({ report, colourant: undefined, identity: undefined }, say)]
      : []),
    ...(report && report.unknown.length > 0
      ? [say.stability.notRecognised({ names: report.unknown.slice(0, 5) })]
      : []),
    colourant
      ? say.shelf.identified({ colourant: colourant.names[say.language] })
      : say.shelf.unidentified(outcome),
  ];
  return [{ kind: 'text', text: lines.join('\n') }];
}

const foundCautions = (
  { report, colourant }: WhatItIs,
  { name }: Outcome,
  say: Words,
): readonly Caution[] => {
  const text = report && warningSentence(name, { report, colourant }, say);
  return text ? [{ id: 'lye-changes', text }] : [];
};

/** A new item: how much of it, what it was found to be, and what lye does to it. */
export function addedReply(found: WhatItIs, outcome: Outcome, say: Words): Reply {
  const headline = say.shelf.added({ name: outcome.name, grams: outcome.left });
  const reply = changedReply(headline, outcome, say);
  return {
    ...reply,
    data: { ...outcome, colourant: found.colourant?.id, ingredients: found.ingredients },
    blocks: [...foundBlocks(found, outcome, say), ...reply.blocks],
    cautions: foundCautions(found, outcome, say),
  };
}

/** An item that was described: what it is known to be now. */
export function describedReply(
  found: WhatItIs,
  outcome: Outcome,
  { price, say }: { readonly price: Price | undefined; readonly say: Words },
): Reply {
  const headline = price
    ? say.costs.noted({ name: outcome.name, price: priceView(price, say) })
    : say.shelf.described(outcome);
  const reply = changedReply(headline, outcome, say);
  if (!found.report) return reply;
  return {
    ...reply,
    data: { ...outcome, ingredients: found.ingredients },
    blocks: [...foundBlocks(found, outcome, say), ...reply.blocks],
    cautions: foundCautions(found, outcome, say),
  };
}

/** Everything on a shelf, an item a row. */
export function shelfReply(items: readonly ShelfItem[], say: Words): Reply {
  const low = items.filter(({ stock }) => stock.low).length;
  return {
    kind: 'reply',
    headline: items.length === 0 ? say.shelf.empty : say.shelf.count({ items: items.length, low }),
    data: { items },
    blocks: [{ kind: 'rows', rows: items.map(one => itemRow(one, say)) }],
    cautions: [],
  };
}

/** One item: what is known of it, its ingredients where it has a list, and its newest movements. */
export function itemReply(
  shown: { readonly item: ShelfItem; readonly history: readonly LedgerLine[] },
  say: Words,
): Reply {
  const { item, history } = shown;
  const lines = history.map(line => say.shelf.line({ ...line, date: line.at.toISOString().slice(0, 10) }));
  return {
    kind: 'reply',
    headline: itemRow(item, say),
    data: shown,
    blocks: [...ingredientsBlock(item, say), { kind: 'rows', rows: lines }],
    cautions: [],
  };
}

function ingredientsBlock(item: ShelfItem, say: Words): readonly Block[] {
  if (!item.ingredients) return [];
  const meant = meantByItem(item);
  const kind = say.checking.keptKind({ kind: kindName(meant.report.kind, say) });
  return [
    { kind: 'text', text: `${kind} ${wholeVerdict(meant, say)}` },
    { kind: 'text', text: cut(item.ingredients.text, 500), folds: true },
  ];
}
