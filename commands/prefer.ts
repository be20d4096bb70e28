import { action, command } from '../src/conversation/command.ts';
import { choice, number, text, whole } from '../src/conversation/option.ts';
import { zoneOf } from '../src/engine/challenges/wall-time.ts';
import type { Language } from '../src/engine/language.ts';
import { parseOwnedSpoons } from '../src/engine/quantities/owned-spoons.ts';
import { SPOONS } from '../src/engine/quantities/spoons.ts';
import { prefer } from '../src/records/preferences.ts';
import { phrases } from '../src/words/declared.ts';
import { wordsIn } from '../src/words/index.ts';

const says = phrases('prefer');

export default command(
  'prefer',
  action({
    purpose: says.purpose,
    seenBy: 'asker',
    options: {
      spoons: choice(says.spoons).optional(),
      temperature: choice(says.temperature).optional(),
      mass: choice(says.mass).optional(),
      language: choice<Language>(says.language).optional(),
      jars: choice(says.jars).optional(),
      zone: text(says.zone, { most: 60 }).optional(),
      hour: whole(says.hour, { least: 0, most: 23 }).optional(),
      owned: text(says.owned, { most: 100 }).optional(),
      scale: number(says.scale, { least: 0.001, most: 5 }).optional(),
      answers: choice(says.answers).optional(),
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
