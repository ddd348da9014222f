import type { Role } from '../../../ports/counter-desk.ts'
import type { Actor, GuildSettings, PlatformPerson } from '../../../ports/platform-desk.ts'

type Seen = { readonly person: PlatformPerson; readonly roles: readonly string[] }

const roleOf = (settings: GuildSettings, roles: readonly string[]): Role | null => {
  if (roles.some((role) => settings.ownerRoles.includes(role))) return 'owner'
  return roles.some((role) => settings.staffRoles.includes(role)) ? 'staff' : null
}

/** Who this is in the shop: by the roles the shop's stored settings name, and by nothing else. */
export const actorOf = (settings: GuildSettings, { person, roles }: Seen): Actor => ({
  shop: settings.shop,
  person,
  role: roleOf(settings, roles),
})
