import { readFileSync } from 'node:fs';
import { validate } from 'dockerfile-utils';
import { describe, expect, test } from 'vitest';

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
});
