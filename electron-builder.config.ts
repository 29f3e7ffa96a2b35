import type { Configuration } from 'electron-builder';
import { publisherOf, refusePlaceholders } from './electron/publisher.ts';
import { writeInstallerPapers } from './electron/release/installer-papers.ts';
import packageJson from './package.json' with { type: 'json' };

const publisher = publisherOf(packageJson, process.env);

/** The files that a double click opens with the program; how they are named differs by system. */
const PROJECT_FILES = { ext: 'overhang', description: 'Overhang project', role: 'Editor' } as const;

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
    // The papers of all builds, and of Electron, are beside the archive.
    '!dist/*/{THIRD-PARTY-NOTICES.txt,sbom.cdx.json}',
    '!node_modules/**',
  ],
  directories: { output: 'dist/installers', buildResources: 'assets/icons' },
  extraResources: [
    { from: 'dist/release', to: '.' },
    { from: 'LICENSE', to: 'LICENSE.overhang.txt' },
  ],
  extraMetadata: { homepage: publisher.homepage },
  beforePack: ({ targets, packager }) => {
    refusePlaceholders(publisher, targets);
    writeInstallerPapers(import.meta.dirname, packager.projectDir);
  },
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
  linux: {
    target: ['AppImage', 'deb'],
    category: 'Engineering',
    icon: 'assets/icons/png',
    synopsis: 'Designs jigs for setting drawer fronts',
    maintainer: publisher.maintainer,
    fileAssociations: { ...PROJECT_FILES, mimeType: 'application/x-overhang-project' },
  },
  win: {
    target: ['nsis'],
    icon: 'assets/icons/icon.ico',
    // A class of the registry, which has no spaces.
    fileAssociations: { ...PROJECT_FILES, name: 'Overhang.Project' },
  },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
  mac: {
    target: ['dmg'],
    icon: 'assets/icons/icon.icns',
    category: 'public.app-category.graphics-design',
    fileAssociations: { ...PROJECT_FILES, name: 'Overhang project' },
    hardenedRuntime: true,
    gatekeeperAssess: false,
  },
};

export default configuration;
