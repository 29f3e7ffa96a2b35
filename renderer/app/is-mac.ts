/** Whether keys are those of a Mac. */
export const IS_MAC = navigator.platform.startsWith('Mac');
