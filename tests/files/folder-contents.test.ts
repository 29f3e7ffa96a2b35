import { describe, expect, test } from 'vitest';
import { bundleOrder } from '../../core/bundle.ts';
import { folderContents } from '../../core/files/folder-contents.ts';
import { USUAL } from '../../core/files/output-choice.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import { bundleFiles } from '../pipeline/bundle-files.ts';
import { demo } from '../pipeline/demo.ts';
import { readMachine } from '../jigs/setups.ts';

describe('folderContents', () => {
  test('lists the very files that are written, in their order, and the manifest', async () => {
    const machine = readMachine('router');
    const inches = { ...machine, dxf: { ...machine.dxf, unit: 'in' as const } };
    const { design, workshop } = demo('boathouse-frameless', inches, 'edge');
    const written = (
      await bundleFiles(bundleOrder(design, [], workshop, USUAL, { paperFonts: loadPaperFonts }))
    ).map(({ path }) => path);
    const listed = folderContents(design.parts, 'in').map(({ path }) => path);
    expect(listed).toEqual([...written, 'manifest.json']);
    expect(listed.length).toBeGreaterThan(10);
  });
});
