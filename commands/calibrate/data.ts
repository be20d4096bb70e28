import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import type { CalibrationView } from './view.ts';

/** A calibration for programs: ids, numbers, no prose. */
export function calibrationData(
  { item, jar, found, bars, photo, outcome, others }: CalibrationView,
  {
    base,
    shades,
    gelled,
  }: { readonly base: string; readonly shades: readonly ShadeShare[]; readonly gelled: boolean },
): object {
  const { scale, plusMinus, before, after, doubt } = found;
  return {
    item: item.id,
    name: item.name,
    lot: { number: item.lot.number, label: item.lot.label },
    colourant: jar.colourant.id,
    scale,
    plusMinus,
    fit: { before, after },
    doubt,
    kept: outcome !== 'not-kept',
    sharing: outcome,
    others,
    bars: bars.map(bar => {
      const fit = found.bars.find(({ grams }) => grams === bar.grams);
      return {
        ...bar,
        hex: hexOfLab(bar.lab),
        predicted: fit && { lab: fit.predicted, hex: fit.predictedHex },
        deltaE: fit?.deltaE,
      };
    }),
    photo,
    base: { written: base, shades, gelled },
  };
}
