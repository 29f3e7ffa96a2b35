import { strToU8, zipSync, type Zippable } from 'fflate';
import { ZIP_DATE } from '../files/zip-date.ts';
import type { Mesh } from './types.ts';

const XML = '<?xml version="1.0" encoding="UTF-8"?>\n';

const TYPES = `${XML}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
`;

const RELATIONS = `${XML}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
`;

/** A package of the 3MF core specification with one object, in mm. */
export function write3mf(mesh: Mesh, name: string): Uint8Array {
  const file = (text: string): Zippable[string] => [strToU8(text), { mtime: ZIP_DATE, level: 6 }];
  return zipSync({
    '[Content_Types].xml': file(TYPES),
    '_rels/.rels': file(RELATIONS),
    '3D/3dmodel.model': file(model(mesh, name)),
  });
}

function model({ positions, triangles }: Mesh, name: string): string {
  const title = escaped(name);
  return [
    `${XML}<model unit="millimeter" xml:lang="en-US" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">`,
    `<metadata name="Title">${title}</metadata>`,
    '<resources>',
    `<object id="1" type="model" name="${title}"><mesh>`,
    '<vertices>',
    ...positions.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`),
    '</vertices>',
    '<triangles>',
    ...triangles.map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`),
    '</triangles>',
    '</mesh></object>',
    '</resources>',
    '<build><item objectid="1"/></build>',
    '</model>',
    '',
  ].join('\n');
}

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** XML has no place at all for the control characters that are left out. */
const escaped = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll(/[&<>"]/g, (mark) => ESCAPES[mark] ?? '');
