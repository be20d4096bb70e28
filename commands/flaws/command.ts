import { action, commandGroup, followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { infer, MOST_COUNTED } from '../../src/engine/flaws/inference.ts';
import * as flaws from '../../src/records/flaws/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { pictureActions, pictureFollowUps } from './pictures.ts';

const says = phrases('flaws');

const scopeOf = ({ store, group }: Context): flaws.FlawScope => ({ store, group });

const forget = followUp({
  seenBy: 'asker',
  access: 'steward',
  replaces: true,
  hours: 1,
  args: {},
  async answer(_, context) {
    const count = await flaws.forgetOutcomes(scopeOf(context));
    const headline = context.say.flaws.learned.forgotten({ count });
    return { kind: 'reply', headline, data: { forgotten: count }, blocks: [], cautions: [] };
  },
});

const nothing = ({ say }: Context): Reply => ({
  kind: 'reply',
  headline: say.flaws.learned.none,
  data: { cases: 0, causes: [] },
  blocks: [],
  cautions: [],
});

export default commandGroup(
  'flaws',
  says.purpose,
  {
    learned: action({
      purpose: says.learned.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: {},
      async answer(_, context) {
        const { say } = context;
        const { cases, counts, turnedOut } = await flaws.learnedIn(scopeOf(context));
        if (cases === 0) return nothing(context);
        const [before, after] = [infer([]), infer([], { turnedOut })];
        const percent = (chance: number) => 100 * chance;
        const causes = flaws.outcomes
          .map(id => ({ id, count: counts[id] ?? 0 }))
          .filter(({ count }) => count > 0)
          .sort((a, b) => b.count - a.count);
        return {
          kind: 'reply',
          headline: say.flaws.learned.headline({ count: cases }),
          data: { cases, causes },
          blocks: [
            {
              kind: 'rows',
              rows: causes.map(({ id, count }) =>
                id === 'something-else'
                  ? say.flaws.learned.rowElse({ name: say.flaws.somethingElse, count })
                  : say.flaws.learned.row({
                      name: say.flaws.causes[id].name,
                      count,
                      before: percent(before.causes[id]),
                      after: percent(after.causes[id]),
                    }),
              ),
            },
            {
              kind: 'text',
              folds: true,
              text: say.flaws.learned.bounded({ most: MOST_COUNTED, each: flaws.MOST_OF_ONE_MEMBER }),
            },
          ],
          cautions: [],
        };
      },
    }),
    reset: action({
      purpose: says.reset.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: {},
      async answer(_, context) {
        const { say } = context;
        const { cases } = await flaws.learnedIn(scopeOf(context));
        if (cases === 0) return nothing(context);
        return {
          kind: 'reply',
          headline: say.flaws.learned.ask({ count: cases }),
          data: { cases },
          blocks: [{ kind: 'text', text: say.flaws.learned.askNote }],
          cautions: [],
          choices: [
            { kind: 'button', weight: 'danger', label: say.flaws.learned.forget, follow: forget.with({}) },
          ],
        };
      },
    }),
    ...pictureActions,
  },
  { followUps: { forget, ...pictureFollowUps } },
);
