import type { Line } from '../../../core/scene/types.ts';
import { linesGeometry } from './geometry.ts';
import { Lines } from './Lines.tsx';
import { useDisposed } from './useDisposed.ts';

interface StaticLinesProps {
  readonly lines: readonly Line[];
  readonly color: string;
  readonly width: number;
  readonly over?: boolean;
}

/** Lines of the drawing: dimensions, arrows, spaces to keep clear. */
export function StaticLines({ lines, color, width, over = false }: StaticLinesProps) {
  const geometry = useDisposed(lines, linesGeometry);
  return <Lines geometry={geometry} color={color} width={width} over={over} />;
}
