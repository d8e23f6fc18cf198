/** pixi.js ships this entry without types: importing it is all there is to it. */
declare module 'pixi.js/unsafe-eval';
