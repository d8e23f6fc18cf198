/** Tells how long a picture keeps the page: from where it begins until the browser has laid it out and goes on. */
export interface PictureTimer {
  begin(): void;
  /** The picture that was begun counts. */
  count(): void;
  stop(): void;
}

/** `took` gets milliseconds of each picture that counts, once the browser is through with it. */
export function pictureTimer(took: (ms: number) => void): PictureTimer {
  let beganMs = 0;
  const { port1: through, port2: wait } = new MessageChannel();
  through.onmessage = ({ data }: MessageEvent<number>) => took(performance.now() - data);
  return {
    begin() {
      beganMs = performance.now();
    },
    count: () => wait.postMessage(beganMs),
    stop: () => through.close(),
  };
}
