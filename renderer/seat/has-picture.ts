/** Whether this window can draw in space at all; drawing by software counts. */
export function hasPictureHardware(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    // Windows hold few such contexts: give it back at once.
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}
