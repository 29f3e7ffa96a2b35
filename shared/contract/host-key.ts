/** The header in which a message to the browser host shows the host's key, as Node spells headers. */
export const HOST_KEY = 'overhang-key';
