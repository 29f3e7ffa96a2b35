/** ms. What is not on the screen by then is not waited for: no seat may be shown, or nothing to draw it with. */
const PATIENCE = 1000;

let shown = (): void => undefined;
const first = new Promise<void>((resolve) => {
  shown = resolve;
});

/** Says that a picture of a seat has been drawn; two frames later it is on the screen. */
export const pictureShown = (): void => {
  requestAnimationFrame(() => requestAnimationFrame(shown));
};

/** Ends when the first picture of a seat has been drawn, or would have been long ago. */
export const firstPicture = (): Promise<void> =>
  Promise.race([first, new Promise<void>((resolve) => setTimeout(resolve, PATIENCE))]);
