import { Client, GatewayDispatchEvents, GatewayIntentBits, InteractionResponseType, MessageFlags, Routes } from 'discord.js'
import * as z from 'zod'
import { answerRest } from '../../src/adapters/chat/platform/acknowledge.ts'

const asked = z.object({ id: z.string(), token: z.string(), message: z.unknown().optional() })

/** What the platform's library and its line cost by themselves: a client that acknowledges and does nothing else. */
export const openFloor = async (api: string, token: string): Promise<() => Promise<void>> => {
  const client = new Client({ intents: [GatewayIntentBits.Guilds, GatewayIntentBits.DirectMessages], rest: { api } })
  const answers = answerRest(api)
  client.ws.on(GatewayDispatchEvents.InteractionCreate, (data: unknown) => {
    const { id, token: key, message } = asked.parse(data)
    const body =
      message === undefined
        ? { type: InteractionResponseType.DeferredChannelMessageWithSource, data: { flags: MessageFlags.Ephemeral } }
        : { type: InteractionResponseType.DeferredMessageUpdate }
    answers.post(Routes.interactionCallback(id, key), { body, auth: false }).catch((error: unknown) => {
      process.stderr.write(`${String(error)}\n`)
    })
  })
  await client.login(token)
  return () => client.destroy()
}
