import type { Context } from '../../src/conversation/context.ts';
import type { Block } from '../../src/conversation/reply.ts';
import { nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import { colourDifference, hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { tenth, whole } from '../../src/presenting/colour/view.ts';
import type { Batch, Measured } from '../../src/records/batches/index.ts';
import { nameOf } from './view.ts';

/** How far each portion is off, in units of CIEDE2000, and how it was read. */
const pairsOf = (batch: Batch, measured: readonly Measured[]) =>
  measured.flatMap(({ portion, lab, plusMinus, unclean }) => {
    const made = batch.portions[portion];
    if (!made?.predicted) return [];
    return [
      {
        portion,
        made,
        foretold: made.predicted,
        lab,
        plusMinus,
        unclean,
        off: colourDifference(made.predicted.lab, lab),
      },
    ];
  });

export const pairsData = (batch: Batch, measured: readonly Measured[]) =>
  pairsOf(batch, measured).map(({ portion, foretold, lab, plusMinus, unclean, off }) => ({
    portion,
    foretold: { ...foretold, hex: hexOfLab(foretold.lab) },
    measured: { lab, hex: hexOfLab(lab), plusMinus },
    off,
    unclean,
  }));

export function curedHeadline(batch: Batch, measured: readonly Measured[], { say }: Context): string {
  const pairs = pairsOf(batch, measured);
  const words = say.batches;
  if (pairs.length === 0) return words.curedNoted({ name: batch.name });
  const mean = pairs.reduce((sum, { off }) => sum + off, 0) / pairs.length;
  return words.cured({ name: batch.name, off: tenth(mean), nearness: words.nearness(mean) });
}

/** Foretold beside measured: in words, and as a picture. */
export async function pairsBlocks(
  batch: Batch,
  measured: readonly Measured[],
  { say, workers, asker }: Context,
): Promise<readonly Block[]> {
  const pairs = pairsOf(batch, measured);
  if (pairs.length === 0) return [];
  const words = say.batches;
  const told = pairs.map(({ made, foretold, lab, off, plusMinus }) => ({
    foretold: hexOfLab(foretold.lab),
    became: hexOfLab(lab),
    label: nameOf(made, say) ?? made.name,
    note: words.pair({
      expected: {
        word: say.colour.names[nearestWord(foretold.lab)],
        hex: hexOfLab(foretold.lab),
        plusMinus: whole(foretold.plusMinus),
      },
      became: { word: say.colour.names[nearestWord(lab)], hex: hexOfLab(lab), plusMinus: whole(plusMinus) },
      off: tenth(off),
    }),
  }));
  const png = await workers.run(
    'batchPairs',
    { title: batch.name, foretold: words.foretold, became: words.became, pairs: told, note: words.pairsNote },
    { owner: asker.id },
  );
  const rows = told.map(({ label, note }) => `${label}: ${note}`);
  return [
    { kind: 'rows', rows },
    { kind: 'picture', name: 'foretold-and-cured.png', png, alt: words.pairsAlt({ list: rows.join('; ') }) },
  ];
}
