/** Whether keys are those of a Mac. */
export const IS_MAC = typeof navigator === 'object' && navigator.platform.startsWith('Mac');
