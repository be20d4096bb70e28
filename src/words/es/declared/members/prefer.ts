import type { says as en } from '../../../en/declared/members/prefer.ts';

export const says: typeof en = {
  purpose: 'Tus cucharas, unidades e idioma. Sin opciones: lo que hay ahora',
  spoons: {
    says: 'Las cucharas y tazas de tu cocina',
    choices: {
      us: 'EE. UU.: cucharadita de 4,93 ml, taza de 237 ml',
      label: 'Etiqueta: cucharadita de 5 ml, taza de 240 ml',
      metric: 'Métrica: cucharadita de 5 ml, taza de 250 ml',
    },
  },
  temperature: {
    says: 'Qué temperatura va primero',
    choices: { celsius: 'Celsius', fahrenheit: 'Fahrenheit' },
  },
  mass: { says: 'Qué peso va primero', choices: { grams: 'gramos', ounces: 'onzas' } },
  language: { says: 'El idioma en que te respondo', choices: { en: 'Inglés', es: 'Español' } },
  jars: {
    says: 'Quién ve una respuesta que nombra un bote tuyo',
    choices: { private: 'Solo yo', shown: 'Todo el grupo' },
  },
  zone: 'Tu zona horaria, para avisos: «Europe/Madrid». UTC si no dices nada',
  hour: 'A qué hora llegan los avisos de tus lotes. Las 9 si no dices nada',
  owned: 'Las cucharas que tienes: «1 cdta, 1/2, 1/4, 1/8». «todas» si tienes cada una',
  scale: 'De cuánto en cuánto marca tu báscula, gramos: 1, 0,1 o 0,01',
  answers: {
    says: 'Respuestas cortas que se despliegan, o enteras de una vez',
    choices: { short: 'Cortas, el resto se despliega', whole: 'Enteras' },
  },
};
