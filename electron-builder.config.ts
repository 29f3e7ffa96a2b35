import type { Configuration } from 'electron-builder';
import { publisherOf, refusePlaceholders } from './electron/publisher.ts';
import packageJson from './package.json' with { type: 'json' };

const publisher = publisherOf(packageJson, process.env);

/** How the installers are made. Nothing is uploaded from here. */
const configuration: Configuration = {
  appId: 'overhang.desktop',
  productName: 'Overhang',
  copyright: 'Copyright © 2026 the Overhang developers',
  // Everything is bundled; only what was built goes in.
  files: [
    'dist/main/**',
    'dist/preload/**',
    'dist/renderer/**',
    'package.json',
    '!**/*.map',
    '!node_modules/**',
  ],
  directories: { output: 'dist/installers', buildResources: 'assets/icons' },
  extraMetadata: { homepage: publisher.homepage },
  beforePack: ({ targets }) => refusePlaceholders(publisher, targets),
  asar: true,
  npmRebuild: false,
  publish: null,
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableCookieEncryption: true,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false,
    // Needs a snapshot file of the program's own.
    loadBrowserProcessSpecificV8Snapshot: false,
  },
  fileAssociations: [
    {
      ext: 'overhang',
      name: 'Overhang project',
      description: 'An order of drawers with its shop standard',
      mimeType: 'application/x-overhang-project',
      role: 'Editor',
    },
  ],
  linux: {
    target: ['AppImage', 'deb'],
    category: 'Engineering',
    icon: 'assets/icons/png',
    synopsis: 'Designs jigs for setting drawer fronts',
    maintainer: publisher.maintainer,
  },
  win: { target: ['nsis'], icon: 'assets/icons/icon.ico' },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
  mac: {
    target: ['dmg'],
    icon: 'assets/icons/icon.icns',
    category: 'public.app-category.graphics-design',
    hardenedRuntime: true,
    gatekeeperAssess: false,
  },
};

export default configuration;
