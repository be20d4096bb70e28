import { numbersIn } from '../../numbers.ts';
import type { Language } from '../../sentence.ts';

const { plain } = numbersIn('en');
const list = new Intl.ListFormat('en');

const language: Readonly<Record<Language, string>> = { en: 'Language: English', es: 'Language: Spanish' };

export const prefer = {
  headline: 'This is how I answer you.',
  spoons: {
    us: 'Spoons: US, 4.93 ml teaspoon, 237 ml cup',
    label: 'Spoons: nutrition label, 5 ml teaspoon, 240 ml cup',
    metric: 'Spoons: metric, 5 ml teaspoon, 250 ml cup',
  },
  owned: (v: { spoons: readonly string[]; all: boolean }) =>
    v.all ? 'You own: every spoon down to 1/32 tsp' : `You own: ${list.format(v.spoons)}`,
  scale: (v: { grams: number | undefined }) =>
    v.grams === undefined ? 'Scale: 0.1 g, unless a plan says else' : `Scale: steps of ${plain(v.grams)} g`,
  temperature: {
    celsius: 'Temperature: °C first, °F beside it',
    fahrenheit: 'Temperature: °F first, °C beside it',
  },
  mass: {
    grams: 'Weight: grams first, ounces beside them',
    ounces: 'Weight: ounces first, grams beside them',
  },
  language,
  platformLanguage: 'Language: as your chat app is set',
  reminders: (v: { hour: number; zone: string | undefined }) =>
    `Reminders of batches: at ${v.hour}:00, ${v.zone ?? 'UTC (set your zone to have them at your hour)'}`,
  answers: { short: 'Answers: short, the rest unfolds', whole: 'Answers: whole at once' },
};
