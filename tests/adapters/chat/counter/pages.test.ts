import { expect, it } from 'vitest'
import { noPages, pageAddresses, readRoutes } from '../../../support/page-routes.ts'

it('every page of the counter is on the list that is looked at in a browser, and nothing else is', () => {
  const listed = [...noPages, ...Object.keys(pageAddresses('token'))]
  expect(readRoutes()).toEqual([...new Set(listed)].sort())
  expect(listed).toHaveLength(new Set(listed).size)
})
