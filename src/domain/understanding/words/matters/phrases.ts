/**
 * What people say of a matter in one language, by what it does there. Sources of regular expressions over folded text (lower case,
 * no accents) where the matter is read by pattern, and single words of it where it is read token by token. What a language has no
 * phrase for is an empty list.
 */
export type Phrases<Key extends string> = Readonly<Record<Key, readonly string[]>>
