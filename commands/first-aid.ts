import { action, command } from '../src/conversation/command.ts';
import { firstAidReply, shareFirstAid } from '../src/conversation/first-aid.ts';
import { choice } from '../src/conversation/option.ts';
import { EMERGENCY_IDS } from '../src/engine/hazards/index.ts';

export default command(
  'first-aid',
  action({
    purpose: {
      en: 'Lye, fumes or fresh soap hurt somebody: what to do now',
      es: 'La sosa, sus vapores o el jabón fresco dañaron a alguien: qué hacer ya',
    },
    seenBy: 'group',
    options: {
      what: choice(
        { en: 'What happened', es: 'Qué pasó' },
        {
          'lye-swallowed': { en: 'Swallowed, or in the mouth', es: 'Tragado, o en la boca' },
          'lye-eye': { en: 'In an eye', es: 'En un ojo' },
          'lye-skin': { en: 'On skin or clothes', es: 'En la piel o la ropa' },
          'fumes-inhaled': { en: 'Fumes breathed in', es: 'Vapores respirados' },
          'hydrogen-sulfide': { en: 'Rotten-egg smell', es: 'Olor a huevo podrido' },
          'hydrogen-from-metal': {
            en: 'Aluminium, zinc or tin met lye',
            es: 'Aluminio, zinc o estaño con sosa',
          },
          'lye-eruption': {
            en: 'The jug boils, smokes or melts',
            es: 'La jarra hierve, humea o se derrite',
          },
          'animal-exposed': {
            en: 'An animal met lye or raw soap',
            es: 'Un animal tocó sosa o jabón crudo',
          },
          'skin-reaction': { en: 'Rash or itch from soap', es: 'Sarpullido o picor por el jabón' },
        },
      ).optional(),
    },
    answer({ what }, { say, locale }) {
      if (what !== undefined) return firstAidReply([what], { say, locale });
      return {
        kind: 'reply',
        headline: say.firstAid.which,
        data: { emergencies: EMERGENCY_IDS },
        blocks: [
          {
            kind: 'rows',
            rows: EMERGENCY_IDS.map(id => `/first-aid what:${id} · ${say.firstAid.names[id]}`),
          },
        ],
        cautions: [],
      };
    },
  }),
  { followUps: { share: shareFirstAid } },
);
