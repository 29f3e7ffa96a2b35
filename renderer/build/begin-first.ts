import type { Plugin } from 'vite';

const link = (attrs: Readonly<Record<string, string>>) => ({
  tag: 'link',
  attrs: { crossorigin: true, ...attrs },
  injectTo: 'head' as const,
});

/** The page runs `begin.ts` alone, and names what that loads, to be fetched and translated meanwhile. */
export const beginFirst: Plugin = {
  name: 'begin-first',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const begin = chunks.find(({ name }) => name === 'begin');
      const program = chunks.find(({ name, isEntry }) => isEntry && name === 'main');
      const seat = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith('/stages/Seat.tsx') === true);
      if (begin === undefined || program === undefined || seat === undefined) {
        throw new Error('the page has no begin.ts, main.tsx or Seat.tsx');
      }
      const named = new Set([begin.fileName]);
      const links = [program, seat].flatMap((of) => {
        const files = [of.fileName, ...of.imports].filter((file) => !named.has(file));
        for (const file of files) named.add(file);
        const styles = files.flatMap((file) => [
          ...(chunks.find(({ fileName }) => fileName === file)?.viteMetadata?.importedCss ?? []),
        ]);
        return [
          ...styles.map((file) => link({ rel: 'stylesheet', href: `/${file}` })),
          // For whoever counts what the first screen needs.
          ...files.map((file) => link({ rel: 'modulepreload', href: `/${file}`, 'data-for': of.name })),
        ];
      });
      return {
        html: html.replaceAll(
          /\s*<script [^>]*><\/script>|\s*<link rel="(?:stylesheet|modulepreload)"[^>]*>/g,
          '',
        ),
        tags: [
          {
            tag: 'script',
            attrs: { type: 'module', async: true, crossorigin: true, src: `/${begin.fileName}` },
            injectTo: 'head-prepend',
          },
          ...links,
        ],
      };
    },
  },
};
