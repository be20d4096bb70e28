import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { seal } from '../../../src/conversation/follow-ups/follow.ts';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import type { Member, MessageView } from '../../../src/loopback/interface.ts';
import { retention, sweep } from '../../../src/records/privacy/retention.ts';
import { openRoom, registry } from '../../loopback/room.ts';
import { barPhoto } from '../diagnose/photos.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
let bar: Uint8Array;
beforeAll(async () => {
  // With what a camera writes beside the picture.
  bar = await sharp(await barPhoto('crackle-network'))
    .withExif({ IFD0: { Make: 'PLACE-AND-TIME' }, IFD3: { GPSLatitude: '51/1 30/1 0/1' } })
    .jpeg({ quality: 95 })
    .toBuffer();
});
// After the drawing, which holds this thread up: whoever waits for the store meanwhile would be told that it is away.
beforeEach(async () => {
  room = await openRoom({ host: { acknowledgeWithinMs: 20_000 } });
});
afterEach(async () => {
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});

const control = (message: MessageView, label: RegExp) => {
  const found = message.controls.find(one => label.test(one.label));
  if (!found?.customId)
    throw new Error(`no ${label} among ${message.controls.map(one => one.label).join(', ')}`);
  return found.customId;
};
const labels = (message: MessageView) => message.controls.map(one => one.label);
const GIVE = /keep my picture/;

async function toldOf(who: Member, cause: string, photo?: Uint8Array): Promise<MessageView> {
  const asked = await who.run('/diagnose', {
    words: 'it got hot, a crackled net of fine lines in the white part',
    ...(photo && { photo: { name: 'bar.jpg', bytes: photo } }),
  });
  return who.choose(asked, control(asked, /turn out/), [cause]);
}
/** By the form, as after weeks of cure: nothing has to be read for it. */
const give = async (who: Member, cause: string) => {
  const told = await toldOf(who, cause);
  const form = await who.pressForForm(told, control(told, GIVE));
  return who.submit(form, { photo: [{ name: 'later.jpg', bytes: bar }] });
};
const kept = async (group = room.group.id) =>
  (await room.store.range(`flaw-picture/${group}/`, `flaw-picture/${group}0`, 100)).length;

/** Files of an archive, by its central directory (ZIP File Format Specification 6.3.10, 4.3.12 and 4.3.16). */
function unzipped(bytes: Uint8Array): ReadonlyMap<string, Buffer> {
  const all = Buffer.from(bytes);
  const end = all.length - 22;
  expect(all.readUInt32LE(end)).toBe(0x06054b50);
  const files = new Map<string, Buffer>();
  let at = all.readUInt32LE(end + 16);
  for (let i = 0; i < all.readUInt16LE(end + 10); i++) {
    expect(all.readUInt32LE(at)).toBe(0x02014b50);
    const [size, length, local] = [
      all.readUInt32LE(at + 24),
      all.readUInt16LE(at + 28),
      all.readUInt32LE(at + 42),
    ];
    const name = all.toString('utf8', at + 46, at + 46 + length);
    const start = local + 30 + all.readUInt16LE(local + 26) + all.readUInt16LE(local + 28);
    const file = all.subarray(start, start + size);
    expect(crc32(file)).toBe(all.readUInt32LE(at + 16));
    files.set(name, file);
    at += 46 + length;
  }
  expect(at).toBe(end);
  return files;
}

describe('consent', () => {
  test('nothing of a picture is kept without it', async () => {
    const told = await toldOf(room.member, 'white-pigment-crackle', bar);
    expect(told.text).toMatch(/without its place and time[\s\S]*without your name/);
    expect(labels(told)).toEqual(['Yes, keep my picture']);
    expect(await kept()).toBe(0);
    const everything = await room.store.range('!', '~', 1000);
    // A JPEG begins with these bytes, in base64.
    expect(JSON.stringify(everything)).not.toContain('/9j/');
  });

  test('the picture is kept with its cause, and without what the camera wrote', async () => {
    const told = await toldOf(room.member, 'white-pigment-crackle', bar);
    const answer = await room.member.press(told, control(told, GIVE));
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(/Kept, as white-pigment crackle/);
    expect(await kept()).toBe(1);
    const [entry] = await room.store.range('flaw-picture/', 'flaw-picture0', 1);
    const { base64, cause, width, height } = entry!.value as {
      readonly base64: string;
      readonly cause: string;
      readonly width: number;
      readonly height: number;
    };
    expect(cause).toBe('white-pigment-crackle');
    const jpeg = Buffer.from(base64, 'base64');
    const meta = await sharp(jpeg).metadata();
    expect([meta.width, meta.height, meta.exif]).toEqual([width, height, undefined]);
    expect(Buffer.from(bar).includes('PLACE-AND-TIME')).toBe(true);
    expect(jpeg.includes('PLACE-AND-TIME')).toBe(false);
    await room.member.press(answer, control(answer, /Take it back/));
    expect(await kept()).toBe(0);
  });

  test('weeks later the picture is asked for in a form', async () => {
    const told = await toldOf(room.member, 'soda-ash');
    const form = await room.member.pressForForm(told, control(told, GIVE));
    expect(await kept()).toBe(0);
    const answer = await room.member.submit(form, { photo: [{ name: 'later.jpg', bytes: bar }] });
    expect(answer.text).toMatch(/Kept, as soda ash/);
    expect(await kept()).toBe(1);
    await room.member.press(answer, control(answer, /Take it back/));
  });

  test('a file that is no picture is refused, and nothing is kept', async () => {
    const told = await toldOf(room.member, 'soda-ash');
    const form = await room.member.pressForForm(told, control(told, GIVE));
    const answer = await room.member.submit(form, {
      photo: [{ name: 'later.jpg', bytes: new TextEncoder().encode('no picture') }],
    });
    expect(answer.text).toMatch(/can’t open that as a photo/);
    expect(await kept()).toBe(0);
  });

  test('where only the member let us in, nothing is offered', async () => {
    const guest = room.host.addGuild({ name: 'Elsewhere', foreign: true }).addMember({ name: 'Ana' });
    expect(labels(await toldOf(guest, 'soda-ash'))).toEqual([]);
  });
});

describe('taking back', () => {
  test('a cause told anew changes the label, and is not asked about again', async () => {
    const asked = await room.member.run('/diagnose', {
      words: 'it got hot, a crackled net of fine lines in the white part',
    });
    const told = await room.member.choose(asked, control(asked, /turn out/), ['soda-ash']);
    const form = await room.member.pressForForm(told, control(told, GIVE));
    await room.member.submit(form, { photo: [{ name: 'later.jpg', bytes: bar }] });
    const again = await room.member.choose(asked, control(asked, /turn out/), ['glycerin-rivers']);
    expect(labels(again)).toEqual([]);
    expect((await room.member.run('/flaws given')).text).toMatch(/1 picture of yours[\s\S]*glycerin rivers/);
  });

  test('all at once by its giver, and nobody else’s', async () => {
    await give(room.member, 'glycerin-rivers');
    await give(room.steward, 'soda-ash');
    const own = await room.member.run('/flaws given');
    expect(own.ephemeral).toBe(true);
    const gone = await room.member.press(own, control(own, /all of them/));
    expect(gone.text).toMatch(/the picture is erased/);
    expect(await kept()).toBe(1);
    expect((await room.member.run('/flaws given')).text).toMatch(/no picture of yours/);
    const stewards = await room.steward.run('/flaws given');
    await room.steward.press(stewards, control(stewards, /all of them/));
    expect(await kept()).toBe(0);
  });

  test('erased with the member, in every group', async () => {
    const other = room.host.addGuild({ name: 'Tuesday soapers' });
    const there = other.addMember({ name: 'Bram', id: room.member.id });
    await expect.poll(() => room.connection.client.guilds.cache.has(other.id)).toBe(true);
    await give(room.member, 'soda-ash');
    await give(there, 'ricing');
    expect([await kept(), await kept(other.id)]).toEqual([1, 1]);
    const exported = await room.member.run('/privacy export');
    expect(Buffer.from(exported.files[0]!.bytes()).toString()).toContain('/9j/');
    const asked = await room.member.run('/privacy erase', { what: 'flaws' });
    await room.member.press(asked, control(asked, /Erase/));
    expect([await kept(), await kept(other.id)]).toEqual([0, 0]);
  });

  test('left: not exported from the first sweep on, erased after its days', async () => {
    const guest = room.group.addMember({ name: 'Cleo' });
    await give(guest, 'soda-ash');
    const swept = (days: number) =>
      sweep({
        store: room.store,
        group: room.group.id,
        now: new Date(Date.now() + days * 86_400_000),
        hasMember: async member => member !== guest.id,
      });
    expect((await room.steward.run('/flaws pictures')).text).toMatch(/^## 1 picture, number 1/);
    await swept(0);
    expect((await room.steward.run('/flaws pictures')).text).toMatch(/Nobody here has given/);
    await swept(retention.left - 1);
    expect(await kept()).toBe(1);
    await swept(retention.left + 1);
    expect(await kept()).toBe(0);
  });
});

describe('the set', () => {
  test('is for stewards', async () => {
    expect((await room.member.run('/flaws pictures')).text).toMatch(/steward/i);
  });

  test('holds the pictures of its own group with their causes, and nobody’s name', async () => {
    const other = room.host.addGuild({ name: 'Wednesday soapers' });
    const there = other.addMember({ name: 'Dana' });
    await expect.poll(() => room.connection.client.guilds.cache.has(other.id)).toBe(true);
    await give(there, 'ricing');
    await give(room.member, 'white-pigment-crackle');
    await give(room.steward, 'soda-ash');
    const answer = await room.steward.run('/flaws pictures');
    expect(answer.ephemeral).toBe(true);
    const [file] = answer.files;
    expect([file?.name, file?.contentType]).toEqual(['bars-from-001.zip', 'application/zip']);
    const files = unzipped(file!.bytes());
    const lines = files.get('labels-from-001.jsonl')!.toString().trim().split('\n');
    const told = lines.map(line => JSON.parse(line) as { file: string; cause: string; width: number });
    expect(told.map(({ cause }) => cause).sort()).toEqual(['soda-ash', 'white-pigment-crackle']);
    for (const one of told) {
      const { width, exif } = await sharp(files.get(one.file)!).metadata();
      expect([width, exif]).toEqual([one.width, undefined]);
    }
    expect(files.size).toBe(3);
    const whole = Buffer.from(file!.bytes());
    for (const { id, name } of [room.member, room.steward])
      expect([whole.includes(id), whole.includes(name)]).toEqual([false, false]);
  });
});

describe('one picture out of the set', () => {
  beforeEach(async () => {
    await give(room.member, 'white-pigment-crackle');
    await give(room.steward, 'soda-ash');
  });
  const named = async () => {
    const { files } = await room.steward.run('/flaws pictures');
    return [...unzipped(files[0]!.bytes()).keys()].filter(name => name.endsWith('.jpg'));
  };

  test('goes by the name that it has in the file, for stewards alone', async () => {
    const [first, second] = await named();
    expect((await room.member.run('/flaws drop', { file: first! })).text).toMatch(/steward/i);
    const gone = await room.steward.run('/flaws drop', { file: ` ${first!.toUpperCase()} ` });
    expect(gone.ephemeral).toBe(true);
    expect(gone.text).toMatch(
      /Erased from the set: the picture kept as (?:white-pigment crackle|soda ash)\. Files exported before/,
    );
    expect(await named()).toEqual([second]);
    expect(await kept()).toBe(1);
  });

  test('of another name, or twice, changes nothing and says which names there are', async () => {
    const [left, other] = await named();
    for (const picture of ['🧼', 'constructor', '../etc', 'x'.repeat(60)])
      expect((await room.steward.run('/flaws drop', { file: picture })).text).toMatch(
        /Nothing in the set is called[\s\S]*\/flaws pictures/,
      );
    expect(await kept()).toBe(2);
    await Promise.all([1, 2].map(() => room.steward.run('/flaws drop', { file: left! })));
    expect(await named()).toEqual([other]);
  });
});

test('every button’s id fits the platform’s 100 characters', () => {
  const holder = { group: '1'.repeat(20), asker: '2'.repeat(20) };
  for (const name of ['diagnose.give', 'diagnose.filled'])
    for (const cause of [...CAUSE_IDS, 'something-else']) {
      const follow = { followUp: registry.followUps.get(name)!, args: ['9'.repeat(20), cause] };
      expect(
        seal(follow, name, { key: new Uint8Array(32), holder, at: Date.now() }).length,
      ).toBeLessThanOrEqual(100);
    }
});
