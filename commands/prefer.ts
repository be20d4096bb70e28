import { action, command } from '../src/conversation/command.ts';
import { choice, number, text, whole } from '../src/conversation/option.ts';
import { zoneOf } from '../src/engine/challenges/wall-time.ts';
import type { Language } from '../src/engine/language.ts';
import { parseOwnedSpoons } from '../src/engine/quantities/owned-spoons.ts';
import { SPOONS } from '../src/engine/quantities/spoons.ts';
import { prefer } from '../src/records/preferences.ts';
import { wordsIn } from '../src/words/index.ts';

export default command(
  'prefer',
  action({
    purpose: {
      en: 'Your spoons, units and language. Without options: what is set now',
      es: 'Tus cucharas, unidades e idioma. Sin opciones: lo que hay ahora',
    },
    seenBy: 'asker',
    options: {
      spoons: choice(
        { en: 'The spoons and cups in your kitchen', es: 'Las cucharas y tazas de tu cocina' },
        {
          us: {
            en: 'US: 4.93 ml teaspoon, 237 ml cup',
            es: 'EE. UU.: cucharadita de 4,93 ml, taza de 237 ml',
          },
          label: {
            en: 'Label: 5 ml teaspoon, 240 ml cup',
            es: 'Etiqueta: cucharadita de 5 ml, taza de 240 ml',
          },
          metric: {
            en: 'Metric: 5 ml teaspoon, 250 ml cup',
            es: 'Métrica: cucharadita de 5 ml, taza de 250 ml',
          },
        },
      ).optional(),
      temperature: choice(
        { en: 'Which temperature comes first', es: 'Qué temperatura va primero' },
        { celsius: { en: 'Celsius', es: 'Celsius' }, fahrenheit: { en: 'Fahrenheit', es: 'Fahrenheit' } },
      ).optional(),
      mass: choice(
        { en: 'Which weight comes first', es: 'Qué peso va primero' },
        { grams: { en: 'grams', es: 'gramos' }, ounces: { en: 'ounces', es: 'onzas' } },
      ).optional(),
      language: choice<Language>(
        { en: 'The language I answer you in', es: 'El idioma en que te respondo' },
        { en: { en: 'English', es: 'Inglés' }, es: { en: 'Spanish', es: 'Español' } },
      ).optional(),
      jars: choice(
        {
          en: 'Who sees an answer that names a jar of yours',
          es: 'Quién ve una respuesta que nombra un bote tuyo',
        },
        {
          private: { en: 'Only me', es: 'Solo yo' },
          shown: { en: 'The whole group', es: 'Todo el grupo' },
        },
      ).optional(),
      zone: text(
        {
          en: 'Your time zone, for reminders: “Europe/Madrid”. UTC unless you say',
          es: 'Tu zona horaria, para avisos: «Europe/Madrid». UTC si no dices nada',
        },
        { most: 60 },
      ).optional(),
      hour: whole(
        {
          en: 'At which hour reminders of your batches come. 9 unless you say',
          es: 'A qué hora llegan los avisos de tus lotes. Las 9 si no dices nada',
        },
        { least: 0, most: 23 },
      ).optional(),
      owned: text(
        {
          en: 'The spoons you own: “1 tsp, 1/2, 1/4, 1/8”. “all” for every one',
          es: 'Las cucharas que tienes: «1 cdta, 1/2, 1/4, 1/8». «todas» si tienes cada una',
        },
        { most: 100 },
      ).optional(),
      scale: number(
        {
          en: 'What your scale steps in, grams: 1, 0.1 or 0.01',
          es: 'De cuánto en cuánto marca tu báscula, gramos: 1, 0,1 o 0,01',
        },
        { least: 0.001, most: 5 },
      ).optional(),
      answers: choice(
        {
          en: 'Answers short with folds to open, or whole at once',
          es: 'Respuestas cortas que se despliegan, o enteras de una vez',
        },
        {
          short: { en: 'Short, the rest unfolds', es: 'Cortas, el resto se despliega' },
          whole: { en: 'Whole', es: 'Enteras' },
        },
      ).optional(),
    },
    async answer({ spoons, temperature, mass, language, jars, zone, hour, owned, scale, answers }, context) {
      const { store, asker } = context;
      const now = await prefer(store, asker.id, {
        ...(spoons && { spoons }),
        ...(temperature && { temperature }),
        ...(mass && { mass }),
        ...(language && { language }),
        ...(jars && { jars }),
        ...(zone && { zone: zoneOf(zone).name }),
        ...(hour !== undefined && { hour }),
        ...(owned !== undefined && { owned: parseOwnedSpoons(owned) }),
        ...(scale !== undefined && { scale }),
        ...(answers && { answers }),
      });
      // Whoever changes the language reads the answer in the new one.
      const say = wordsIn(now.language ?? context.language);
      return {
        kind: 'reply',
        headline: say.prefer.headline,
        data: now,
        blocks: [
          {
            kind: 'rows',
            rows: [
              say.prefer.spoons[now.spoons],
              say.prefer.owned({
                spoons: (now.owned ?? []).map(spoon => say.quantities.spoon(spoon)),
                all: now.owned === undefined || now.owned.length === SPOONS.length,
              }),
              say.prefer.scale({ grams: now.scale }),
              say.prefer.temperature[now.temperature],
              say.prefer.mass[now.mass],
              now.language ? say.prefer.language[now.language] : say.prefer.platformLanguage,
              say.privacy.jars[now.jars],
              say.prefer.reminders({ hour: now.hour, zone: now.zone }),
              say.prefer.answers[now.answers],
            ],
          },
        ],
        cautions: [],
      };
    },
  }),
);
