import type { Block, Caution, Measure } from '../conversation/reply.ts';
import type { Colourant } from '../engine/colourants/colourant.ts';
import type { Caution as DoseCaution } from '../engine/dosing/cautions.ts';
import type { Dose, DoseAnswer } from '../engine/dosing/request.ts';
import { practicalSpoons } from '../engine/quantities/spoons.ts';
import type { Words } from '../words/index.ts';

/** A dose and the name its reader knows it by: their own jar's, or the colourant's. */
export type NamedDose = { readonly dose: Dose; readonly name: string };

/** Two figures: powders vary more than a third figure could tell. */
export const rough = (value: number): number => Number(value.toPrecision(2));

/** What to spoon: of the premix where there is one, else of the dry powder. */
export const spoonsOf = ({ premix, spoons }: Dose, say: Words): string =>
  say.quantities.measure(premix?.spoons ?? spoons);

/** A colourant's name in the middle of a sentence. */
export const nameOf = ({ names }: Colourant, { language }: Words): string =>
  names[language].replace(/^\p{Lu}(?=\p{Ll})/u, first => first.toLowerCase());

/** The numbers of each colourant: spoons, grams, and how near the most it takes. */
export const doseMeasures = (doses: readonly NamedDose[], say: Words): Block => ({
  kind: 'measures',
  measures: doses.map(named => measureOf(named, say)),
});

function measureOf({ dose, name }: NamedDose, say: Words): Measure {
  const spoken = say.quantities.measure;
  const { grams, premix, ceilingShare, ceilingTeaspoons } = dose;
  const weight = say.dosing.grams({
    low: rough(grams.low),
    typical: rough(grams.typical),
    high: rough(grams.high),
  });
  const ceiling = say.dosing.ceiling({
    spoons: spoken(practicalSpoons(ceilingTeaspoons)),
    percent: Math.round(ceilingShare * 100),
  });
  if (!premix) return { label: name, value: `${spoken(dose.spoons)}, ${weight}`, note: ceiling };
  return { label: name, value: premixUse(premix, say), note: ceiling };
}

function premixUse({ share, grams, spoons: neutral }: NonNullable<Dose['premix']>, say: Words): string {
  const spoons = say.quantities.measure(neutral);
  const weight = rough(grams.typical);
  if (share === undefined) return say.dosing.ofPremix({ grams: weight, spoons });
  return share > 1
    ? say.dosing.pastes({ count: rough(share), grams: weight, spoons })
    : say.dosing.shareOfPaste({ percent: rough(share * 100), grams: weight, spoons });
}

/** The two steps of each colourant, wetting in the cup and blending into the batter, and why that carrier. */
export const doseSteps = (doses: readonly NamedDose[], say: Words): readonly Block[] =>
  doses.map(named => ({
    kind: 'rows',
    numbered: true,
    ...(doses.length > 1 && { title: named.name }),
    rows: stepsOf(named, say),
  }));

function stepsOf({ dose }: NamedDose, say: Words): readonly string[] {
  const { carrier, premix } = dose;
  const blend = say.dispersion.blend[carrier.blend];
  if (premix) return [say.dispersion.stirPremix, blend];
  const amount = `${say.quantities.measure(carrier.spoons)} (${Math.round(carrier.millilitres)} ml)`;
  const wet = say.dispersion.wet[carrier.wet]({ carrier: say.dispersion.carriers[carrier.choice], amount });
  const why = `${capital(say.dispersion.carriers[carrier.choice])}: ${say.dispersion.why[carrier.why]}.`;
  const { paste, spoons } = dose.spoons;
  const dilution = paste && {
    powder: say.quantities.spoon(paste.powder),
    carrier: say.quantities.measure(practicalSpoons(paste.carrierTeaspoons)),
    parts: paste.parts,
  };
  if (!dilution) return [wet, blend, why];
  return spoons.length === 0
    ? [say.quantities.paste(dilution), blend, why]
    : [wet, blend, why, say.quantities.pasteOrSpoons(dilution)];
}

/** What else is worth knowing, in small print: the same dose by cup and by pound, and the trade's hints. */
export function doseAside(doses: readonly NamedDose[], colourants: readonly Colourant[], say: Words): Block {
  const spoken: Readonly<Record<string, string>> = say.colourants.hints;
  const hints = new Set(colourants.flatMap(colourant => colourant.hints.map(hint => spoken[hint] ?? hint)));
  const lines = doses.map(({ dose, name }) => {
    const per = say.dosing.perMeasure({
      perCup: rough(dose.perCup),
      perPound: rough(dose.perPoundOfOils),
    });
    return doses.length > 1 ? `${name}: ${per}` : per;
  });
  return { kind: 'text', text: [...lines, ...hints].join('\n'), folds: true };
}

/** The cautions of a dose, spoken. */
export const doseCautions = (cautions: DoseAnswer['cautions'], say: Words): readonly Caution[] =>
  cautions.map(caution => ({ id: caution.id, text: sentence(caution, say) }));

const sentence = ({ id, values }: DoseCaution, say: Words): string =>
  (say.dosing.cautions[id] as (given: typeof values) => string)(values);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
