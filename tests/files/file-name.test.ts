import { expect, test } from 'vitest';
import { cutFileName } from '../../core/files/file-name.ts';

test('DXF-3: cutFileName puts the unit into the name of the file', () => {
  expect(cutFileName('B1-plate', 'mm', 'dxf')).toBe('B1-plate_mm.dxf');
  expect(cutFileName('B1-plate', 'in', 'dxf')).toBe('B1-plate_in.dxf');
});
