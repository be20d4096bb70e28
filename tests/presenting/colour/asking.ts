import { fullDose, opticsOf } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { predictBar } from '../../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../../src/engine/colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../../../src/engine/colour/reading/base-text.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { LessonBar } from '../../../src/records/batches/lessons.ts';
import { openStore } from '../../../src/records/open.ts';
import { addItem, findItem } from '../../../src/records/shelf/index.ts';
import { PATIENT } from '../../records/patience.ts';
import { sharedWorkers } from '../../workers/shared.ts';

const START = Date.UTC(2026, 10, 29, 12);

/** A store in memory and who asks in it: a member's shelf and book, with a change of its own each time. */
export async function openShelves() {
  const store = await openStore('sqlite::memory:', PATIENT);
  const workers = sharedWorkers();
  let changes = 0;
  const asking = (member = 'maker', cause?: string) => {
    changes += 1;
    const own = cause ?? `change-${changes}`;
    return {
      shelf: { store, member },
      book: { store, member },
      group: 'club',
      workers,
      change: { cause: own, at: new Date(START + changes * 60_000), byName: member, press: own },
    };
  };
  return {
    asking,
    /** A jar of the catalogue's colourant on a member's shelf, as that shelf has it now. */
    async jar(name: string, colourant: string, member = 'maker') {
      const { shelf, change } = asking(member);
      await addItem(shelf, { name, colourant }, change);
      return await findItem(shelf, name);
    },
    jarNow: (name: string, member = 'maker') => findItem(asking(member).shelf, name),
    async [Symbol.asyncDispose]() {
      await workers.close();
      await store.close();
    },
  };
}

/** A bar with the usual full dose of one jar that came out as if the jar were `strength` times as strong as its kind. */
export function barOf(
  item: { readonly id: string; readonly lot: { readonly number: number } },
  { colourant, strength, portion = 0 }: { colourant: string; strength: number; portion?: number },
): LessonBar {
  const kind = colourantById(colourant)!;
  const grams = fullDose(kind) / 2;
  const { shades } = USUAL_BASE;
  const { lab } = predictBar([{ optics: opticsOf(kind), grams: strength * grams }], baseSoap(shades, false));
  return {
    portion,
    mix: [{ item: item.id, lot: item.lot.number, colourant, grams }],
    others: [],
    shades: [...shades],
    gelled: false,
    lab: { ...lab },
    plusMinus: 2,
  };
}
