import { exactlyNamed, foldName } from '../../engine/text/names/own-names.ts';
import {
  ledger,
  ledgerLine,
  lotFacts,
  shelfGone,
  shelfIdempotencies,
  shelfIngredients,
  shelfItem,
  shelfLot,
  shelfLotFact,
  shelfLowMark,
  shelfName,
  shelfStock,
  under,
} from '../keys.ts';
import { readable, written } from '../record.ts';
import { absent, add, drop, everything, put } from '../store.ts';
import { dropOutlivedUndoables, undoable } from '../undo/index.ts';
import { changeOnce, type Planned } from './idempotency.ts';
import { unknown } from './names.ts';
import { pickFromSnapshot } from './pick-from-snapshot.ts';
import { goneKind, idempotencyKind } from './schema.ts';
import type { Change, Outcome, Shelf } from './shelf.ts';
import type { ItemSnapshot } from './snapshot.ts';
import { outcomeOf } from './stock.ts';

/** Takes the item off the shelf with all that is known of it, which is kept aside for undoing it. Only its whole name will do, or its id. */
export async function removeItem(shelf: Shelf, asked: string, change: Change): Promise<Outcome> {
  await dropOutlivedUndoables(shelf, change.at);
  const outcome = await changeOnce(shelf, change, async (all): Promise<Planned> => {
    const items = all.map(({ item }) => item);
    const item = exactlyNamed(items, asked) ?? unknown(items, asked);
    const snapshot = pickFromSnapshot(all, item.id);
    const nextLine = ledgerLine(shelf.member, item.id, snapshot.lines + 1);
    const history = await everything(shelf.store, under(ledger(shelf.member, item.id)));
    // What was done to it stays known, so that nothing is done twice; what it was called does not.
    const done = await everything(shelf.store, under(shelfIdempotencies(shelf.member)));
    const namesake = readable(idempotencyKind, done).filter(({ fields }) => fields.id === item.id);
    const gone = everyKeyOf(shelf, snapshot);
    const values = await shelf.store.get(gone);
    const stood = gone.flatMap((key, at) => (values[at] === undefined ? [] : [{ key, value: values[at] }]));
    const names = done.filter(({ key }) => namesake.some(one => one.key === key));
    return {
      writes: [
        add(shelfGone(shelf.member, item.id), written(goneKind, { at: change.at })),
        // A movement or a lot that came between would be left behind: then read again.
        absent(nextLine),
        absent(shelfLot(shelf.member, item.id, item.lot.number + 1)),
        undoable(shelf.member, change, {
          what: 'jar-removed',
          name: item.name,
          back: [...stood, ...history.filter(({ key }) => key !== nextLine)],
          over: names,
          made: [{ key: shelfGone(shelf.member, item.id), value: written(goneKind, { at: change.at }) }],
        }),
        ...gone.map(drop),
        ...namesake.map(({ key, fields }) => put(key, written(idempotencyKind, { ...fields, name: '' }))),
        ...history.filter(({ key }) => key !== nextLine).map(({ key }) => drop(key)),
      ],
      outcome: outcomeOf(item, 'remove'),
    };
  });
  return outcome.name === '' ? { ...outcome, name: asked } : outcome;
}

/** Every key an item may have outside its ledger, written by now or not. */
function everyKeyOf({ member }: Shelf, { item: { id, name, lot } }: ItemSnapshot): string[] {
  const lots = Array.from({ length: lot.number }, (_, index) => index + 1);
  return [
    shelfName(member, foldName(name)),
    shelfItem(member, id),
    shelfStock(member, id),
    shelfLowMark(member, id),
    shelfIngredients(member, id),
    ...lots.flatMap(one => [
      shelfLot(member, id, one),
      ...lotFacts.map(fact => shelfLotFact(member, id, one, fact)),
    ]),
  ];
}
