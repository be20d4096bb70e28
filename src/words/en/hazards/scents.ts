import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import type { BarredScentReason, ScentRisk } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const pc = (percent: number) => `${numbersIn('en').two(percent)}%`;

const scentRisks: Readonly<Record<ScentRisk, string>> = {
  cinnamal: 'burns and sensitises skin even washed off, and seizes the batter.',
  eugenol: 'burns and sensitises skin, and seizes the batter.',
  phenols: 'its phenols burn skin and eyes.',
  citral: 'its citral sensitises and stings skin.',
  phototoxic:
    'pressed from the peel it burns skin in the sun. Washed off the risk is small; rinse well, and for anything left on skin use a furocoumarin-free one.',
  oxidises: 'old or long opened it sensitises skin: use it fresh.',
  salicylate:
    'poisonous when swallowed, a teaspoon can kill a child; also through skin. Lock it up; none for children, in pregnancy or with blood thinners.',
  camphor:
    'stings eyes and can harm small children’s breathing. None for babies and small children, or with epilepsy or asthma; not for the face.',
  sensitises: 'a strong skin sensitiser.',
  balsam:
    'a strong skin sensitiser; the crude balsam is prohibited as a scent, only its oil is allowed, in traces.',
  perfume:
    'if it comes from a perfume bottle it is mostly alcohol: it burns near heat and seizes the batter. Use oil for soap.',
};

const barredScents: Readonly<Record<BarredScentReason, string>> = {
  alcohol:
    'mostly alcohol. It burns near heat, and seizes or splits the batter. Use a fragrance or essential oil with a certificate for soap (IFRA category 9).',
  'not-for-skin':
    'made for another use, not for skin. Does its certificate list soap (IFRA category 9)? Then write only the percent it allows. If not, keep it out.',
  prohibited: spaced`
    as the plant’s own oil it is prohibited in cosmetics, since it harms skin or is poisonous. A perfumer’s
    oil of that name with a certificate for soap? Write “fragrance oil” after it.
  `,
};

export const scents: {
  readonly warnings: { readonly 'scent-hurts': (values: PlanWarnings['scent-hurts']) => string };
  readonly refusals: Pick<
    RefusalSentences,
    'scent-barred' | 'scent-as-additive' | 'scent-needs-certificate' | 'scent-over-certificate'
  >;
} = {
  warnings: {
    'scent-hurts': ({ scent, risk }) =>
      `${capital(scent)}: ${scentRisks[risk]} Gloves; dose by its IFRA certificate (soap: category 9), not by nose, and stay under it.`,
  },
  refusals: {
    'scent-needs-certificate': ({ name: scent, risk }) => spaced`
      ${capital(scent)}: ${scentRisks[risk]} No grams without its limit: find the most for soap on its IFRA
      certificate (category 9), such as “0.5% ${scent}, certificate 0.5%”.
    `,
    'scent-over-certificate': ({ name: scent, percent, most }) =>
      `${pc(percent)} is more${scent === '' ? '' : ` ${scent}`} than its certificate allows in soap: ${pc(most)} at most. Write “${pc(most)}” or less.`,
    'scent-barred': ({ name: scent, reason }) => `${capital(scent)}: ${barredScents[reason]}`,
    'scent-as-additive': ({ text }) =>
      `“${text.trim()}” is a scent: write it with fragrance, as percent of the oils (“2% lavender”), so that its limit is minded.`,
  },
};
