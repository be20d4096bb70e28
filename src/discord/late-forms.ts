import { randomBytes } from 'node:crypto';
import { type ButtonInteraction, ButtonStyle, ComponentType, MessageFlags } from 'discord.js';
import type { Answer } from '../conversation/reply.ts';
import { Refusal } from '../engine/refusal.ts';
import { languageOf, type Words, wordsIn } from '../words/index.ts';
import { modalOf } from './form.ts';
import { messageOf, type Payload, problemPayload } from './render.ts';
import { settlesWithin } from './settles.ts';

const PREFIX = 'late~';
/** As long as the platform lets an interaction be followed up, ms. */
const KEPT_MS = 15 * 60_000;
const MOST_KEPT = 1_000;
const PATIENCE_MS = 1_500;

type Kept = { readonly asker: string; readonly answering: Promise<Answer>; readonly at: number };

/** A form can only come at once: one whose data is late waits here, behind a button that opens it. */
export class LateForms {
  readonly #kept = new Map<string, Kept>();

  /** Keeps what is still being answered, and gives the message to show meanwhile. */
  keep(asker: string, answering: Promise<Answer>, { conversation }: Words): Payload {
    const ticket = randomBytes(12).toString('base64url');
    const now = Date.now();
    for (const [old, { at }] of this.#kept)
      if (now - at > KEPT_MS || this.#kept.size >= MOST_KEPT) this.#kept.delete(old);
    this.#kept.set(ticket, { asker, answering, at: now });
    return {
      components: [
        { type: ComponentType.TextDisplay, content: conversation.formLate },
        {
          type: ComponentType.ActionRow,
          components: [
            {
              type: ComponentType.Button,
              style: ButtonStyle.Primary,
              label: conversation.openForm,
              custom_id: `${PREFIX}${ticket}`,
            },
          ],
        },
      ],
      files: [],
    };
  }

  /** True for a press of such a button. */
  static isFor(customId: string): boolean {
    return customId.startsWith(PREFIX);
  }

  /** Opens the form, or says why it cannot. Whoever may not or comes too late gets one sentence. */
  async press(interaction: ButtonInteraction): Promise<void> {
    const say = wordsIn(languageOf(interaction.locale));
    const tell = (payload: Payload) =>
      interaction.reply({
        ...messageOf(payload),
        flags: MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral,
      });
    const refused = (id: 'follow-up-expired' | 'follow-up-not-yours') =>
      tell(problemPayload({ kind: 'problem', id, text: say.refusal(new Refusal(id, {})) }));
    const kept = this.#kept.get(interaction.customId.slice(PREFIX.length));
    if (!kept) return void (await refused('follow-up-expired'));
    if (kept.asker !== interaction.user.id) return void (await refused('follow-up-not-yours'));
    if (!(await settlesWithin(kept.answering, PATIENCE_MS)))
      return void (await tell(
        problemPayload({ kind: 'problem', id: 'late', text: say.conversation.formStillLate }),
      ));
    const answer = await kept.answering;
    if (answer.kind === 'form') await interaction.showModal(modalOf(answer));
    else await interaction.deferUpdate();
  }
}
