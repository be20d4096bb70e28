import { quoted } from '../../../engine/text/lines/option-line.ts';
import type { Action } from '../declared.ts';
import type { Typed } from './line.ts';
import type { Suggestion } from './suggest.ts';

type Suggest = (
  action: Action,
  values: ReadonlyMap<string, string>,
  option: string,
) => Promise<readonly Suggestion[]>;

/** What fits where the caret stands in the line: commands, then options, then values. */
export async function lineSuggestions(
  { action, values, at }: Typed,
  actions: readonly Action[],
  suggest: Suggest,
): Promise<readonly Suggestion[]> {
  if (at.kind === 'command') return commandsLike(at.typed, actions);
  if (!action) return [];
  if (at.kind === 'option')
    return action.options
      .filter(
        ({ name, kind }) => kind !== 'file' && !values.has(name) && name.startsWith(at.typed.toLowerCase()),
      )
      .map(({ name, says }) => ({ label: `${name}:`, note: says, value: `${name}:` }));
  const option = action.options.find(({ name }) => name === at.option);
  if (!option) return [];
  const offered = option.completes
    ? await suggest(action, values, option.name)
    : option.choices.filter(({ label }) => label.toLowerCase().startsWith(at.typed.toLowerCase()));
  return offered
    .filter(({ value }) => value !== at.typed)
    .map(one => ({ ...one, value: `${quoted(one.value)} ` }));
}

function commandsLike(typed: string, actions: readonly Action[]): readonly Suggestion[] {
  if (typed !== '' && !typed.startsWith('/')) return [];
  const wanted = typed.slice(1).toLowerCase();
  const fits = actions.filter(({ path }) => path.startsWith(wanted));
  const near = fits.length > 0 ? fits : actions.filter(({ path }) => path.includes(wanted));
  return near.map(({ path, says }) => ({ label: `/${path}`, note: says, value: `/${path} ` }));
}
