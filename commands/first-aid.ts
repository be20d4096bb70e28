import { action, command } from '../src/conversation/command.ts';
import { firstAidReply, shareFirstAid } from '../src/conversation/first-aid/first-aid.ts';
import { text } from '../src/conversation/option.ts';
import {
  EMERGENCY_IDS,
  type EmergencyId,
  emergencyById,
  emergencyNamed,
  helpFor,
  isRisingInMould,
  readEmergencies,
} from '../src/engine/hazards/index.ts';
import { phrases } from '../src/words/declared.ts';
import type { Words } from '../src/words/index.ts';

const says = phrases('first-aid');

/** The emergencies meant by an id, by a name in the list, or by words of one's own; none where nothing is understood. */
function meantBy(what: string, say: Words): readonly EmergencyId[] {
  const listed = EMERGENCY_IDS.find(id => say.firstAid.names[id].toLowerCase() === what.trim().toLowerCase());
  const named = emergencyById(what) ?? listed;
  if (named) return [named];
  const told = readEmergencies(what).map(({ id }) => id);
  const inAWord = emergencyNamed(what);
  return told.length > 0 || inAWord === undefined ? told : [inAWord];
}

export default command(
  'first-aid',
  action({
    purpose: says.purpose,
    anywhere: true,
    seenBy: 'group',
    options: {
      what: text(says.what).optional(),
    },
    completes: {
      what: (typed, { say }) => {
        const names = EMERGENCY_IDS.map(id => ({ name: say.firstAid.names[id], value: id }));
        const fits = names.filter(({ name, value }) =>
          `${name} ${value}`.toLowerCase().includes(typed.toLowerCase()),
        );
        return fits.length > 0 ? fits : names;
      },
    },
    answer({ what }, { say, locale }) {
      const ids = what === undefined ? [] : meantBy(what, say);
      if (ids.length > 0)
        return firstAidReply(ids, { say, locale, inMould: what !== undefined && isRisingInMould(what) });
      const help = helpFor(locale);
      const call = help
        ? say.firstAid.number({ number: help.emergency, country: help.country })
        : say.firstAid.yourNumber;
      return {
        kind: 'reply',
        headline: say.firstAid.which,
        data: { emergencies: EMERGENCY_IDS },
        blocks: [
          { kind: 'text', text: say.firstAid.waterFirst, firm: true },
          { kind: 'text', text: say.firstAid.callNow({ call }) },
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
