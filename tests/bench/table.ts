import type { Reporter, TestModule } from 'vitest/node';
import { type Figure, holds } from './figures.ts';

const written = (value: number): string =>
  Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(Math.abs(value) < 1 ? 2 : 3);

/** The lines of the table: what was seen, its bound, its unit, and a word where the bound was broken. */
export function tableOf(figures: readonly Figure[]): readonly string[] {
  const rows = figures.map(figure => [
    figure.what,
    written(figure.seen),
    'most' in figure ? `at most ${written(figure.most)}` : `at least ${written(figure.least)}`,
    figure.unit,
    holds(figure) ? '' : 'BROKEN',
  ]);
  const all = [['', 'seen', 'bound', 'unit', ''], ...rows];
  const widths = all[0]?.map((_, at) => Math.max(...all.map(row => row[at]?.length ?? 0))) ?? [];
  return all.map(row =>
    row
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

/** Ends a run of the benches with one table of all their figures. */
export default class Table implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const figures = modules.flatMap(module =>
      [...module.children.allTests()].flatMap(test => test.meta().figures ?? []),
    );
    if (figures.length > 0) console.info(['', ...tableOf(figures), ''].join('\n'));
  }
}
