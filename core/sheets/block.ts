import type { Rect } from './packer/rect.ts';
import type { PartShape } from './part-shape.ts';
import type { QuarterTurns, Turn } from './types.ts';

/** A part in a block: turned, its box's corner from that of the block, mm. */
export interface Member {
  readonly shape: PartShape;
  readonly turns: QuarterTurns;
  readonly x: number;
  readonly y: number;
}

/** What is packed as one: a part, or two that interlock. Sizes in mm. */
export interface Block {
  readonly members: readonly Member[];
  readonly width: number;
  readonly height: number;
  readonly cover: readonly Rect[];
}

/** A rectangle within a box of this size when the box is turned counter-clockwise. */
export function turnedRect(rect: Rect, width: number, height: number, turns: QuarterTurns): Rect {
  const { x, y } = rect;
  if (turns === 0) return rect;
  if (turns === 2) return { ...rect, x: width - x - rect.width, y: height - y - rect.height };
  const size = { width: rect.height, height: rect.width };
  return turns === 1
    ? { x: height - y - rect.height, y: x, ...size }
    : { x: y, y: width - x - rect.width, ...size };
}

/** The size of a box after quarter turns. */
export const turnedSize = (
  { width, height }: { readonly width: number; readonly height: number },
  turns: QuarterTurns,
): { readonly width: number; readonly height: number } =>
  turns % 2 === 0 ? { width, height } : { width: height, height: width };

/** A part by itself. */
export const blockOf = (shape: PartShape): Block => ({
  members: [{ shape, turns: 0, x: 0, y: 0 }],
  width: shape.width,
  height: shape.height,
  cover: shape.cover,
});

/** The turns that a part may make against the way it is drawn. */
export const turnsFor = (
  { part }: PartShape,
  { turn, keepUpright }: { readonly turn: Turn; readonly keepUpright: readonly string[] },
): readonly QuarterTurns[] => {
  if (turn === 'none' || keepUpright.includes(part.id)) return [0];
  return turn === 'half' ? [0, 2] : [0, 1, 2, 3];
};

/** The members of a block that lies at a place of its sheet, perhaps turned by a quarter. */
export function membersAt(block: Block, x: number, y: number, turned: boolean): readonly Member[] {
  return block.members.map((member) => {
    if (!turned) return { ...member, x: x + member.x, y: y + member.y };
    const size = turnedSize(member.shape, member.turns);
    const box = turnedRect({ x: member.x, y: member.y, ...size }, block.width, block.height, 1);
    const turns = QUARTERS[(member.turns + 1) % 4] ?? 0;
    return { shape: member.shape, turns, x: x + box.x, y: y + box.y };
  });
}

const QUARTERS: readonly QuarterTurns[] = [0, 1, 2, 3];
