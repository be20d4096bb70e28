import { describe, expect, test } from 'vitest';
import {
  type EvidenceScope,
  everyReport,
  filed,
  identityFiled,
  keepReport,
  type Report,
  reportsOn,
  setSharing,
  shares,
  tally,
  withdrawReports,
} from '../../../src/records/evidence/index.ts';
import { openStore } from '../../../src/records/open.ts';
import { PATIENT } from '../patience.ts';

const store = await openStore('sqlite::memory:', PATIENT);
let groups = 0;
const emptyScope = (): EvidenceScope => ({ store, group: `19000${1000 + ++groups}` });

let causes = 0;
const by = (member: string, cause = `9100${++causes}`) => ({ member, cause, name: 'Gold mica' });
const saw = (more: Partial<Report> = {}): Report => ({
  identity: 'gold-mica',
  result: 'held',
  process: 'ambient',
  at: new Date('2026-03-01T10:00:00Z'),
  ...more,
});

describe('what a group has seen', () => {
  test('is one report for each member, colour and process: the later one counts', async () => {
    const scope = emptyScope();
    expect(await keepReport(scope, saw(), by('1'))).toEqual({ replaced: false, repeated: false });
    expect(await keepReport(scope, saw({ result: 'faded' }), by('1'))).toMatchObject({ replaced: true });
    await keepReport(scope, saw({ process: 'gel' }), by('1'));
    await keepReport(scope, saw(), by('2'));
    const { here } = await reportsOn(scope, 'gold-mica', '1');
    expect(tally(here)).toEqual({ held: 2, shifted: 0, faded: 1, bled: 0 });
    expect(here.filter(({ mine }) => mine)).toHaveLength(2);
  });

  test('loses none of fifty reports that arrive at once', async () => {
    const scope = emptyScope();
    const members = Array.from({ length: 50 }, (_, index) => String(index));
    await Promise.all(
      members.map((member, index) =>
        keepReport(scope, saw({ result: index % 2 === 0 ? 'held' : 'bled' }), by(member)),
      ),
    );
    const { here } = await reportsOn(scope, 'gold-mica', '0');
    expect(tally(here)).toEqual({ held: 25, shifted: 0, faded: 0, bled: 25 });
  });

  test('an interaction brought again neither overwrites a later report nor brings a withdrawn one back', async () => {
    const scope = emptyScope();
    await keepReport(scope, saw({ result: 'held' }), by('1', 'first'));
    await keepReport(scope, saw({ result: 'shifted' }), by('1', 'second'));
    expect(await keepReport(scope, saw({ result: 'held' }), by('1', 'first'))).toEqual({
      replaced: false,
      repeated: true,
    });
    expect((await reportsOn(scope, 'gold-mica', '1')).here.map(({ result }) => result)).toEqual(['shifted']);
    await withdrawReports(scope, 'gold-mica', {
      ...by('1'),
      process: undefined,
      change: { cause: `9200${++causes}`, at: new Date('2026-03-01T10:00:00Z') },
    });
    await keepReport(scope, saw(), by('1', 'second'));
    expect((await reportsOn(scope, 'gold-mica', '1')).here).toEqual([]);
  });

  test('a member takes back their own, of one process or of all, and nobody else’s', async () => {
    const scope = emptyScope();
    for (const process of ['ambient', 'gel', 'other'] as const) {
      await keepReport(scope, saw({ process }), by('1'));
      await keepReport(scope, saw({ process }), by('2'));
    }
    expect(
      await withdrawReports(scope, 'gold-mica', {
        ...by('1'),
        process: 'gel',
        change: { cause: `9200${++causes}`, at: new Date('2026-03-01T10:00:00Z') },
      }),
    ).toEqual(['gel']);
    expect(
      await withdrawReports(scope, 'gold-mica', {
        ...by('1'),
        process: undefined,
        change: { cause: `9200${++causes}`, at: new Date('2026-03-01T10:00:00Z') },
      }),
    ).toEqual(['ambient', 'other']);
    expect(
      await withdrawReports(scope, 'gold-mica', {
        ...by('1'),
        process: undefined,
        change: { cause: `9200${++causes}`, at: new Date('2026-03-01T10:00:00Z') },
      }),
    ).toEqual([]);
    const { here } = await reportsOn(scope, 'gold-mica', '1');
    expect(here).toHaveLength(3);
    expect(here.some(({ mine }) => mine)).toBe(false);
  });

  test('keeps everything that was said of a bar, and of a photo only its numbers', async () => {
    const scope = emptyScope();
    const photo = { channel: '5', interaction: '6', attachment: '7' };
    const said = saw({ weeks: 6, note: 'ñ 🧼', strength: 'pastel', base: 'pale olive', photo });
    await keepReport(scope, said, by('1'));
    expect(await everyReport(scope, '2')).toEqual([{ ...said, mine: false }]);
  });

  test('reports on bare ingredients and on the catalogue entry made of them speak of one another', async () => {
    const scope = emptyScope();
    const bare = 'of:iron-oxides+mica+titanium-dioxide';
    await keepReport(scope, saw(), by('1'));
    await keepReport(scope, saw({ identity: bare, result: 'faded' }), by('2'));
    await keepReport(scope, saw({ identity: 'neon-pink', result: 'bled' }), by('3'));
    expect((await reportsOn(scope, 'gold-mica', '1')).here).toHaveLength(2);
    expect((await reportsOn(scope, bare, '1')).here).toHaveLength(2);
    expect((await reportsOn(scope, 'neon-purple', '1')).here).toEqual([]);
  });

  test('a long list of ingredients is filed under a short name that leads back to it', async () => {
    const scope = emptyScope();
    const identity = `of:mica+titanium-dioxide+red-40-lake+?${'strange '.repeat(15)}`;
    await keepReport(scope, saw({ identity }), by('1'));
    expect(filed(identity).length).toBeLessThan(30);
    expect(await identityFiled(scope, filed(identity))).toBe(identity);
    expect(await identityFiled(scope, filed('gold-mica'))).toBe('gold-mica');
    expect(await identityFiled(scope, 'of-nothing')).toBeUndefined();
  });

  test('is nobody else’s: a group whose id begins alike sees nothing of it', async () => {
    const scope = emptyScope();
    await keepReport(scope, saw(), by('1'));
    expect(await everyReport({ store, group: `${scope.group}0` }, '1')).toEqual([]);
    expect(await everyReport({ store, group: scope.group.slice(0, -1) }, '1')).toEqual([]);
  });
});

describe('two groups count one another’s reports', () => {
  test.each([
    { here: false, there: false, counted: 0 },
    { here: true, there: false, counted: 0 },
    { here: false, there: true, counted: 0 },
    { here: true, there: true, counted: 2 },
  ])('here $here, there $there: $counted', async ({ here, there, counted }) => {
    const [one, other] = [emptyScope(), emptyScope()];
    await setSharing(one, here, new Date());
    await setSharing(other, there, new Date());
    await keepReport(other, saw(), by('1'));
    await keepReport(other, saw({ result: 'bled' }), by('2'));
    const seen = await reportsOn(one, 'gold-mica', '9');
    expect(seen.here).toEqual([]);
    expect(seen.elsewhere.held + seen.elsewhere.bled).toBe(counted);
    await setSharing(one, false, new Date());
    await setSharing(other, false, new Date());
  });

  test('no longer, from the moment one of them stops', async () => {
    const [one, other] = [emptyScope(), emptyScope()];
    for (const scope of [one, other]) await setSharing(scope, true, new Date());
    await keepReport(other, saw(), by('1'));
    expect((await reportsOn(one, 'gold-mica', '9')).elsewhere.held).toBe(1);
    await setSharing(other, false, new Date());
    expect(await shares(other)).toBe(false);
    expect((await reportsOn(one, 'gold-mica', '9')).elsewhere.held).toBe(0);
    await setSharing(one, false, new Date());
  });

  test('once for a member who reported in both', async () => {
    const [one, other, third] = [emptyScope(), emptyScope(), emptyScope()];
    for (const scope of [one, other, third]) {
      await setSharing(scope, true, new Date());
      await keepReport(scope, saw(), by('1'));
    }
    await keepReport(other, saw({ process: 'gel' }), by('1'));
    const seen = await reportsOn(one, 'gold-mica', '1');
    expect([seen.here.length, seen.elsewhere.held]).toEqual([1, 1]);
    for (const scope of [one, other, third]) await setSharing(scope, false, new Date());
  });
});
