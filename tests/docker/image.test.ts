import { readFileSync } from 'node:fs';
import { validate } from 'dockerfile-utils';
import { describe, expect, test } from 'vitest';
import { readEnvironment, SETTINGS } from '../../src/environment.ts';

const read = (file: string) => readFileSync(new URL(`../../docker/${file}`, import.meta.url), 'utf8');
const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  engines: { node: string };
  devDependencies: Record<string, string>;
};

describe('the image', () => {
  const dockerfile = read('Dockerfile');

  test('has no fault that a linter finds', () => {
    expect(validate(dockerfile)).toEqual([]);
  });

  test('runs the major version of Node that the tests run on, and not as root', () => {
    const [major] = (manifest.devDependencies.node ?? '').split('.');
    expect(dockerfile.match(/^FROM node:(\d+)/gm)).toEqual([`FROM node:${major}`, `FROM node:${major}`]);
    expect(dockerfile).toMatch(/^USER node$/m);
  });

  test('copies only what its ignore file lets in', () => {
    const allowed = [...read('Dockerfile.dockerignore').matchAll(/^!(.+)$/gm)].map(match => match[1]);
    const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(
      match => match[1]?.split(' ') ?? [],
    );
    expect(copied.filter(path => !allowed.includes(path))).toEqual([]);
  });

  test('tells whether it is alive, where its health is served', () => {
    const [, command] = /HEALTHCHECK .*\\\n\s+CMD (\[.+\])/.exec(dockerfile) ?? [];
    const [node, flag, script] = JSON.parse(command ?? '[]') as string[];
    expect([node, flag]).toEqual(['node', '-e']);
    expect(script).toContain('/healthz');
    const address = /TINTMOOT_OPERATIONS=(\S+)/.exec(dockerfile)?.[1];
    expect(readEnvironment({ TINTMOOT_OPERATIONS: address }).TINTMOOT_OPERATIONS).toEqual({
      host: '127.0.0.1',
      port: 9464,
    });
  });

  test.for(['compose.yaml', 'compose.shards.yaml', 'compose.valkey.yaml'])(
    '%s runs it with a read-only root, without privileges, and names only settings that there are',
    file => {
      const composed = read(file);
      for (const line of [
        'read_only: true',
        'cap_drop:',
        'no-new-privileges:true',
        'restart: unless-stopped',
      ])
        expect(composed).toContain(line);
      const named = [...composed.matchAll(/^\s+((?:TINTMOOT|DISCORD)_\w+):/gm)].map(match => match[1] ?? '');
      expect(named.length).toBeGreaterThan(2);
      expect(SETTINGS).toEqual(expect.arrayContaining(named));
    },
  );
});
