import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isAction } from '../../src/conversation/command.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { INTENTS, PERMISSIONS, SCOPES } from '../../src/discord/invite.ts';

const registry = await readCommands(new URL('../../commands/', import.meta.url));
const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The README's table of commands, as the declarations have it. */
const table = [
  '| Ask | For |',
  '| --- | --- |',
  ...registry.commands.flatMap(({ name, purpose, does }) =>
    isAction(does)
      ? [`| \`/${name}\` | ${purpose.en} |`]
      : Object.entries(does).map(([sub, action]) => `| \`/${name} ${sub}\` | ${action.purpose.en} |`),
  ),
].join('\n');

test('the README lists the commands as they are declared', () => {
  const [, listed = ''] = /<!-- commands:.*?-->\n([\s\S]*?)\n?<!-- \/commands -->/.exec(readme) ?? [];
  expect(listed.trim()).toBe(table);
});

test('the README lists the permissions that the invite link asks for', () => {
  const [, listed = ''] = /<!-- permissions:.*?-->\n([\s\S]*?)\n?<!-- \/permissions -->/.exec(readme) ?? [];
  const rows = Object.entries(PERMISSIONS).map(
    ([name, purpose]) =>
      `| ${name.replaceAll(/(?<=[a-z])(?=[A-Z])/g, ' ').replace(' In ', ' in ')} | ${purpose} |`,
  );
  expect(listed.trim()).toBe(['| Permission | For |', '| --- | --- |', ...rows].join('\n'));
  for (const scope of SCOPES) expect(readme).toContain(`\`${scope}\``);
});

test('the README lists the intents that the client asks for', () => {
  const [, listed = ''] = /<!-- intents:.*?-->\n([\s\S]*?)\n?<!-- \/intents -->/.exec(readme) ?? [];
  const rows = Object.entries(INTENTS).map(
    ([name, purpose]) => `| ${name.replaceAll(/(?<=[a-z])(?=[A-Z])/g, ' ')} | ${purpose} |`,
  );
  expect(listed.trim()).toBe(['| Intent | For |', '| --- | --- |', ...rows].join('\n'));
});

test('the README lists what answers a member wherever they bring it along', () => {
  const [, listed = ''] = /<!-- anywhere -->([\s\S]*?)<!-- \/anywhere -->/.exec(readme) ?? [];
  const whole = registry.commands.flatMap(({ name, does }) => {
    if (isAction(does)) return does.anywhere ? [`/${name}`] : [];
    const subs = Object.entries(does).filter(([, { anywhere }]) => anywhere);
    if (subs.length === Object.keys(does).length) return [`/${name}`];
    return subs.map(([sub]) => `/${name} ${sub}`);
  });
  expect(listed).toBe(whole.map(path => `\`${path}\``).join(', '));
});

test('the README opens with the job in one paragraph', () => {
  const [title, job = ''] = readme.split('\n\n');
  expect(title).toBe('# Tintmoot');
  expect(job).toMatch(/colour/);
  expect(job).not.toContain('\n');
});
