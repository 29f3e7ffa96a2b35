import type { HeldLibrary } from './types.ts';

/**
 * Libraries that are compiled into the packages' own WebAssembly, of which no file of the packages tells. From
 * the libraries' own list of third parties; their years from memory.
 */
export const HELD: Readonly<Record<string, readonly HeldLibrary[]>> = {
  highs: [
    {
      name: 'AMD',
      licence: 'BSD-3-Clause',
      holder: '1996-2022 Timothy A. Davis, Patrick R. Amestoy, Iain S. Duff',
    },
    { name: 'METIS', licence: 'Apache-2.0', holder: '1995-2013 Regents of the University of Minnesota' },
    { name: 'pdqsort', licence: 'Zlib', holder: '2021 Orson Peters' },
    { name: 'rcm', licence: 'MIT', holder: '2005 Alan George, Joseph Liu, John Burkardt' },
  ],
  'manifold-3d': [{ name: 'Clipper2', licence: 'BSL-1.0', holder: '2010-2024 Angus Johnson' }],
};
