import { switches } from './messages.ts';

/*
 * What stands in the place of `src/engine/remembered.ts` while mutants are tried (`setup.ts`): what was read before a change was
 * switched on would be told again, and the change never come by. So each run of a test remembers for itself alone, as a process that has
 * just begun does; without any memory a question is read by its dozens of readers dozens of times.
 */
type Reader = <Read>(read: (text: string) => Read) => (text: string) => Read;

const withinOneRun: Reader = read => {
  const known = new Map<string, { readonly it: ReturnType<typeof read> }>();
  let run: number | undefined;
  return text => {
    const now = switches().run;
    if (now !== run) {
      known.clear();
      run = now;
    }
    const before = known.get(text);
    if (before) return before.it;
    const it = read(text);
    known.set(text, { it });
    return it;
  };
};

export const remembered: Reader = withinOneRun;
export const readOnce: Reader = withinOneRun;
export const rememberedWord: Reader = withinOneRun;
