import type { prefer as en } from '../../en/members/prefer.ts';

import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('es');
const list = new Intl.ListFormat('es');

export const prefer: typeof en = {
  headline: 'Así te respondo.',
  spoons: {
    us: 'Cucharas: EE. UU., cucharadita de 4,93 ml, taza de 237 ml',
    label: 'Cucharas: etiqueta nutricional, cucharadita de 5 ml, taza de 240 ml',
    metric: 'Cucharas: métricas, cucharadita de 5 ml, taza de 250 ml',
  },
  owned: ({ spoons, all }) =>
    all ? 'Tienes: todas las cucharas, hasta 1/32 cdta' : `Tienes: ${list.format(spoons)}`,
  scale: ({ grams }) =>
    grams === undefined
      ? 'Báscula: 0,1 g, si el plan no dice otra cosa'
      : `Báscula: pasos de ${plain(grams)} g`,
  temperature: {
    celsius: 'Temperatura: primero °C, al lado °F',
    fahrenheit: 'Temperatura: primero °F, al lado °C',
  },
  mass: { grams: 'Peso: primero gramos, al lado onzas', ounces: 'Peso: primero onzas, al lado gramos' },
  language: { en: 'Idioma: inglés', es: 'Idioma: español' },
  platformLanguage: 'Idioma: el de tu aplicación de chat',
  reminders: (v: { hour: number; zone: string | undefined }) =>
    `Avisos de lotes: a las ${v.hour}:00, ${v.zone ?? 'UTC (di tu zona para tenerlos a tu hora)'}`,
  answers: { short: 'Respuestas: cortas, el resto se despliega', whole: 'Respuestas: enteras de una vez' },
};
