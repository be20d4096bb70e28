import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answered, calibrationOf } from '../../src/photo/findings/answers.ts';
import { TAUGHT_IDS } from '../../src/photo/findings/ids.ts';
import type { Elsewhere, Measured } from './measure.ts';

/** What the model's card says of itself, against what was measured (measure.ts) and against its own tables. */
const card = readFileSync(new URL('../../src/photo/model/CARD.md', import.meta.url), 'utf8');
const kept = <Content>(name: string): Content =>
  JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8')) as Content;

const sections = card.split(/^## /m).slice(1);
const sectionOf = (title: string): string => {
  const found = sections.find(section => section.startsWith(title));
  if (!found) throw new Error(`no section ${title}`);
  return found;
};

type Row = { readonly id: string; readonly counts: readonly (readonly [number, number])[] };
/** The rows of a section's table by finding: so many of so many seen, seen or possibly, falsely seen. */
const rowsOf = (section: string): readonly Row[] =>
  section
    .split('\n')
    .filter(line => TAUGHT_IDS.some(id => line.startsWith(`| ${id} |`)))
    .map(line => ({
      id: line.split('|')[1]!.trim(),
      counts: [...line.matchAll(/(\d+) of (\d+)/g)].map(match => [Number(match[1]), Number(match[2])]),
    }));

const meanOf = (rows: readonly Row[], column: number): number =>
  rows.reduce((sum, { counts }) => sum + counts[column]![0] / counts[column]![1], 0) / rows.length;

/** What is there in each picture, what of it is asked for, and what is said with the calibration that the other sources give. */
const leftOut = kept<readonly unknown[]>('left-out.json').map(calibrationOf);
const pictures = [
  ...kept<readonly Measured[]>('measured.json')
    .filter(({ drawn }) => drawn !== 'light-centre-ring')
    .map(({ answers, drawn }) => ({
      answers,
      source: 0,
      there: drawn === 'clean' ? [] : [drawn],
      large: [drawn],
    })),
  ...kept<readonly Measured[]>('measured-tricky.json').map(({ answers }) => ({
    answers,
    source: 0,
    there: [],
    large: [],
  })),
  ...['measured-elsewhere.json', 'measured-elsewhere-2.json'].flatMap((name, i) =>
    kept<readonly Elsewhere[]>(name)
      .filter(({ kind }) => kind === 'bar')
      .map(({ answers, present, large }) => ({ answers, source: i + 1, there: present, large })),
  ),
].map(({ answers, source, there, large }) => ({
  there: there as readonly string[],
  large: large as readonly string[],
  told: new Map(
    answered(answers ?? TAUGHT_IDS.map(() => Number.NEGATIVE_INFINITY), leftOut[source]).map(
      ({ id, answer }) => [id as string, answer],
    ),
  ),
}));

describe('the card of the reader', () => {
  test('counts of sources left out are what was measured', () => {
    const said = rowsOf(sectionOf('Calibrated and counted'));
    const counted = TAUGHT_IDS.map(id => {
      const asked = pictures.filter(({ large }) => large.includes(id));
      const without = pictures.filter(({ there }) => !there.includes(id));
      const seen = (of: typeof pictures) => of.filter(({ told }) => told.get(id) === 'seen').length;
      const any = asked.filter(({ told }) => told.get(id) !== 'not seen').length;
      return {
        id,
        counts: [
          [seen(asked), asked.length],
          [any, asked.length],
          [seen(without), without.length],
        ],
      };
    });
    expect(said).toEqual(counted);
  });

  const sealed = sections.filter(section => /^The \w+ sealed set/.test(section));

  test('tells of a sealed set', () => {
    expect(sealed.length).toBeGreaterThan(0);
  });

  test.each(sealed.map(section => [section.split('\n')[0]!, section]))(
    '%s: its means are those of its table',
    (_title, section) => {
      const rows = rowsOf(section);
      expect(rows.map(({ id }) => id)).toEqual([...TAUGHT_IDS]);
      const [, seen, possibly] =
        /Seen mean (\d+) % of all sixteen; seen or possibly (\d+) %/.exec(section) ?? [];
      expect([Number(seen), Number(possibly)]).toEqual(
        [0, 1].map(column => Math.round(100 * meanOf(rows, column))),
      );
      // Bars of the set that show a finding and those that do not are together all of its bars, but where it is too small to be asked for.
      const bars = Number(/A bar outlined: \d+ of (\d+)/.exec(section)?.[1]);
      for (const { id, counts } of rows) {
        const left = bars - counts[0]![1] - counts[2]![1];
        expect([id, counts[0]![1] === counts[1]![1], left >= 0 && left <= 3]).toEqual([id, true, true]);
      }
    },
  );
});
