/** Whether keys are those of a Mac. */
export const IS_MAC = /^Mac/.test(navigator.platform);
