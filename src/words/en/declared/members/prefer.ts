import type { Language } from '../../../sentence.ts';

const languages: Readonly<Record<Language, string>> = { en: 'English', es: 'Spanish' };

/** What `/prefer` says of itself where it is declared. */
export const says = {
  purpose: 'Your spoons, units and language. Without options: what is set now',
  spoons: {
    says: 'The spoons and cups in your kitchen',
    choices: {
      us: 'US: 4.93 ml teaspoon, 237 ml cup',
      label: 'Label: 5 ml teaspoon, 240 ml cup',
      metric: 'Metric: 5 ml teaspoon, 250 ml cup',
    },
  },
  temperature: {
    says: 'Which temperature comes first',
    choices: { celsius: 'Celsius', fahrenheit: 'Fahrenheit' },
  },
  mass: { says: 'Which weight comes first', choices: { grams: 'grams', ounces: 'ounces' } },
  language: { says: 'The language I answer you in', choices: languages },
  jars: {
    says: 'Who sees an answer that names a jar of yours',
    choices: { private: 'Only me', shown: 'The whole group' },
  },
  zone: 'Your time zone, for reminders: “Europe/Madrid”. UTC unless you say',
  hour: 'At which hour reminders of your batches come. 9 unless you say',
  owned: 'The spoons you own: “1 tsp, 1/2, 1/4, 1/8”. “all” for every one',
  scale: 'What your scale steps in, grams: 1, 0.1 or 0.01',
  answers: {
    says: 'Answers short with folds to open, or whole at once',
    choices: { short: 'Short, the rest unfolds', whole: 'Whole' },
  },
};
