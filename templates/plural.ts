/** '1 garment', '2 garments': so many of a thing in words, in a language that has one form for one and another for all else. */
export const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`
