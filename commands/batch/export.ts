import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { csv } from '../../src/presenting/csv.ts';
import { type Batch, listBatches, newest, stateOf } from '../../src/records/batches/index.ts';
import { dataOf } from './view.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const twoFigures = (value: number) => Number(value.toPrecision(4));

/** All of the member's batches as JSON, and as CSV with a row for each colour of each portion. */
export async function exportReply(context: Context): Promise<Reply> {
  const { say } = context;
  const all = await listBatches(context.book);
  const json = { format: 'tintmoot-batches', version: 1, batches: all.map(dataOf) };
  const table = csv([HEADINGS, ...all.flatMap(rowsOf)]);
  return {
    kind: 'reply',
    headline: say.batches.exported({ batches: all.length }),
    data: { batches: all.length },
    blocks: [
      {
        kind: 'file',
        name: 'batches.json',
        bytes: bytesOf(`${JSON.stringify(json, undefined, 2)}\n`),
        mediaType: 'application/json',
      },
      { kind: 'file', name: 'batches.csv', bytes: bytesOf(table), mediaType: 'text/csv' },
    ],
    cautions: [],
  };
}

const HEADINGS = [
  'batch',
  'poured',
  'state',
  'gelled',
  'portion',
  'batter_g',
  'colour',
  'colourant',
  'lot',
  'teaspoons',
  'grams',
  'pigment_g_per_100g',
  'foretold',
  'foretold_plus_minus',
  'measured',
] as const;

function rowsOf(batch: Batch): readonly (readonly (string | number | undefined)[])[] {
  const measured = newest(batch, 'cured')?.did.measured ?? [];
  return batch.portions.flatMap((portion, at) => {
    const seen = measured.findLast(one => one.portion === at);
    const { predicted } = portion;
    const before = [batch.name, batch.at.toISOString(), stateOf(batch), String(batch.gelled)];
    const after = [
      predicted && hexOfLab(predicted.lab),
      predicted && twoFigures(predicted.plusMinus),
      seen && hexOfLab(seen.lab),
    ];
    const colours =
      portion.colours.length === 0
        ? [[undefined, undefined, undefined, undefined, undefined, undefined]]
        : portion.colours.map(({ name, colourant, lot, label, teaspoons, milligrams, pigment }) => [
            name,
            colourant,
            label ?? lot,
            twoFigures(teaspoons),
            milligrams / 1000,
            twoFigures(pigment),
          ]);
    return colours.map(colour => [...before, portion.name, twoFigures(portion.grams), ...colour, ...after]);
  });
}
