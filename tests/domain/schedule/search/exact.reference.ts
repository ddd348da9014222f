/** Exact answers by the textbook rules and by dynamic programming over subsets; nothing of the planner is used. */

/** Makespan of two machines in a row by Johnson's rule (1954). */
export const johnson = (a: readonly number[], b: readonly number[]): number => {
  const jobs = a.map((first, index) => ({ first, second: b[index] ?? 0 }))
  const early = jobs.filter((job) => job.first < job.second).toSorted((x, y) => x.first - y.first)
  const late = jobs.filter((job) => job.first >= job.second).toSorted((x, y) => y.second - x.second)
  let one = 0
  let two = 0
  for (const job of [...early, ...late]) {
    one += job.first
    two = Math.max(one, two) + job.second
  }
  return two
}

/** Least number of late jobs on one machine, Moore and Hodgson (1968). */
export const mooreHodgson = (p: readonly number[], d: readonly number[]): number => {
  const jobs = p.map((work, index) => ({ work, due: d[index] ?? 0 })).toSorted((x, y) => x.due - y.due)
  const kept: number[] = []
  let at = 0
  for (const job of jobs) {
    kept.push(job.work)
    at += job.work
    if (at <= job.due) continue
    const longest = Math.max(...kept)
    kept.splice(kept.indexOf(longest), 1)
    at -= longest
  }
  return p.length - kept.length
}

/** Least weighted sum of completions on one machine, Smith (1956). */
export const smith = (p: readonly number[], w: readonly number[]): number => {
  const jobs = p.map((work, index) => ({ work, weight: w[index] ?? 1 })).toSorted((x, y) => x.work * y.weight - y.work * x.weight)
  let at = 0
  let sum = 0
  for (const job of jobs) {
    at += job.work
    sum += job.weight * at
  }
  return sum
}

/** Least sum of completions on identical machines: shortest work first. */
export const shortestFirst = (p: readonly number[], machines: number): number => {
  const free = Array.from({ length: machines }, () => 0)
  let sum = 0
  for (const work of p.toSorted((x, y) => x - y)) {
    const soonest = free.indexOf(Math.min(...free))
    free[soonest] = (free[soonest] ?? 0) + work
    sum += free[soonest] ?? 0
  }
  return sum
}

/** Least weighted tardiness on one machine, over all subsets of jobs that come first. */
export const leastTardiness = (p: readonly number[], w: readonly number[], d: readonly number[]): number => {
  const least = new Float64Array(1 << p.length).fill(Number.POSITIVE_INFINITY)
  least[0] = 0
  for (let set = 1; set < least.length; set += 1) {
    const members = p.map((_, job) => job).filter((job) => ((set >> job) & 1) === 1)
    const at = members.reduce((sum, job) => sum + (p[job] ?? 0), 0)
    for (const job of members) {
      const cost = (least[set ^ (1 << job)] ?? 0) + (w[job] ?? 1) * Math.max(0, at - (d[job] ?? 0))
      if (cost < (least[set] ?? 0)) least[set] = cost
    }
  }
  return least[least.length - 1] ?? 0
}

const makespanOf = (p: readonly (readonly number[])[], list: readonly number[]): number => {
  const ends = p.map(() => 0)
  for (const job of list) {
    let before = 0
    p.forEach((row, index) => {
      before = Math.max(before, ends[index] ?? 0) + (row[job] ?? 0)
      ends[index] = before
    })
  }
  return ends.at(-1) ?? 0
}

const orders = (left: readonly number[]): readonly (readonly number[])[] =>
  left.length === 0 ? [[]] : left.flatMap((job) => orders(left.filter((one) => one !== job)).map((rest) => [job, ...rest]))

/** Least makespan of a permutation flow shop by trying every order of the jobs. */
export const leastMakespan = (p: readonly (readonly number[])[]): number =>
  Math.min(...orders((p[0] ?? []).map((_, job) => job)).map((list) => makespanOf(p, list)))
