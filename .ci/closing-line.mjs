// Prints the closing line from vitest's own counts. A file that could not be loaded counts as one failure.
import { readFileSync } from 'node:fs'

const { numPassedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(readFileSync(process.argv[2], 'utf8'))
const failedIn = ({ status, assertionResults }) =>
  Math.max(assertionResults.filter((test) => test.status === 'failed').length, status === 'failed' ? 1 : 0)
const failed = testResults.reduce((sum, file) => sum + failedIn(file), 0)
const skipped = numPendingTests + numTodoTests

console.log(`${numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`)
process.exitCode = failed > 0 || numPassedTests === 0 ? 1 : 0
