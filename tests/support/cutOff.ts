/**
 * Text that a person cannot read to its end, as it stands on a page: clipped by a box round it, off the screen's side, or in
 * a box that has to be moved sideways though it is no bench, table or plot. To be run in the page.
 */
export function cutOff(): string[] {
  const SCROLLS = '.bench, .plot-box, .tbl, table, pre, .cmd, .steps';
  /** A drawing measures itself; a session's title may shorten. */
  const SPARED = '.bay-host, .vh, .skip, svg, .ttl, .dhost, .dview, option, select, [hidden]';
  const found = new Set<string>();
  const told = (element: Element, why: string): void => {
    found.add(
      `${element.tagName.toLowerCase()}.${element.className}: ${element.textContent?.trim().slice(0, 50)}: ${why}`,
    );
  };
  const readable = (style: string): boolean => style === 'visible';
  const reached = (style: string): boolean => style === 'auto' || style === 'scroll';
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!parent || !node.textContent?.trim() || parent.closest(SPARED)) continue;
    if (getComputedStyle(parent).visibility === 'hidden' || parent.getClientRects().length === 0) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
    if (boxes.length === 0) continue;
    const left = Math.min(...boxes.map((box) => box.left));
    const right = Math.max(...boxes.map((box) => box.right));
    const bottom = Math.max(...boxes.map((box) => box.bottom));
    let sideways = true;
    let down = true;
    for (let box: Element | null = parent; box && box !== document.body; box = box.parentElement) {
      const { display, overflowX, overflowY } = getComputedStyle(box);
      if (display === 'contents') continue;
      const edge = box.getBoundingClientRect();
      if (sideways && !readable(overflowX)) {
        const isOver = right > edge.right + 1.5 || left < edge.left - 1.5;
        if (isOver && !(reached(overflowX) && box.matches(SCROLLS)))
          told(parent, `over the side of .${box.className}`);
        if (reached(overflowX)) sideways = false;
      }
      if (down && !readable(overflowY)) {
        if (!reached(overflowY) && bottom > edge.bottom + 3)
          told(parent, `over the foot of .${box.className}`);
        if (reached(overflowY)) down = false;
      }
    }
    if (sideways && (right > innerWidth + 1 || left < -1)) told(parent, 'off the screen');
  }
  if (document.documentElement.scrollWidth > innerWidth + 1)
    found.add(`page ${document.documentElement.scrollWidth} wide`);
  for (const tight of document.querySelectorAll('button, .chip, th')) {
    if (tight.closest(SPARED) || tight.clientWidth === 0) continue;
    if (tight.scrollWidth > tight.clientWidth + 1)
      told(tight, `${tight.scrollWidth} in ${tight.clientWidth}`);
  }
  return [...found];
}
