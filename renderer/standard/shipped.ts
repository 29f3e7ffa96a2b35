import frameSideMount from '../../assets/standards/face-frame-side-mount.json';
import frameUndermount from '../../assets/standards/face-frame-undermount.json';
import frameless from '../../assets/standards/frameless-undermount.json';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';

/** The shop standards that come with the program. */
export const shippedStandards = (): readonly ShopStandard[] =>
  [frameUndermount, frameSideMount, frameless].flatMap((json) => parseStandard(json, json.name).value ?? []);
