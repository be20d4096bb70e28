import { describe, expect, test } from 'vitest';
import { givenRespelt } from '../../../../src/conversation/typed/what-is-meant.ts';
import { findOil, knownOil } from '../../../../src/engine/batch/oils/find-oil.ts';
import { OILS } from '../../../../src/engine/batch/oils/index.ts';
import { findColourant } from '../../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../../src/engine/colourants/colourant.ts';
import { colourantsMeant } from '../../../../src/engine/colourants/find.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { unaccented } from '../../../../src/engine/text/unaccented.ts';
import { mulberry32 } from '../../../mulberry32.ts';
import { SLIPS, slipped } from './slips.ts';

type Outcome = 'right' | 'asked' | 'wrong';
/** How many slips of each kind each name gets; a sample of them in the usual run. */
const TIMES = process.env.WALKS === 'whole' ? 20 : 4;

type Named<Thing> = {
  readonly find: (text: string) => Thing;
  /** Whether a text is a name as it stands, without looking for what is near, which takes long. */
  readonly isName: (text: string) => boolean;
  readonly label: (thing: Thing) => string;
};

/** What a command understands by a misspelt name: with slips put right, or nothing, so that it asks. As `takeOrOffer` does. */
function understood<Thing>(
  text: string,
  unknown: 'oil-unknown' | 'colourant-unknown',
  { find, isName }: Named<Thing>,
): Thing | undefined {
  const respelt = givenRespelt(new Refusal(unknown, { text, nearest: [] }), { name: text })?.given.name;
  if (typeof respelt === 'string' && isName(respelt)) return find(respelt);
  return undefined;
}

type Row = {
  readonly name: string;
  readonly typed: string;
  readonly kind: string;
  readonly as: string;
  outcome: Outcome;
};

function tried<Thing>(
  names: readonly { readonly name: string; readonly isRight: (thing: Thing) => boolean }[],
  unknown: 'oil-unknown' | 'colourant-unknown',
  named: Named<Thing>,
): readonly Row[] {
  const draw = mulberry32(20_261_128);
  return names.flatMap(({ name, isRight }) =>
    Object.keys(SLIPS).flatMap(kind =>
      Array.from({ length: TIMES }, () => slipped(name, kind, draw))
        // What happens to be another name is no slip that anybody could see.
        .filter(typed => typed !== name && !named.isName(typed))
        .map((typed): Row => {
          const thing = understood(typed, unknown, named);
          const outcome = thing === undefined ? 'asked' : isRight(thing) ? 'right' : 'wrong';
          return { name, typed, kind, as: thing === undefined ? '' : named.label(thing), outcome };
        }),
    ),
  );
}

function table(title: string, rows: readonly Row[]): void {
  for (const kind of Object.keys(SLIPS)) {
    const own = rows.filter(row => row.kind === kind);
    const share = (outcome: Outcome) =>
      `${outcome} ${((100 * own.filter(row => row.outcome === outcome).length) / own.length).toFixed(1)} %`;
    console.info(
      `${title}, ${kind}: ${own.length} slips, ${share('right')}, ${share('asked')}, ${share('wrong')}`,
    );
  }
}

const shareOf = (rows: readonly Row[], outcome: Outcome) =>
  rows.filter(row => row.outcome === outcome).length / rows.length;

describe('slips in the names of colourants', () => {
  const names = colourants.flatMap(colourant =>
    [colourant.names.en, colourant.names.es]
      .map(name => unaccented(name))
      .filter(name => colourantsMeant(name).length === 1)
      .map(name => ({ name, isRight: (one: Colourant) => one.id === colourant.id, colourant })),
  );
  const rows = tried(names, 'colourant-unknown', {
    find: findColourant,
    isName: text => colourantsMeant(text).length > 0,
    label: one => one.id,
  });

  test('are mostly read right, else asked about, and never read as another: skin, lye and law may differ', () => {
    table('colourants', rows);
    expect(rows.length).toBeGreaterThan(500 * TIMES);
    // A letter left out of a word of four makes another word more often than not: "old mica".
    expect(shareOf(rows, 'right')).toBeGreaterThan(0.89);
    const wrong = rows.filter(({ outcome }) => outcome === 'wrong');
    expect(wrong.map(({ name, typed, as }) => `${name}: ${typed} read as ${as}`)).toEqual([]);
  });
});

describe('slips in the names of oils', () => {
  const names = OILS.flatMap(oil =>
    [oil.names.en, oil.names.es]
      .map(name => unaccented(name))
      .filter(name => knownOil(name)?.id === oil.id)
      .map(name => ({ name, isRight: (one: { readonly id: string }) => one.id === oil.id })),
  );
  const rows = tried(names, 'oil-unknown', {
    find: findOil,
    isName: text => knownOil(text) !== undefined,
    label: ({ id }) => id,
  });

  test('are mostly read right, else asked about, and never read as another: its lye would be wrong', () => {
    table('oils', rows);
    expect(rows.length).toBeGreaterThan(200 * TIMES);
    expect(shareOf(rows, 'right')).toBeGreaterThan(0.89);
    const wrong = rows.filter(({ outcome }) => outcome === 'wrong');
    expect(wrong.map(({ name, typed, as }) => `${name}: ${typed} read as ${as}`)).toEqual([]);
  });
});
