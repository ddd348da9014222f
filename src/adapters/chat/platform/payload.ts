import * as z from 'zod'

/** What the platform sends, as far as we read it; it may add to any of these at any time. */
const user = z.object({
  id: z.string(),
  username: z.string(),
  global_name: z.string().nullish(),
  bot: z.boolean().optional(),
})
const member = z.object({ roles: z.array(z.string()).default([]), permissions: z.string().optional(), user: user.optional() })

export const attachmentSchema = z.object({
  id: z.string(),
  filename: z.string(),
  size: z.number(),
  url: z.string(),
  content_type: z.string().nullish(),
})
export type GivenFile = z.infer<typeof attachmentSchema>

const resolved = z.object({ attachments: z.record(z.string(), attachmentSchema).default({}) }).default({ attachments: {} })
const option = z.object({
  name: z.string(),
  type: z.number(),
  value: z.union([z.string(), z.number(), z.boolean()]).optional(),
  focused: z.boolean().optional(),
})
const filledPart = z.object({
  custom_id: z.string().optional(),
  value: z.string().nullish(),
  values: z.array(z.string()).optional(),
})
const formRow = z.object({ component: filledPart.optional(), components: z.array(filledPart).optional() })

const asked = z.object({
  id: z.string(),
  application_id: z.string(),
  token: z.string(),
  channel_id: z.string().default(''),
  guild_id: z.string().optional(),
  member: member.optional(),
  user: user.optional(),
  locale: z.string().default('en-US'),
  message: z.object({ id: z.string() }).optional(),
})
const commandData = z.object({ name: z.string(), options: z.array(option).default([]), resolved })
export const interactionSchema = z.discriminatedUnion('type', [
  asked.extend({ type: z.literal(2), data: commandData }),
  asked.extend({ type: z.literal(3), data: z.object({ custom_id: z.string(), values: z.array(z.string()).default([]) }) }),
  asked.extend({ type: z.literal(4), data: commandData }),
  asked.extend({
    type: z.literal(5),
    data: z.object({ custom_id: z.string(), components: z.array(formRow).default([]), resolved }),
  }),
])
export type InteractionPayload = z.infer<typeof interactionSchema>

export const messageSchema = z.object({
  id: z.string(),
  type: z.number().default(0),
  channel_id: z.string(),
  guild_id: z.string().optional(),
  webhook_id: z.string().optional(),
  author: user,
  member: member.optional(),
  content: z.string().default(''),
  attachments: z.array(attachmentSchema).default([]),
  mentions: z.array(z.object({ id: z.string() })).default([]),
})
export type MessagePayload = z.infer<typeof messageSchema>
export type UserPayload = z.infer<typeof user>
