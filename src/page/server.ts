import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { freshSecret, type Host, isSecret, type Member } from '../loopback/index.ts';
import { LOCALES } from '../words/locales.ts';
import { type Doing, perform } from './actions.ts';
import { readAssets } from './assets.ts';
import { isFromHere, protect } from './guard.ts';
import type { Asked, Change, Language, NewSeat, PageAction, Suggested, Typing } from './model.ts';
import { readMultipart } from './multipart.ts';
import { addSeat, memberAt } from './seats.ts';
import { suggestedColour } from './suggested-colour.ts';
import { View } from './view.ts';

export type PageOptions = {
  /** 0 for any free port; another is given up for a free one when it is taken. */
  readonly port: number;
  /** What interactions of an earlier run asked, by their ids. */
  readonly asked?: ReadonlyMap<string, Asked>;
  /** Hears what an interaction asked, to remember it. */
  readonly onAsked?: (interaction: string, asked: Asked) => void;
  /** The language in which a member has just chosen to be answered, if any: their page speaks it too. */
  readonly languageOf?: (member: string) => Promise<Language | undefined>;
};

export type Page = {
  /** `http://127.0.0.1:PORT/SECRET`; the secret is made at each start and nothing is answered without it. */
  readonly url: string;
  /** Tells the pages that the assistant answers from now on. */
  ready(): void;
  /** Tells what an interaction asked that was not started from the page. */
  noteAsked(interaction: string, asked: Asked): void;
  close(): Promise<void>;
};

/** Opens the room's page on 127.0.0.1, over a loopback host. */
export async function openPage(host: Host, options: PageOptions): Promise<Page> {
  const room = new RoomServer(host, options, await readAssets());
  await room.listen(options.port);
  return room;
}

type Assets = Awaited<ReturnType<typeof readAssets>>;

class RoomServer implements Page {
  readonly #host: Host;
  readonly #view: View;
  readonly #assets: Assets;
  readonly #server: Server;
  readonly #streams = new Map<ServerResponse, { group: string; member: string }>();
  readonly #onAsked: PageOptions['onAsked'];
  readonly #languageOf: PageOptions['languageOf'];
  readonly #secret = freshSecret();
  #port = 0;

  constructor(host: Host, { asked = new Map(), onAsked, languageOf }: PageOptions, assets: Assets) {
    this.#host = host;
    this.#assets = assets;
    this.#onAsked = onAsked;
    this.#languageOf = languageOf;
    this.#view = new View(host, asked);
    this.#server = createServer((request, response) => {
      this.#serve(request, response).catch(() => answer(response, 500, { why: 'fault' }));
    });
    host.subscribe(event => {
      for (const [stream, seat] of this.#streams) tell(stream, this.#view.change(event, seat));
      if (event.kind === 'interaction-failed')
        this.#tellMember(event.userId, { kind: 'settled', interaction: event.interactionId });
    });
  }

  get url(): string {
    return `http://127.0.0.1:${this.#port}/${this.#secret}`;
  }

  async listen(port: number): Promise<void> {
    await listenAt(this.#server, port).catch(error => {
      if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE' || port === 0) throw error;
      return listenAt(this.#server, 0);
    });
    this.#port = (this.#server.address() as AddressInfo).port;
  }

  ready(): void {
    this.#view.open();
    for (const stream of this.#streams.keys()) tell(stream, { kind: 'ready' });
  }

  noteAsked(interaction: string, asked: Asked): void {
    this.#view.note(interaction, asked);
    this.#onAsked?.(interaction, asked);
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise(resolve => this.#server.close(resolve));
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    protect(response);
    if (!isFromHere(request, this.#port)) return answer(response, 403, { why: 'elsewhere' });
    const url = new URL(request.url ?? '/', this.url);
    const [, given = '', ...path] = url.pathname.split('/');
    if (!isSecret(given, this.#secret)) return answer(response, 403, { why: 'secret' });
    // Its modules and addresses are relative to the folder that the secret is.
    if (path.length === 0)
      return void response.writeHead(308, { location: `${url.pathname}/${url.search}` }).end();
    url.pathname = `/${path.join('/')}`;
    switch (`${request.method} ${url.pathname}`) {
      case 'GET /changes':
        return this.#stream(url, request, response);
      case 'GET /seats':
        return answer(response, 200, this.#view.seats);
      case 'POST /seats':
        return await this.#addSeat(request, response);
      case 'POST /actions':
        return await this.#do(url, request, response);
      case 'POST /suggestions':
        return await this.#suggest(url, request, response);
      case 'POST /forms/closed':
        this.#view.closeForms(url.searchParams.get('member') ?? '');
        return answer(response, 200, { done: true });
    }
    if (request.method !== 'GET') return answer(response, 405, { why: 'method' });
    if (url.pathname.startsWith('/files/')) return this.#file(url, response);
    const asset = this.#assets.get(url.pathname);
    if (!asset) return answer(response, 404, { why: 'unknown' });
    response.writeHead(200, { 'content-type': asset.type }).end(asset.body);
  }

  /** Server-sent events: everything at first, then what changes for this seat. */
  #stream(url: URL, request: IncomingMessage, response: ServerResponse): void {
    const seat = seatIn(url);
    const snapshot = this.#view.snapshot(seat.group, seat.member);
    if (!snapshot) {
      answer(response, 404, { why: 'seat' });
      return;
    }
    response.writeHead(200, { 'content-type': 'text/event-stream; charset=utf-8' });
    tell(response, { kind: 'everything', snapshot });
    this.#streams.set(response, seat);
    request.once('close', () => this.#streams.delete(response));
  }

  async #do(url: URL, request: IncomingMessage, response: ServerResponse): Promise<void> {
    const multipart = await readMultipart(request);
    const { group, member: id } = seatIn(url);
    const member = memberAt(this.#host, group, id);
    if (!multipart || !member) return answer(response, 400, { why: 'unreadable' });
    let asked: string | undefined;
    const doing: Doing = {
      host: this.#host,
      view: this.#view,
      member,
      onAsked: (interaction, what) => {
        const waiting = this.#view.ask(interaction, id, what);
        asked = interaction;
        this.#onAsked?.(interaction, { ...what, by: waiting.by });
        this.#tellMember(id, { kind: 'waiting', waiting });
      },
    };
    const result = await perform(multipart.say as PageAction, multipart.files, doing);
    if (asked !== undefined) {
      this.#view.settle(asked);
      this.#tellMember(id, { kind: 'settled', interaction: asked });
      await this.#speakAs(member, group);
    }
    answer(response, 200, result);
  }

  /** Lets the page speak the language that its member is answered in. */
  async #speakAs(member: Member, group: string): Promise<void> {
    const language = await this.#languageOf?.(member.id);
    const seat = this.#view.seats.find(one => one.group === group && one.member === member.id);
    if (language !== undefined && language !== seat?.language) member.grant({ locale: LOCALES[language][0] });
  }

  async #suggest(url: URL, request: IncomingMessage, response: ServerResponse): Promise<void> {
    const multipart = await readMultipart(request);
    const { group, member } = seatIn(url);
    if (!multipart) return answer(response, 400, { why: 'unreadable' });
    const { command, options, focused } = multipart.say as Typing;
    const suggested: readonly Suggested[] = await (
      memberAt(this.#host, group, member)?.complete(command, options, focused) ?? Promise.resolve([])
    ).catch(() => []);
    answer(
      response,
      200,
      suggested.map(one => ({ name: one.name, value: one.value, hex: suggestedColour(one) })),
    );
  }

  async #addSeat(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const multipart = await readMultipart(request);
    const made = multipart && addSeat(this.#host, multipart.say as NewSeat);
    return made ? answer(response, 200, made) : answer(response, 400, { why: 'unreadable' });
  }

  #file(url: URL, response: ServerResponse): void {
    const file = this.#host.file(url.pathname.split('/')[2] ?? '');
    if (!file) {
      answer(response, 404, { why: 'unknown' });
      return;
    }
    const isPicture = /^image\/(png|jpeg|webp|gif)$/.test(file.contentType);
    response.setHeader('content-security-policy', "sandbox; default-src 'none'");
    response.setHeader('content-disposition', isPicture ? 'inline' : 'attachment');
    response.writeHead(200, { 'content-type': file.contentType }).end(file.bytes());
  }

  #tellMember(member: string, change: Change): void {
    for (const [stream, seat] of this.#streams) if (seat.member === member) tell(stream, change);
  }
}

const seatIn = ({ searchParams }: URL) => ({
  group: searchParams.get('group') ?? '',
  member: searchParams.get('member') ?? '',
});

const listenAt = (server: Server, port: number) =>
  new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });

function tell(stream: ServerResponse, change: Change | undefined): void {
  if (change) stream.write(`data: ${JSON.stringify(change)}\n\n`);
}

function answer(response: ServerResponse, status: number, json: unknown): void {
  if (response.headersSent) return void response.end();
  response.writeHead(status, { 'content-type': 'application/json; charset=utf-8' }).end(JSON.stringify(json));
}
