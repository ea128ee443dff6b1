// Text that a reader can't read: cut off by a box that does not scroll, written over by other text, out of
// the window at its side, or longer than its field. Looked for through all shadow roots.
import type { Page } from 'playwright-core';

/** What is wrong, in lines to be read. */
export function textFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    interface Written {
      readonly words: string;
      readonly element: Element;
      readonly box: DOMRect;
      /** As much of the box as is not scrolled out of sight. */
      readonly seen: DOMRect;
    }

    /** So much of a line's height is above or below its letters, and so much of them may be shaved [-]. */
    const EMPTY = 0.1;
    const SHAVED = 1.5;

    const parentOf = (node: Node): Element | undefined => {
      if (node instanceof Element && node.assignedSlot) return node.assignedSlot;
      const parent = node.parentNode;
      if (parent instanceof ShadowRoot) return parent.host;
      return parent instanceof Element ? parent : undefined;
    };
    const ancestors = (element: Element): Element[] => {
      const parent = parentOf(element);
      return parent ? [parent, ...ancestors(parent)] : [];
    };
    const nodes = (root: Node): Node[] =>
      [...root.childNodes].flatMap((node) =>
        node instanceof Element
          ? [node, ...nodes(node), ...(node.shadowRoot ? nodes(node.shadowRoot) : [])]
          : [node],
      );
    const isSpokenOnly = (element: Element) =>
      [element, ...ancestors(element)].some(
        (each) =>
          each.classList.contains('for-ears') ||
          getComputedStyle(each).clipPath.startsWith('inset(50%'),
      );

    const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
    const seenOf = (element: Element, box: DOMRect) =>
      ancestors(element).reduce((seen, ancestor) => {
        if (ancestor === document.body || ancestor === document.documentElement) return seen;
        const { overflowX, overflowY } = getComputedStyle(ancestor);
        const outer = ancestor.getBoundingClientRect();
        const [left, right] = scrolls(overflowX)
          ? [Math.max(seen.left, outer.left), Math.min(seen.right, outer.right)]
          : [seen.left, seen.right];
        const [top, bottom] = scrolls(overflowY)
          ? [Math.max(seen.top, outer.top), Math.min(seen.bottom, outer.bottom)]
          : [seen.top, seen.bottom];
        return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
      }, box);

    const all = nodes(document.body);
    const written = all.flatMap((node): Written[] => {
      const element = node.parentElement;
      if (!(node instanceof Text) || !element || node.data.trim() === '') return [];
      if (element.closest('option, style, script, noscript, title')) return [];
      if (!element.checkVisibility({ visibilityProperty: true }) || isSpokenOnly(element))
        return [];
      const range = document.createRange();
      range.selectNodeContents(node);
      return [...range.getClientRects()]
        .filter(({ width, height }) => width > 1 && height > 1)
        .map(({ x, y, width, height }) => {
          const words = node.data.replaceAll(/\s+/g, ' ').trim();
          const box = new DOMRect(x, y + EMPTY * height, width, (1 - 2 * EMPTY) * height);
          return { words, element, box, seen: seenOf(element, box) };
        });
    });

    const faults: string[] = [];
    for (const { words, element, box } of written) {
      let reach = { across: true, down: true };
      for (const ancestor of [element, ...ancestors(element)]) {
        const style = getComputedStyle(ancestor);
        const outer = ancestor.getBoundingClientRect();
        const cuts = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
        if (ancestor === document.body || ancestor === document.documentElement) break;
        if (ancestor instanceof SVGElement && !(ancestor instanceof SVGSVGElement)) continue;
        if (style.display === 'inline' || style.display === 'contents') continue;
        const isCutAcross = box.left < outer.left - SHAVED || box.right > outer.right + SHAVED;
        const isCutDown = box.top < outer.top - SHAVED || box.bottom > outer.bottom + SHAVED;
        if (reach.across && cuts(style.overflowX) && isCutAcross)
          faults.push(`cut at its side: ${words} by ${ancestor.localName}.${style.overflowX}`);
        if (reach.down && cuts(style.overflowY) && isCutDown)
          faults.push(`cut above or below: ${words} by ${ancestor.localName}`);
        reach = {
          across: reach.across && !scrolls(style.overflowX),
          down: reach.down && !scrolls(style.overflowY),
        };
      }
      const isOut = box.right > document.documentElement.clientWidth + SHAVED || box.left < -SHAVED;
      if (reach.across && isOut) faults.push(`out of the window: ${words}`);
    }

    for (const [i, one] of written.entries()) {
      for (const other of written.slice(i + 1)) {
        const across =
          Math.min(one.seen.right, other.seen.right) - Math.max(one.seen.left, other.seen.left);
        const down =
          Math.min(one.seen.bottom, other.seen.bottom) - Math.max(one.seen.top, other.seen.top);
        if (across > SHAVED && down > SHAVED)
          faults.push(`one over the other: ${one.words} | ${other.words}`);
      }
    }

    for (const node of all) {
      if (!(node instanceof HTMLInputElement) || !node.checkVisibility()) continue;
      if (node.type === 'text' && node.scrollWidth > node.clientWidth + 1)
        faults.push(`longer than its field: ${node.value}`);
    }
    return faults;
  });
}

/** By how much the page is wider than its window [px]. */
export function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
}
