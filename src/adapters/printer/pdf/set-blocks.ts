import type { BesideBlock, Block, TogetherBlock } from '../../../domain/ticket/ticket.ts'
import { setCode, setDrawing, setPlate, setRuler, setStrips } from './blocks/drawing.ts'
import { setChecks, setPressBox, setSteps } from './blocks/press.ts'
import type { Room } from './blocks/room.ts'
import { setTable } from './blocks/table.ts'
import { setFields, setFrame, setHeading, setParagraph, setSignal } from './blocks/text.ts'
import { gap, type Node, type Piece, piece, shift } from './marks.ts'

const stack = (all: readonly Piece[], x: number): { readonly nodes: readonly Node[]; readonly height: number } => {
  const pieces = all.slice(all.findIndex((one) => one.nodes.length > 0))
  let y = 0
  const nodes = pieces.flatMap((one) => {
    const moved = one.nodes.map((part) => shift(part, x, y))
    y += one.height
    return moved
  })
  return { nodes, height: y }
}

/** Two columns of blocks as one piece; only for what is sure to fit on a page. */
const setBeside = (block: BesideBlock, room: Room): readonly Piece[] => {
  const space = 10
  const width = (room.width - space) * block.share
  const left = stack(setBlocks(block.left, { ...room, width }), 0)
  const right = stack(setBlocks(block.right, { ...room, width: room.width - space - width }), width + space)
  return [piece(Math.max(left.height, right.height), [...left.nodes, ...right.nodes]), gap(2)]
}

const setTogether = (block: TogetherBlock, room: Room): readonly Piece[] => {
  const together = {}
  return setBlocks(block.blocks, room).map((one) => ({ ...one, together }))
}

const setBlock = (block: Block, room: Room): readonly Piece[] => {
  switch (block.kind) {
    case 'text':
      return setParagraph(block, room)
    case 'heading':
      return setHeading(block, room)
    case 'fields':
      return setFields(block, room)
    case 'frame':
      return setFrame(block, room)
    case 'signal':
      return setSignal(block, room)
    case 'press-box':
      return setPressBox(block, room)
    case 'table':
      return setTable(block, room)
    case 'checks':
      return setChecks(block, room)
    case 'steps':
      return setSteps(block, room)
    case 'drawing':
      return setDrawing(block, room)
    case 'code':
      return setCode(block, room)
    case 'beside':
      return setBeside(block, room)
    case 'together':
      return setTogether(block, room)
    case 'strips':
      return setStrips(block, room)
    case 'plate':
      return setPlate(block)
    case 'ruler':
      return setRuler(block, room)
  }
}

/** The pieces of blocks in the width of a room, in reading order. */
export const setBlocks = (blocks: readonly Block[], room: Room): readonly Piece[] =>
  blocks.flatMap((block) => setBlock(block, room))
