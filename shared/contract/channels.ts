/** Names of all messages between the renderer and the platform; a file of its own, so that the preload stays small. */
export const CHANNELS = [
  'document.open',
  'document.save',
  'document.recent',
  'document.keep',
  'document.kept',
  'document.changed',
  'output.begin',
  'output.write',
  'output.finish',
  'output.discard',
  'output.show',
  'app.about',
] as const;

export type Channel = (typeof CHANNELS)[number];
